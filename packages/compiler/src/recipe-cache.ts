import type { Diagnostic, Place } from '@quern/text';
import type { Document, FactLine, Line, Outline, RecipeBlock, Typed } from '@quern/syntax';
import type { Compiled, Formula } from './model.js';
import { compileUnit, type CompiledRecipe, type Surroundings } from './recipe-unit.js';

/*
 * Recipes compiled before, by their text, so that a keystroke costs the recipe it falls in. A recipe whose lines and
 * surroundings are the same is not compiled again: its messages are moved to where it stands now, and its formulas are
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
  /** Whether every place of its messages lies in its own lines, so that they can be moved with it. */
  readonly movable: boolean;
  readonly formulas: () => readonly Formula[];
}

/** What a recipe depends on besides its own lines. */
export interface SurroundingsKey {
  /** The texts of the head, the foods and the cultures of the file. */
  readonly texts: string;
  /** Where they stand: formulas point at them. */
  readonly starts: string;
  readonly version: string;
  readonly used: readonly (Compiled | undefined)[];
}

/** Messages whose sentence names a line by its number: true only where the recipe has not moved. */
const NAMES_A_LINE: ReadonlySet<string> = new Set(['V03', 'M10']);

export class RecipeCache {
  #kept = new Map<string, Kept>();

  /** The recipes of a file, compiled or kept. Only what this call gives back stays kept. */
  units(document: Document, outline: Outline, around: Surroundings, key: SurroundingsKey): readonly RecipeUnit[] {
    const next = new Map<string, Kept>();
    const units = outline.recipes.map((block, index): RecipeUnit => {
      const at = block.heading.line;
      const following = outline.recipes[index + 1]?.heading.line;
      const text = document.text.slice(at.start, following?.start);
      const kept = hasUses(block) ? undefined : this.#kept.get(text);
      const entry = (kept && moved(kept, block, at, key, around)) ?? fresh(block, at, text.length, key, around);
      if (!hasUses(block)) next.set(text, entry);
      return { from: at.number, to: following?.number ?? document.lines.length, block, diagnostics: entry.diagnostics, formulas: entry.formulas };
    });
    this.#kept = next;
    return units;
  }
}

function fresh(block: RecipeBlock, at: Line, length: number, surroundings: SurroundingsKey, around: Surroundings): Kept {
  const compiled = compileUnit(block, around);
  const inside = (place: Place): boolean =>
    place.file === around.file && place.start >= at.start && place.end <= at.start + length;
  const movable = compiled.diagnostics.every(
    ({ place, related }) => inside(place) && related.every((one) => inside(one.place)),
  );
  return { surroundings, at, diagnostics: compiled.diagnostics, movable, formulas: () => compiled.formulas };
}

/** The entry for a recipe with the same text as before; undefined when it has to be compiled again. */
function moved(kept: Kept, block: RecipeBlock, at: Line, key: SurroundingsKey, around: Surroundings): Kept | undefined {
  const before = kept.surroundings;
  if (before.texts !== key.texts || before.version !== key.version || !sameItems(before.used, key.used)) return undefined;
  const inPlace = kept.at.start === at.start && kept.at.number === at.number;
  if (inPlace && before.starts === key.starts) return kept;
  if (!kept.movable) return undefined;
  if (kept.at.number !== at.number && kept.diagnostics.some(({ code }) => NAMES_A_LINE.has(code))) return undefined;
  const by = at.start - kept.at.start;
  let compiled: CompiledRecipe | undefined;
  return {
    surroundings: key,
    at,
    diagnostics: by === 0 ? kept.diagnostics : kept.diagnostics.map((diagnostic) => shifted(diagnostic, by)),
    movable: true,
    formulas: () => (compiled ??= compileUnit(block, around)).formulas,
  };
}

function shifted(diagnostic: Diagnostic, by: number): Diagnostic {
  const shift = (place: Place): Place => ({ file: place.file, start: place.start + by, end: place.end + by });
  return {
    ...diagnostic,
    place: shift(diagnostic.place),
    related: diagnostic.related.map((one) => ({ ...one, place: shift(one.place) })),
  };
}

/** A recipe that names other files itself depends on them too, and is compiled each time. */
function hasUses(block: RecipeBlock): boolean {
  return block.facts.some(isUse) || block.variants.some((variant) => variant.facts.some(isUse));
}

const isUse = ({ content }: Typed<FactLine>): boolean => content.kind === 'use';

function sameItems<T>(a: readonly T[], b: readonly T[]): boolean {
  return a.length === b.length && a.every((item, index) => item === b[index]);
}

/** The key of what the recipes of a file share. */
export function surroundingsKey(outline: Outline, version: string, used: readonly (Compiled | undefined)[]): SurroundingsKey {
  const lines: Line[] = outline.head.map(({ line }) => line);
  for (const block of [...outline.foods, ...outline.cultures]) {
    lines.push(block.heading.line, ...block.facts.map(({ line }) => line), ...block.every.map(({ line }) => line));
  }
  return {
    texts: lines.map(({ text }) => text).join('\n'),
    starts: lines.map(({ start, number }) => `${start},${number}`).join(' '),
    version,
    used,
  };
}
