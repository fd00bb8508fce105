import { diagnose, type Diagnostic } from '@quern/text';
import {
  absolute,
  compare,
  divide,
  exact,
  multiply,
  rational,
  sign,
  subtract,
  sum,
  sizeOf,
  toDecimal,
  ONE,
  ZERO,
  type Rational,
} from '@quern/quantity';
import type { Bound } from '../bind.js';
import { yieldGrams } from '../facts.js';
import type { LedgerInput } from '../ledger/state.js';
import { countsAsFlour } from '../substances.js';
import type { Culture, Formula, Make, Product } from '../model.js';
import { linePlace, placeOf } from '../places.js';
import { showGrams } from '../show.js';

type Report = (diagnostic: Diagnostic) => void;

const YIELD_TOLERANCE = exact('0.03');
const ASSERTED_TOLERANCE = exact('0.01');
const LEFT_OVER = exact('0.01');

/** Everything that is asked of the finished ledger of one formula. */
export function checkLedger(
  formula: Formula,
  bound: Bound,
  counts: LedgerInput['counts'],
  taken: ReadonlyMap<string, Rational>,
  saved: ReadonlyMap<string, Rational>,
  report: Report,
): void {
  for (const make of formula.makes) {
    checkAsserted(make, formula, report);
    checkUnusedFoods(make, report);
  }
  checkYield(formula, report);
  checkProducts(formula, bound, report);
  checkFlourNames(formula, counts, report);
  for (const [name, grams] of taken)
    checkCulture(name, grams, saved.get(name) ?? ZERO, formula.cultures, formula, report);
}

/** M05: `make dough = 2335 g` against what the pot holds, to one per cent. */
function checkAsserted(make: Make, formula: Formula, report: Report): void {
  if (!make.asserted || !make.pot.grams) return;
  const grams = multiply(make.asserted.range.low, sizeOf(make.asserted.unit.id, formula.facts.cups));
  if (sign(grams) <= 0) return;
  const off = absolute(divide(subtract(make.pot.grams, grams), grams));
  if (compare(off, ASSERTED_TOLERANCE) <= 0) return;
  report(
    diagnose('M05', placeOf(make.ref, make.asserted.span), {
      name: make.name,
      found: showGrams(make.pot.grams),
      written: showGrams(grams),
    }),
  );
}

/** M12: something goes in after the last step, so no sentence says what to do with it. */
function checkUnusedFoods(make: Make, report: Report): void {
  const last = make.items.findLastIndex((item) => item.kind === 'step');
  if (last < 0) return;
  for (const item of make.items.slice(last + 1)) {
    if (item.kind === 'in' && !item.optional)
      report(diagnose('M12', linePlace(item.ref), { name: item.content.name.text, make: make.name }));
  }
}

/** M04, M10: what the ledger ends with against `gives`, to three per cent. */
function checkYield(formula: Formula, report: Report): void {
  const { gives } = formula.facts;
  const promised = yieldGrams(formula.facts);
  if (!gives || !promised || sign(promised) <= 0) return;
  const found = formula.dishGrams;
  if (!found) {
    const unknown = formula.makes.flatMap((make) => make.pot.unknown);
    const bad = unknown.find((entry) => entry.why === 'bad-line');
    const first = bad ?? unknown[0];
    const why = bad
      ? `line ${bad.ref.line.number + 1} cannot be read`
      : first
        ? `line ${first.ref.line.number + 1} has no known weight`
        : 'a weight is unknown';
    report(diagnose('M10', linePlace(gives.ref), { why }));
    return;
  }
  const off = absolute(divide(subtract(found, promised), promised));
  if (compare(off, YIELD_TOLERANCE) <= 0) return;
  const count = formula.pieces ?? ONE;
  const each = divide(found, count);
  const one = compare(count, ONE) === 0;
  report(
    diagnose('M04', linePlace(gives.ref), {
      found: showGrams(found),
      written: showGrams(promised),
      instead: one ? showGrams(found) : `${toDecimal(count, 0)} of ${showGrams(each)}`,
    }),
  );
}

/** M02, M06, M13: left over, never used, saved and never used. */
function checkProducts(formula: Formula, bound: Bound, report: Report): void {
  const last = formula.makes.at(-1);
  for (const [id, product] of formula.products) {
    if (product.kind === 'used') continue;
    if (product.kind === 'make' && product.makeIndex === last?.index) continue;
    if (product.draws.length === 0) {
      if (bound.drawn.has(id)) continue;
      neverUsed(product, formula, report);
    } else checkLeftOver(product, report);
  }
}

function neverUsed(product: Product, formula: Formula, report: Report): void {
  const make = formula.makes[product.makeIndex];
  if (!make) return;
  if (product.kind === 'make') {
    // Of a stock that was strained off the bones are left: what was saved of it is used, the rest was not thrown away.
    const isUsedInPart = [...formula.products.values()].some(
      (other) => other.kind === 'saved' && other.makeIndex === product.makeIndex && other.draws.length > 0,
    );
    if (!isUsedInPart) report(diagnose('M06', linePlace(make.ref), { name: product.name }));
    else if (make.pot.grams && sign(make.pot.grams) > 0)
      report(diagnose('M02', product.place, { left: showGrams(make.pot.grams), name: product.name }));
    return;
  }
  const item = make.items.find(
    (entry) => entry.kind === 'out' && entry.saved !== undefined && entry.content.as?.text === product.name,
  );
  if (item?.kind === 'out' && !item.content.note) report(diagnose('M13', linePlace(item.ref), { name: product.name }));
}

function checkLeftOver(product: Product, report: Report): void {
  if (product.draws.some((draw) => draw.optional || draw.share === undefined)) return;
  const rest = subtract(ONE, sum(product.draws.map((draw) => draw.share ?? ZERO)));
  if (compare(rest, LEFT_OVER) <= 0) return;
  const left = product.grams ? showGrams(multiply(product.grams, rest)) : 'some';
  report(diagnose('M02', product.place, { left, name: product.name }));
}

/** F02: a name with 'flour' in it that does not count as flour. */
function checkFlourNames(formula: Formula, counts: LedgerInput['counts'], report: Report): void {
  if (!formula.flour) return;
  const said = new Set<string>();
  for (const make of formula.makes) {
    for (const item of make.items) {
      if (item.kind !== 'in' || item.source.kind !== 'food') continue;
      const { food } = item.source;
      if (!/\bflours?\b/i.test(item.content.name.text) || said.has(food.key)) continue;
      if (counts.has(food.key) || countsAsFlour(food, counts) || food.from === 'unknown') continue;
      said.add(food.key);
      report(diagnose('F02', placeOf(item.ref, item.content.name.span), { name: item.content.name.text }));
    }
  }
}

/** C01: a culture must get back at least what was taken of it. */
function checkCulture(
  name: string,
  taken: Rational,
  saved: Rational,
  cultures: ReadonlyMap<string, Culture>,
  formula: Formula,
  report: Report,
): void {
  if (compare(saved, taken) >= 0) return;
  const line = formula.makes
    .flatMap((make) => make.items)
    .find(
      (item) =>
        (item.kind === 'in' && item.source.kind === 'culture' && item.source.culture === name) ||
        (item.kind === 'out' && item.saved === name),
    );
  const ref = line?.ref ?? cultures.get(name)?.ref ?? formula.ref;
  report(
    diagnose('C01', linePlace(ref), {
      name,
      taken: showGrams(taken),
      saved: compare(saved, rational(0)) > 0 ? showGrams(saved) : 'nothing',
    }),
  );
}
