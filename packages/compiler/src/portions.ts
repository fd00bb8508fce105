import { divide, type Rational } from '@quern/quantity';
import type { Formula } from './model.js';
import { normaliseName } from './names.js';

const SERVINGS = new Set(['serving', 'portion', 'helping']);

/**
 * How many of a thing a dish is: its servings for 'servings', else what `gives` or `serves` counts by that word ('10
 * slices' of what gives 2 loaves and serves 40 slices is a quarter). Undefined when it says no such thing.
 */
export function portionsOf(formula: Formula, word: string): Rational | undefined {
  const { facts, pieces, servings } = formula;
  const wanted = normaliseName(word);
  const given = facts.gives?.content.thing?.text;
  const served = facts.serves?.content.thing?.text;
  if (SERVINGS.has(wanted)) return above(servings ?? pieces);
  if (given !== undefined && isSame(given, wanted)) return above(pieces);
  if (served !== undefined && isSame(served, wanted)) return above(servings);
  // Where the recipe names nothing that it counts, any word will do.
  return given === undefined && served === undefined ? above(pieces ?? servings) : undefined;
}

/** How many pieces a dish is when only a number is written: `2 rye`. */
function barePieces({ pieces, servings }: Formula): Rational | undefined {
  return above(pieces ?? servings);
}

const above = (count: Rational | undefined): Rational | undefined => (count && count.n > 0n ? count : undefined);

/** 'jars' is '2 small jars' too. */
function isSame(thing: string, wanted: string): boolean {
  const name = normaliseName(thing);
  return name === wanted || name.split(' ').at(-1) === wanted;
}

/** The share of a dish that a number of servings or pieces is; of pieces, whatever they are called, without a word. */
export function factorOf(formula: Formula, count: Rational, word?: string): Rational | undefined {
  const whole = word === undefined ? barePieces(formula) : portionsOf(formula, word);
  return whole ? divide(count, whole) : undefined;
}

/** What a dish gives and serves, for a message. */
export function yieldText({ facts }: Formula): string {
  const said = [facts.gives, facts.serves].flatMap((fact) => (fact ? [fact.ref.line.text.trim()] : []));
  return said.length === 0 ? 'it says neither what it gives nor how many it serves' : `it says “${said.join('”, “')}”`;
}
