import { movedBy, type Diagnostic, type Place } from '@quern/text';
import {
  passageOfLine,
  type Document,
  type FoodBlock,
  type Line,
  type Outline,
  type Passage,
  type RecipeBlock,
} from '@quern/syntax';
import type { Compiled, Formula } from './model.js';
import { normaliseName } from './names.js';
import { compileUnit, type Surroundings } from './recipe-unit.js';

/*
 * Recipes compiled before, by the passage they are, so that a keystroke costs the recipe it falls in. A recipe whose lines
 * and surroundings are the same is not compiled again: its messages are moved to where it stands now, and its formulas are
 * kept if it has not moved, else made anew when somebody asks for them. What is kept is never changed.
 */

/** A recipe of a file. */
export interface RecipeUnit {
  /** Its lines, `from` included, `to` excluded. What stands between it and the next recipe counts with it. */
  readonly from: number;
  readonly to: number;
  readonly block: RecipeBlock;
  readonly diagnostics: readonly Diagnostic[];
  formulas(): readonly Formula[];
}

interface Kept {
  readonly surroundings: SurroundingsKey;
  readonly at: Line;
  readonly diagnostics: readonly Diagnostic[];
  /** Names of foods and cultures that were looked for in the file, found or not. */
  readonly looked: ReadonlySet<string>;
  /** Whether every place of its messages lies in its own lines, so that they can be moved with it. */
  readonly movable: boolean;
  readonly formulas: Lazy<readonly Formula[]>;
}

/** A value made when it is first asked for. What it is made from is let go with that. */
class Lazy<T> {
  #make: (() => T) | undefined;
  #made: T | undefined;

  constructor(make: () => T) {
    this.#make = make;
  }

  get isMade(): boolean {
    return this.#make === undefined;
  }

  get(): T {
    if (this.#make !== undefined) {
      this.#made = this.#make();
      this.#make = undefined;
    }
    return this.#made as T;
  }
}

/** What a recipe depends on besides its own lines. */
export interface SurroundingsKey {
  /** The texts of the head and of the kitchens. */
  readonly head: string;
  /** The text of each food and culture of the file, by normalised name. */
  readonly declared: ReadonlyMap<string, string>;
  /** All of it, and where it stands: formulas point at it. */
  readonly whole: string;
  readonly version: string;
  readonly used: readonly (Compiled | undefined)[];
}

/** Whether a message names a line by its number: true only where the recipe has not moved. */
function namesLine({ code, args }: Diagnostic): boolean {
  return code === 'V03' || Object.values(args).some((value) => /\blines? \d/.test(value));
}

/** Messages that suggest names of the file. */
const SUGGESTS_NAMES: ReadonlySet<string> = new Set(['N01']);

export class RecipeCache {
  #kept = new Map<Passage, Kept>();

  /** The recipes of a file, compiled or kept. Only what this call gives back stays kept. */
  units(document: Document, outline: Outline, around: Surroundings, key: SurroundingsKey): readonly RecipeUnit[] {
    const next = new Map<Passage, Kept>();
    const units = outline.recipes.map((block, index): RecipeUnit => {
      const at = block.heading.line;
      const following = outline.recipes[index + 1]?.heading.line;
      const { passage } = passageOfLine(document.passages, at.number);
      // A recipe that names other files itself depends on them too, and is compiled each time.
      const kept = passage.namesFiles ? undefined : this.#kept.get(passage);
      const entry = (kept && moved(kept, block, at, key, around)) ?? fresh(block, at, passage.length, key, around);
      if (!passage.namesFiles) next.set(passage, entry);
      return {
        from: at.number,
        to: following?.number ?? document.lineCount,
        block,
        diagnostics: entry.diagnostics,
        formulas: () => entry.formulas.get(),
      };
    });
    this.#kept = next;
    return units;
  }
}

function fresh(
  block: RecipeBlock,
  at: Line,
  length: number,
  surroundings: SurroundingsKey,
  around: Surroundings,
): Kept {
  const compiled = compileUnit(block, around);
  const inside = (place: Place): boolean =>
    place.file === around.file && place.start >= at.start && place.end <= at.start + length;
  const movable = compiled.diagnostics.every(
    ({ place, related }) => inside(place) && related.every((one) => inside(one.place)),
  );
  const formulas = new Lazy(() => compiled.formulas);
  formulas.get();
  return { surroundings, at, diagnostics: compiled.diagnostics, looked: compiled.looked, movable, formulas };
}

/** The entry for a recipe with the same text as before; undefined when it has to be compiled again. */
function moved(kept: Kept, block: RecipeBlock, at: Line, key: SurroundingsKey, around: Surroundings): Kept | undefined {
  if (!sameAround(kept, key)) return undefined;
  const inPlace = kept.at.start === at.start && kept.at.number === at.number;
  if (inPlace && kept.surroundings.whole === key.whole && kept.formulas.isMade) return kept;
  if (!inPlace && !kept.movable) return undefined;
  if (kept.at.number !== at.number && kept.diagnostics.some(namesLine)) return undefined;
  const by = at.start - kept.at.start;
  return {
    surroundings: key,
    at,
    diagnostics: by === 0 ? kept.diagnostics : kept.diagnostics.map((diagnostic) => movedBy(diagnostic, by)),
    looked: kept.looked,
    movable: kept.movable,
    formulas: new Lazy(() => compileUnit(block, around).formulas),
  };
}

/** Whether nothing that the recipe looked at has changed. */
function sameAround({ surroundings: before, looked, diagnostics }: Kept, now: SurroundingsKey): boolean {
  if (before.head !== now.head || before.version !== now.version || !sameItems(before.used, now.used)) return false;
  if (before.whole === now.whole) return true;
  for (const name of looked) if (before.declared.get(name) !== now.declared.get(name)) return false;
  return sameNames(before.declared, now.declared) || !diagnostics.some(({ code }) => SUGGESTS_NAMES.has(code));
}

function sameItems<T>(a: readonly T[], b: readonly T[]): boolean {
  return a.length === b.length && a.every((item, index) => item === b[index]);
}

function sameNames(a: ReadonlyMap<string, unknown>, b: ReadonlyMap<string, unknown>): boolean {
  return a.size === b.size && [...a.keys()].every((name) => b.has(name));
}

/** The key of what the recipes of a file share. */
export function surroundingsKey(
  outline: Outline,
  version: string,
  used: readonly (Compiled | undefined)[],
): SurroundingsKey {
  const declared = new Map<string, string>();
  const places: string[] = outline.head.map(({ line }) => `${line.start},${line.number}`);
  const declare = (block: FoodBlock, more: string): void => {
    const name = block.heading.content.name?.text;
    if (name === undefined) return;
    const id = normaliseName(name);
    const text = textOf(block) + more;
    // A name given twice: whichever counts, both are looked at.
    declared.set(id, `${declared.get(id) ?? ''}${text}`);
    places.push(`${block.heading.line.start},${block.heading.line.number}\n${text}`);
  };
  for (const block of outline.foods) declare(block, '');
  for (const block of outline.cultures) declare(block, partsText(block, declared));
  return {
    head: [...outline.head, ...outline.kitchens.flatMap(({ facts }) => facts)].map(({ line }) => line.text).join('\n'),
    declared,
    whole: places.join('\n'),
    version,
    used,
  };
}

function textOf(block: FoodBlock): string {
  return [block.heading, ...block.facts, ...block.every].map(({ line }) => line.text).join('\n');
}

/** The foods of the file that a culture is made of: it changes with them. */
function partsText(block: FoodBlock, declared: ReadonlyMap<string, string>): string {
  const names = block.facts.flatMap(({ content }) => (content.kind === 'parts' ? content.parts : []));
  return names.map(({ name }) => declared.get(normaliseName(name.text)) ?? '').join('\n');
}
