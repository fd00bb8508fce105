/*
 * Reads the notation of ISO/IEC 14977 as far as grammar/quern.ebnf uses it: rules, alternatives, options, repetitions,
 * groups, literals, special sequences and comments.
 */

export type Expression =
  | { readonly kind: 'literal'; readonly text: string }
  | { readonly kind: 'name'; readonly name: string }
  | { readonly kind: 'special'; readonly text: string }
  | { readonly kind: 'sequence' | 'choice'; readonly parts: readonly Expression[] }
  | { readonly kind: 'option' | 'repetition'; readonly part: Expression };

export interface EbnfRule {
  readonly name: string;
  readonly body: Expression;
  /** The comments within and right after the rule, without their marks. */
  readonly comments: readonly string[];
}

const TOKEN = /\s*(?:\(\*([^]*?)\*\)|"([^"]*)"|\?([^?]*)\?|([A-Za-z][\w]*)|([=|,;()[\]{}]))/y;

interface Token {
  readonly kind: 'comment' | 'literal' | 'special' | 'name' | 'mark';
  readonly text: string;
}

function tokens(source: string): Token[] {
  const found: Token[] = [];
  TOKEN.lastIndex = 0;
  while (/\S/.test(source.slice(TOKEN.lastIndex))) {
    const at = TOKEN.lastIndex;
    const [whole, comment, literal, special, name, mark] = TOKEN.exec(source) ?? [];
    if (whole === undefined) throw new SyntaxError(`no EBNF at ${JSON.stringify(source.slice(at, at + 30))}`);
    if (comment !== undefined) found.push({ kind: 'comment', text: comment.trim().replace(/\s+/g, ' ') });
    else if (literal !== undefined) found.push({ kind: 'literal', text: literal });
    else if (special !== undefined) found.push({ kind: 'special', text: special.trim() });
    else if (name !== undefined) found.push({ kind: 'name', text: name });
    else found.push({ kind: 'mark', text: mark ?? '' });
  }
  return found;
}

/** The rules of a grammar in the order written. @throws SyntaxError when the text is no such grammar. */
export function readEbnf(source: string): EbnfRule[] {
  return new EbnfReader(tokens(source)).rules();
}

class EbnfReader {
  #at = 0;
  #comments: string[] = [];

  constructor(readonly all: readonly Token[]) {}

  rules(): EbnfRule[] {
    const rules: { name: string; body: Expression; comments: string[] }[] = [];
    for (;;) {
      const name = this.#next();
      const before = this.#takeComments();
      rules.at(-1)?.comments.push(...before.filter((comment) => !comment.startsWith('----')));
      if (name === undefined) return rules;
      if (name.kind !== 'name') throw new SyntaxError(`a rule cannot begin with ${name.text}`);
      this.#expect('=');
      const body = this.#choice();
      this.#expect(';');
      rules.push({ name: name.text, body, comments: this.#takeComments() });
    }
  }

  #takeComments(): string[] {
    const taken = this.#comments;
    this.#comments = [];
    return taken;
  }

  #peek(): Token | undefined {
    while (this.all[this.#at]?.kind === 'comment') this.#comments.push(this.all[this.#at++]?.text ?? '');
    return this.all[this.#at];
  }

  #next(): Token | undefined {
    const token = this.#peek();
    this.#at++;
    return token;
  }

  #expect(mark: string): void {
    const token = this.#next();
    if (token?.kind !== 'mark' || token.text !== mark)
      throw new SyntaxError(`${mark} expected, not ${token?.text ?? 'the end'}`);
  }

  #sees(mark: string): boolean {
    const token = this.#peek();
    return token?.kind === 'mark' && token.text === mark;
  }

  #choice(): Expression {
    const parts = [this.#sequence()];
    while (this.#sees('|')) {
      this.#next();
      parts.push(this.#sequence());
    }
    return parts.length === 1 ? (parts[0] as Expression) : { kind: 'choice', parts };
  }

  #sequence(): Expression {
    const parts: Expression[] = [];
    while (!this.#sees('|') && !this.#sees(';') && !this.#sees(')') && !this.#sees(']') && !this.#sees('}')) {
      if (parts.length > 0) this.#expect(',');
      parts.push(this.#factor());
    }
    return parts.length === 1 ? (parts[0] as Expression) : { kind: 'sequence', parts };
  }

  #factor(): Expression {
    const token = this.#next();
    if (token === undefined) throw new SyntaxError('the grammar ends within a rule');
    if (token.kind === 'literal') return { kind: 'literal', text: token.text };
    if (token.kind === 'special') return { kind: 'special', text: token.text };
    if (token.kind === 'name') return { kind: 'name', name: token.text };
    const close = { '(': ')', '[': ']', '{': '}' }[token.text];
    if (close === undefined) throw new SyntaxError(`${token.text} cannot begin an expression`);
    const part = this.#choice();
    this.#expect(close);
    if (token.text === '(') return part;
    return { kind: token.text === '[' ? 'option' : 'repetition', part };
  }
}
