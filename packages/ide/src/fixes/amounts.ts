import { nearest } from '@quern/text';
import {
  divide,
  multiply,
  units,
  unitSpellings,
  printMeasure,
  single,
  roundTo,
  exact,
  type Rational,
} from '@quern/quantity';
import { baseValue, normaliseName, pickOf, pieceSpread } from '@quern/compiler';
import type { Count, Equal, Measure } from '@quern/syntax';
import { densityOfLine, foodOf, measureIn, writableGrams, writableVolume } from '../measures.js';
import type { Fix, Fixer, Mending } from './fix.js';

/* Mending amounts. */

/** Q00: an open amount, until it is weighed. */
export const openAmount: Fixer = (m) => {
  const at = { start: m.span.start, end: m.span.start };
  return ['a little ', 'enough ', '1 '].map((amount) =>
    m.fix(`Write “${amount.trim()}” before it`, [{ span: at, text: amount }]),
  );
};

/** Q18: the measure before the comma. */
export const beforeTheComma: Fixer = (m) => {
  const all = { start: m.content.indent, end: m.line.text.trimEnd().length };
  return [m.inLine(all, m.arg('line'), `Write “${m.arg('line')}”`)];
};

/** Q01, Q02: either side as the table has it, or `about`. */
export const agree: Fixer = (m) => {
  const item = m.inItem;
  const place = m.place;
  if (item === undefined || place === undefined) return [];
  const { content } = item;
  const side = content.equals.find(({ span }) => m.line.start + span.start === m.span.start);
  if (side === undefined) return [];
  const pair = pairOf(m, content.amount, side);
  const fixes: Fix[] = [];
  if (pair?.right !== undefined)
    fixes.push(m.inLine(side.amount.span, pair.right, `Write the table’s measure: = ${pair.right}`));
  if (pair?.left !== undefined)
    fixes.push(m.inLine(content.amount.span, pair.left, `Write the table’s measure: ${pair.left}`));
  if (m.diagnostic.code === 'Q02' && !side.amount.about) {
    const start = side.amount.span.start;
    fixes.push(m.inLine({ start, end: start }, 'about ', 'Write “about”'));
  }
  return fixes;
};

/** What each side should say by the other. */
function pairOf(
  m: Mending,
  left: { readonly kind: string },
  side: Equal,
): { readonly left?: string; readonly right?: string } | undefined {
  const item = m.inItem;
  const formula = m.place?.formula;
  if (item === undefined || formula === undefined) return undefined;
  const { cups } = formula.facts;
  const food = foodOf(item);
  const density = densityOfLine(food, item.content);
  const a = left.kind === 'measure' ? (left as Measure) : undefined;
  const b = side.amount.kind === 'measure' ? side.amount : undefined;
  const inUnitOf = (from: Measure, to: Measure): string | undefined => {
    const range = measureIn(from, to.unit.id, cups);
    return range && printMeasure(single(roundTo(range.low, exact('0.01'))), to.unit.id);
  };
  if (a && b && isMass(a) && isMass(b)) return clean(inUnitOf(b, a), inUnitOf(a, b));
  if (a && b && density) {
    if (isMass(a) && isVolume(b)) return clean(toGrams(b, density.usual), toVolume(a, density.usual));
    if (isVolume(a) && isMass(b)) return clean(toVolume(b, density.usual), toGrams(a, density.usual));
  }
  const count = countIn(left);
  const piece = a && units[a.unit.id].dimension === 'count' ? a.unit.id : '';
  const spread =
    food && pieceSpread(food, piece, { name: item.content.name.text, note: item.content.note?.text ?? '' });
  return count && spread && b ? { right: writableGrams(multiply(count, spread.usual)) } : undefined;

  function toGrams(volume: Measure, perMillilitre: Rational): string {
    return writableGrams(multiply(baseValue(volume, cups, 'middle'), perMillilitre));
  }
  function toVolume(mass: Measure, perMillilitre: Rational): string {
    return writableVolume(divide(baseValue(mass, cups, 'middle'), perMillilitre), cups);
  }
}

const isMass = (measure: Measure): boolean => units[measure.unit.id].dimension === 'mass';
const isVolume = (measure: Measure): boolean => units[measure.unit.id].dimension === 'volume';
const clean = (left: string | undefined, right: string | undefined): { left?: string; right?: string } => ({
  ...(left === undefined ? {} : { left }),
  ...(right === undefined ? {} : { right }),
});

function countIn(amount: { readonly kind: string }): Rational | undefined {
  return amount.kind === 'count' || amount.kind === 'measure'
    ? pickOf((amount as Count | Measure).range, 'middle')
    : undefined;
}

/** Q03: the weight in the food's own block, for the whole file. A food of the table is left to the table. */
export const teachInBlock: Fixer = (m) => {
  const item = m.inItem;
  const food = item && foodOf(item);
  if (item === undefined || food?.from !== 'file') return [];
  const { amount, equals } = item.content;
  const side = equals.find(({ span }) => m.line.start + span.start === m.span.start);
  const block = m.snapshot.outline.foods.find(
    ({ heading }) => normaliseName(heading.content.name?.text ?? '') === normaliseName(food.name),
  );
  if (side === undefined || block === undefined) return [];
  const text = (span: { start: number; end: number }): string => m.line.text.slice(span.start, span.end);
  const massLeft = amount.kind === 'measure' && isMass(amount);
  const [other, mass] = massLeft ? [side.amount.span, amount.span] : [amount.span, side.amount.span];
  const last = block.facts.at(-1)?.line ?? block.heading.line;
  const line = `weighs ${text(other)} = ${text(mass)}`;
  return [m.fix(`Add “${line}” to food ${food.name}`, [m.after(last, `  ${line}`)])];
};

/** Q04: a mixed number, or the ends in order. */
export const orderRange: Fixer = (m) => {
  const [low, high] = [m.arg('low'), m.arg('high')];
  const mixed = /^\d+$/.test(low) && /^\d+\/\d+$/.test(high) ? [m.replace(`${low} ${high}`)] : [];
  return [...mixed, m.replace(`${high}-${low}`)];
};

/** Q05: a thousand, or a decimal. */
export const thousandOrDecimal: Fixer = (m) => [m.replace(m.arg('thousand')), m.replace(m.arg('decimal'))];

/** Q06: which spoon. */
export const whichSpoon: Fixer = (m) => ['tbsp', 'tsp'].map((unit) => m.replace(unit));

/** Q07: what the per cent is reckoned on. */
export const reckonedOn: Fixer = (m) => {
  const { content } = m;
  if (content.kind !== 'in' && content.kind !== 'or') return [];
  const end = (content.as ?? content.name).span.end;
  const formula = m.place?.formula;
  const others =
    m.place?.make.items.flatMap((item) =>
      item.kind === 'in' && item.ref.line.number < m.line.number && item.content.amount.kind !== 'percent'
        ? [item.content.name.text]
        : [],
    ) ?? [];
  const targets = [...(formula?.flour ? ['flour'] : []), ...new Set(others.slice(0, 3)), 'all'];
  return targets.map((target) =>
    m.inLine(
      { start: end, end },
      ` on ${target}`,
      `Reckon it on ${target === 'all' ? 'everything in the pot' : target}`,
    ),
  );
};

/** Q09: the figure in brackets, or `each`. */
export const bracketFigure: Fixer = (m) => [
  m.replace(`[${m.written}]`, 'Let it scale: put it in square brackets'),
  m.replace(`${m.written} each`, 'Say that it is the weight of one: add “each”'),
];

/** Q10: what is in the pot, the nearest first. */
export const inThePot: Fixer = (m) => {
  const inside = m
    .arg('inside')
    .split(', ')
    .filter((name) => name !== '' && name !== 'nothing yet');
  const near = nearest(m.arg('name'), inside);
  return [...new Set([...near, ...inside])].map((name) => m.replace(name));
};

/** Q13: the figure out of the sentence, or the line’s own in brackets. */
export const figureInSentence: Fixer = (m) => {
  const { text } = m.snapshot;
  const after = /^\s+(?:of\s+)?/.exec(text.slice(m.span.end))?.[0].length ?? 0;
  const fixes = [
    m.fix('Leave the figure to its line', [{ span: { start: m.span.start, end: m.span.end + after }, text: '' }]),
  ];
  const own = /puts in (.+)$/.exec(m.arg('found'))?.[1];
  if (own !== undefined) fixes.push(m.replace(`[${own}]`, `Write [${own}], as the line has it`));
  return fixes;
};

const GIVEN: readonly string[] = ['g', 'kg', 'ml', 'l', 'oz', 'lb'];

/** Q14: the unit that was meant. */
export const givenUnit: Fixer = (m) => {
  const word = m.arg('word');
  const at = m.line.text.lastIndexOf(word);
  if (at < 0) return [];
  return nearest(word.toLowerCase(), GIVEN).map((unit) =>
    m.inLine({ start: at, end: at + word.length }, unit, `Write “${unit}”`),
  );
};

/** Q15: the number without its leading nought. */
export const plainNumber: Fixer = (m) => [m.replace(m.arg('plain'))];

/** Q16: the unit that a large bare number lacks. */
export const addUnit: Fixer = (m) => ['g', 'ml'].map((unit) => m.replace(`${m.written} ${unit}`));

/** Q17: a line of nothing goes, or stays as a remark. */
export const nothingOfIt: Fixer = (m) => [m.fix('Take the line away', [m.without(m.line)]), m.asRemark()];

/** Q20: of which country. */
export const whichCountry: Fixer = (m) => ['us', 'imperial'].map((country) => m.replace(`${country} ${m.written}`));

/** Q21: a piece of it, with the length as a note. */
export const asPiece: Fixer = (m) => {
  const text = m.line.text.trimEnd();
  const found = new RegExp(String.raw`([\d¼½¾⅓⅔⅛⅜⅝⅞][^\p{L}]*)${m.written}\s+`, 'u').exec(text);
  if (found === null) return [];
  const [whole, number = ''] = found;
  const start = found.index;
  const name = text.slice(start + whole.length);
  return [
    m.inLine({ start, end: text.length }, `1 piece ${name}, ${number.trim()} ${m.written}`, 'Count it as a piece'),
  ];
};

/** Q23: packages, or a thousand written in one. */
export const twoNumbers: Fixer = (m) => {
  const text = m.line.text;
  const at = m.span.start - m.line.start;
  const pack = /^(\d+)\s*[x×]\s*/.exec(text.slice(at));
  if (pack)
    return ['tins', 'packs', 'bottles'].map((word) =>
      m.inLine({ start: at, end: at + pack[0].length }, `${pack[1]} ${word} of `, `Write “${pack[1]} ${word} of …”`),
    );
  const thousand = /^(\d{1,3})\s+(\d{3})(?!\d)/.exec(text.slice(at));
  return thousand
    ? [
        m.inLine(
          { start: at, end: at + thousand[0].length },
          `${thousand[1]}${thousand[2]}`,
          `Write “${thousand[1]}${thousand[2]}”`,
        ),
      ]
    : [];
};

/** Q25: the unit that was meant, or a count of things with such a name. */
export const unitSlip: Fixer = (m) => {
  const near = [m.arg('near'), ...nearest(m.written.toLowerCase(), unitSpellings.keys())];
  const pieces = m.replace(`pieces ${m.written}`, `Count pieces of “${m.written} …”`);
  return [...[...new Set(near)].map((unit) => m.replace(unit)), pieces];
};

/** Q26: all of it, or that part of it. */
export const realShare: Fixer = (m) => {
  const from = m.span.start - m.line.start;
  const of = /\s+of\s+/i.exec(m.line.text.slice(m.span.end - m.line.start));
  const whole = of
    ? [m.inLine({ start: from, end: m.span.end - m.line.start + of.index + of[0].length }, 'all ', 'Draw all of it')]
    : [];
  const part = /^[2-9]$/.test(m.written) ? [m.replace(`1/${m.written}`)] : [];
  return [...part, ...whole];
};
