import { add, exact, multiply, rational, sum, ZERO, type Rational } from '@quern/quantity';

/** Energy of a gram of something, in both units. The two columns are rounded apart by the law and do not convert. */
export interface EnergyFactor {
  readonly kj: Rational;
  readonly kcal: Rational;
}

const factor = (kj: string, kcal: string): EnergyFactor => ({ kj: exact(kj), kcal: exact(kcal) });

/** Regulation (EU) No 1169/2011, Annex XIV. The same factors stand in assimilated United Kingdom law. */
export const annexXiv = {
  carbohydrateExceptPolyols: factor('17', '4'),
  polyols: factor('10', '2.4'),
  protein: factor('17', '4'),
  fat: factor('37', '9'),
  salatrim: factor('25', '6'),
  alcohol: factor('29', '7'),
  organicAcids: factor('13', '3'),
  fibre: factor('8', '2'),
  erythritol: factor('0', '0'),
} as const;

export type EnergyPart = keyof typeof annexXiv;

/** Energy by Annex XIV of grams of each part. Parts not named count as none. */
export function energyByAnnexXiv(parts: Readonly<Partial<Record<EnergyPart, Rational>>>): EnergyFactor {
  let kj = ZERO;
  let kcal = ZERO;
  for (const [part, grams] of Object.entries(parts)) {
    const one = annexXiv[part as EnergyPart];
    kj = add(kj, multiply(grams, one.kj));
    kcal = add(kcal, multiply(grams, one.kcal));
  }
  return { kj, kcal };
}

/** General Atwater factors, kcal a gram. 21 CFR 101.9(c)(1)(i)(B) and (C); alcohol 7 from memory. */
export const atwater = {
  protein: rational(4),
  carbohydrate: rational(4),
  fat: rational(9),
  solubleNonDigestible: rational(2),
  alcohol: rational(7),
} as const;

/** Kilocalories by the general factors 4, 4 and 9, on total carbohydrate, and 7 for alcohol. */
export function energyByGeneralFactors(grams: {
  readonly protein: Rational;
  readonly carbohydrate: Rational;
  readonly fat: Rational;
  readonly alcohol?: Rational;
}): Rational {
  return sum([
    multiply(grams.protein, atwater.protein),
    multiply(grams.carbohydrate, atwater.carbohydrate),
    multiply(grams.fat, atwater.fat),
    multiply(grams.alcohol ?? ZERO, atwater.alcohol),
  ]);
}

/** Salt as the law reckons it: all sodium, times 2.5. Regulation (EU) No 1169/2011, Annex I, point 11. */
export const SALT_OF_SODIUM: Rational = exact('2.5');

/** Grams of salt of milligrams of sodium. */
export function saltOfSodium(milligrams: Rational): Rational {
  return multiply(milligrams, multiply(SALT_OF_SODIUM, rational(1, 1000)));
}

/** Density of alcohol at 20 °C, grams a millilitre; from memory. For 'per cent by volume' of what is left. */
export const ALCOHOL_DENSITY: Rational = exact('0.789');
