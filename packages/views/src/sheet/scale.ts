import {
  add,
  compare,
  divide,
  isZero,
  multiply,
  ONE,
  PLAIN,
  printCount,
  printDecimal,
  printExact,
  sign,
  type Rational,
} from '@quern/quantity';
import { normaliseName, pickOf, singular, weigh, type Formula, type InItem, type LedgerFood } from '@quern/compiler';
import type { InLine, VesselFact } from '@quern/syntax';
import { countedOf, foodOf } from '../common/item-amount.js';
import { shortWeight } from '../common/short-weight.js';
import { answer, refuse, type Answer } from '../common/answer.js';
import type { ScaleRequest } from './scale-request.js';
import { depthRatio, tinOf, tinText, type Tin } from './vessel.js';

/** By how much a recipe is multiplied, exactly, and why. */
export interface Scale {
  readonly factor: Rational;
  /** In words: 'times 2 1/2', '6 loaves', 'as much as 350 g sunflower seeds allow'. */
  readonly words: string;
  /** Other tins than those of the recipe. */
  readonly tin?: {
    readonly fact: VesselFact;
    readonly tin: Tin;
    /** How deep the filling stands against that of the recipe's own tins; undefined when a depth is not known. */
    readonly depth: Rational | undefined;
  };
}

/** As written. */
export const UNSCALED: Scale = { factor: ONE, words: 'as written' };

/** The factor that a request means for a recipe, or why it cannot be found. */
export function findScale(request: ScaleRequest, formula: Formula): Answer<Scale> {
  switch (request.kind) {
    case 'times':
      return answer({ factor: request.factor, words: `times ${printExact(request.factor, PLAIN)}` });
    case 'makes':
      return byPieces(request.count, request.thing, formula);
    case 'serves':
      return byServings(request.count, request.thing, formula);
    case 'weight':
      return byWeight(request.grams, formula);
    case 'tin':
      return byTin(request.tin, formula);
    case 'have':
      return byStock(request.lines, formula);
  }
}

const sameThing = (a: string, b: string): boolean => lastWord(a) === lastWord(b);
const lastWord = (words: string): string => singular((words.trim().split(/\s+/).at(-1) ?? '').toLowerCase());

function byPieces(count: Rational, thing: string, formula: Formula): Answer<Scale> {
  const gives = formula.facts.gives?.content;
  const serves = formula.facts.serves?.content;
  const said = `${printCount(count, PLAIN)} ${thing}`.trim();
  if (
    gives?.count &&
    formula.pieces &&
    !isZero(formula.pieces) &&
    (thing === '' || sameThing(thing, gives.thing?.text ?? ''))
  ) {
    return answer({ factor: divide(count, formula.pieces), words: said });
  }
  // `40 slices` where the recipe says what it serves.
  if (thing !== '' && serves?.thing && sameThing(thing, serves.thing.text)) return byServings(count, thing, formula);
  if (!gives?.count) {
    return refuse(
      `“${formula.title}” does not say how many it makes`,
      'add a line such as “gives 2 loaves of 1 kg”, or scale by a number or a weight',
    );
  }
  return refuse(
    `“${formula.title}” makes ${gives.thing?.text ?? 'pieces'}, not ${thing}`,
    `write the number of ${gives.thing?.text ?? 'pieces'}, or scale by a number or a weight`,
  );
}

function byServings(count: Rational, thing: string, formula: Formula): Answer<Scale> {
  const whole = formula.servings;
  if (!whole || isZero(whole)) {
    return refuse(
      `“${formula.title}” does not say how many it serves`,
      'add a line such as “serves 8”, or scale by a number or a weight',
    );
  }
  const word = thing || formula.facts.serves?.content.thing?.text || 'servings';
  return answer({ factor: divide(count, whole), words: `${printCount(count, PLAIN)} ${word}` });
}

function byWeight(grams: Rational, formula: Formula): Answer<Scale> {
  const whole = formula.dishGrams;
  if (!whole || sign(whole) <= 0) {
    return refuse(
      `the weight of “${formula.title}” is not known`,
      'check the file to see which line has no weight, or scale by a number',
    );
  }
  return answer({
    factor: divide(grams, whole),
    words: `${shortWeight(grams, { style: PLAIN })} in all, as it is served`,
  });
}

function byTin(fact: VesselFact, formula: Formula): Answer<Scale> {
  const own = formula.facts.vessel?.content;
  const written = own && tinOf(own, formula.facts.cups);
  if (!own || !written) {
    return refuse(
      `“${formula.title}” does not say which tins it is written for`,
      'add a line such as “vessel 2 loaf tins of 23 x 11 x 8 cm”, or scale by a number',
    );
  }
  const wanted = tinOf(fact, formula.facts.cups);
  if (!wanted || isZero(written.volume) || isZero(written.count)) {
    return refuse('the size of the tin is not known', 'write it with its depth, such as “3 of 25 x 10 x 8 cm”');
  }
  const named = fact.thing.text === 'tins' || fact.thing.text === 'tin' ? { ...fact, thing: own.thing } : fact;
  const factor = divide(multiply(wanted.count, wanted.volume), multiply(written.count, written.volume));
  return answer({
    factor,
    words: `${tinText(named, wanted.count)}, filled as full as ${tinText(own, written.count)}`,
    tin: { fact: named, tin: wanted, depth: depthRatio(written, wanted, factor) },
  });
}

// ---------------------------------------------------------------- by what there is

function byStock(lines: readonly InLine[], formula: Formula): Answer<Scale> {
  let least: { factor: Rational; line: InLine } | undefined;
  for (const line of lines) {
    const found = stockFactor(line, formula);
    if (!found.ok) return found;
    if (!least || compare(found.value, least.factor) < 0) least = { factor: found.value, line };
  }
  if (!least)
    return refuse('nothing is said to be at hand', 'write it with its weight, such as “350 g sunflower seeds”');
  return answer({ factor: least.factor, words: `as much as ${stockText(least.line)} will do` });
}

function stockText({ amount, name }: InLine): string {
  if (amount.kind === 'measure') {
    const counted = countedOf(amount);
    const number = printCount(amount.range.low, PLAIN);
    return counted
      ? `${number} ${counted.many} ${name.text}`
      : `${printDecimal(amount.range.low, 3)} ${amount.unit.id} ${name.text}`;
  }
  return 'range' in amount ? `${printCount(amount.range.low, PLAIN)} ${name.text}` : name.text;
}

function stockFactor(line: InLine, formula: Formula): Answer<Rational> {
  const items = itemsNamed(line.name.text, formula);
  const [first] = items;
  if (!first) {
    const names = [...new Set(purchased(formula).map((item) => item.content.name.text))];
    return refuse(
      `“${line.name.text}” does not go into “${formula.title}”`,
      `use a name of the recipe: ${names.slice(0, 12).join(', ')}`,
    );
  }
  const inCounts = countRatio(line, items);
  if (inCounts) return answer(inCounts);
  const needed = total(items.map((item) => item.weighed.grams));
  const food = foodOf(first);
  const there = food && weighStock(line, food, formula);
  if (!needed || isZero(needed))
    return refuse(
      `the recipe does not say what its ${line.name.text} weighs`,
      'check the file to see why, or scale by a number',
    );
  if (!there) return refuse(`the weight of that much ${line.name.text} is not known`, 'write it in grams');
  return answer(divide(there, needed));
}

function weighStock(line: InLine, food: LedgerFood, formula: Formula): Rational | undefined {
  const context = { cups: formula.facts.cups, pick: 'middle' as const, taught: new Map() };
  return weigh(line.amount, line.equals, food, { name: line.name.text, note: '' }, context).grams;
}

/** Eggs against eggs, when all lines count. */
function countRatio(line: InLine, items: readonly InItem[]): Rational | undefined {
  if (line.amount.kind !== 'count') return undefined;
  const needed = total(
    items.map(({ content: { amount } }) => (amount.kind === 'count' ? pickOf(amount.range, 'middle') : undefined)),
  );
  return needed && !isZero(needed) ? divide(line.amount.range.low, needed) : undefined;
}

function total(values: readonly (Rational | undefined)[]): Rational | undefined {
  let sum: Rational | undefined;
  for (const value of values) {
    if (!value) return undefined;
    sum = sum ? add(sum, value) : value;
  }
  return sum;
}

const purchased = (formula: Formula): InItem[] =>
  formula.makes.flatMap((make) =>
    make.items.filter((item): item is InItem => item.kind === 'in' && item.source.kind === 'food' && !item.optional),
  );

/** The lines that put in what a name means: the name itself or another name of the food, else the only food whose last word it is. */
function itemsNamed(name: string, formula: Formula): readonly InItem[] {
  const wanted = normaliseName(name);
  const items = purchased(formula);
  const whole = items.filter((item) => namesOf(item).some((known) => known === wanted));
  if (whole.length > 0) return whole;
  const byLast = items.filter((item) => normaliseName(item.content.name.text).endsWith(` ${wanted}`));
  const foods = new Set(byLast.map((item) => foodOf(item)?.key));
  return foods.size === 1 ? byLast : [];
}

function namesOf(item: InItem): readonly string[] {
  const food = foodOf(item)?.food;
  return [item.content.name.text, ...(food ? [food.name, ...food.synonyms] : [])].map(normaliseName);
}
