import { ONE, units, unitSpellings, type Rational } from '@quern/quantity';
import type {
  BlockLine,
  BlockWord,
  LineContent,
  ListFact,
  Measure,
  Name,
  PerFact,
  Temperature,
  TextFact,
  Thing,
  Words,
} from './ast.js';
import { COMMA, DASH, EQUALS, isCountryVolume, numeral, PlainAmounts } from './plain-amounts.js';
import { endsSentence, MOST_BLOCK_WORDS, MOST_TITLE_WORDS, SENTENCE_WORDS, tipsSomething } from './prose-shape.js';
import { singular } from './plurals.js';
import { degreeSpellings, MEANINGS, timeSpellings } from './tokens.js';
import { unitMeant } from './unit-slips.js';

/*
 * Blocks and facts as most people write most of them, and what they share with the other plain lines. As with the parts,
 * everything is read for certain or left to the grammar.
 */

/** A line read, or undefined when it is one for the grammar. */
export type Bare = LineContent | undefined;

const PER_NUTRIENTS: ReadonlySet<string> = new Set(
  'energy fat saturates carbohydrate sugars fibre protein salt'.split(' '),
);
const PER_UNITS: ReadonlySet<string> = new Set(['g', 'mg', 'kJ', 'kcal']);

/** Words with which a sentence begins where the name of a product or food would stand. */
const ARTICLES = /^(?:an?|the|sure) /i;
/** An `x` that a figure could follow is a mark, and no name begins with one. */
const TIMES_SIGN = /^x(?:\d|$)/i;
/** A file in this folder or one below it. */
const PATH = /(?:[a-z0-9-]+\/)*[a-z0-9-]+\.quern(?= |$)/y;
const DATE = /^(?:19|20)\d\d-(?:0[1-9]|1[0-2])-(?:0[1-9]|1\d|2[0-8])$/;
const TITLE_WORD = /^[A-Za-z][A-Za-z0-9'-]*$|^\d+$/;

/** Whether the first word after a bare number, with another word behind it or not, cannot be a unit, a slip of one, or the beginning of something else. */
export function countable({ text }: Name, followed: boolean): boolean {
  const space = text.indexOf(' ');
  const first = (space < 0 ? text : text.slice(0, space)).toLowerCase();
  if (unitSpellings.has(first) || timeSpellings.has(first) || degreeSpellings.has(first) || first === 't') return false;
  return (space < 0 && !followed) || unitMeant(first) === undefined;
}

/** Whether words are few enough to be those of a container. */
export const fewWords = ({ text }: Name): boolean => text.split(' ').length <= 3;

export abstract class PlainFacts extends PlainAmounts {
  protected indent = 0;

  /** Takes ` of ` after what was read for a name. */
  protected of(): boolean {
    if (!this.text.startsWith(' of ', this.at)) return false;
    this.at += ' of '.length;
    return true;
  }

  /** The name after a small word; undefined when the word does not stand here, null when what follows is no plain name. */
  protected nameAfter(word: string): Name | undefined | null {
    if (!this.text.startsWith(word, this.at)) return undefined;
    this.at += word.length;
    return this.name() ?? null;
  }

  /** `, words` up to the end of the line. */
  protected note(): Words | undefined {
    return this.take(COMMA) ? this.wordsToEnd() : undefined;
  }

  protected thing(): Thing | undefined {
    const start = this.at;
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
    return {
      span: { start, end },
      count: count?.value ?? ONE,
      name: one,
      ...(one !== written && { written }),
      ...(count === undefined && { bare: true as const }),
    };
  }

  // ---- blocks and facts --------------------------------------------------------------------------------------------

  protected block(block: BlockWord, wordSpan: Words['span']): Bare {
    const name = this.title(block === 'recipe' || block === 'menu');
    if (name === undefined || (block !== 'recipe' && block !== 'menu' && ARTICLES.test(name.text))) return undefined;
    const line: BlockLine = { indent: this.indent, kind: 'block', block, wordSpan, name };
    if (this.ended) return line;
    if (block !== 'make') return undefined;
    this.at++;
    if (!this.take(EQUALS) || !this.takeSpace()) return undefined;
    const equal: Measure | undefined = this.measure(undefined);
    return equal !== undefined && this.ended ? { ...line, equal } : undefined;
  }

  /** The name after a block word, up to the end of the line or the space before an `=`. */
  private title(title: boolean): Name | undefined {
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

  protected textFact(word: TextFact['word']): Bare {
    const words = this.wordsToEnd();
    if (words === undefined || words.text.startsWith(':')) return undefined;
    if (word === 'tip' ? tipsSomething(words.text) : word !== 'note' && word !== 'warning' && endsSentence(words.text))
      return undefined;
    return { indent: this.indent, kind: 'text-fact', word, words };
  }

  /** `course 19:30 the long table` */
  protected course(wordSpan: Words['span']): Bare {
    const clock = this.clock();
    const name = clock && this.takeSpace() ? this.title(false) : undefined;
    // The hour counts as a word of a name that may be a sentence.
    if (name === undefined || !this.ended || name.text.split(' ').length >= MOST_BLOCK_WORDS) return undefined;
    return { indent: this.indent, kind: 'block', block: 'course', wordSpan, ...(clock && { clock }), name };
  }

  /** `use Rye Loaf from rye.quern as rye` */
  protected use(): Bare {
    const name = this.name('from');
    if (name === undefined || !this.takeSpace() || !this.takeWord('from')) return undefined;
    const start = this.at;
    PATH.lastIndex = start;
    if (!PATH.test(this.text)) return undefined;
    const end = PATH.lastIndex;
    this.at = end;
    const as = this.nameAfter(' as ');
    if (as === null || !this.ended) return undefined;
    const path = { span: { start, end }, text: this.text.slice(start, end) };
    return { indent: this.indent, kind: 'use', name, path, ...(as && { as }) };
  }

  /** `swap red wine for red grape juice`, `swap ground cumin for 4 g smoked paprika` */
  protected swap(): Bare {
    const from = this.name('for');
    // `in` parts what is swapped from the product in which it is.
    if (from === undefined || / in(?: |$)/.test(from.text) || !this.takeSpace() || !this.takeWord('for'))
      return undefined;
    const counted = this.digitFollows();
    const amount = counted ? this.measure(undefined) : undefined;
    if (counted && (amount === undefined || !this.takeSpace())) return undefined;
    const to = this.name();
    if (to === undefined || !this.ended) return undefined;
    return { indent: this.indent, kind: 'swap', from, ...(amount && { amount }), to };
  }

  /** `has 1 oven of 2 shelves, 4 rings, 2 cooks` */
  protected has(): Bare {
    const things: Thing[] = [];
    for (;;) {
      const thing = this.digitFollows() ? this.thing() : undefined;
      if (thing === undefined) return undefined;
      if (this.of()) {
        const shelves = this.number();
        if (shelves?.decimals !== 0 || !(this.ends(' shelves') || this.ends(' shelf'))) return undefined;
        things.push({ ...thing, span: { start: thing.span.start, end: this.at }, shelves: shelves.value });
      } else things.push(thing);
      if (this.ended) return { indent: this.indent, kind: 'has', things };
      if (!this.take(COMMA) || !this.takeSpace()) return undefined;
    }
  }

  /** Takes words behind which an item or the line ends. */
  private ends(words: string): boolean {
    const end = this.at + words.length;
    if (!this.text.startsWith(words, this.at) || (end < this.text.length && this.text.charCodeAt(end) !== COMMA))
      return false;
    this.at = end;
    return true;
  }

  /** `awake 05:00-21:30` */
  protected awake(): Bare {
    const from = this.clock();
    const to = from && this.take(DASH) ? this.clock() : undefined;
    return from && to && this.ended ? { indent: this.indent, kind: 'awake', from, to } : undefined;
  }

  /** A day that every month has. */
  protected date(): Bare {
    const start = this.at;
    const date = this.text.slice(start);
    if (!DATE.test(date)) return undefined;
    return { indent: this.indent, kind: 'date', date, span: { start, end: this.text.length } };
  }

  /** `vessel 2 loaf tins of 23 x 11 x 8 cm`, `vessel 1 jar of 1.5 l` */
  protected vessel(): Bare {
    const count = this.number();
    const thing = count?.decimals === 0 && this.takeSpace() ? this.name() : undefined;
    if (count === undefined || thing === undefined || !this.of()) return undefined;
    const { indent } = this;
    const lengths: Rational[] = [];
    for (;;) {
      const range = this.range();
      if (range === undefined || !this.takeSpace()) return undefined;
      if (lengths.length === 0 && !this.text.startsWith('x ', this.at)) {
        const volume = this.measured(range, undefined);
        if (volume === undefined || !this.ended || units[volume.unit.id].dimension !== 'volume') {
          return undefined;
        }
        return { indent, kind: 'vessel', count: count.value, thing, volume };
      }
      if (!range.single || !this.figured({ ...range.span, decimals: range.decimals })) return undefined;
      lengths.push(range.low);
      if (!this.takeWord('x')) break;
    }
    if (lengths.length > 3 || !this.text.startsWith('cm', this.at)) return undefined;
    this.at += 'cm'.length;
    return this.ended ? { indent, kind: 'vessel', count: count.value, thing, lengths, lengthUnit: 'cm' } : undefined;
  }

  /** Whether a number is written with no more digits than it needs: more are kept, so that it prints as it was. */
  private figured({ end, decimals }: { readonly end: number; readonly decimals: number | null }): boolean {
    return decimals === 0 || (decimals !== null && this.text[end - 1] !== '0');
  }

  /** `per 100 g energy 1270 kJ, fat 0 g, salt 0.2 g` */
  protected per(): Bare {
    const basis = ['100 g', '100 ml'].find((one) => this.text.startsWith(`${one} `, this.at));
    if (basis === undefined) return undefined;
    this.at += basis.length + 1;
    const values: PerFact['values'][number][] = [];
    for (;;) {
      const start = this.at;
      const nutrient = this.letters();
      const value = nutrient !== undefined && this.takeSpace() ? this.number() : undefined;
      if (nutrient === undefined || value === undefined || !this.figured(value) || !this.takeSpace()) return undefined;
      const written = this.text.slice(start, start + nutrient.length);
      const unitAt = this.at;
      this.letters();
      const unit = this.text.slice(unitAt, this.at);
      if (written !== nutrient || !PER_NUTRIENTS.has(nutrient) || !PER_UNITS.has(unit)) return undefined;
      values.push({ span: { start, end: this.at }, nutrient, value: value.value, unit } as PerFact['values'][number]);
      if (this.ended) return { indent: this.indent, kind: 'per', basis: basis as PerFact['basis'], values };
      if (!this.take(COMMA) || !this.takeSpace()) return undefined;
    }
  }

  /** `weighs 1 tbsp = 20 g` */
  protected weighs(): Bare {
    const amount = this.measure(undefined);
    if (amount === undefined || !this.takeSpace() || !this.take(EQUALS) || !this.takeSpace()) return undefined;
    const equal = this.measure(undefined);
    return equal && this.ended ? { indent: this.indent, kind: 'weighs', amount, equal } : undefined;
  }

  /** `times 1/2`, `times 2` */
  protected times(): Bare {
    const factor = this.number();
    if (factor === undefined || !this.ended || (factor.decimals !== null && !this.figured(factor))) return undefined;
    return { indent: this.indent, kind: 'times', factor: numeral(factor) };
  }

  /** `add 20 g rum beside water` */
  protected add(): Bare {
    const amount = this.measure(undefined);
    const name = amount && this.takeSpace() ? this.name('beside') : undefined;
    const beside = name && this.nameAfter(' beside ');
    if (amount === undefined || name === undefined || !beside || !this.ended) return undefined;
    return { indent: this.indent, kind: 'add', amount, name, beside };
  }

  protected bestAfter(): Bare {
    this.at = this.indent + 'best after '.length;
    const time = this.time();
    if (time === undefined) return undefined;
    const note = this.ended ? undefined : this.note();
    return this.ended ? { indent: this.indent, kind: 'best-after', time, ...(note && { note }) } : undefined;
  }

  protected freeOf(): Bare {
    this.at = this.indent + 'free of '.length;
    return this.list('free of');
  }

  protected serves(): Bare {
    const indent = this.indent;
    const range = this.range();
    if (range === undefined) return undefined;
    if (this.ended) return { indent, kind: 'serves', range };
    const thing = this.takeSpace() ? this.name() : undefined;
    return thing && this.ended ? { indent, kind: 'serves', range, thing } : undefined;
  }

  /** `gives 1.2 kg`, `gives 16 crescents`, `gives 2 loaves of 1040 g`. */
  protected gives(): Bare {
    const indent = this.indent;
    const range = this.range();
    if (range === undefined || !this.takeSpace()) return undefined;
    const total = this.measured(range, undefined);
    if (total !== undefined) {
      const counted = units[total.unit.id].dimension === 'count';
      if (total.unit.id === 'serving' && this.of()) {
        const { span } = total.unit;
        const thing = { span, text: this.text.slice(span.start, span.end) };
        const each = this.measure(undefined);
        return each && this.ended ? { indent, kind: 'gives', count: range, thing, each } : undefined;
      }
      return this.ended && !counted ? { indent, kind: 'gives', total } : undefined;
    }
    const thing = this.name();
    if (thing === undefined || !countable(thing, !this.ended)) return undefined;
    if (this.ended) return { indent, kind: 'gives', count: range, thing };
    const each = fewWords(thing) && this.of() ? this.measure(undefined) : undefined;
    return each && this.ended ? { indent, kind: 'gives', count: range, thing, each } : undefined;
  }

  protected keeps(): Bare {
    const time = this.time();
    if (time === undefined) return undefined;
    const at = this.after(' at ');
    if (at === null) return undefined;
    const indent = this.indent;
    if (this.ended) return { indent, kind: 'keeps', time, ...(at && { at }) };
    const note = this.note();
    return note && { indent, kind: 'keeps', time, ...(at && { at }), note };
  }

  /** The temperature after some words; undefined when they do not stand here, null when what follows is none. */
  protected after(words: string): Temperature | undefined | null {
    if (!this.text.startsWith(words, this.at)) return undefined;
    this.at += words.length;
    return this.temperature() ?? null;
  }

  /** Items of plain words, parted by a comma and a space. */
  protected list(word: ListFact['word']): Bare {
    const items: Words[] = [];
    for (;;) {
      const item = this.name();
      if (item === undefined) return undefined;
      items.push(item);
      if (this.ended) return { indent: this.indent, kind: 'list-fact', word, items };
      if (!this.take(COMMA) || !this.takeSpace()) return undefined;
    }
  }
}
