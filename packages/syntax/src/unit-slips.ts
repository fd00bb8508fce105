import { ownValue, slips } from '@quern/text';

/*
 * A unit that nobody knows would be taken for the first word of the name, and its number for a count: "5 gms salt"
 * would be five of something. So a word that can only be a mistyped unit is refused, with the unit it most likely is.
 */

const SPELLINGS =
  'gram grams kilo kilos kilogram kilograms ounce ounces pound pounds litre litres liter liters millilitre millilitres tsp tbsp teaspoon teaspoons tablespoon tablespoons cup cups'.split(
    ' ',
  );

/** Abbreviations in use that are no units of the notation. */
const ABBREVIATIONS: Readonly<Record<string, string>> = {
  gm: 'g',
  gms: 'g',
  grs: 'g',
  grm: 'g',
  grms: 'g',
  kgs: 'kg',
  kgm: 'kg',
  mls: 'ml',
  cc: 'ml',
  ccs: 'ml',
  ozs: 'oz',
  lt: 'l',
  ltr: 'l',
  ltrs: 'l',
  tbl: 'tbsp',
  tbls: 'tbsp',
  tblsp: 'tbsp',
  tbsn: 'tbsp',
  tspn: 'tsp',
  teasp: 'tsp',
  tabsp: 'tbsp',
  // German, French and Spanish spoons.
  tl: 'tsp',
  kl: 'tsp',
  el: 'tbsp',
  cac: 'tsp',
  càc: 'tsp',
  cas: 'tbsp',
  càs: 'tbsp',
  cdta: 'tsp',
  cda: 'tbsp',
};

/** English words one slip from a unit: food has liver, caps and rounds. From the same lists as `english-neighbours.ts`. */
const ENGLISH = new Set(
  (
    'asp asps bounce bounces bound bounds cap caps cop cops coup coups cram crams cub cubs cud cuds cue cues cur curs cusp cusps cuss cut ' +
    'cuts dram drams dunce dunces found founds grab grabs grad grads grass grays grim hound hounds jounce jounces kill kills kiln kilns ' +
    'kilt kilts later lifer lifers liker liner liners lire lite lithe lither litter litters liver livers loiter loiters mound mounds once ' +
    'pond ponds pounce pounces pram pup pups ram rams round rounds silo silos sound sounds sup sups tap taps tip tips top tops tram trams ' +
    'ups wound wounds'
  ).split(' '),
);

/** Words looked up before: those that name what is counted come again and again. */
const meant = new Map<string, string | undefined>();

/** The unit that a word is a slip for; undefined when it is none, or a word of its own. */
export function unitMeant(word: string): string | undefined {
  if (meant.has(word)) return meant.get(word);
  const unit = lookedUp(word);
  // Bounded, so that a long-lived editor does not keep every half-typed word.
  if (meant.size > 5_000) meant.clear();
  meant.set(word, unit);
  return unit;
}

function lookedUp(word: string): string | undefined {
  const written = word.toLowerCase().replace(/\.$/, '');
  const known = ownValue(ABBREVIATIONS, written);
  if (known !== undefined) return known;
  if (written.length < 3 || ENGLISH.has(written)) return undefined;
  return SPELLINGS.find((spelling) => slips(written, spelling, 1) === 1);
}
