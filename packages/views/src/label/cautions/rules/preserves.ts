import { compare, rational, type Rational } from '@quern/quantity';
import type { CautionFacts, CautionFood, KeepingClaim, PotFacts } from '../facts.js';
import { coldHold, garlicInOil as garlicFigures, preserves, vegetableFerment as ferment } from '../figures.js';
import type { CautionRule } from '../rule.js';
import { about, bothDegrees, degrees, namesOf, placesOf, sentence, time } from '../words.js';

const DAY = 1440;
const days = (count: number): Rational => rational(count * DAY);
const atMost = (a: Rational, b: Rational): boolean => compare(a, b) <= 0;
const warm = (claim: KeepingClaim): boolean => !claim.celsius || !atMost(claim.celsius, coldHold.celsius);
const isAcid = (facts: CautionFacts): boolean =>
  facts.acidity !== undefined && atMost(facts.acidity.pH, preserves.acidPh);
const dishOf = (facts: CautionFacts): PotFacts | undefined => facts.pots.at(-1);

const aromatic = (food: CautionFood): boolean => food.flags.includes('garlic') || food.flags.includes('fresh-herb');

/** Common practice, no source: from this share of fat on (g in 100 g) a mixture is an oil with things in it. */
const OILY = rational(40);

export const garlicInOil: CautionRule = {
  id: 'garlic-in-oil',
  title: 'Garlic or herbs in oil',
  when: 'garlic or fresh herbs stand in something that is at least 40 % fat, and no acidity is reached',
  reason: 'Oil shuts out the air; the spores on garlic and herbs can then grow and make botulin at room warmth.',
  source:
    'National Center for Home Food Preservation, Freezing garlic-in-oil: at 40 °F or below, no more than 4 days, never at room temperature',
  find(facts) {
    const pots = facts.pots.filter((pot) => pot.fat && compare(pot.fat, OILY) >= 0);
    const inOil = facts.foods.filter((food) => aromatic(food) && pots.some((pot) => pot.make === food.make));
    if (inOil.length === 0 || isAcid(facts)) return undefined;
    const tooLong = facts.keeps.filter(
      (claim) =>
        pots.some((pot) => pot.make === claim.make) &&
        (compare(claim.minutes, garlicFigures.longest) > 0 ||
          !claim.celsius ||
          !atMost(claim.celsius, garlicFigures.celsius)) &&
        !(claim.celsius && claim.celsius.n < 0n),
    );
    return {
      weight: tooLong.length > 0 ? 'check' : 'care',
      text: `${sentence(namesOf(inOil))} in oil: keep at ${bothDegrees(garlicFigures.celsius)} or below for no more than ${time(garlicFigures.longest)}, or freeze; never at room warmth.${tooLong.length > 0 ? ' The recipe claims more than that.' : ''}`,
      places: [...placesOf(inOil), ...tooLong.map((claim) => claim.place)],
    };
  },
};

/** Common practice, no source: a jar is moist above this much water in 100 g, and sweet enough to keep above this ratio of sugars to water. */
const MOIST = rational(20);
const SYRUPY = rational(3, 2);
/** The crumb of a cake holds up to this much water and is no jar. */
const BAKED_MOIST = rational(40);
const isBaked = ({ flour }: PotFacts): boolean => flour.n * 20n >= flour.d * 3n;

function keepsBySugarOrSalt(pot: PotFacts): boolean {
  const { water, sugars, salt } = pot;
  if (!water || water.n === 0n) return true;
  if (sugars && compare(sugars, rational(water.n * SYRUPY.n, water.d * SYRUPY.d)) >= 0) return true;
  // From memory: ten grams of salt on a hundred of water stop the growth of botulinum.
  return salt !== undefined && compare(salt, rational(water.n, water.d * 10n)) >= 0;
}

export const lowAcidPreserve: CautionRule = {
  id: 'low-acid-preserve',
  title: 'A moist preserve kept warm',
  when: 'the dish is said to keep more than a week above 5 °C, holds more than 20 % water, is no bread or cake, and no step reaches pH 4.6',
  reason:
    'In a closed jar without enough acid, sugar or salt botulin can form, and it cannot be seen, smelt or tasted.',
  source: '21 CFR 113.3 and 114.3: pH 4.6 or below, or water activity 0.85 or below',
  find(facts) {
    const pot = dishOf(facts);
    if (!pot || isAcid(facts) || pot.leavened || keepsBySugarOrSalt(pot)) return undefined;
    if (pot.water && atMost(pot.water, isBaked(pot) ? BAKED_MOIST : MOIST)) return undefined;
    const claims = facts.keeps.filter((claim) => claim.ofDish && warm(claim) && compare(claim.minutes, days(7)) > 0);
    const [first] = claims;
    if (!first) return undefined;
    return {
      weight: 'check',
      text: `Said to keep ${time(first.minutes)} ${first.celsius ? `at ${degrees(first.celsius)}` : 'without being held cold'}. That is safe only with a measured pH of 4.6 or below or a water activity of 0.85 or below, or by a tested canning process; follow a tested recipe and your local rules, and measure.`,
      places: claims.map((claim) => claim.place),
    };
  },
};

/** Produce that stands two days or more at more than 10 °C with salt is taken for a ferment. */
const FERMENT_TIME = days(2);
const FERMENT_CELSIUS = rational(10);
/** Common practice, no source: above this much salt little ferments. */
const SALT_CURE = rational(5);

export const saltedFerment: CautionRule = {
  id: 'salted-ferment',
  title: 'A ferment',
  when: 'salted vegetables or fruit stand two days or more above 10 °C',
  reason:
    'Salt and the acid that forms are what keep other bacteria down; too little salt, or a stop short of pH 4.6, does not.',
  source:
    'MSU Extension, Preserving Food Safely 01600078: 1.9 to 2.4 % by its two recipes; 2.25 to 2.5 % recommended by university guides (from memory); pH 4.6: 21 CFR 114.3',
  find(facts) {
    const pots = facts.pots.filter((pot) => pot.saltOnProduce !== undefined && !pot.leavened && pot.flour.n === 0n);
    const fermenting = pots.filter((pot) =>
      facts.standings.some(
        (standing) =>
          standing.make === pot.make &&
          compare(standing.minutes, FERMENT_TIME) >= 0 &&
          (!standing.celsius || compare(standing.celsius, FERMENT_CELSIUS) > 0),
      ),
    );
    const pot = fermenting[0];
    if (!pot?.saltOnProduce) return undefined;
    const low = compare(pot.saltOnProduce, ferment.recommended.low) < 0;
    const cured = compare(pot.saltOnProduce, SALT_CURE) > 0;
    const acid = facts.acidity
      ? ` It is to reach pH ${about(facts.acidity.pH)}${isAcid(facts) ? '' : ', which is above 4.6'}.`
      : ' No step says which acidity it is to reach: measure, and go on to pH 4.6 or below.';
    return {
      weight: low || (facts.acidity !== undefined && !isAcid(facts)) ? 'check' : 'care',
      text: `Salt is ${about(pot.saltOnProduce)} % of the produce; ${cured ? 'that is a cure in salt rather than a ferment' : `guides recommend 2.25 to 2.5 % for cabbage${low ? ', so this is less' : ''}`}.${acid} Keep it under its brine, and throw it away if it is mouldy, slimy or smells wrong.`,
      places: [pot.place, ...(facts.acidity ? [facts.acidity.place] : [])],
    };
  },
};

export const keptColdTooLong: CautionRule = {
  id: 'cold-more-than-a-week',
  title: 'Kept cold for more than seven days',
  when: 'a dish with meat, fish, egg or milk in it is said to keep more than seven days, unfrozen',
  reason: 'Listeria grows slowly in the cold; ready-to-eat perishable food is dated for seven days at most.',
  source: 'FDA Food Code 3-501.17: seven days at 41 °F',
  find(facts) {
    const pot = dishOf(facts);
    const perishable = facts.foods.filter(
      (food) =>
        food.inDish &&
        food.roles.some((role) => role === 'meat' || role === 'fish' || role === 'egg' || role === 'dairy') &&
        !food.roles.includes('fat'),
    );
    if (perishable.length === 0 || !pot || pot.leavened || isAcid(facts)) return undefined;
    if (keepsBySugarOrSalt(pot) || (pot.water && compare(pot.water, rational(35)) < 0)) return undefined;
    const claims = facts.keeps.filter(
      (claim) =>
        claim.ofDish && compare(claim.minutes, days(coldHold.days)) > 0 && !(claim.celsius && claim.celsius.n < 0n),
    );
    const [first] = claims;
    if (!first) return undefined;
    return {
      weight: 'check',
      text: `With ${namesOf(perishable)} in it, it is said to keep ${time(first.minutes)}; ready-to-eat food of this kind is dated for seven days at ${degrees(coldHold.celsius)} or below.`,
      places: claims.map((claim) => claim.place),
    };
  },
};
