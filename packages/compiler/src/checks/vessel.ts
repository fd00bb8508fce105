import { diagnose, singular, type Diagnostic } from '@quern/text';
import {
  compare,
  divide,
  exact,
  multiply,
  rational,
  sizeOf,
  toDecimal,
  toExactText,
  type CupSystem,
  type Rational,
} from '@quern/quantity';
import type { VesselFact } from '@quern/syntax';
import type { Formula } from '../model.js';
import { linePlace } from '../places.js';
import { showGrams } from '../show.js';

// Kilograms a litre outside which a filled vessel looks wrong. Raw dough and batter weigh about 1 kg a litre and tins
// are filled to half or more; nothing a cook fills a pot with weighs more than 1.4 (common practice, no source).
const EMPTY_BELOW = exact('0.35');
const FULL_ABOVE = exact('1.4');
/** A sheet is flat: how full it is says nothing. Lengths in cm. */
const FLAT_BELOW = rational(4);

const PI = rational(355n, 113n);

/** Millilitres of one vessel; undefined when the fact gives no volume. With two lengths it is round: across and deep. */
export function vesselVolume(content: VesselFact, cups: CupSystem): Rational | undefined {
  if (content.volume) return multiply(content.volume.range.low, sizeOf(content.volume.unit.id, cups));
  const size = content.lengthUnit ? sizeOf(content.lengthUnit) : rational(1);
  const [a, b, c] = (content.lengths ?? []).map((length) => multiply(length, size));
  if (!a || !b) return undefined;
  if (c) return multiply(multiply(a, b), c);
  return multiply(multiply(PI, multiply(divide(a, rational(2)), divide(a, rational(2)))), b);
}

/** M09: what goes into the vessels, against their volume. The fullest pot of the last make counts, before it bakes. */
export function checkVessel(formula: Formula, report: (diagnostic: Diagnostic) => void): void {
  const { vessel } = formula.facts;
  if (!vessel || isFlat(vessel.content)) return;
  if (lacksDepth(vessel.content)) {
    const [across = '', deep = ''] = (vessel.content.lengths ?? []).map((length) => toExactText(length));
    report(diagnose('M17', linePlace(vessel.ref), { across, deep, vessel: oneOf(vessel.content.thing.text) }));
    return;
  }
  const volume = vesselVolume(vessel.content, formula.facts.cups);
  const dish = formula.makes.at(-1);
  if (!volume || !dish?.pot.grams || volume.n <= 0n || vessel.content.count.n <= 0n) return;
  let fullest = dish.pot.grams;
  for (const entry of dish.pot.entries)
    if (entry.totalAfter && compare(entry.totalAfter, fullest) > 0) fullest = entry.totalAfter;
  const each = divide(fullest, vessel.content.count);
  const perLitre = divide(each, volume);
  const verdict =
    compare(perLitre, EMPTY_BELOW) < 0
      ? 'it will look half empty'
      : compare(perLitre, FULL_ABOVE) > 0
        ? 'it will not fit'
        : undefined;
  if (!verdict) return;
  report(
    diagnose('M09', linePlace(vessel.ref), {
      each: showGrams(each),
      vessel: oneOf(vessel.content.thing.text),
      volume: `${toDecimal(divide(volume, rational(1000)), 1)} l`,
      density: toDecimal(perLitre, 2),
      verdict,
    }),
  );
}

const oneOf = (things: string): string => {
  const words = things.split(' ');
  return [...words.slice(0, -1), singular(words.at(-1) ?? '')].join(' ');
};

/** A tin as deep as it is wide, or deeper than any: two lengths were meant as long and wide. Lengths in cm. */
const DEEPEST = rational(15);
export function lacksDepth({
  lengths,
  lengthUnit,
  thing,
}: Pick<VesselFact, 'lengths' | 'lengthUnit' | 'thing'>): boolean {
  const [across, deep, third] = lengths ?? [];
  if (!across || !deep || third || !/\b(?:tins?|pans?|dish(?:es)?|trays?|sheets?|moulds?|molds?)$/i.test(thing.text))
    return false;
  const size = lengthUnit ? sizeOf(lengthUnit) : rational(1);
  return compare(deep, across) >= 0 || compare(multiply(deep, size), DEEPEST) > 0;
}

function isFlat(content: VesselFact): boolean {
  const depth = content.lengths?.at(-1);
  return (
    depth !== undefined &&
    compare(multiply(depth, content.lengthUnit ? sizeOf(content.lengthUnit) : rational(1)), FLAT_BELOW) < 0
  );
}
