import { EOF, type IToken } from 'chevrotain';
import { diagnose, type Diagnostic, type MessageArguments, type MessageCode, type Span } from '@quern/text';
import type { Bracket, LineContent, Name, ParsedLine, Prose } from './ast.js';
import { refuseAmountInName, yieldStatedTwice } from './amount-in-name.js';
import { classify, type LineHead, type LineWord, type RuleName } from './classify.js';
import { Fault } from './fault.js';
import { LineParser } from './parser.js';
import { readPlainBracket, readPlainLine } from './plain-line.js';
import {
  endsSentence,
  firstWords,
  sentenceInBlock,
  sentenceInName,
  sentenceInNote,
  tipsSomething,
  wordCount,
} from './prose-shape.js';
import { repair } from './repair.js';
import { suggestedStep, timeIn } from './suggested-step.js';
import { explainUnknown } from './unknown-line.js';
import { handmade, Opening, openingOfAmount, Text, tokenize, trimmed, type LexicalMode } from './tokens.js';

/** More characters than any line needs; see message L27. */
export const MOST_CHARACTERS = 4000;

/** How an in line is written. */
const IN_FORM = 'AMOUNT NAME = MEASURE, note';

let known: LineParser | undefined;
/** The grammar, made ready when a line first needs it: that takes longer than reading a recipe of plain lines. */
const grammar = (): LineParser => (known ??= new LineParser());

/** Reads one line. Never throws; whatever is wrong stands in the messages, with spans from the start of the line. */
export function parseLine(text: string): ParsedLine {
  const plain = readPlainLine(text);
  if (plain === undefined) return parseByGrammar(text);
  const messages: Diagnostic[] = [];
  return { content: withBrackets(plain, messages, text), messages };
}

/** Reads one line by the grammar, however plain it is. */
export function parseByGrammar(text: string): ParsedLine {
  const head = classify(text);
  const messages: Diagnostic[] = [];
  const content = read(text, head, messages);
  return { content, messages };
}

function say<C extends MessageCode>(messages: Diagnostic[], code: C, span: Span, args: MessageArguments<C>): void {
  messages.push(diagnose(code, { file: '', ...span }, args));
}

/** From the first character that is not a space to the last. */
function extent(text: string, indent: number): Span {
  return { start: indent, end: indent + trimmed(text).length };
}

function bad(indent: number, opening: string): LineContent {
  return { kind: 'bad', indent, opening };
}

function read(text: string, head: LineHead, messages: Diagnostic[]): LineContent {
  const { indent } = head;
  if (text.length > MOST_CHARACTERS) {
    say(messages, 'L27', extent(text, indent), { length: String(text.length), most: String(MOST_CHARACTERS) });
    return bad(indent, head.kind === 'word' ? head.entry.word : '');
  }
  switch (head.kind) {
    case 'blank':
      return { kind: 'blank', indent };
    case 'conflict':
      say(messages, 'L26', extent(text, 0), {});
      return { kind: 'conflict', indent };
    case 'comment': {
      const words = trimmed(text.slice(indent + 2));
      const start = words === '' ? text.length : text.indexOf(words, indent + 2);
      return { kind: 'comment', indent, words: { span: { start, end: start + words.length }, text: words } };
    }
    case 'more':
      return attempt(text, indent, ':', messages, () => run(text, 'moreLine', tokenize(text, 'prose'), ''));
    case 'figure':
      return attempt(text, indent, text.slice(indent).split(/\s/, 1)[0] ?? '', messages, () =>
        run(text, 'inLine', tokenize(text, 'note'), IN_FORM),
      );
    case 'word':
      return readEntry(text, indent, head.entry, head.length, messages);
    case 'unknown':
      return readUnknown(text, indent, head.word, messages);
  }
}

type Bare = Omit<LineContent, 'indent'>;

/** Runs the rule of a line on its tokens. */
function run(text: string, rule: RuleName | 'moreLine', tokens: IToken[], form: string): Bare {
  const parser = grammar();
  parser.begin(text, tokens, 0);
  const content = parser[rule]() as Bare;
  const error = parser.errors[0];
  if (error !== undefined) {
    const token = error.token;
    // The token that stands for the end of the line has no place of its own.
    const atEnd = token.tokenType === EOF;
    const at = atEnd ? text.length : token.startOffset;
    const stop = atEnd ? text.length : (token.endOffset ?? at) + 1;
    throw new Fault(
      'L24',
      { start: at, end: stop },
      { found: text.slice(at, stop) || 'the end of the line', way: `write the line as “${form}”` },
    );
  }
  parser.expectEnd(`write the line as “${form}”`);
  return content;
}

/** The tokens of a line with its opening word as one token; a word read for another stands in the place of what was written. */
function tokensOf(text: string, mode: LexicalMode | 'text', indent: number, length: number, entry: LineWord): IToken[] {
  const end = indent + length;
  const tokens = mode === 'text' ? [] : tokenize(text, mode).filter((token) => token.startOffset >= end);
  const opening = handmade(
    entry.kind === 'in' ? openingOfAmount(entry.word) : Opening,
    text.slice(indent, end),
    indent,
  );
  opening.image = entry.word;
  if (mode === 'text' && end < text.length) tokens.push(handmade(Text, text.slice(end), end));
  return [opening, ...tokens];
}

/** Runs a rule and turns a fault into a message and a bad line, so that nothing ever leaves here but a value. */
function attempt(text: string, indent: number, opening: string, messages: Diagnostic[], rule: () => Bare): LineContent {
  let content: LineContent;
  try {
    content = { indent, ...rule() } as LineContent;
    if (content.kind === 'in' || content.kind === 'or') refuseAmountInName(content, text);
  } catch (error) {
    if (!(error instanceof Fault)) throw error;
    if (looksPasted(text, error.code)) sayProse(text, indent, messages);
    else messages.push(diagnose(error.code, { file: '', ...error.span }, error.args));
    return bad(indent, opening);
  }
  if (isSentence(content)) {
    sayProse(text, indent, messages);
    return bad(indent, opening);
  }
  sayTypographic(messages);
  return withBrackets(content, messages);
}

/** A line that failed and ends like a sentence was pasted in; the first thing that failed in it would only mislead. */
function looksPasted(text: string, code: MessageCode): boolean {
  if (code === 'L03' || code === 'L26') return false;
  return endsSentence(text) && !text.includes(':') && wordCount(text) >= 3;
}

function sayProse(text: string, indent: number, messages: Diagnostic[]): void {
  say(messages, 'L22', extent(text, indent), { words: firstWords(text), step: suggestedStep(text) });
}

function sayTypographic(messages: Diagnostic[]): void {
  const token = grammar().typographic;
  if (token === undefined) return;
  const span = { start: token.startOffset, end: (token.endOffset ?? token.startOffset) + 1 };
  say(messages, 'L04', span, { mark: token.image, plain: plain(token.image), also: '' });
}

function plain(mark: string): string {
  // `°C`, `° C`, `℃`: the letter alone.
  const degree = /[CF]$/i.exec(mark);
  if (degree !== null) return degree[0].toUpperCase();
  const vulgar = mark.normalize('NFKD');
  if (vulgar !== mark) return vulgar.replace('\u2044', '/');
  if (mark === '\u2044' || mark === '\u2215') return '/';
  return mark === '\u00d7' ? 'x' : '-';
}

function readEntry(
  text: string,
  indent: number,
  entry: LineWord,
  length: number,
  messages: Diagnostic[],
  slipped = false,
): LineContent {
  if (entry.kind === 'in') {
    const tokens = (): IToken[] => (slipped ? tokensOf(text, 'note', indent, length, entry) : tokenize(text, 'note'));
    return attempt(text, indent, entry.word, messages, () => run(text, 'inLine', tokens(), IN_FORM));
  }
  const rest = trimmed(text.slice(indent + length));
  if (entry.kind === 'block' && sentenceInBlock(entry.word, rest.split('=', 1)[0] ?? '')) {
    say(messages, 'L17', extent(text, indent), { block: entry.word, step: suggestedStep(text) });
    return bad(indent, entry.word);
  }
  if (refusedText(entry, rest)) {
    sayProse(text, indent, messages);
    return bad(indent, entry.word);
  }
  if (entry.kind === 'step' || entry.kind === 'every') {
    if (!text.includes(':')) {
      say(messages, 'L03', extent(text, indent), { word: entry.word, time: timeIn(text) || '10 min' });
      return bad(indent, entry.word);
    }
  }
  return attempt(text, indent, entry.word, messages, () => {
    try {
      return run(text, entry.rule, tokensOf(text, entry.mode, indent, length, entry), entry.form);
    } catch (error) {
      throw error instanceof Fault ? inWordsOf(entry, error, text) : error;
    }
  });
}

/** A fault of a fact is told with the form of that fact, unless the fault says more than that it cannot be read. */
function inWordsOf(entry: LineWord, fault: Fault, text: string): Fault {
  if (entry.word === 'use') return new Fault('L18', fault.span, {});
  if (entry.word === 'count') return new Fault('L19', fault.span, {});
  const way = entry.word === 'gives' ? yieldStatedTwice(text) : undefined;
  if (way !== undefined) {
    const span = { start: text.indexOf('('), end: text.indexOf(')') + 1 };
    return new Fault('Q27', span, { found: text.slice(span.start + 1, span.end - 1), way });
  }
  const vague = fault.code === 'L24' || fault.code === 'L12' || fault.code === 'Q00' || fault.code === 'L25';
  if (entry.word === 'check' && vague) return new Fault('L35', fault.span, {});
  if (fault.code === 'L25' || ((entry.kind === 'fact' || entry.kind === 'block') && vague)) {
    return new Fault('L25', fault.span, { word: entry.word, form: entry.form, example: entry.example });
  }
  return fault;
}

/** Facts that hold words: those that begin a sentence on a page are refused when they do. */
function refusedText(entry: LineWord, rest: string): boolean {
  if (entry.word === 'tip') return tipsSomething(rest);
  if (entry.rule === 'textFact') {
    return ['by', 'source', 'photo', 'language'].includes(entry.word) && endsSentence(rest) && wordCount(rest) >= 3;
  }
  return (
    entry.kind === 'fact' &&
    entry.mode !== 'prose' &&
    endsSentence(rest.split(',', entry.mode === 'note' ? 1 : undefined).at(-1) ?? '')
  );
}

/** Whether a line that was read is a sentence all the same. */
function isSentence(content: LineContent): boolean {
  if ((content.kind === 'in' || content.kind === 'or') && content.amount.kind === 'share') {
    if (/^(?:\d|overnight\b)/i.test(content.name.text)) return true;
  }
  const note = content.kind === 'in' || content.kind === 'or' || content.kind === 'out' ? content.note : undefined;
  if (note !== undefined && sentenceInNote(note.text)) return true;
  return namesOf(content).some((name) => name !== undefined && sentenceInName(name.text));
}

/** The names in a line that a sentence could be taken for. */
function namesOf(content: LineContent): readonly (Name | undefined)[] {
  switch (content.kind) {
    case 'in':
    case 'or':
      return [content.name, content.on, content.as];
    case 'out':
      return [content.of, content.as];
    case 'check':
      return [content.name, content.on, content.from];
    case 'swap':
      return [content.from, content.in, content.to];
    case 'drop':
      return [content.name, content.in];
    case 'add':
      return [content.name, content.beside];
    case 'basis':
      return [content.name];
    default:
      return [];
  }
}

// ---- brackets in prose -----------------------------------------------------------------------------------------------

/** @param line the text of a line whose brackets may be read the short way. */
function withBrackets(content: LineContent, messages: Diagnostic[], line?: string): LineContent {
  if (content.kind !== 'step' && content.kind !== 'more' && content.kind !== 'every') return content;
  const { prose } = content;
  if (!prose.text.includes('[') && !prose.text.includes(']')) return content;
  return { ...content, prose: readBrackets(prose, messages, line) };
}

function readBrackets(prose: Prose, messages: Diagnostic[], line: string | undefined): Prose {
  const open = unclosed(prose.text);
  if (open >= 0) {
    const start = prose.span.start + open;
    say(messages, 'L10', { start, end: start + 1 }, {});
    return { ...prose, brackets: [] };
  }
  return { ...prose, brackets: prose.brackets.map((bracket) => readBracket(bracket, messages, line)) };
}

/** The offset of a bracket without its partner, or -1. */
function unclosed(text: string): number {
  let open = -1;
  for (let index = 0; index < text.length; index++) {
    const mark = text[index];
    if (mark === '[') {
      if (open >= 0) return open;
      open = index;
    } else if (mark === ']') {
      if (open < 0) return index;
      open = -1;
    }
  }
  return open;
}

function readBracket(bracket: Bracket, messages: Diagnostic[], line: string | undefined): Bracket {
  const plain = line === undefined ? undefined : readPlainBracket(line, bracket.span);
  if (plain !== undefined) return { ...bracket, amount: plain };
  try {
    const parser = grammar();
    parser.begin(bracket.text, tokenize(bracket.text, 'note'), bracket.span.start + 1);
    const found = parser.bracket();
    if (parser.errors.length === 0 && found.amount !== undefined) {
      parser.expectEnd('');
      return { ...bracket, ...found };
    }
  } catch (error) {
    if (!(error instanceof Fault)) throw error;
    if (error.code.startsWith('Q') && error.code !== 'Q00') {
      messages.push(diagnose(error.code, { file: '', ...error.span }, error.args));
      return bracket;
    }
  }
  say(messages, 'L20', bracket.span, { found: bracket.text });
  return bracket;
}

// ---- lines that begin with no known word -----------------------------------------------------------------------------

function readUnknown(text: string, indent: number, word: string, messages: Diagnostic[]): LineContent {
  const meant = repair(text, indent);
  if (meant !== undefined) {
    const tried: Diagnostic[] = [];
    const content = readEntry(text, indent, meant.entry, meant.length, tried, true);
    if (content.kind !== 'bad') {
      const span = { start: indent, end: indent + meant.length };
      say(messages, 'L01', span, { word: text.slice(span.start, span.end), read: meant.entry.word });
      messages.push(...tried);
      return content;
    }
  }
  const all = extent(text, indent);
  const at = { start: indent, end: indent + Math.max(word.length, 1) };
  const { code, span, args } = explainUnknown(text.slice(all.start, all.end), word, at, all);
  messages.push(diagnose(code, { file: '', ...span }, args));
  return bad(indent, word);
}
