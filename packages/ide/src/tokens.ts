import { shift, type Span } from '@quern/text';
import type { Amount, Clause, Line, LineContent, Prose } from '@quern/syntax';
import { mentionsIn } from './mentions.js';
import type { NameKind } from './names.js';
import type { Snapshot } from './snapshot.js';

/** Kinds of token, by the names that editors have colours for. */
export const TOKEN_TYPES = [
  'keyword',
  'number',
  'type',
  'operator',
  'comment',
  'string',
  'variable',
  'function',
  'class',
  'property',
  'macro',
  'regexp',
] as const;
export type TokenType = (typeof TOKEN_TYPES)[number];

export const TOKEN_MODIFIERS = ['declaration', 'defaultLibrary'] as const;
export type TokenModifier = (typeof TOKEN_MODIFIERS)[number];

export interface Token {
  readonly span: Span;
  readonly type: TokenType;
  readonly modifiers: readonly TokenModifier[];
}

/**
 * What each stretch of the lines is: first words and small words, figures, units, names by what they mean, sentences,
 * remarks. No token runs over a line end and none overlap; they come in the order of the text.
 * @param lines from the first to before the last; all unless given.
 */
export function semanticTokens(
  snapshot: Snapshot,
  lines?: { readonly from: number; readonly to: number },
): readonly Token[] {
  const from = lines?.from ?? 0;
  const to = Math.min(lines?.to ?? snapshot.document.lines.length, snapshot.document.lines.length);
  const spoken = spokenByLine(snapshot, from, to);
  const tokens: Token[] = [];
  for (let number = from; number < to; number++) {
    const line = snapshot.line(number);
    if (line === undefined || line.parsed.content.kind === 'blank') continue;
    tokens.push(...lineTokens(snapshot, line, spoken.get(number) ?? []));
  }
  return tokens;
}

function spokenByLine(snapshot: Snapshot, from: number, to: number): ReadonlyMap<number, readonly Token[]> {
  const found = new Map<number, Token[]>();
  for (const recipe of snapshot.outline.recipes) {
    for (const make of [...recipe.makes, ...recipe.variants.flatMap((variant) => variant.makes)]) {
      const first = (make.heading?.line ?? make.items[0]?.main.line)?.number ?? 0;
      const last = make.items.at(-1)?.main.line.number ?? first;
      if (last < from || first >= to) continue;
      for (const { span, line, meaning, how } of mentionsIn(snapshot, make)) {
        if (how === 'word') continue;
        const token: Token = { span, type: typeOf(meaning.kind), modifiers: [] };
        found.set(line, [...(found.get(line) ?? []), token]);
      }
    }
  }
  return found;
}

function typeOf(kind: NameKind): TokenType {
  switch (kind) {
    case 'make':
    case 'saved':
    case 'alias':
      return 'function';
    case 'recipe':
    case 'variant':
    case 'menu':
    case 'kitchen':
      return 'class';
    case 'reserved':
      return 'macro';
    case 'file':
      return 'string';
    default:
      return 'variable';
  }
}

function lineTokens(snapshot: Snapshot, line: Line, spoken: readonly Token[]): readonly Token[] {
  const { content } = line.parsed;
  const whole = { start: content.indent, end: line.text.trimEnd().length };
  if (content.kind === 'comment') return [placed('comment', whole, line)];
  if (content.kind === 'bad' || content.kind === 'conflict') return [];
  const names = snapshot.namesOn(line.number).map(({ span, meaning, role }): Token => ({
    span,
    type: typeOf(meaning.kind),
    modifiers: role === 'declared' ? ['declaration'] : meaning.kind === 'table-food' ? ['defaultLibrary'] : [],
  }));
  const known = nonOverlapping([...names, ...structureTokens(content).map(([type, span]) => placed(type, span, line))]);
  return fillGaps(line, whole, nonOverlapping([...known, ...spoken]));
}

const placed = (type: TokenType, span: Span, line: Line): Token => ({
  span: shift(span, line.start),
  type,
  modifiers: [],
});

type Piece = readonly [TokenType, Span];

/** Figures, units, notes and sentences of a line, with spans from its start. */
function structureTokens(content: LineContent): readonly Piece[] {
  switch (content.kind) {
    case 'in':
    case 'or':
      return [
        ...amountTokens(content.amount),
        ...content.equals.flatMap(({ amount }) => amountTokens(amount)),
        ...note(content.note),
      ];
    case 'out':
      return [
        ...amountTokens(content.amount),
        ...content.equals.flatMap(({ amount }) => amountTokens(amount)),
        ...note(content.note),
      ];
    case 'check':
      return amountTokens(content.amount);
    case 'step':
      return [
        ...(content.time ? [['number', content.time.span] as Piece] : []),
        ...content.clauses.flatMap(clauseTokens),
        ...proseTokens(content.prose),
      ];
    case 'every':
      return [
        ['number', content.period.span],
        ...(content.duration ? [['number', content.duration.span] as Piece] : []),
        ...proseTokens(content.prose),
      ];
    case 'more':
      return proseTokens(content.prose);
    case 'block':
      return content.equal ? amountTokens(content.equal) : content.clock ? [['number', content.clock.span]] : [];
    case 'text-fact':
      return [['string', content.words.span]];
    case 'list-fact':
      return content.items.map(({ span }): Piece => ['property', span]);
    case 'keeps':
    case 'best-after':
      return [
        ['number', content.time.span],
        ...(content.kind === 'keeps' && content.at ? [['number', content.at.span] as Piece] : []),
        ...note(content.note),
      ];
    case 'baked':
      return [...note(content.remark)];
    case 'use':
      return [['string', content.path.span]];
    default:
      return [];
  }
}

const note = (words: { readonly span: Span } | undefined): readonly Piece[] => (words ? [['string', words.span]] : []);

function amountTokens(amount: Amount): readonly Piece[] {
  switch (amount.kind) {
    case 'measure':
      return [
        ['number', amount.range.span],
        ['type', amount.unit.span],
        ...(amount.and ? [['type', amount.and.unit.span] as Piece] : []),
      ];
    case 'pack':
      return [['number', amount.range.span], ...amountTokens(amount.each)];
    case 'count':
    case 'percent':
    case 'portion':
      return [['number', amount.range.span]];
    default:
      return [];
  }
}

function clauseTokens(clause: Clause): readonly Piece[] {
  switch (clause.kind) {
    case 'at':
      return [clause.temperature, clause.equal, clause.change?.to].flatMap((one): Piece[] =>
        one ? [['number', one.span]] : [],
      );
    case 'until':
      return [['number', clause.temperature?.span ?? clause.acidity?.span ?? clause.span]];
    case 'using':
      return clause.things.map(({ span }): Piece => ['property', span]);
  }
}

function proseTokens({ span, brackets }: Prose): readonly Piece[] {
  return [...brackets.map((bracket): Piece => ['regexp', bracket.span]), ['string', span]];
}

/** Tokens in order; of two that overlap the shorter one stands and the longer is cut around it. */
function nonOverlapping(tokens: readonly Token[]): Token[] {
  const sorted = tokens.toSorted((a, b) => a.span.end - a.span.start - (b.span.end - b.span.start));
  const result: Token[] = [];
  for (const token of sorted) {
    let pieces: Span[] = [token.span];
    for (const { span } of result) {
      pieces = pieces.flatMap((piece) => {
        if (span.end <= piece.start || span.start >= piece.end) return [piece];
        return [
          { start: piece.start, end: span.start },
          { start: span.end, end: piece.end },
        ].filter(({ start, end }) => end > start);
      });
    }
    for (const span of pieces) if (span.end > span.start) result.push({ ...token, span });
  }
  return result.sort((a, b) => a.span.start - b.span.start);
}

const GAP = /(\d[\d.,:/]*)|([\p{L}]+)|([=%,:-])/gu;

/** What is left between the tokens: small words, figures of facts, marks. */
function fillGaps(line: Line, whole: Span, tokens: readonly Token[]): readonly Token[] {
  const result: Token[] = [];
  let at = line.start + whole.start;
  const end = line.start + whole.end;
  const fill = (to: number): void => {
    const gap = line.text.slice(at - line.start, to - line.start);
    for (const found of gap.matchAll(GAP)) {
      const [text, figure, word] = found;
      const span = { start: at + found.index, end: at + found.index + text.length };
      result.push({
        span,
        type: figure !== undefined ? 'number' : word !== undefined ? 'keyword' : 'operator',
        modifiers: [],
      });
    }
  };
  for (const token of tokens) {
    if (token.span.start > at) fill(token.span.start);
    result.push(token);
    at = Math.max(at, token.span.end);
  }
  if (at < end) fill(end);
  return result;
}
