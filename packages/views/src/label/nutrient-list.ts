/** What a label may declare. Worked out from the food table's nutrients in `nutrients.ts`. */
export type LabelNutrient =
  | 'energyKj'
  | 'energyKcal'
  | 'energyGeneral'
  | 'energyTable'
  | 'fat'
  | 'saturates'
  | 'trans'
  | 'monounsaturates'
  | 'polyunsaturates'
  | 'carbohydrate'
  | 'carbohydrateTotal'
  | 'sugars'
  | 'addedSugars'
  | 'fibre'
  | 'protein'
  | 'salt'
  | 'sodium'
  | 'cholesterol'
  | 'vitaminD'
  | 'calcium'
  | 'iron'
  | 'potassium'
  | 'alcohol'
  | 'water';

/** Markets whose rules are held as data. `jp` and `codex` name allergens only; `none` names everything that is known. */
export type Market = 'eu' | 'uk' | 'us' | 'ca' | 'au' | 'jp' | 'codex' | 'none';

export const MARKETS: readonly Market[] = ['eu', 'uk', 'us', 'ca', 'au', 'jp', 'codex', 'none'];

/** The markets in words, as a reader knows them. */
export const marketNames: Readonly<Record<Market, string>> = {
  eu: 'European Union',
  uk: 'United Kingdom',
  us: 'United States',
  ca: 'Canada',
  au: 'Australia and New Zealand',
  jp: 'Japan',
  codex: 'Codex Alimentarius',
  none: 'no market',
};
