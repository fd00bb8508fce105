import { normaliseName } from '@quern/compiler';
import type { Document, LineContent, Passage } from '@quern/syntax';
import { snapshotOf, type Snapshot } from '../snapshot.js';

/** What a file writes that is worth offering again. */
interface Written {
  /** Foods as written, by normalised name, with how often. */
  readonly foods: ReadonlyMap<string, { readonly name: string; readonly times: number }>;
  /** Notes after a comma, by the normalised name of the food. */
  readonly notes: ReadonlyMap<string, readonly string[]>;
  readonly keywords: readonly string[];
  readonly titles: readonly string[];
}

export const writtenIn = ({ document }: Snapshot): Written => document.once(writtenInAll);

const writtenInAll = ({ passages }: Document): Written =>
  // A passage that has only moved writes what it wrote, so that a keystroke costs the recipe it falls in.
  new Merged(passages.map(({ passage }) => passage.once(writtenInOne)));

/** What all passages write. Each question is put together when it is first asked: a list of foods needs no notes. */
class Merged implements Written {
  #foods: Written['foods'] | undefined;
  #notes: Written['notes'] | undefined;

  constructor(readonly parts: readonly Written[]) {}

  get foods(): Written['foods'] {
    return (this.#foods ??= foodsOf(this.parts));
  }

  get notes(): Written['notes'] {
    return (this.#notes ??= notesOf(this.parts));
  }

  get keywords(): readonly string[] {
    return this.parts.flatMap(({ keywords }) => keywords);
  }

  get titles(): readonly string[] {
    return this.parts.flatMap(({ titles }) => titles);
  }
}

function foodsOf(parts: readonly Written[]): Written['foods'] {
  const foods = new Map<string, { name: string; times: number }>();
  // `forEach` makes no pair for each of the thousands of entries, as `for … of` does.
  for (const part of parts) {
    part.foods.forEach(({ name, times }, id) => {
      const known = foods.get(id);
      if (known === undefined) foods.set(id, { name, times });
      else known.times += times;
    });
  }
  return foods;
}

function notesOf(parts: readonly Written[]): Written['notes'] {
  const notes = new Map<string, string[]>();
  for (const part of parts) {
    for (const [id, some] of part.notes) {
      const list = notes.get(id);
      if (list === undefined) notes.set(id, [...some]);
      else list.push(...some);
    }
  }
  return notes;
}

function writtenInOne({ lines }: Passage): Written {
  const foods = new Map<string, { name: string; times: number }>();
  const notes = new Map<string, string[]>();
  const keywords: string[] = [];
  const titles: string[] = [];
  for (const { parsed } of lines) {
    const content: LineContent = parsed.content;
    if (content.kind === 'in' || content.kind === 'or') {
      const id = normaliseName(content.name.text);
      if (content.amount.kind !== 'share' && content.amount.kind !== 'portion') {
        foods.set(id, { name: content.name.text, times: (foods.get(id)?.times ?? 0) + 1 });
      }
      if (content.note) notes.set(id, [...(notes.get(id) ?? []), content.note.text]);
    } else if (content.kind === 'list-fact' && content.word === 'keywords')
      keywords.push(...content.items.map(({ text }) => text));
    else if (content.kind === 'block' && content.block === 'recipe' && content.name) titles.push(content.name.text);
  }
  return { foods, notes, keywords, titles };
}

/** The other files of the workspace. */
export function* otherFiles(snapshot: Snapshot): Iterable<Snapshot> {
  for (const file of snapshot.files) {
    if (file === snapshot.path) continue;
    const other = snapshotOf(snapshot.session, file, snapshot.files);
    if (other !== undefined) yield other;
  }
}

/** Foods of the workspace as they are written, most used first; a use in this file counts for ten elsewhere. */
export function usedFoods(snapshot: Snapshot): ReadonlyMap<string, { readonly name: string; readonly score: number }> {
  const scores = new Map<string, { name: string; score: number }>();
  const count = (one: Snapshot, weight: number): void => {
    for (const [id, { name, times }] of writtenIn(one).foods) {
      scores.set(id, { name: scores.get(id)?.name ?? name, score: (scores.get(id)?.score ?? 0) + times * weight });
    }
  };
  count(snapshot, 10);
  for (const other of otherFiles(snapshot)) count(other, 1);
  return scores;
}

/** Notes that follow a food anywhere, most used first. */
export function usedNotes(snapshot: Snapshot, food: string): readonly string[] {
  const id = normaliseName(food);
  const times = new Map<string, number>();
  for (const one of [snapshot, ...otherFiles(snapshot)]) {
    for (const note of writtenIn(one).notes.get(id) ?? []) times.set(note, (times.get(note) ?? 0) + 1);
  }
  return [...times].sort((a, b) => b[1] - a[1]).map(([note]) => note);
}

/** Keywords of the workspace, most used first. */
export function usedKeywords(snapshot: Snapshot): readonly string[] {
  const times = new Map<string, number>();
  for (const one of [snapshot, ...otherFiles(snapshot)]) {
    for (const word of writtenIn(one).keywords) times.set(word, (times.get(word) ?? 0) + 1);
  }
  return [...times].sort((a, b) => b[1] - a[1]).map(([word]) => word);
}
