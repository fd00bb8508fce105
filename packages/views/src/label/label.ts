import {
  allergensDeclared,
  linePlace,
  normaliseName,
  placeOf,
  type Compiled,
  type Food,
  type Formula,
  type Kitchen,
} from '@quern/compiler';
import {
  compare,
  divide,
  HUNDRED,
  middle,
  multiply,
  ONE,
  rational,
  sign,
  sizeOf,
  subtract,
  toExactText,
  units,
  type Rational,
} from '@quern/quantity';
import { diagnose, singularWords, type Diagnostic, type Outcome, type Place } from '@quern/text';
import type { Timetable } from '../common/timetable.js';
import { allergensOf, foodUses, type AllergenAccount, type FoodUse, type KitchenTraces } from './allergens.js';
import { cautionFactsOf } from './cautions/facts-of.js';
import { cautionsOf, GUIDANCE } from './cautions/registry.js';
import type { Caution } from './cautions/rule.js';
import { longClaims } from './cautions/rules/keeping.js';
import { life } from './cautions/words.js';
import { compositionOf, presenceIn, type Component, type Composition, type Presence } from './composition.js';
import type { WeighedAs } from './edible.js';
import { declarationOf, grams, type Declaration, type PortionSize } from './declaration.js';
import { explain, type Explanation } from './explain.js';
import { householdServing } from './household.js';
import { statementOf, type Statement } from './ingredients.js';
import type { Market } from './nutrient-list.js';
import { nutritionOf, type Nutrition } from './nutrition.js';
import { judge, promisesOf, type Against, type Promised, type Verdict } from './promises.js';
import { significant } from './rounding.js';
import { statementInputOf } from './statement-of.js';
import { tagOf, type Tag } from './tag.js';

export interface LabelOptions {
  readonly market: Market;
  /** `100g` leaves out portions; `serving` and `piece` choose which. Without it: the serving if written, else the piece. */
  readonly per?: 'serving' | 'piece' | '100g';
  /** The day for which the lists of allergens are taken, an ISO date; without it the newest. */
  readonly day?: string;
  /** Kitchens whose traces and room warmth hold. */
  readonly kitchens?: readonly Kitchen[];
  /** Names of what a picture on the label shows, for the percentages. */
  readonly pictured?: readonly string[];
  /** The timetable as the clock plans it, for the cautions about time; without it they go by the lines at their longest. */
  readonly timetable?: Timetable;
  /** The text of a source of the food table by its id, as `FoodBook.source` gives it; for tracing the figures. */
  readonly sourceText?: (id: string) => string | undefined;
}

/** A truthful account of what is in a dish, as far as the ledger knows. Plain data; nothing is left to compute. */
export interface Label {
  readonly title: string;
  readonly variant: string | undefined;
  /** Of the names, a language tag. */
  readonly language: string;
  readonly market: Market;
  /** What stands at the top: foods that are not in the table, lines that cannot be read, weights that are not known. */
  readonly alerts: readonly string[];
  /** Whether everything that goes in is known; `--strict` asks for it. */
  readonly complete: boolean;
  /** Finished weight, with its ends where the recipe leaves them open. */
  readonly weight: { readonly text: string; readonly between?: readonly [string, string] } | undefined;
  readonly portions: readonly {
    readonly name: string;
    readonly count: string;
    /** The fewest and the most, where the recipe leaves it open. */
    readonly between?: readonly [string, string];
    /** The size of a serving in a household measure, with its grams and how many there are, where a market asks for it. */
    readonly household?: string;
  }[];
  readonly declaration: Declaration;
  readonly statement: Statement;
  readonly allergens: AllergenAccount;
  readonly promises: readonly Verdict[];
  readonly cautions: readonly Caution[];
  readonly guidance: string;
  readonly notes: readonly string[];
  readonly explanations: readonly Explanation[];
  /** The sources that the explanations name by id, with their text where it was asked for. */
  readonly sources: readonly { readonly id: string; readonly text: string }[];
  readonly tag: Tag;
}

/** The label of a compiled recipe or variant for a market. */
export function label(formula: Formula, options: LabelOptions): Outcome<Label> {
  const { uses, kitchens, promises, facts } = account(formula, options.kitchens ?? [], options.timetable);
  const composition = compositionOf(formula);
  const nutrition = nutritionOf(composition);
  const allergens = allergensOf(uses, options.market, {
    ...(options.day !== undefined && { day: options.day }),
    kitchens,
  });
  const statement = statementOf(
    statementInputOf(formula, composition, uses, options.pictured ?? []),
    options.market,
    options.day,
  );
  const cautions = cautionsOf(facts);
  const portions = portionsFor(formula, options.per);
  const declaration = declarationOf(nutrition, options.market, portions);
  const alerts = alertsOf(formula, composition, uses);
  const explanations = explain(composition, nutrition, options.market);
  const value: Label = {
    title: formula.title,
    variant: formula.variant,
    language: formula.facts.language,
    market: options.market,
    alerts,
    complete: alerts.length === 0,
    weight: weightText(nutrition),
    portions: portions.map((one) => portionText(one, formula, nutrition, options.market)),
    declaration,
    statement,
    allergens,
    promises,
    cautions,
    guidance: GUIDANCE,
    notes: notesOf(formula, composition, declaration, portions, options),
    explanations,
    sources: sourcesOf(explanations, options.sourceText),
    tag: tagOf(formula, statement, allergens, tagCautions(cautions)),
  };
  return { value, diagnostics: diagnosticsOf(counted(uses, presenceIn(formula)), promises, longClaims(facts)) };
}

/** What the label and its messages both rest on; the figures and the statement are not part of it, for they take the time. */
function account(formula: Formula, inKitchens: NonNullable<LabelOptions['kitchens']>, timetable?: Timetable) {
  const uses = foodUses(formula);
  const kitchens = tracesOf(inKitchens);
  const promises = promisesOf(formula.facts, (keyword) => keywordPlace(formula, keyword)).map((one) =>
    judge(one, uses, kitchens),
  );
  const facts = cautionFactsOf(formula, { room: roomOf(inKitchens), timetable });
  return { uses, kitchens, promises, facts };
}

/**
 * What the label says of every recipe and variant of a file, each thing once; what the compiler says already is left out.
 * Messages about figures of a market are not among them, so no market is asked for.
 */
export function checkLabel(compiled: Compiled): Diagnostic[] {
  const key = ({ code, place, args }: Diagnostic): string =>
    `${code} ${place.file} ${place.start} ${JSON.stringify(args)}`;
  const brief = ({ code, place }: Diagnostic): string => `${code} ${place.file} ${place.start}`;
  const told = new Set(compiled.diagnostics.map(brief));
  const found = new Map<string, Diagnostic>();
  for (const formula of compiled.formulas) {
    const { uses, promises, facts } = account(formula, compiled.kitchens);
    for (const one of diagnosticsOf(counted(uses, presenceIn(formula)), promises, longClaims(facts))) {
      if (one.place.file === compiled.path && !told.has(brief(one))) found.set(key(one), one);
    }
  }
  return [...found.values()];
}

function sourcesOf(explanations: readonly Explanation[], textOf: LabelOptions['sourceText']): Label['sources'] {
  if (!textOf) return [];
  const ids = new Set(explanations.flatMap(({ rows }) => rows.flatMap(({ sources }) => sources)));
  return [...ids].sort().flatMap((id) => {
    const text = textOf(id);
    return text === undefined ? [] : [{ id, text }];
  });
}

function weightText(nutrition: Nutrition): Label['weight'] {
  const { weight } = nutrition;
  if (!weight) return undefined;
  const low = grams(weight.low);
  const high = grams(weight.high);
  return { text: grams(weight.usual), ...(low !== high && { between: [low, high] as const }) };
}

function portionText(
  portion: PortionSize,
  formula: Formula,
  { weight }: Nutrition,
  market: Market,
): Label['portions'][number] {
  const { name, count } = portion;
  const { facts, servings } = formula;
  const range = count === servings ? facts.serves?.content.range : undefined;
  return {
    name,
    count: significant(count, 4),
    ...(range &&
      compare(range.low, range.high) !== 0 && {
        between: [toExactText(range.low), toExactText(range.high)] as const,
      }),
    ...((market === 'us' || market === 'ca') && {
      household: householdServing(portion, { weight: weight?.usual, millilitres: millilitresGiven(formula) }, market),
    }),
  };
}

/** The volume that the recipe says it gives: '2 bottles of 750 ml', '1.2 l'. */
function millilitresGiven({ facts: { gives, cups }, pieces }: Formula): Rational | undefined {
  const one = gives?.content.each ?? gives?.content.total;
  if (!one || units[one.unit.id].dimension !== 'volume') return undefined;
  const each = multiply(middle(one.range.low, one.range.high), sizeOf(one.unit.id, cups));
  return gives?.content.each && pieces ? multiply(each, pieces) : each;
}

function portionsFor(formula: Formula, per: LabelOptions['per']): PortionSize[] {
  const { serves, gives } = formula.facts;
  const serving =
    formula.servings && portion(singularWords(serves?.content.thing?.text ?? 'servings'), formula.servings);
  const piece = formula.pieces && portion(singularWords(gives?.content.thing?.text ?? 'pieces'), formula.pieces);
  if (per === '100g') return [];
  const chosen = per === 'piece' ? piece : per === 'serving' ? serving : (serving ?? piece);
  return chosen ? [chosen] : [];
}

const portion = (name: string, count: Rational): PortionSize | undefined =>
  sign(count) > 0 ? { name, count } : undefined;

/** Only what a stranger who gets the jar has to know. */
const FOR_THE_TAG = new Set([
  'honey-infants',
  'raw-egg',
  'raw-flour',
  'raw-meat-or-fish',
  'unpasteurised',
  'whole-nuts',
  'alcohol-remains',
  'garlic-in-oil',
]);
const tagCautions = (cautions: readonly Caution[]): string[] =>
  cautions.filter(({ id }) => FOR_THE_TAG.has(id)).map(({ text, forEater }) => forEater ?? text);

function alertsOf(formula: Formula, composition: Composition, uses: readonly FoodUse[]): string[] {
  const alerts: string[] = [];
  const strangers = [...new Set(uses.filter((use) => !use.food && !use.unread).map((use) => use.name))];
  if (strangers.length > 0) {
    alerts.push(
      `Not in the food table: ${strangers.join(', ')}. Nothing can be said of their allergens, and nutrition is without them.`,
    );
  }
  const choices = [...new Set(uses.filter(({ choice }) => choice === 'class').map(({ name }) => name))];
  if (choices.length > 0) alerts.push(`Left to choose: ${choices.join(', ')}. Nutrition is without it.`);
  const silent = [
    ...new Set(uses.filter((use) => use.food && !use.food.allergens && use.choice !== 'member').map((use) => use.name)),
  ];
  if (silent.length > 0) alerts.push(`Allergens not stated: ${silent.join(', ')}.`);
  if (formula.broken) alerts.push('A line cannot be read: something may be missing here. Mend it first.');
  else if (composition.withheld) {
    alerts.push('The ledger does not come out: figures are withheld until the errors are mended.');
  }
  const unknown = composition.unweighed.filter(({ open }) => !open).map(({ name }) => name);
  if (unknown.length > 0) alerts.push(`Weight not known: ${unknown.join(', ')}. Figures per 100 g are withheld.`);
  return alerts;
}

const shareWords = (share: Rational): string => `${significant(multiply(share, HUNDRED), 2)} %`;

/** Names of declared nutrients by the foods that lack a figure for them. */
function byMissing(declaration: Declaration): Map<string, string[]> {
  const found = new Map<string, string[]>();
  for (const { missing, name } of declaration.rows) {
    if (missing.length === 0) continue;
    const foods = missing.join(', ');
    const names = found.get(foods) ?? [];
    const plain = name.replace('of which ', '').replace(/^[A-Z]/, (letter) => letter.toLowerCase());
    if (!names.includes(plain)) names.push(plain);
    found.set(foods, names);
  }
  return found;
}

function notesOf(
  formula: Formula,
  composition: Composition,
  declaration: Declaration,
  portions: readonly PortionSize[],
  options: LabelOptions,
): string[] {
  const notes: string[] = [];
  if (composition.estimate)
    notes.push('Estimate: a drained liquid takes part, and is taken to carry the mean of the liquids in its pot.');
  if (portions.length === 0 && options.per !== '100g')
    notes.push(
      options.per === undefined
        ? 'The recipe says neither how many it serves nor how many pieces it gives, so there is no figure for a portion.'
        : `The recipe does not say ${options.per === 'piece' ? 'how many pieces it gives' : 'how many it serves'}, so there is no figure for a ${options.per}.`,
    );
  for (const [foods, names] of byMissing(declaration)) {
    notes.push(`‘At least’: figures for ${names.join(', ')} are missing, or not whole, for ${foods}.`);
  }
  const weighed = (as: WeighedAs['as']): Component[] =>
    composition.components.filter((component) => component.weighed?.as === as);
  const bought = weighed('bought');
  if (bought.length > 0) {
    const each = bought.map(({ name, weighed: one }) => `${name} ${shareWords(one?.eaten ?? ONE)}`);
    notes.push(
      `Weighed whole, and counted by the edible portion: ${each.join(', ')}. Figures per 100 g are for what is eaten; peel, stone and shell are in the finished weight until a line bins them.`,
    );
  }
  const perhaps = weighed('perhaps').map(({ name }) => name);
  if (perhaps.length > 0) {
    notes.push(
      `Weights count as edible: ${perhaps.join(', ')}. If a weight is that of the thing as bought, say so after a comma (‘, peeled’, ‘, stoned’), or bin the peel, stone or shell in a line.`,
    );
  }
  notes.push('Figures are worked out from food tables, not analysed.');
  return notes;
}

function tracesOf(kitchens: readonly Kitchen[]): KitchenTraces[] {
  return kitchens.map((kitchen) => ({
    kitchen: kitchen.name,
    allergens: kitchen.traces.flatMap((word) => allergensDeclared(normaliseName(word)) ?? []),
    place: linePlace(kitchen.ref),
  }));
}

function roomOf(kitchens: readonly Kitchen[]): Rational | undefined {
  const room = kitchens.find((kitchen) => kitchen.room)?.room;
  if (!room) return undefined;
  return room.scale === 'C' ? room.high : divide(multiply(subtract(room.high, rational(32)), rational(5)), rational(9));
}

// ---------------------------------------------------------------- messages

/** Less than this part of a dish (a vanilla pod in a custard) changes no figure that a label prints. */
const COUNTS_FROM = rational(1, 100);

/** Where a keyword stands among the facts; the recipe's line when it came from elsewhere. */
function keywordPlace({ block, file, ref }: Formula, keyword: string): Place {
  for (const { content, line } of block.facts) {
    if (content.kind !== 'list-fact' || content.word !== 'keywords') continue;
    const item = content.items.find(({ text }) => text === keyword);
    if (item) return placeOf({ file, line }, item.span);
  }
  return linePlace(ref);
}

/** What counts in the figures of the dish: not what is binned again, nor what is too little to tell. */
function counted(uses: readonly FoodUse[], presence: Presence): readonly FoodUse[] {
  const least = multiply(presence.grams, COUNTS_FROM);
  const counts = new Set<Food | undefined>([
    ...presence.foods.filter(({ grams }) => compare(grams, least) >= 0).map(({ food }) => food),
    ...presence.unweighed.map(({ food }) => food),
  ]);
  // Of a choice left open, the choice itself is told of, not each food that it may be.
  return uses.filter(
    ({ food, choice }) => choice !== 'member' && (presence.withheld || choice === 'class' || counts.has(food)),
  );
}

function diagnosticsOf(
  uses: readonly FoodUse[],
  promises: readonly Verdict[],
  claims: ReturnType<typeof longClaims>,
): Diagnostic[] {
  const found: Diagnostic[] = [];
  const silent = new Set<string>();
  for (const use of uses) {
    // A food that nobody knows is told by the compiler; this is one that is known, without figures.
    if (silent.has(use.name) || !use.food || hasFigures(use.food)) continue;
    silent.add(use.name);
    found.push(diagnose('A02', use.place, { name: use.name }));
  }
  found.push(...promises.flatMap((verdict) => promiseDiagnostic(verdict) ?? []));
  for (const { claim, row, published, where } of claims) {
    found.push(
      diagnose('A09', claim.place, {
        claimed: life(divide(claim.minutes, rational(1440))),
        where,
        published: life(published),
        kind: row.name,
      }),
    );
  }
  return found;
}

function hasFigures(food: Food): boolean {
  const { energyKcal, fat, protein, carbohydrateByDifference, carbohydrateAvailable } = food.nutrients;
  return [energyKcal, fat, protein, carbohydrateByDifference, carbohydrateAvailable].some(
    (value) => value !== undefined,
  );
}

function promiseDiagnostic({ promised, verdict, against }: Verdict): Diagnostic | undefined {
  const first = against[0];
  const related = against.map((one) => ({ place: one.place, note: because(one) }));
  if (verdict === 'contradicted' && first) {
    const args = { name: first.food, how: first.why === 'ingredient' ? 'goes in' : 'may go in' };
    return promised.text.startsWith('free of ')
      ? diagnose('A01', promised.place, { promise: promised.text.slice('free of '.length), ...args }, related)
      : diagnose('A08', promised.place, { tag: promised.text, ...args }, related);
  }
  // A line that cannot be read has its own message.
  if (verdict !== 'cannot confirm' || (first && against.every(({ why }) => why === 'unread'))) return undefined;
  const why = first ? REASONS[first.why] : 'that is nothing that can be checked';
  return diagnose(
    'A07',
    promised.place,
    { promise: promised.text, why, name: first?.food ?? promised.test.word, way: wayToProve(promised, first) },
    related,
  );
}

const REASONS: Readonly<Record<Against['why'], string>> = {
  ingredient: 'it goes in',
  optional: 'it may be put in',
  alternative: 'it may stand in for another food',
  traces: 'it may hold traces',
  kitchen: 'traces are declared there',
  unknown: 'it is not known whether it fits',
  unread: 'what it puts in is not known',
};

/** What would settle a promise that stands open. */
function wayToProve({ test }: Promised, first: Against | undefined): string {
  const away = 'take the promise away';
  if (!first) return away;
  switch (first.why) {
    case 'kitchen':
      return `${away}, or the traces of the kitchen if they no longer hold`;
    default:
      return test.kind === 'diet'
        ? `use a food of which it is known, or ${away}`
        : `say what ${first.food} contains in a \`food\` block, or ${away}`;
  }
}

/** Why a food speaks against a promise, in words. */
export function because({ food, why }: Against): string {
  switch (why) {
    case 'ingredient':
      return `${food}: put in here`;
    case 'optional':
      return `${food}: may be put in`;
    case 'alternative':
      return `${food}: may stand in for another`;
    case 'traces':
      return `${food}: traces`;
    case 'kitchen':
      return `${food}: the kitchen declares traces`;
    case 'unknown':
    case 'unread':
      return `nothing is known of ${food}`;
  }
}
