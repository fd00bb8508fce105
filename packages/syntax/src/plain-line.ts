import { ONE, units, unitSpellings } from '@quern/quantity';
import type {
  Amount,
  AtClause,
  BlockLine,
  BlockWord,
  Clause,
  Equal,
  Lane,
  ListFact,
  LineContent,
  Measure,
  Name,
  OutLine,
  Share,
  Temperature,
  TextFact,
  Thing,
  UntilClause,
  UsingClause,
  Words,
} from './ast.js';
import { lineWords, type LineWord } from './classify.js';
import { COLON, COMMA, EQUALS, isCountryVolume, PlainAmounts, shareOf } from './plain-amounts.js';
import { proseNode } from './prose.js';
import {
  endsSentence,
  MOST_BLOCK_WORDS,
  MOST_TITLE_WORDS,
  SENTENCE_WORDS,
  sentenceInNote,
  tipsSomething,
} from './prose-shape.js';
import { singular } from './plurals.js';
import { degreeSpellings, MEANINGS, timeSpellings } from './tokens.js';
import { unitMeant } from './unit-slips.js';

/*
 * A short way for the plainest lines. The grammar says what every line means; most lines of most recipes are of a few
 * shapes, and those are read here about ten times as fast. What is given is just what the grammar gives, and a line with
 * anything unusual about it is left to the grammar: tests hold the two against each other on every line at hand and on
 * damaged ones.
 */

/** Above this a line is one for the grammar, which knows the bound of a line's length. */
const MOST_CHARACTERS = 1000;

/** Opening words that are a single word and begin no pair (`a little`, `best after`). */
const openings: ReadonlyMap<string, LineWord> = new Map(
  lineWords
    .filter(({ word }) => !word.includes(' ') && !lineWords.some((other) => other.word.startsWith(`${word} `)))
    .map((entry) => [entry.word, entry]),
);

/** Words with which a sentence begins where the name of a product or food would stand. */
const ARTICLES = /^(?:an?|the|sure) /i;
/** An `x` that a figure could follow is a mark, and no name begins with one. */
const TIMES_SIGN = /^x(?:\d|$)/i;
const TITLE_WORD = /^[A-Za-z][A-Za-z0-9'-]*$|^\d+$/;

type Bare = LineContent | undefined;

/** Whether the first word after a bare number, with another word behind it or not, cannot be a unit, a slip of one, or the beginning of something else. */
function countable({ text }: Name, followed: boolean): boolean {
  const space = text.indexOf(' ');
  const first = (space < 0 ? text : text.slice(0, space)).toLowerCase();
  if (unitSpellings.has(first) || timeSpellings.has(first) || degreeSpellings.has(first) || first === 't') return false;
  return (space < 0 && !followed) || unitMeant(first) === undefined;
}

/** Whether words are few enough to be those of a container. */
const fewWords = ({ text }: Name): boolean => text.split(' ').length <= 3;

class PlainReader extends PlainAmounts {
  #indent = 0;

  read(text: string): LineContent | undefined {
    this.text = text;
    this.at = 0;
    while (this.takeSpace());
    const indent = this.at;
    this.#indent = indent;
    if (this.ended) return { kind: 'blank', indent };
    if (this.digitFollows()) return this.#putIn('in', false);
    const word = this.letters();
    const entry = word === undefined ? undefined : openings.get(word);
    // A capital is for the grammar: it says where one may stand.
    if (word === 'free' && text.startsWith('free of ', indent)) return this.#freeOf();
    if (entry === undefined || !text.startsWith(entry.word, indent) || !this.takeSpace()) return undefined;
    return this.#entry(entry, { start: indent, end: this.at - 1 });
  }

  #entry(entry: LineWord, opening: Words['span']): Bare {
    switch (entry.rule) {
      case 'inLine':
        if (entry.word === 'all') return this.#all(opening);
        return entry.word === 'optional' && this.digitFollows() ? this.#putIn('in', true) : undefined;
      case 'orLine':
        return this.digitFollows() ? this.#putIn('or', false) : undefined;
      case 'outLine':
        return this.#out(entry.word as OutLine['verb']);
      case 'stepLine':
        return this.#step(entry.word as Lane, opening);
      case 'blockLine':
      case 'makeLine':
        return this.#block(entry.word as BlockWord, opening);
      case 'textFact':
        return this.#textFact(entry.word as TextFact['word']);
      case 'servesFact':
        return this.#serves();
      case 'givesFact':
        return this.#gives();
      case 'listFact':
        return this.#list(entry.word as ListFact['word']);
      case 'keepsFact':
        return this.#keeps();
      default:
        return undefined;
    }
  }

  // ---- what goes in and comes out ----------------------------------------------------------------------------------

  #all(span: Words['span']): Bare {
    const name = this.name();
    if (name === undefined || /^overnight\b/i.test(name.text)) return undefined;
    return this.#afterName('in', false, { kind: 'share', span, about: false, word: 'all', low: ONE, high: ONE }, name);
  }

  #putIn(kind: 'in' | 'or', optional: boolean): Bare {
    const amount = this.#amount();
    if (amount === undefined || !this.takeSpace()) return undefined;
    const name = this.name();
    if (name === undefined || amount.kind !== 'count') return name && this.#afterName(kind, optional, amount, name);
    const of = this.#of();
    if (!countable(name, of || this.text.startsWith(' as ', this.at))) return undefined;
    if (!of) return this.#afterName(kind, optional, amount, name);
    // `2 loaves of rye`, `2 tins of 400 g tomatoes`: what was read for the name is a portion or a container.
    if (!fewWords(name)) return undefined;
    const { range } = amount;
    const { start } = range.span;
    if (!this.digitFollows()) {
      const portion: Amount = {
        kind: 'portion',
        span: { start, end: this.at - 1 },
        about: false,
        range,
        of: name.text,
      };
      const drawn = this.name();
      return drawn && this.#afterName(kind, optional, portion, drawn);
    }
    const each = this.measure(undefined);
    if (each === undefined || !this.takeSpace()) return undefined;
    const span = { start, end: each.span.end };
    const packed = this.name();
    const pack: Amount = { kind: 'pack', span, about: false, range, container: name.text, each };
    return packed && this.#afterName(kind, optional, pack, packed);
  }

  /** Takes ` of ` after what was read for a name. */
  #of(): boolean {
    if (!this.text.startsWith(' of ', this.at)) return false;
    this.at += ' of '.length;
    return true;
  }

  /** A measure, a percentage or a count, up to the space before the name. */
  #amount(): Amount | undefined {
    const range = this.range();
    if (range === undefined) return undefined;
    const { span } = range;
    if (this.#percent()) return { kind: 'percent', span: { start: span.start, end: this.at }, about: false, range };
    const end = this.at;
    if (!this.takeSpace()) return undefined;
    const measure = this.measured(range, undefined);
    if (measure !== undefined) return measure;
    this.at = end;
    return { kind: 'count', span, about: false, range };
  }

  /** Takes `%` or ` %`. */
  #percent(): boolean {
    const { text, at } = this;
    const found = text.startsWith('%', at) ? 1 : text.startsWith(' %', at) ? 2 : 0;
    this.at += found;
    return found > 0;
  }

  #afterName(kind: 'in' | 'or', optional: boolean, amount: Amount, name: Name): Bare {
    const as = this.#nameAfter(' as ');
    const on = amount.kind === 'percent' ? this.#nameAfter(' on ') : undefined;
    const equals = this.#equals();
    if (as === null || on === null || equals === undefined) return undefined;
    const note = this.ended ? undefined : this.#note();
    if (!this.ended || (note && sentenceInNote(note.text))) return undefined;
    const line = { indent: this.#indent, amount, any: false, name, equals, kind, optional };
    if (!as && !on) return note ? { ...line, note } : line;
    return { ...line, ...(as && { as }), ...(on && { on }), ...(note && { note }) };
  }

  /** The name after a small word; undefined when the word does not stand here, null when what follows is no plain name. */
  #nameAfter(word: string): Name | undefined | null {
    if (!this.text.startsWith(word, this.at)) return undefined;
    this.at += word.length;
    return this.name() ?? null;
  }

  /** Every `= MEASURE` from the cursor on. */
  #equals(): readonly Equal[] | undefined {
    const equals: Equal[] = [];
    while (this.text.startsWith(' = ', this.at)) {
      const start = this.at + 1;
      this.at += 3;
      const from = this.at;
      const amount = this.measure(this.takeWord('about') ? from : undefined);
      if (amount === undefined) return undefined;
      equals.push({ span: { start, end: this.at }, amount, each: false });
    }
    return equals;
  }

  /** `, words` up to the end of the line. */
  #note(): Words | undefined {
    return this.take(COMMA) ? this.wordsToEnd() : undefined;
  }

  #out(verb: OutLine['verb']): Bare {
    if (verb === 'save') return undefined;
    const from = this.at;
    let amount: Amount | undefined = this.digitFollows() ? this.#amount() : this.#whole(from);
    if (amount === undefined || amount.kind === 'count') return undefined;
    let of: Name | undefined;
    if (amount.kind === 'share') of = this.name();
    else if (amount.kind === 'percent' && this.#of()) {
      amount = shareOf(amount);
      of = this.name();
    }
    if (amount.kind === 'share' && of === undefined) return undefined;
    const as = this.#nameAfter(' as ');
    if (as === null || !this.ended || (as === undefined && of === undefined)) return undefined;
    return { indent: this.#indent, kind: 'out', verb, amount, ...(of && { of }), ...(as && { as }), equals: [] };
  }

  /** `all ` before a name. */
  #whole(start: number): Share | undefined {
    if (!this.takeWord('all')) return undefined;
    return { kind: 'share', span: { start, end: this.at - 1 }, about: false, word: 'all', low: ONE, high: ONE };
  }

  // ---- steps -------------------------------------------------------------------------------------------------------

  #step(lane: Lane, laneSpan: Words['span']): Bare {
    const time = this.time();
    if (time === undefined) return undefined;
    const clauses: Clause[] = [];
    while (!this.take(COLON)) {
      const start = this.at + 1;
      if (!this.takeSpace()) return undefined;
      const clause = this.#clause(start);
      if (clause === undefined) return undefined;
      clauses.push(clause);
    }
    const words = this.wordsToEnd();
    if (words === undefined) return undefined;
    const prose = proseNode(words);
    return { indent: this.#indent, kind: 'step', lane, laneSpan, time, clauses, prose };
  }

  #clause(start: number): Clause | undefined {
    if (this.takeWord('at')) return this.#at(start);
    if (this.takeWord('until')) return this.#until(start);
    return this.takeWord('using') ? this.#using(start) : undefined;
  }

  /** One thing of the kitchen, `hob`, `2 shelves`. */
  #using(start: number): UsingClause | undefined {
    const from = this.at;
    const counted = this.digitFollows();
    const count = counted ? this.number() : undefined;
    if (counted && (count?.decimals !== 0 || !this.takeSpace())) return undefined;
    const name = this.at;
    const word = this.letters();
    const end = this.at;
    const written = this.text.slice(name, end);
    // A capital or a small word of the language is for the grammar.
    if (word !== written || MEANINGS.has(word) || isCountryVolume(word)) return undefined;
    const one = singular(word);
    const thing: Thing = {
      span: { start: from, end },
      count: count?.value ?? ONE,
      name: one,
      ...(one !== written && { written }),
      ...(count === undefined && { bare: true as const }),
    };
    return { kind: 'using', span: { start, end }, things: [thing] };
  }

  #at(start: number): AtClause | undefined {
    const temperature = this.temperature();
    if (temperature === undefined) return undefined;
    const equal = this.#after(' = ');
    if (equal === null) return undefined;
    const direction = this.text.startsWith(' falling to ', this.at) ? 'falling' : 'rising';
    const to = this.#after(` ${direction} to `);
    if (to === null) return undefined;
    const fan = this.text.startsWith(' fan', this.at);
    if (fan) this.at += ' fan'.length;
    const span = { start, end: this.at };
    return { kind: 'at', span, temperature, ...(equal && { equal }), ...(to && { change: { direction, to } }), fan };
  }

  #until(start: number): UntilClause | undefined {
    const temperature = this.temperature();
    return temperature && { kind: 'until', span: { start, end: this.at }, temperature };
  }

  // ---- blocks and facts --------------------------------------------------------------------------------------------

  #block(block: BlockWord, wordSpan: Words['span']): Bare {
    const name = this.#title(block === 'recipe' || block === 'menu');
    if (name === undefined || (block !== 'recipe' && block !== 'menu' && ARTICLES.test(name.text))) return undefined;
    const line: BlockLine = { indent: this.#indent, kind: 'block', block, wordSpan, name };
    if (this.ended) return line;
    if (block !== 'make') return undefined;
    this.at++;
    if (!this.take(EQUALS) || !this.takeSpace()) return undefined;
    const equal: Measure | undefined = this.measure(undefined);
    return equal !== undefined && this.ended ? { ...line, equal } : undefined;
  }

  /** The name after a block word, up to the end of the line or the space before an `=`. */
  #title(title: boolean): Name | undefined {
    const start = this.at;
    const stop = this.text.indexOf(' =', start);
    const end = stop < 0 ? this.text.length : stop;
    const text = this.text.slice(start, end);
    const words = text.split(' ');
    if (words.length > (title ? MOST_TITLE_WORDS : MOST_BLOCK_WORDS)) return undefined;
    const [first = ''] = words;
    if (TIMES_SIGN.test(first) || !words.every((word) => TITLE_WORD.test(word))) return undefined;
    if (!title && words.some((word) => SENTENCE_WORDS.has(word))) return undefined;
    this.at = end;
    return { span: { start, end }, text };
  }

  #textFact(word: TextFact['word']): Bare {
    const words = this.wordsToEnd();
    if (words === undefined || words.text.startsWith(':')) return undefined;
    if (word === 'tip' ? tipsSomething(words.text) : word !== 'note' && word !== 'warning' && endsSentence(words.text))
      return undefined;
    return { indent: this.#indent, kind: 'text-fact', word, words };
  }

  #freeOf(): Bare {
    this.at = this.#indent + 'free of '.length;
    return this.#list('free of');
  }

  #serves(): Bare {
    const indent = this.#indent;
    const range = this.range();
    if (range === undefined) return undefined;
    if (this.ended) return { indent, kind: 'serves', range };
    const thing = this.takeSpace() ? this.name() : undefined;
    return thing && this.ended ? { indent, kind: 'serves', range, thing } : undefined;
  }

  /** `gives 1.2 kg`, `gives 16 crescents`, `gives 2 loaves of 1040 g`. */
  #gives(): Bare {
    const indent = this.#indent;
    const range = this.range();
    if (range === undefined || !this.takeSpace()) return undefined;
    const total = this.measured(range, undefined);
    if (total !== undefined) {
      const counted = units[total.unit.id].dimension === 'count';
      return this.ended && !counted ? { indent, kind: 'gives', total } : undefined;
    }
    const thing = this.name();
    if (thing === undefined || !countable(thing, !this.ended)) return undefined;
    if (this.ended) return { indent, kind: 'gives', count: range, thing };
    const each = fewWords(thing) && this.#of() ? this.measure(undefined) : undefined;
    return each && this.ended ? { indent, kind: 'gives', count: range, thing, each } : undefined;
  }

  #keeps(): Bare {
    const time = this.time();
    if (time === undefined) return undefined;
    const at = this.#after(' at ');
    if (at === null) return undefined;
    const indent = this.#indent;
    if (this.ended) return { indent, kind: 'keeps', time, ...(at && { at }) };
    const note = this.#note();
    return note && { indent, kind: 'keeps', time, ...(at && { at }), note };
  }

  /** The temperature after some words; undefined when they do not stand here, null when what follows is none. */
  #after(words: string): Temperature | undefined | null {
    if (!this.text.startsWith(words, this.at)) return undefined;
    this.at += words.length;
    return this.temperature() ?? null;
  }

  /** Items of plain words, parted by a comma and a space. */
  #list(word: ListFact['word']): Bare {
    const items: Words[] = [];
    for (;;) {
      const item = this.name();
      if (item === undefined) return undefined;
      items.push(item);
      if (this.ended) return { indent: this.#indent, kind: 'list-fact', word, items };
      if (!this.take(COMMA) || !this.takeSpace()) return undefined;
    }
  }
}

const reader = new PlainReader();

/**
 * The line read the short way, or undefined when it is one for the grammar. Never complains. What stands in square
 * brackets is not read yet.
 */
export function readPlainLine(text: string): LineContent | undefined {
  return text.length > MOST_CHARACTERS ? undefined : reader.read(text);
}
