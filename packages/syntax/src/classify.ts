import type { BlockWord, FactLine } from './ast.js';
import { lineWords } from './generated/line-words.js';
import { leadingSpace, startsWithFigure, type LexicalMode } from './tokens.js';

/*
 * What kind of line a line is: settled by its first character or its first words, before anything else of it is read.
 */

/** The rules of the parser that begin at a line. */
export type RuleName =
  | 'inLine'
  | 'orLine'
  | 'outLine'
  | 'stepLine'
  | 'everyLine'
  | 'checkLine'
  | 'blockLine'
  | 'makeLine'
  | 'courseLine'
  | 'textFact'
  | 'listFact'
  | 'cupFact'
  | 'givesFact'
  | 'servesFact'
  | 'vesselFact'
  | 'basisFact'
  | 'countFact'
  | 'useFact'
  | 'bakedFact'
  | 'keepsFact'
  | 'bestFact'
  | 'perFact'
  | 'partsFact'
  | 'weighsFact'
  | 'swapFact'
  | 'dropFact'
  | 'addFact'
  | 'timesFact'
  | 'hasFact'
  | 'awakeFact'
  | 'roomFact'
  | 'standFact'
  | 'stretchFact'
  | 'dateFact';

/** What a word opens. */
export type WordKind = 'in' | 'or' | 'out' | 'step' | 'every' | 'check' | 'block' | 'fact';

/** Where a line may stand: at the head of the file, or in a block. */
export type Standing = 'file' | BlockWord;

/** A word (or two) that opens a line; one entry of grammar/lines.json. */
export interface LineWord {
  readonly word: string;
  readonly kind: WordKind;
  readonly rule: RuleName;
  readonly mode: LexicalMode | 'text';
  /** How the line is written, with places to fill in capitals. */
  readonly form: string;
  readonly example: string;
  /** What it says, for hover and manual. */
  readonly says: string;
  readonly standsIn: readonly Standing[];
}

export { lineWords };

/** What a line's first characters say. */
export type LineHead =
  | { readonly kind: 'blank' | 'conflict' | 'comment' | 'more' | 'figure'; readonly indent: number }
  | { readonly kind: 'word'; readonly indent: number; readonly entry: LineWord; readonly length: number }
  /** No list has this word. `word` is what stands there up to the next space. */
  | { readonly kind: 'unknown'; readonly indent: number; readonly word: string };

const byFirst = new Map<string, { readonly second: string; readonly entry: LineWord }[]>();
for (const entry of lineWords) {
  const [first = '', second = ''] = entry.word.split(' ');
  byFirst.set(first, [...(byFirst.get(first) ?? []), { second, entry }]);
}

const CONFLICT = /^(?:<{7}|={7}|>{7}|\|{7})(?=\s|$)/;
const FIRST_WORD = /[A-Za-z]+(?=[^A-Za-z]|$)/y;
const SECOND_WORD = /[^\S\r\n]+([A-Za-z]+)(?=[\s,:=%]|$)/y;
const WORD_END = /[\s,:=%\u200b\ufeff]/;

/** The kind of a line, from its first words. */
export function classify(text: string): LineHead {
  const indent = leadingSpace.exec(text)?.[0].length ?? 0;
  if (indent === text.length) return { kind: 'blank', indent };
  if (CONFLICT.test(text)) return { kind: 'conflict', indent: 0 };
  const first = text[indent] ?? '';
  if (first === ':') return { kind: 'more', indent };
  if (first === '/' && text[indent + 1] === '/') return { kind: 'comment', indent };
  if (startsWithFigure.test(first)) return { kind: 'figure', indent };
  const found = openingAt(text, indent);
  if (found !== undefined) return { kind: 'word', indent, ...found };
  return { kind: 'unknown', indent, word: text.slice(indent).split(WORD_END, 1)[0] ?? '' };
}

function openingAt(text: string, indent: number): { entry: LineWord; length: number } | undefined {
  FIRST_WORD.lastIndex = indent;
  const first = FIRST_WORD.exec(text)?.[0];
  if (first === undefined) return undefined;
  const after = text[indent + first.length];
  if (after !== undefined && !WORD_END.test(after)) return undefined;
  const candidates = byFirst.get(first.toLowerCase());
  if (candidates === undefined) return undefined;
  SECOND_WORD.lastIndex = indent + first.length;
  const second = SECOND_WORD.exec(text);
  for (const { second: wanted, entry } of candidates) {
    if (wanted === '') return { entry, length: first.length };
    if (second?.[1]?.toLowerCase() === wanted) return { entry, length: first.length + second[0].length };
  }
  return undefined;
}

const byWord = new Map(lineWords.map((entry) => [entry.word, entry]));

/** What a word opens, if it opens anything. */
export function entryOf(word: string): LineWord | undefined {
  return byWord.get(word);
}

/** The opening words of a fact, from its content. */
export function factWord(content: FactLine): string {
  switch (content.kind) {
    case 'text-fact':
    case 'list-fact':
    case 'stand':
      return content.word;
    case 'count-as':
      return 'count';
    case 'best-after':
      return 'best after';
    default:
      return content.kind;
  }
}
