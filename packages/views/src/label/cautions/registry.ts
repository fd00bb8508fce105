import type { CautionFacts } from './facts.js';
import type { Caution, CautionRule, Weight } from './rule.js';
import { alcoholRemains } from './rules/alcohol.js';
import { kidneyBeans } from './rules/beans.js';
import { curingSalt } from './rules/curing.js';
import { beyondTheChart } from './rules/keeping.js';
import { garlicInOil, keptColdTooLong, lowAcidPreserve, saltedFerment } from './rules/preserves.js';
import { cookBeforeEating, rawEgg, rawFlour, rawMeatOrFish, unpasteurised } from './rules/raw.js';
import { honeyInfants, wholeNuts } from './rules/small-children.js';
import { coldClaim, cooling, coreTemperature, dangerZone } from './rules/time-and-heat.js';

/** Every caution, in the order in which they are shown within one weight. */
export const cautionRules: readonly CautionRule[] = [
  rawEgg,
  rawFlour,
  rawMeatOrFish,
  unpasteurised,
  cookBeforeEating,
  honeyInfants,
  wholeNuts,
  alcoholRemains,
  kidneyBeans,
  garlicInOil,
  lowAcidPreserve,
  saltedFerment,
  curingSalt,
  coreTemperature,
  dangerZone,
  cooling,
  coldClaim,
  keptColdTooLong,
  beyondTheChart,
];

/** Stands under every list of cautions. */
export const GUIDANCE =
  'Guidance from published figures, not advice, and not a list of all that can go wrong. Your local food law, a tested recipe and, where you sell, licensed practice come first.';

const ORDER: readonly Weight[] = ['check', 'care', 'note'];

/** The cautions of a recipe, the most pressing first. */
export function cautionsOf(facts: CautionFacts): Caution[] {
  return cautionRules
    .flatMap((rule): Caution[] => {
      const found = rule.find(facts);
      return found ? [{ ...found, id: rule.id, title: rule.title, reason: rule.reason, source: rule.source }] : [];
    })
    .sort((a, b) => ORDER.indexOf(a.weight) - ORDER.indexOf(b.weight));
}
