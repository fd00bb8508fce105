/** Figures of food safety: what the cautions hold a recipe against, and when they speak. */
import { alcoholRetained } from '@quern/compiler';
import {
  compare,
  exact,
  multiply,
  rational,
  subtract,
  toDecimal,
  toExactText,
  divide,
  type Rational,
} from '@quern/quantity';
import type { CautionFacts, CautionFood, PotFacts } from '../../../packages/views/src/label/cautions/facts.js';
import {
  coldHold,
  cooling,
  coreTemperatures,
  curingSaltFor,
  dangerZone,
  garlicInOil,
  kidneyBeans,
  MEAT_REST,
  nitrite,
  nitritePartsPerMillion,
  preserves,
  vegetableFerment,
} from '../../../packages/views/src/label/cautions/figures.js';
import { keepingChart } from '../../../packages/views/src/label/cautions/keeping-chart.js';
import { cautionRules } from '../../../packages/views/src/label/cautions/registry.js';
import { compileText } from '../compile-text.js';
import { doesNotApply, found, rule, type Finding, type Row, type Rule } from '../proof.js';

const inFahrenheit = (celsius: Rational): Rational => rational(celsius.n * 9n + 160n * celsius.d, celsius.d * 5n);

/** The row's figure, in the unit that it has, against one of ours. */
function same(row: Row, held: Rational, unit: string): Finding {
  return found(toExactText(held) === row.value, `${toExactText(held)} ${unit}`);
}

const fahrenheit = (held: Rational) => (row: Row) => same(row, inFahrenheit(held), '°F');
const hours = (held: Rational) => (row: Row) => same(row, divide(held, rational(60)), 'h');
const plain = (held: Rational, unit: string) => (row: Row) => same(row, held, unit);

/** A conversion printed to a tenth of a degree. */
const celsius = (held: Rational) => (row: Row) => found(toDecimal(held, 1) === row.value, `${toDecimal(held, 1)} °C`);

const restOf =
  (check: (row: Row) => Finding) =>
  (row: Row): Finding =>
    row.tolerance.includes(`rest >= ${toExactText(MEAT_REST)} min`)
      ? check(row)
      : found(false, `rest ${toExactText(MEAT_REST)} min`);

const from = { file: 'example.quern', start: 0, end: 1 };
const example: CautionFood = {
  name: 'it',
  flags: [],
  roles: [],
  note: '',
  grams: rational(100),
  inDish: true,
  make: 'dish',
  heatings: [],
  standings: [],
  place: from,
};
const baked: CautionFood['heatings'][number] = {
  lane: 'oven',
  minutes: rational(40),
  least: rational(40),
  around: rational(180),
  core: undefined,
  place: from,
};
const pot: PotFacts = {
  make: 'dish',
  grams: rational(1000),
  water: rational(60),
  salt: undefined,
  sugars: undefined,
  fat: rational(50),
  alcohol: undefined,
  flour: rational(0),
  leavened: false,
  saltOnProduce: undefined,
  place: from,
};

/** Whether a caution speaks of a recipe in which such a food stands. */
function speaks(id: string, food: Partial<CautionFood>, facts: Partial<CautionFacts> = {}): boolean {
  const one = cautionRules.find((each) => each.id === id);
  if (!one) throw new Error(`no caution ${id}`);
  return (
    one.find({
      foods: [{ ...example, ...food }],
      pots: [pot],
      keeps: [],
      acidity: undefined,
      standings: [],
      alcohol: undefined,
      title: 'Example',
      place: from,
      ...facts,
    }) !== undefined
  );
}

/** A rule that speaks for each of some foods, and does not for an ordinary one. */
const behaves =
  (id: string, foods: readonly Partial<CautionFood>[], other: Partial<CautionFood> = {}) =>
  (): Finding => {
    const all = foods.every((food) => speaks(id, food));
    return found(all && !speaks(id, other), `caution ${id}`);
  };

// ---------------------------------------------------------------- keeping

const charted = new Map(keepingChart.map((row) => [row.key, row]));

/** The longest time of a place in a row: `fridge: 3 - 4 Days; freezer: 2 - 3 Months`. */
function longest(value: string, place: string): Rational | undefined {
  const part = new RegExp(`(?:^|; )${place}(?: after opening)?: (?:[\\d]+ - )?(\\d+) (Hour|Day|Week|Month)s?`).exec(
    value,
  );
  if (!part) return undefined;
  const days = { Hour: rational(1, 24), Day: rational(1), Week: rational(7), Month: rational(30) }[part[2] ?? 'Day'];
  return days && multiply(rational(Number(part[1])), days);
}

function chartRow(row: Row): Finding {
  const held = charted.get(row.key);
  if (!held) return found(false, 'not held');
  const shown: string[] = [];
  let holds = true;
  for (const place of ['pantry', 'fridge', 'freezer'] as const) {
    const days = held[place];
    if (!days) continue;
    const published = longest(row.value, place);
    holds &&= published !== undefined && compare(days, published) === 0;
    shown.push(`${place} ${toExactText(days)} d`);
  }
  return found(holds && shown.length > 0, shown.join(', '));
}

// ---------------------------------------------------------------- alcohol

const retention: Readonly<Record<string, number>> = {
  'alcohol_retained.no_heat_immediate': 0,
  'alcohol_retained.stirred_in.15min': 15,
  'alcohol_retained.stirred_in.30min': 30,
  'alcohol_retained.stirred_in.1h': 60,
  'alcohol_retained.stirred_in.1.5h': 90,
  'alcohol_retained.stirred_in.2h': 120,
  'alcohol_retained.stirred_in.2.5h': 150,
};

const retained =
  (minutes: Rational) =>
  (row: Row): Finding => {
    const percent = multiply(alcoholRetained(minutes), rational(100));
    return found(toDecimal(percent, 1) === toDecimal(exact(row.value), 1), `${toDecimal(percent, 1)} %`);
  };

/** Recipes in which the lines say what the row says; what the ledger leaves of the brandy's alcohol is held against it. */
const treatments: Readonly<Record<string, string>> = {
  'alcohol_retained.flamed': '300 g pears\n  40 g brandy\n  hands 1 min using flame: Set it alight.',
  'alcohol_retained.no_heat_stored_overnight':
    '500 g whole milk\n  200 g egg\n  40 g brandy\n  hands 1 min: Mix.\n  wait overnight at 4 C: Chill.',
  'alcohol_retained.added_to_boiling_liquid_then_off_heat':
    '400 g water\n  hob 5 min until 100 C: Boil.\n  40 g brandy\n  hands 1 min: Stir it in off the heat.',
  'alcohol_retained.baked_25min_not_stirred_in': '300 g pears\n  40 g brandy\n  oven 25 min at 180 C: Bake.',
};

function treated(row: Row): Finding {
  const { formulas } = compileText(`recipe Try\n\nmake try\n  ${treatments[row.key] ?? ''}\n`);
  const part = formulas[0]?.makes[0]?.pot.parts.find(({ food }) => food.name === 'brandy');
  const alcohol = part?.food.food?.nutrients.alcohol;
  if (!part || !alcohol) throw new Error('no brandy');
  const lost = divide(part.alcoholLost, multiply(part.grams, divide(alcohol, rational(100))));
  const percent = toDecimal(multiply(subtract(rational(1), lost), rational(100)), 1);
  return found(percent === toDecimal(exact(row.value), 1), `${percent} % in a recipe whose lines say so`);
}

// ---------------------------------------------------------------- the rules

const curing = (row: Row): Finding => {
  // 17 lb at 156 parts in a million with a 6.25 % cure: the poster prints 19.21 g, the arithmetic gives 19.25.
  const meat = multiply(rational(17), exact('453.59237'));
  const grams = toDecimal(curingSaltFor(meat, nitrite.comminuted), 2);
  return found(row.value.includes(`exact ${grams}`), `${grams} g`);
};

const curingAPound = (row: Row): Finding => {
  const grams = toDecimal(curingSaltFor(exact('453.6'), nitrite.comminuted), 2);
  return found(row.value.endsWith(`= ${grams}`), `${grams} g`);
};

/** The parts in a million are of the raw meat that goes in: 2.5 g of cure on 1 kg are 156.25, whatever dries off later. */
const curingBasis = (): Finding => {
  const parts = nitritePartsPerMillion(exact('2.5'), rational(1000));
  return found(toExactText(parts) === '156.25', `${toExactText(parts)} parts in a million of the meat put in`);
};

const shows = (text: string, parts: readonly string[]): Finding =>
  found(
    parts.every((part) => text.includes(part)),
    parts.join(', '),
  );

const coolingRow = (row: Row): Finding => {
  const f = (value: Rational): string => toDecimal(inFahrenheit(value), 0);
  const c = (value: Rational): string => toDecimal(value, 0);
  const h = (value: Rational): string => toDecimal(divide(value, rational(60)), 0);
  const { from: hot, firstTo, firstWithin, to, within, fromRoomWithin } = cooling;
  if (row.key === 'cool.stage1') {
    return shows(`${row.value} ${row.tolerance}`, [
      `${f(hot)} -> ${f(firstTo)} F`,
      `${c(hot)} -> ${c(firstTo)} C`,
      `within ${h(firstWithin)} h`,
    ]);
  }
  if (row.key === 'cool.total') {
    return shows(`${row.value} ${row.tolerance}`, [
      `${f(hot)} -> ${f(to)} F`,
      `${c(hot)} -> ${c(to)} C`,
      `within ${h(within)} h`,
    ]);
  }
  return shows(`${row.value} ${row.tolerance}`, [`to ${f(to)} F`, `within ${h(fromRoomWithin)} h`]);
};

const garlicWarm = (): Finding => {
  const keeps = [{ minutes: rational(60), celsius: rational(20), note: '', make: 'dish', ofDish: true, place: from }];
  const one = cautionRules.find(({ id }) => id === 'garlic-in-oil');
  const finding = one?.find({
    foods: [{ ...example, flags: ['garlic'] }],
    pots: [pot],
    keeps,
    acidity: undefined,
    standings: [],
    alcohol: undefined,
    title: '',
    place: from,
  });
  return found(finding?.weight === 'check' && /never at room warmth/.test(finding.text), 'an hour at 20 °C is flagged');
};

const perishables = (): Finding => {
  const standings = [
    {
      minutes: rational(180),
      celsius: rational(22),
      orMore: false,
      breadOrDry: false,
      afterHeat: false,
      make: 'dish',
      place: from,
    },
  ];
  const animal = (['meat', 'fish', 'egg', 'dairy'] as const).every((role) =>
    speaks('danger-zone', { roles: [role], standings }),
  );
  return found(
    animal && speaks('garlic-in-oil', { flags: ['garlic'] }) && speaks('unpasteurised', { flags: ['sprouts'] }),
    'animal food, sprouts, garlic in oil',
  );
};

/** Rows of the keeping chart for dishes that are made at home and that no row of ours speaks of. */
const homeMadeUncharted = [
  'keep.egg_salad',
  'keep.potato_salad',
  'keep.cheesecake',
  'keep.cream_pies_banana_cream_coconut_cream_butterscotch',
  'keep.pies_pecan',
  'keep.pies_pumpkin',
  'keep.cookies_soft',
  'keep.cookies_crispy',
  'keep.orange_juice_freshly_squeezed',
  'keep.lemon_juice_fresh_squeezed',
  'keep.salsa_fresh',
  'keep.salsa_homemade_fresh',
  'keep.salad_dressing_homemade',
].filter((key) => !charted.has(key));

export const rules: readonly Rule[] = [
  rule(['temp.min.beef_pork_veal_lamb_steaks_chops_roasts'], restOf(fahrenheit(coreTemperatures.wholeMeat))),
  rule(['temp.min.ham_fresh_or_smoked_uncooked'], restOf(fahrenheit(coreTemperatures.wholeMeat))),
  rule(['temp.min.ground_beef_pork_veal_lamb'], fahrenheit(coreTemperatures.minced)),
  rule(['temp.min.poultry_all_incl_ground_stuffing'], fahrenheit(coreTemperatures.poultry)),
  rule(['temp.min.egg_dishes'], fahrenheit(coreTemperatures.eggDishes)),
  rule(['temp.min.fish_shellfish'], fahrenheit(coreTemperatures.fish)),
  rule(['temp.min.steaks.metric', 'temp.min.145F.printed_C'], celsius(coreTemperatures.wholeMeat)),
  rule(['temp.min.160F.printed_C'], celsius(coreTemperatures.minced)),
  rule(['temp.min.165F.printed_C'], celsius(coreTemperatures.poultry)),
  rule(['temp.min.140F.printed_C'], celsius(dangerZone.high)),
  rule(['danger_zone'], (row) => {
    const quern = `${toExactText(inFahrenheit(dangerZone.low))}-${toExactText(inFahrenheit(dangerZone.high))}`;
    return found(row.value === quern, `${quern} °F`);
  }),
  rule(['danger_zone.max_time'], hours(dangerZone.longest)),
  rule(['danger_zone.max_time.above_90F'], hours(dangerZone.longestHot)),
  rule(['cold.keep'], fahrenheit(garlicInOil.celsius)),
  rule(['cool.stage1', 'cool.total', 'cool.from_ambient'], coolingRow),
  rule(['cold_hold'], fahrenheit(coldHold.celsius)),
  rule(['rte_tcs.date_mark'], (row) =>
    shows(row.value, [`${coldHold.days} days at ${toDecimal(inFahrenheit(coldHold.celsius), 0)} F`]),
  ),
  rule(['tcs.members'], perishables),
  rule(['acid_food.pH'], plain(preserves.acidPh, 'pH')),
  rule(['aw.limit'], plain(preserves.lowWaterActivity, 'water activity')),
  rule(['kraut.salt.pct_from_3tbsp'], (row) => shows(row.value, [`= ${toExactText(vegetableFerment.leaflet)}`])),
  rule(['kraut.salt.pct_from_batch'], (row) => shows(row.value, [`= ${toExactText(vegetableFerment.lowest)}`])),
  rule(['kraut.salt.recommended'], (row) =>
    shows(row.value, [
      `${toExactText(vegetableFerment.recommended.low)}-${toExactText(vegetableFerment.recommended.high)}`,
    ]),
  ),
  rule(['nitrite.max.comminuted'], plain(nitrite.comminuted, 'parts in a million')),
  rule(['nitrite.max.immersed_or_pumped'], plain(nitrite.immersed, 'parts in a million')),
  rule(['nitrite.max.dry_cured'], plain(nitrite.dryCured, 'parts in a million')),
  rule(['nitrite.cure1_strength'], plain(nitrite.curingSaltPercent, '%')),
  rule(['nitrite.basis'], curingBasis),
  rule(['nitrite.check'], curing),
  rule(['nitrite.check_1lb'], curingAPound),
  rule(['kidney_beans.soak'], hours(kidneyBeans.soak)),
  rule(['kidney_beans.boil'], plain(kidneyBeans.boil, 'min')),
  // Some pages say ten minutes; the longer time must be the one that is told.
  rule(['kidney_beans.boil.other'], (row) =>
    found(compare(kidneyBeans.boil, exact(row.value)) > 0, `${toExactText(kidneyBeans.boil)} min`),
  ),
  rule(['garlic_oil.fridge'], (row) => same(row, divide(garlicInOil.longest, rational(1440)), 'd')),
  rule(['garlic_oil.room_temp'], garlicWarm),
  rule(['honey.infants'], behaves('honey-infants', [{ flags: ['honey'] }, { flags: ['honey'], heatings: [baked] }])),
  rule(['raw_flour'], behaves('raw-flour', [{ roles: ['flour'] }], { roles: ['flour'], heatings: [baked] })),
  rule(
    ['eggs.highly_susceptible'],
    behaves('raw-egg', [{ flags: ['raw-egg'] }], { flags: ['raw-egg'], heatings: [baked] }),
  ),
  rule(['high_risk_groups.avoid'], () =>
    found(
      ['unpasteurised', 'soft-ripened-cheese', 'sprouts'].every((flag) => speaks('unpasteurised', { flags: [flag] })) &&
        ['raw-meat', 'raw-fish'].every((flag) => speaks('raw-meat-or-fish', { flags: [flag] })) &&
        speaks('raw-egg', { flags: ['raw-egg'] }),
      'cautions unpasteurised, raw-meat-or-fish, raw-egg',
    ),
  ),
  ...Object.entries(retention).map(([key, minutes]) => rule([key], retained(rational(minutes)))),
  rule(Object.keys(treatments), treated),
  rule([...charted.keys()], chartRow),
  doesNotApply(
    /^tcs\.[AB]\./,
    'needs a measured water activity, which a recipe cannot know; the cautions ask for it to be measured',
  ),
  doesNotApply(
    [
      'temp.min.ham_fully_cooked_reheat_inspected_plant',
      'temp.min.ham_fully_cooked_reheat_other',
      'temp.min.leftovers_casseroles',
      'reheat.leftovers',
    ],
    'reheating what is cooked already',
  ),
  doesNotApply(['hot.keep', 'hot_hold', 'uk.hot_hold', 'uk.cold_hold'], 'holding at service, after the recipe ends'),
  doesNotApply(
    [
      'danger_zone.doubling',
      'raw_flour.outbreaks_since_2009',
      'kidney_beans.raw',
      'kidney_beans.cooked',
      'kidney_beans.white',
    ],
    'background to a rule, no figure that a recipe is held against',
  ),
  doesNotApply(
    ['eggs_shell_ambient_air', 'prep.max_time', 'thaw.running_water'],
    'practice of a kitchen that no line of a recipe shows',
  ),
  doesNotApply(['oven.min_for_roasting'], 'a rule for the dial; the cautions go by the temperature inside the food'),
  doesNotApply(/^kraut\.(?!salt\.(?:pct|recommended))/, 'instructions for one product, by volume and by season'),
  doesNotApply(
    [
      'nitrite.max.bacon_pumped_or_immersed',
      'nitrite.max.bacon_dry_cured',
      'nitrite.min.keep_refrigerated',
      'nitrite.home_cure.21CFR172.170',
    ],
    'limits of products and processes that a recipe does not name',
  ),
  doesNotApply(['garlic_oil.fridge.older', 'garlic_oil.fridge.psu_old'], 'superseded by the row of four days'),
  doesNotApply(
    homeMadeUncharted,
    'made at home too, but the ledger cannot tell such a dish from another, and the nearest row of the chart is used',
  ),
  {
    claims: (key) => key.startsWith('keep.') && !charted.has(key) && !homeMadeUncharted.includes(key),
    check: () => ({
      kind: 'does not apply',
      reason: 'a bought food or an ingredient; claims are made of home-made dishes',
    }),
  },
];
