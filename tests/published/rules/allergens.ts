/** The allergens each market names. */
import type { AllergenId } from '@quern/compiler';
import {
  allergenTables,
  classesOfFood,
  classesOn,
  type AllergenClass,
} from '../../../packages/views/src/label/allergen-tables.js';
import type { Market } from '../../../packages/views/src/label/nutrient-list.js';
import { found, rule, type Finding, type Row, type Rule } from '../proof.js';

/** Days on which the editions of the lists are asked for. */
const NOW = '2026-01-15';
const BEFORE_FASTER = '2022-12-31';
const BEFORE_EDITION_5 = '2025-01-05';
const BEFORE_CAC47 = '2024-11-01';

const markets: Readonly<Record<string, readonly [Market, string]>> = {
  us: ['us', NOW],
  eu: ['eu', NOW],
  uk: ['uk', NOW],
  ca: ['ca', NOW],
  anz: ['au', NOW],
  jp: ['jp', NOW],
  codex2024: ['codex', NOW],
  codex_before_2024: ['codex', BEFORE_CAC47],
};

/** What a published name is in the food table: its classes, and a food's name for lists that go by name. */
const foods: Readonly<Record<string, readonly AllergenId[]>> = {
  milk: ['milk'],
  'milk (incl. lactose)': ['milk'],
  'milk incl. lactose': ['milk'],
  egg: ['eggs'],
  eggs: ['eggs'],
  fish: ['fish'],
  'crustacean shellfish': ['crustaceans'],
  crustaceans: ['crustaceans'],
  crustacean: ['crustaceans'],
  crustacea: ['crustaceans'],
  'crustaceans and molluscs': ['crustaceans', 'molluscs'],
  mollusc: ['molluscs'],
  molluscs: ['molluscs'],
  'molluscan shellfish': ['molluscs'],
  'tree nuts': ['almond', 'walnut'],
  nuts: ['almond', 'walnut'],
  'tree nuts: almond, cashew, hazelnut, pecan, pistachio, walnut': [
    'almond',
    'cashew',
    'hazelnut',
    'pecan',
    'pistachio',
    'walnut',
  ],
  peanut: ['peanuts'],
  peanuts: ['peanuts'],
  'peanuts and soybeans': ['peanuts', 'soybeans'],
  wheat: ['wheat'],
  'wheat and triticale': ['wheat', 'triticale'],
  triticale: ['triticale'],
  'cereals containing gluten': ['wheat', 'rye', 'barley', 'oats'],
  'cereals containing gluten (wheat, rye, barley)': ['wheat', 'rye', 'barley'],
  barley: ['barley'],
  'barley (if gluten)': ['barley'],
  rye: ['rye'],
  'rye (if gluten)': ['rye'],
  oats: ['oats'],
  'oats (if gluten)': ['oats'],
  'barley, rye, oats': ['barley', 'rye', 'oats'],
  soybean: ['soybeans'],
  soybeans: ['soybeans'],
  soy: ['soybeans'],
  'soy/soya/soybean': ['soybeans'],
  sesame: ['sesame'],
  celery: ['celery'],
  mustard: ['mustard'],
  lupin: ['lupin'],
  buckwheat: ['buckwheat'],
  sulphites: ['sulphites'],
  'sulphites (10 ppm)': ['sulphites'],
  'sulphites (>= 10 mg/kg added)': ['sulphites'],
  'sulphite >= 10 mg/kg': ['sulphites'],
  'sulphur dioxide and sulphites': ['sulphites'],
  almond: ['almond'],
  'black walnut': ['walnut'],
  'California walnut': ['walnut'],
  'heartnut/Japanese walnut': ['walnut'],
  'walnut (English, Persian)': ['walnut'],
  'walnut (Juglans regia)': ['walnut'],
  walnut: ['walnut'],
  'Brazil nut': ['brazil-nut'],
  cashew: ['cashew'],
  'filbert/hazelnut': ['hazelnut'],
  hazelnut: ['hazelnut'],
  'macadamia/bush nut': ['macadamia'],
  'macadamia/Queensland nut': ['macadamia'],
  macadamia: ['macadamia'],
  'macadamia (added 2024)': ['macadamia'],
  pecan: ['pecan'],
  'pine nut/pinon nut': ['pine-nut'],
  'pine nut': ['pine-nut'],
  pistachio: ['pistachio'],
  chestnut: ['chestnut'],
  coconut: ['coconut'],
  'shrimp/prawn': ['crustaceans'],
  crab: ['crustaceans'],
  // The other nuts that the United States took off their list have no class of their own.
  ...Object.fromEntries(
    [
      'beech nut',
      'butternut',
      'chinquapin',
      'cola/kola nut',
      'ginkgo nut',
      'hickory nut',
      'palm nut',
      'pili nut',
      'shea nut',
      'lichee nut',
    ].map((name): [string, readonly AllergenId[]] => [name, ['other-nut']]),
  ),
};

/** Names that a market's list gives by the word of the food: an ordinary food of that name. */
const foodNames: Readonly<Record<string, string>> = {
  'shrimp/prawn': 'king prawns',
  crab: 'white crabmeat',
  'salmon roe': 'salmon roe',
  kiwifruit: 'kiwi',
};

function ask(market: Market, day: string, name: string): readonly AllergenClass[] {
  const known = foods[name];
  const foodName = foodNames[name] ?? (known ? '' : name);
  return classesOfFood(classesOn(market, day), known ?? [], foodName).map((one) => one.class);
}

const said = (classes: readonly AllergenClass[]): string =>
  classes.length === 0 ? 'not listed' : classes.map((one) => `${one.name} (${one.status})`).join(', ');

/** Every class of the published name must be declared, each with the status. */
function listed(row: Row, market: Market, day: string, name: string, status: AllergenClass['status']): Finding {
  const classes = ask(market, day, name);
  const wanted = foods[name] ?? [];
  const all = wanted.every((one) =>
    classesOfFood(classesOn(market, day), [one], foodNames[name] ?? '').some((each) => each.class.status === status),
  );
  return found(
    classes.length > 0 && all && classes.some((one) => one.status === status),
    `${row.value}: ${said(classes)}`,
  );
}

const notListed = (market: Market, day: string, name: string): Finding => {
  const classes = ask(market, day, name);
  return found(classes.length === 0, said(classes));
};

/** A class of that name stands among those not listed, with the reason in words. */
const explained = (market: Market, name: string): boolean => allergenTables[market].notClasses[name] !== undefined;

const split = (key: string): { readonly market: Market; readonly day: string; readonly name: string } => {
  const [region = '', ...rest] = key.split('/');
  const [market, day] = markets[region] ?? ['none', NOW];
  return { market, day, name: rest.join('/') };
};

function both(a: Finding, b: boolean): Finding {
  return a.kind === 'passed' && !b ? { kind: 'failed', quern: a.quern } : a;
}

function check(row: Row): Finding {
  const { market, day, name } = split(row.key);
  switch (row.value) {
    case 'class':
    case 'required name':
    case 'gluten source':
    case 'tree nut, listed':
    case 'nut, listed':
    case 'mandatory (8)':
    case 'always declared':
    case 'declared':
      if (name.startsWith('same 14 as EU')) {
        const euClasses = classesOn('eu', day);
        return found(
          euClasses.length === 14 && said(classesOn('uk', day)) === said(euClasses),
          `${euClasses.length} classes, the same`,
        );
      }
      return market === 'us' && name === 'sesame'
        ? both(listed(row, market, day, name, 'must'), ask('us', BEFORE_FASTER, name).length === 0)
        : listed(row, market, day, name, 'must');
    case 'NOT listed since Jan 2025':
      return both(notListed(market, day, name), ask('us', BEFORE_EDITION_5, name).length > 0 && explained('us', name));
    case 'nut, NOT listed':
    case 'NOT a class':
    case 'not an allergen class; declare at >= 10 ppm':
      return both(notListed(market, day, name), explained(market, name));
    case 'scope': {
      const note = classesOn(market, day).find((one) => one.members.includes('eggs'))?.note ?? '';
      return found(
        ['ducks', 'geese', 'quail'].every((bird) => note.includes(bird)),
        note,
      );
    }
    case 'recommended (20)':
      return listed(row, market, day, name, 'recommended');
    case 'may be required regionally':
      return listed(row, market, day, name, 'regional');
    case 'removed from recommended 2024':
      return both(notListed(market, day, name), explained(market, name) && ask(market, '2024-01-01', name).length > 0);
    case 'to become the 9th mandatory item':
    case 'to be added to recommended': {
      const note = ask(market, day, name)[0]?.note ?? '';
      return found(/confirm/.test(note), note);
    }
    default:
      return found(false, `a kind of row that is not known: ${row.value}`);
  }
}

export const rules: readonly Rule[] = [rule(/^(?:us|eu|uk|ca|anz|jp|codex2024|codex_before_2024)\//, check)];
