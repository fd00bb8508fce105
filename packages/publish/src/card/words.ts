import type { CardClock } from '@quern/views';

/** The words that the card itself says. Everything else is the recipe's. A page in another language brings its own. */
export interface CardWords {
  /** The language tag of these words. */
  readonly language: string;
  readonly by: string;
  readonly source: string;
  readonly gives: string;
  readonly serves: string;
  readonly vessel: string;
  /** Between the yield and the weight of each: '2 loaves of 1040 g'. */
  readonly ofEach: string;
  readonly handsOn: string;
  readonly total: string;
  readonly begin: string;
  readonly ingredients: string;
  readonly ingredient: string;
  readonly metric: string;
  readonly us: string;
  /** On the button of a narrow page: what a tap shows. */
  readonly showMetric: string;
  readonly showUs: string;
  readonly optional: string;
  readonly or: string;
  readonly every: string;
  readonly fan: string;
  readonly falling: string;
  readonly rising: string;
  readonly until: string;
  readonly acidity: string;
  readonly using: string;
  readonly saved: string;
  readonly lanes: Readonly<Record<CardClock['lane'], string>>;
  readonly remarks: {
    readonly note: string;
    readonly tip: string;
    readonly warning: string;
    readonly 'serve with': string;
  };
  readonly variants: string;
  readonly allergens: string;
  readonly contains: string;
  readonly mayContain: string;
  readonly cannotSay: string;
  readonly nutrition: string;
  readonly atLeast: string;
  readonly notKnown: string;
  readonly keeping: string;
  readonly keeps: string;
  readonly bestAfter: string;
  readonly cautions: string;
  readonly guidance: string;
  readonly revision: string;
  readonly photo: string;
  readonly problems: string;
  readonly line: string;
  /** Said by the page when it has been scaled; `{yield}` is the yield as written. */
  readonly scaled: string;
  /** Said when the figure in the field is no number; the page keeps the last good one. */
  readonly notANumber: string;
  readonly batches: string;
  readonly diets: { readonly vegan: string; readonly vegetarian: string };
}

export const englishWords: CardWords = {
  language: 'en',
  by: 'by',
  source: 'from',
  gives: 'Gives',
  serves: 'Serves',
  vessel: 'In',
  ofEach: 'of',
  handsOn: 'Hands-on',
  total: 'In all',
  begin: 'Begin',
  ingredients: 'Ingredients',
  ingredient: 'Ingredient',
  metric: 'Metric',
  us: 'US',
  showMetric: 'Show metric',
  showUs: 'Show US',
  optional: 'optional',
  or: 'or',
  every: 'every',
  fan: 'fan',
  falling: 'falling to',
  rising: 'rising to',
  until: 'until',
  acidity: 'pH',
  using: 'using',
  saved: 'Keep back',
  lanes: { hands: 'Hands', wait: 'Wait', oven: 'Oven', hob: 'Hob' },
  remarks: { note: 'Note', tip: 'Tip', warning: 'Warning', 'serve with': 'Serve with' },
  variants: 'Variants',
  allergens: 'Allergens',
  contains: 'Contains',
  mayContain: 'May contain',
  cannotSay: 'Cannot say for',
  nutrition: 'Nutrition',
  atLeast: 'at least',
  notKnown: 'not known',
  keeping: 'Keeping',
  keeps: 'Keeps',
  bestAfter: 'Best after',
  cautions: 'Take care',
  guidance: 'Guidance, not advice: local food law, tested recipes and licensed practice come first.',
  revision: 'Revision',
  photo: 'Photograph of',
  problems: 'This recipe has mistakes; figures that depend on them are left out.',
  line: 'line',
  scaled: 'Scaled from {yield}.',
  notANumber: 'Write a number above zero, such as 3, 1.5 or 2 1/2.',
  batches: 'batches',
  diets: { vegan: 'Vegan', vegetarian: 'Vegetarian' },
};
