import { ONE, rational, units } from '@quern/quantity';
import type {
  Amount,
  AtClause,
  BlockWord,
  Clause,
  Count,
  Equal,
  Lane,
  LineContent,
  ListFact,
  Measure,
  Name,
  OutLine,
  Prose,
  Share,
  TextFact,
  UntilClause,
  UsingClause,
  Words,
} from './ast.js';
import { lineWords, type LineWord } from './classify.js';
import { COLON, COMMA, shareOf } from './plain-amounts.js';
import { countable, fewWords, PlainFacts, type Bare } from './plain-facts.js';
import { proseNode } from './prose.js';
import { sentenceInNote } from './prose-shape.js';

const HALF = rational(1, 2);

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

class PlainReader extends PlainFacts {
  read(text: string): LineContent | undefined {
    this.text = text;
    this.at = 0;
    while (this.takeSpace());
    const indent = this.at;
    this.indent = indent;
    if (this.ended) return { kind: 'blank', indent };
    if (this.digitFollows()) return this.#putIn('in', false);
    const word = this.letters();
    const entry = word === undefined ? undefined : openings.get(word);
    // A capital is for the grammar: it says where one may stand.
    if (word === 'free' && text.startsWith('free of ', indent)) return this.freeOf();
    if (word === 'best' && text.startsWith('best after ', indent)) return this.bestAfter();
    if (entry === undefined || !text.startsWith(entry.word, indent) || !this.takeSpace()) return undefined;
    return this.#entry(entry, { start: indent, end: this.at - 1 });
  }

  /** `[14 g]`, `[2]` */
  bracket(text: string, { start, end }: Words['span']): Measure | Count | undefined {
    this.text = text.slice(0, end - 1);
    this.at = start + 1;
    const range = this.digitFollows() ? this.range() : undefined;
    if (range === undefined) return undefined;
    if (this.ended) return { kind: 'count', span: range.span, about: false, range };
    const measure = this.takeSpace() ? this.measured(range, undefined) : undefined;
    return this.ended && measure && units[measure.unit.id].dimension !== 'count' ? measure : undefined;
  }

  #entry(entry: LineWord, opening: Words['span']): Bare {
    switch (entry.rule) {
      case 'inLine':
        if (entry.word === 'all') return this.#all(opening);
        if (entry.word === 'half' || entry.word === 'rest') return this.#shareOfProduct(entry.word, opening);
        if (entry.word === 'enough') return this.#enough(opening);
        if (entry.word !== 'optional') return undefined;
        return this.digitFollows() ? this.#putIn('in', true) : this.#all(this.#allAhead(), true);
      case 'orLine':
        return this.digitFollows() ? this.#putIn('or', false) : undefined;
      case 'outLine':
        return this.#out(entry.word as OutLine['verb']);
      case 'stepLine':
        return this.#step(entry.word as Lane, opening);
      case 'blockLine':
      case 'makeLine':
        return this.block(entry.word as BlockWord, opening);
      case 'textFact':
        return this.textFact(entry.word as TextFact['word']);
      case 'servesFact':
        return this.serves();
      case 'givesFact':
        return this.gives();
      case 'listFact':
        return this.list(entry.word as ListFact['word']);
      case 'keepsFact':
        return this.keeps();
      case 'everyLine':
        return this.#every();
      case 'courseLine':
        return this.course(opening);
      case 'useFact':
        return this.use();
      case 'swapFact':
        return this.swap();
      case 'hasFact':
        return this.has();
      case 'awakeFact':
        return this.awake();
      case 'dateFact':
        return this.date();
      case 'vesselFact':
        return this.vessel();
      case 'perFact':
        return this.per();
      case 'weighsFact':
        return this.weighs();
      case 'timesFact':
        return this.times();
      case 'addFact':
        return this.add();
      default:
        return undefined;
    }
  }

  // ---- what goes in and comes out ----------------------------------------------------------------------------------

  /** Takes `all ` and gives its place. */
  #allAhead(): Words['span'] | undefined {
    const start = this.at;
    return this.takeWord('all') ? { start, end: this.at - 1 } : undefined;
  }

  #all(span: Words['span'] | undefined, optional = false): Bare {
    const name = span && this.#product();
    if (span === undefined || name === undefined) return undefined;
    return this.#afterName(
      'in',
      optional,
      { kind: 'share', span, about: false, word: 'all', low: ONE, high: ONE },
      name,
    );
  }

  /** The name after a word for an amount; `overnight` there would be a time, whatever a dash joins to it. */
  #product(): Name | undefined {
    const name = this.name();
    return name && !/^overnight\b/i.test(name.text) ? name : undefined;
  }

  /** `half of cream`, `rest of cream`. */
  #shareOfProduct(word: 'half' | 'rest', span: Words['span']): Bare {
    if (!this.takeWord('of')) return undefined;
    const name = this.#product();
    const part: Amount = { kind: 'share', span, about: false, word, ...(word === 'half' && { low: HALF, high: HALF }) };
    return name && this.#afterName('in', false, part, name);
  }

  /** `enough water = about 150 g, to cover` */
  #enough(span: Words['span']): Bare {
    const name = this.#product();
    return name && this.#afterName('in', false, { kind: 'open', span, about: false, word: 'enough' }, name);
  }

  #putIn(kind: 'in' | 'or', optional: boolean): Bare {
    const amount = this.#amount();
    if (amount === undefined || !this.takeSpace()) return undefined;
    if (amount.kind === 'measure' && amount.unit.id === 'serving' && this.takeWord('of')) {
      const portion = this.#servings(amount);
      const drawn = this.name();
      return drawn && this.#afterName(kind, optional, portion, drawn);
    }
    const name = this.name();
    if (name === undefined || amount.kind !== 'count') return name && this.#afterName(kind, optional, amount, name);
    const of = this.of();
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

  /** `6 servings of`, before what they are servings of. */
  #servings({ span: { start }, range, unit }: Measure): Amount {
    const of = this.text.slice(unit.span.start, unit.span.end);
    return { kind: 'portion', span: { start, end: this.at - 1 }, about: false, range, of };
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
    const as = this.nameAfter(' as ');
    const on = amount.kind === 'percent' ? this.nameAfter(' on ') : undefined;
    const equals = this.#equals();
    if (as === null || on === null || equals === undefined) return undefined;
    const note = this.ended ? undefined : this.note();
    if (!this.ended || (note && sentenceInNote(note.text))) return undefined;
    const line = { indent: this.indent, amount, any: false, name, equals, kind, optional };
    if (!as && !on) return note ? { ...line, note } : line;
    return { ...line, ...(as && { as }), ...(on && { on }), ...(note && { note }) };
  }

  /** Every `= MEASURE` from the cursor on. */
  #equals(): readonly Equal[] | undefined {
    const equals: Equal[] = [];
    while (this.text.startsWith(' = ', this.at)) {
      const start = this.at + 1;
      this.at += 3;
      const from = this.at;
      const amount = this.#equal(this.takeWord('about') ? from : undefined);
      if (amount === undefined) return undefined;
      equals.push({ span: { start, end: this.at }, amount, each: false });
    }
    return equals;
  }

  /** A measure, or a bare number before a note or the end of the line; a comma between figures may be a decimal one. */
  #equal(from: number | undefined): Equal['amount'] | undefined {
    const range = this.range();
    if (range === undefined) return undefined;
    if (this.takeSpace()) return this.measured(range, from);
    const about = from !== undefined;
    const span = { start: from ?? range.span.start, end: this.at };
    return this.ended || this.text.startsWith(', ', this.at) ? { kind: 'count', span, about, range } : undefined;
  }

  #out(verb: OutLine['verb']): Bare {
    if (verb === 'save') return this.#save();
    const from = this.at;
    let amount: Amount | undefined = this.digitFollows() ? this.#amount() : this.#whole(from);
    if (amount === undefined || amount.kind === 'count') return undefined;
    let of: Name | undefined;
    if (amount.kind === 'share') of = this.name();
    else if (amount.kind === 'percent' && this.of()) {
      amount = shareOf(amount);
      of = this.name();
    }
    if (amount.kind === 'share' && of === undefined) return undefined;
    const as = this.nameAfter(' as ');
    if (as === null || !this.ended || (as === undefined && of === undefined)) return undefined;
    return { indent: this.indent, kind: 'out', verb, amount, ...(of && { of }), ...(as && { as }), equals: [] };
  }

  /** `save 640 g of liquid as wine, for later` */
  #save(): Bare {
    const amount = this.measure(undefined);
    if (amount === undefined || units[amount.unit.id].dimension === 'count') return undefined;
    const of = this.nameAfter(' of ');
    const as = this.nameAfter(' as ');
    if (of === null || !as) return undefined;
    const note = this.ended ? undefined : this.note();
    if (!this.ended) return undefined;
    const line = { indent: this.indent, kind: 'out' as const, verb: 'save' as const, amount };
    return { ...line, ...(of && { of }), as, equals: [], ...(note && { note }) };
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
    const prose = this.#sentence();
    return prose && { indent: this.indent, kind: 'step', lane, laneSpan, time, clauses, prose };
  }

  /** `every 12 h, 1 min: Turn it over.` */
  #every(): Bare {
    const period = this.time();
    const timed = period !== undefined && this.take(COMMA);
    const duration = timed && this.takeSpace() ? this.time() : undefined;
    if (period === undefined || timed !== (duration !== undefined) || !this.take(COLON)) return undefined;
    const prose = this.#sentence();
    return prose && { indent: this.indent, kind: 'every', period, ...(duration && { duration }), prose };
  }

  /** What is to be done, up to the end of the line. */
  #sentence(): Prose | undefined {
    const words = this.wordsToEnd();
    return words && proseNode(words);
  }

  #clause(start: number): Clause | undefined {
    if (this.takeWord('at')) return this.#at(start);
    if (this.takeWord('until')) return this.#until(start);
    return this.takeWord('using') ? this.#using(start) : undefined;
  }

  /** One thing of the kitchen, `hob`, `2 shelves`. */
  #using(start: number): UsingClause | undefined {
    const thing = this.thing();
    return thing && { kind: 'using', span: { start, end: this.at }, things: [thing] };
  }

  #at(start: number): AtClause | undefined {
    const temperature = this.temperature();
    if (temperature === undefined) return undefined;
    const equal = this.after(' = ');
    if (equal === null) return undefined;
    const direction = this.text.startsWith(' falling to ', this.at) ? 'falling' : 'rising';
    const to = this.after(` ${direction} to `);
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
}

const reader = new PlainReader();

/** What stands in a bracket of a line, if it is a bare number or a measure. */
export function readPlainBracket(line: string, span: Words['span']): Measure | Count | undefined {
  return reader.bracket(line, span);
}

/**
 * The line read the short way, or undefined when it is one for the grammar. Never complains. What stands in square
 * brackets is not read yet.
 */
export function readPlainLine(text: string): LineContent | undefined {
  return text.length > MOST_CHARACTERS ? undefined : reader.read(text);
}
