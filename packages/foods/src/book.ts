import type { Food, FoodAnswer, FoodBook, FoodId } from '@quern/compiler';
import { nearest, slips, withoutAccents } from '@quern/text';
import { indexAccents, indexNames, type Entry } from './index-of-names.js';
import { foldPlural, tidyName } from './names.js';
import { peel, type Peeled } from './qualifiers.js';
import { sourceText } from './sources.js';
import { readFood, readTable, type Table } from './table.js';
import { versionOf } from './version.js';

/** Most near names that an answer offers. */
const MOST_NEAR = 5;

/** Answers are kept up to this number, so that a long-lived editor does not grow without end. */
const MOST_KEPT = 4096;

const UNQUALIFIED: Peeled = { head: '', form: '', size: '', piece: '', roles: [] };

class TableBook implements FoodBook {
  readonly #text: string;
  readonly #table: Table;
  readonly #foods: (Food | undefined)[] = [];
  #index: ReadonlyMap<string, Entry> | undefined;
  #accents: ReadonlyMap<string, string> | undefined;
  #numbers: ReadonlyMap<FoodId, number> | undefined;
  #classes: ReadonlyMap<string, readonly number[]> | undefined;
  #version: string | undefined;
  readonly #answers = new Map<string, FoodAnswer>();

  constructor(text: string) {
    this.#text = text;
    this.#table = readTable(text);
  }

  get version(): string {
    return (this.#version ??= versionOf(this.#text));
  }

  find(name: string): FoodAnswer {
    const kept = this.#answers.get(name);
    if (kept) return kept;
    const answer = this.#find(name);
    if (this.#answers.size >= MOST_KEPT) this.#answers.clear();
    this.#answers.set(name, answer);
    return answer;
  }

  get(id: FoodId): Food | undefined {
    this.#numbers ??= new Map(this.#table.rows.map((row, number) => [row.id, number]));
    const number = this.#numbers.get(id);
    return number === undefined ? undefined : this.#food(number);
  }

  ofClass(name: string): readonly Food[] {
    this.#classes ??= this.#groupByClass();
    return (this.#classes.get(foldPlural(tidyName(name))) ?? []).map((number) => this.#food(number));
  }

  source(id: string): string | undefined {
    return sourceText(id, this.#table);
  }

  names(): readonly string[] {
    return this.#table.rows.map((row) => row.name);
  }

  #food(number: number): Food {
    const known = this.#foods[number];
    if (known) return known;
    const row = this.#table.rows[number];
    if (!row) throw new RangeError(`no food number ${number}`);
    return (this.#foods[number] = readFood(row, this.#table.nutrients));
  }

  #entry(key: string): Entry | undefined {
    this.#index ??= indexNames(this.#table);
    return this.#index.get(key);
  }

  #find(name: string): FoodAnswer {
    const key = foldPlural(tidyName(name));
    const whole = this.#entry(key);
    if (whole) return this.#answer(whole, UNQUALIFIED, false);
    for (const peeled of peel(key)) {
      const entry = this.#entry(foldPlural(peeled.head));
      if (entry && this.#allows(entry, peeled)) return this.#answer(entry, peeled, true);
    }
    return this.#unknown(key);
  }

  /** Qualifiers such as `frozen` hold for some foods only. */
  #allows(entry: Entry, peeled: Peeled): boolean {
    if (peeled.roles.length === 0) return true;
    const foods =
      entry.how === 'ambiguous' ? entry.candidates.flatMap((id) => this.get(id) ?? []) : [this.#food(entry.row)];
    return peeled.roles.every((allowed) => foods.every((food) => food.roles.some((role) => allowed.includes(role))));
  }

  #answer(entry: Entry, peeled: Peeled, head: boolean): FoodAnswer {
    if (entry.how === 'ambiguous') {
      return { kind: 'ambiguous', candidates: entry.candidates.flatMap((id) => this.get(id) ?? []) };
    }
    const piece = peeled.piece || entry.piece;
    return {
      kind: 'found',
      match: {
        food: this.#food(entry.row),
        how: head ? 'head' : entry.how,
        form: peeled.form,
        size: peeled.size,
        ...(piece === '' ? {} : { piece }),
      },
    };
  }

  #unknown(key: string): FoodAnswer {
    this.#index ??= indexNames(this.#table);
    this.#accents ??= indexAccents(this.#index.keys());
    const accented = this.#accents.get(withoutAccents(key));
    if (accented !== undefined) return { kind: 'unknown', near: this.#spelled([accented]), accents: true };
    const near = [...this.#endings(key), ...this.#slipped(key, this.#index)];
    return { kind: 'unknown', near: this.#spelled(near).slice(0, MOST_NEAR), accents: false };
  }

  /** The keys the fewest slips away. Where one letter is enough, a key two letters away is no help. */
  #slipped(key: string, index: ReadonlyMap<string, Entry>): readonly string[] {
    const [first, ...others] = nearest(key, index.keys(), MOST_NEAR);
    if (first === undefined) return [];
    const fewest = slips(key, first);
    return [first, ...others.filter((other) => slips(key, other) === fewest)];
  }

  /** Keys that are the last words of an unknown name: `heritage carrot` ends in `carrot`. */
  *#endings(key: string): Iterable<string> {
    for (let space = key.indexOf(' '); space >= 0; space = key.indexOf(' ', space + 1)) {
      const ending = key.slice(space + 1);
      if (this.#entry(ending)) yield ending;
    }
  }

  /** Keys as the table spells them: a preferred name or the synonym that stands behind the key. */
  #spelled(keys: readonly string[]): readonly string[] {
    const spelled = keys.flatMap((key) => {
      const entry = this.#entry(key);
      if (!entry) return [];
      if (entry.how === 'ambiguous') return entry.candidates.flatMap((id) => this.get(id)?.name ?? []);
      const row = this.#table.rows[entry.row];
      if (!row) return [];
      if (entry.how === 'name') return [row.name];
      return [row.synonyms.find((synonym) => foldPlural(tidyName(synonym.name)) === key)?.name ?? row.name];
    });
    return [...new Set(spelled)];
  }

  #groupByClass(): ReadonlyMap<string, readonly number[]> {
    const classes = new Map<string, number[]>();
    this.#table.rows.forEach((row, number) => {
      const [, , , roles = '', ofRow = ''] = row.line.split('\t', 5);
      const words = new Set([...roles.split(','), ...ofRow.split(',')]);
      for (const word of words) {
        if (word === '') continue;
        const members = classes.get(word);
        if (members) members.push(number);
        else classes.set(word, [number]);
      }
    });
    return classes;
  }
}

/**
 * A food book from the text of a table, such as one that a browser has fetched. Pure; the text is kept.
 * @throws Error when the text is not a table that this version reads.
 */
export const openFoodBook = (tableText: string): FoodBook => new TableBook(tableText);
