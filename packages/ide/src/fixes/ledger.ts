import {
  compare,
  HUNDRED,
  subtract,
  add,
  sum,
  printExact,
  rational,
  parseRational,
  toDecimal,
  type Rational,
} from '@quern/quantity';
import { normaliseName, pickOf, type InItem } from '@quern/compiler';
import type { Line } from '@quern/syntax';
import type { Fix, Fixer, Mending } from './fix.js';

/* Mending the sums of the ledger. */

/** M01: what is left of it. */
export const drawRest: Fixer = (m) => {
  const { content } = m;
  if (content.kind !== 'in') return [];
  return [
    m.inLine(
      { start: content.amount.span.start, end: content.name.span.start },
      'rest of ',
      `Draw the rest of ${m.arg('name')}`,
    ),
  ];
};

/** M02: the last line that draws it takes all that is left. */
export const drawAllLeft: Fixer = (m) => {
  const formula = m.snapshot.formulaAt(m.line.number);
  const product = formula?.products.get(normaliseName(m.arg('name')));
  const last = product?.draws.at(-1);
  const item = last && formula?.makes[last.makeIndex]?.items[last.itemIndex];
  if (product === undefined || item?.kind !== 'in' || item.ref.file !== m.snapshot.path) return [];
  const { amount, name } = item.content;
  const word = product.draws.length === 1 ? 'all ' : 'rest of ';
  return [
    m.fix(`Draw ${word}${m.arg('name')} in line ${item.ref.line.number + 1}`, [
      m.edit(item.ref.line, { start: amount.span.start, end: name.span.start }, word),
    ]),
  ];
};

/** M03: as much as there is. */
export const takeLess: Fixer = (m) => {
  const { content } = m;
  if (content.kind !== 'out') return [];
  // The figure of the message is rounded: when it was rounded up, one of its last digit less is what there is.
  const held = m.arg('held');
  const [, number = '', unit = ''] = /^([\d.]+) (\S+)$/.exec(held) ?? [];
  const value = parseRational(number);
  if (value === undefined) return [];
  const places = number.split('.')[1]?.length ?? 0;
  const less = `${toDecimal(subtract(value, rational(1, 10n ** BigInt(places))), places)} ${unit}`;
  for (const amount of [held, less]) {
    const fix = m.inLine(content.amount.span, amount, `Take ${amount}`);
    const still = m.snapshot.edited(fix.edits[0]?.edits ?? []).compiled.diagnostics;
    if (!still.some(({ code, place }) => code === 'M03' && place.start === m.span.start)) return [fix];
  }
  return [];
};

/** M04: the yield that the ledger has. */
export const realYield: Fixer = (m) => {
  const { content } = m;
  if (content.kind !== 'gives') return [];
  const each = /(?:^|of )([\d.]+ \S+)$/.exec(m.arg('instead'))?.[1];
  if (content.each && each !== undefined) return [m.inLine(content.each.span, each, `Write ${each} each`)];
  return content.total ? [m.inLine(content.total.span, m.arg('found'), `Write ${m.arg('found')}`)] : [];
};

/** M05: the weight that the ledger has. */
export const realWeight: Fixer = (m) => [m.replace(m.arg('found'))];

/** M06, and what the last make may lack: all of it goes into the dish. */
export const drawInDish: Fixer = (m) => {
  const formula = m.snapshot.formulaAt(m.line.number);
  const dish = formula?.makes.at(-1);
  const step = dish?.items.find((item) => item.kind === 'step');
  if (dish === undefined || step === undefined || step.ref.file !== m.snapshot.path) return [];
  const { text } = step.ref.line;
  const indent = text.slice(0, text.length - text.trimStart().length);
  return [
    m.fix(`Put all ${m.arg('name')} into ${dish.name}`, [m.before(step.ref.line, `${indent}all ${m.arg('name')}`)]),
  ];
};

/** M07: a new name needs `as`. */
export const insertAs: Fixer = (m) => {
  const before = m.line.text.slice(0, m.span.start - m.line.start);
  const of = /\bof\s+$/i.exec(before);
  const start = of?.index ?? before.length;
  return [m.inLine({ start, end: before.length }, 'as ', `Insert “as”: it is called ${m.written}`)];
};

/** M08: a share of the pot, taken as water. */
export const asWater: Fixer = (m) => {
  const before = m.line.text.slice(0, m.span.start - m.line.start);
  const of = /\bof\s+$/i.exec(before);
  return of ? [m.inLine({ start: of.index, end: before.length }, 'as ', 'Write “as water”: a share of the pot')] : [];
};

/** M12: the line stands above the last step. */
export const aboveStep: Fixer = (m) => {
  const step = m.place?.make.items.findLast((item) => item.kind === 'step' && item.ref.line.number < m.line.number);
  if (step === undefined) return [];
  return [m.fix('Move it above the step before', [m.before(step.ref.line, m.line.text), m.without(m.line)])];
};

/** M13: what it is for. */
export const forLater: Fixer = (m) => {
  const end = m.line.text.trimEnd().length;
  return [m.inLine({ start: end, end }, ', for another day', 'Say that it is for another day')];
};

/** M14: what the ledger has. */
export const realCheck: Fixer = (m) => {
  const { content } = m;
  return content.kind === 'check' ? [m.inLine(content.amount.span, m.arg('found'), `Write ${m.arg('found')}`)] : [];
};

/** M15: as many as it gives, or another word for the servings. */
export const sameNumber: Fixer = (m) => {
  const { content } = m;
  if (content.kind !== 'serves') return [];
  const fixes = [m.inLine(content.range.span, m.arg('gives'), `Write ${m.arg('gives')}`)];
  if (content.thing)
    fixes.push(m.inLine({ start: content.range.span.end, end: content.thing.span.end }, '', 'Count servings instead'));
  return fixes;
};

interface FlourLine {
  readonly item: InItem;
  readonly percent: Rational;
}

/** F01: the largest flour takes what is missing from a hundred. */
export const toHundred: Fixer = (m) => {
  const formula = m.snapshot.formulaAt(m.line.number);
  const flours: FlourLine[] = [];
  for (const { items } of formula?.makes ?? []) {
    for (const item of items) {
      if (item.kind !== 'in' || item.content.amount.kind !== 'percent' || item.source.kind !== 'food') continue;
      if (formula?.isFlour(item.source.food))
        flours.push({ item, percent: pickOf(item.content.amount.range, 'middle') });
    }
  }
  const [largest] = flours.toSorted((a, b) => compare(b.percent, a.percent));
  if (largest === undefined) return [];
  const wanted = add(largest.percent, subtract(HUNDRED, sum(flours.map(({ percent }) => percent))));
  if (wanted.n <= 0n) return [];
  const text = `${printExact(wanted)} %`;
  const { line } = largest.item.ref;
  return [
    m.fix(`Write ${text} ${largest.item.content.name.text}`, [m.edit(line, largest.item.content.amount.span, text)]),
  ];
};

/** A fact of the recipe, below those it has. */
function addFact(m: Mending, text: string, title: string): Fix | undefined {
  const recipe = m.snapshot.outline.recipes.findLast(({ heading }) => heading.line.number <= m.line.number);
  if (recipe === undefined) return undefined;
  const first = recipe.makes[0];
  const body = (first?.heading?.line ?? first?.items[0]?.main.line)?.number ?? Infinity;
  const facts = recipe.facts.map(({ line }) => line).filter(({ number }) => number < body);
  const last: Line = facts.toSorted((a, b) => a.number - b.number).at(-1) ?? recipe.heading.line;
  return m.fix(title, [m.after(last, text)]);
}

/** F02: whether it counts. */
export const countOrNot: Fixer = (m) =>
  (['flour', 'other'] as const).flatMap((as) => {
    const title = as === 'flour' ? 'Count it as flour' : 'Say that it is not flour';
    return addFact(m, `count ${m.arg('name')} as ${as}`, title) ?? [];
  });

/** F03: each line on flour is reckoned on the first thing that goes in. */
export const onAnother: Fixer = (m) => {
  const formula = m.snapshot.formulaAt(m.line.number);
  const edits = formula?.makes.flatMap(({ items }) => {
    const first = items.find((item) => item.kind === 'in' && item.content.amount.kind !== 'percent');
    const target = first?.kind === 'in' ? first.content.name.text : 'all';
    return items.flatMap((item) => {
      const on = item.kind === 'in' ? item.content.on : undefined;
      return on && normaliseName(on.text) === 'flour' ? [{ edit: m.edit(item.ref.line, on.span, target), target }] : [];
    });
  });
  const target = edits?.[0]?.target;
  return edits === undefined || target === undefined
    ? []
    : [
        m.fix(
          `Reckon on ${target}`,
          edits.map(({ edit }) => edit),
        ),
      ];
};

/** C01: as much saved as was taken. */
export const saveEnough: Fixer = (m) => {
  const formula = m.snapshot.formulaAt(m.line.number);
  const name = m.arg('name');
  const taken = m.arg('taken');
  const items = formula?.makes.flatMap(({ items }) => items) ?? [];
  const save = items.find((item) => item.kind === 'out' && normaliseName(item.saved ?? '') === normaliseName(name));
  if (save?.kind === 'out') return [m.fix(`Save ${taken}`, [m.edit(save.ref.line, save.content.amount.span, taken)])];
  const step = m.place?.make.items.findLast((item) => item.kind === 'step');
  return step
    ? [m.fix(`Save ${taken} as ${name}`, [m.after(step.ref.line, `${m.indent}save ${taken} as ${name}`)])]
    : [];
};
