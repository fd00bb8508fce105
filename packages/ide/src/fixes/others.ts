import { nearest, type Span } from '@quern/text';
import { normaliseName } from '@quern/compiler';
import { scanProse, type Line } from '@quern/syntax';
import { writableGrams } from '../measures.js';
import { allSuggested, suggested, type Fix, type Fixer, type Mending } from './fix.js';

/* Mending times and heat, labels, variants and menus. */

// ---- time and heat ---------------------------------------------------------------------------------------------------

/** T01: the time that the sentence says, else the minute that the timetable counts. */
export const addTime: Fixer = (m) => {
  const { content } = m;
  if (content.kind !== 'step') return [];
  const said = scanProse(content.prose.text).find(({ kind }) => kind === 'time')?.text;
  const at = { start: content.laneSpan.end, end: content.laneSpan.end };
  const fixes = said === undefined ? [] : [m.inLine(at, ` ${said}`, `Write the sentence’s ${said}`)];
  return [...fixes, m.inLine(at, ' 1 min', 'Write the 1 min that the timetable counts')];
};

/** T06: the mark of the other dial. */
export const otherDial: Fixer = (m) => [m.replace(m.arg('instead'))];

/** T08: the other word. */
export const otherWay: Fixer = (m) => {
  const at = m.written.indexOf(m.arg('direction'));
  if (at < 0) return [];
  const start = m.span.start + at;
  return [
    m.fix(`Write “${m.arg('other')}”`, [
      { span: { start, end: start + m.arg('direction').length }, text: m.arg('other') },
    ]),
  ];
};

/** T09, T10: the sentence as the line has it, or the line as the sentence has it. */
export const sentenceOrLine: Fixer = (m) => {
  const { content } = m;
  const sentence = m.replace(m.arg('written'), `Write ${m.arg('written')} in the sentence`);
  if (content.kind !== 'step') return [sentence];
  const at = content.clauses.find((clause) => clause.kind === 'at');
  const span: Span | undefined = m.diagnostic.code === 'T09' ? content.time?.span : at?.temperature.span;
  return span === undefined
    ? [sentence]
    : [sentence, m.inLine(span, m.arg('figure'), `Write ${m.arg('figure')} before the colon`)];
};

// ---- label -----------------------------------------------------------------------------------------------------------

/** Takes the item of a list that a span stands in, with its comma; the last one takes its line along. */
function withoutItem(m: Mending, line: Line, span: Span, title: string): Fix {
  const { content } = line.parsed;
  if (content.kind !== 'list-fact') return m.fix(title, []);
  const at = content.items.findIndex((item) => item.span.start <= span.start && span.start <= item.span.end);
  if (content.items.length === 1) return m.fix(title, [m.without(line)]);
  const [from, to] = [content.items[at]?.span, content.items[at + 1]?.span];
  const before = content.items[at - 1]?.span;
  const cut = to ? { start: from?.start ?? 0, end: to.start } : { start: before?.end ?? 0, end: from?.end ?? 0 };
  return m.fix(title, [m.edit(line, cut, '')]);
}

/** A01: no such promise. */
export const withdrawPromise: Fixer = (m) => [
  withoutItem(
    m,
    m.line,
    { start: m.span.start - m.line.start, end: m.span.end - m.line.start },
    `Take the promise “free of ${m.arg('promise')}” away`,
  ),
];

/** A08: no such keyword. */
export const withdrawKeyword: Fixer = (m) => [
  withoutItem(
    m,
    m.line,
    { start: m.span.start - m.line.start, end: m.span.end - m.line.start },
    `Take the keyword “${m.written}” away`,
  ),
];

/** A03: the energy that the parts make. */
export const realEnergy: Fixer = (m) => {
  const [, parts = ''] = /^([\d.]+ \S+)$/.exec(m.arg('parts')) ?? [];
  const blocks = m.snapshot.outline.foods.filter(
    ({ heading }) => normaliseName(heading.content.name?.text ?? '') === normaliseName(m.arg('name')),
  );
  for (const { content, line } of blocks.flatMap(({ facts }) => facts)) {
    const energy =
      content.kind === 'per' ? content.values.find(({ nutrient }) => nutrient.toLowerCase() === 'energy') : undefined;
    if (energy === undefined || parts === '') continue;
    return [m.fix(`Write energy ${parts}, which its parts make`, [m.edit(line, energy.span, `energy ${parts}`)])];
  }
  return [];
};

/** A04: the allergen that was meant. */
export const nearAllergen: Fixer = (m) => {
  const near = suggested(m.arg('near'));
  return near === undefined ? [] : [m.replace(near)];
};

const NUTRIENTS = [
  'energy',
  'fat',
  'saturates',
  'carbohydrate',
  'sugars',
  'fibre',
  'protein',
  'salt',
  'sodium',
  'alcohol',
  'water',
];

/** A06: the nutrient that was meant. */
export const nearNutrient: Fixer = (m) => {
  const word = m.arg('word');
  const span = { start: m.span.start, end: m.span.start + word.length };
  return nearest(word.toLowerCase(), NUTRIENTS).map((nutrient) =>
    m.fix(`Write “${nutrient}”`, [{ span, text: nutrient }]),
  );
};

/** A09: as long as the chart gives. */
export const shorterLife: Fixer = (m) => {
  const { content } = m;
  const published = /^\d[\d.-]* \S+/.exec(m.arg('published'))?.[0];
  if (content.kind !== 'keeps' || published === undefined) return [];
  return [m.inLine(content.time.span, published, `Write ${published}`)];
};

// ---- variants --------------------------------------------------------------------------------------------------------

/** V01: the near name, or no such edit. */
export const realEdit: Fixer = (m) => {
  const near = suggested(m.arg('near'));
  return [...(near === undefined ? [] : [m.replace(near)]), m.fix('Take the edit away', [m.without(m.line)])];
};

/** V02: the weight of what is swapped out. */
export const swapWeight: Fixer = (m) => {
  const { content } = m;
  if (content.kind !== 'swap') return [];
  const base = m.snapshot.formulasAt(m.line.number)[0];
  const item = base?.makes
    .flatMap(({ items }) => items)
    .find((one) => one.kind === 'in' && normaliseName(one.content.name.text) === normaliseName(content.from.text));
  if (item?.kind !== 'in' || item.weighed.grams === undefined) return [];
  const grams = writableGrams(item.weighed.grams);
  const start = content.to.span.start;
  return [m.inLine({ start, end: start }, `${grams} `, `Swap it for as much by weight, ${grams}`)];
};

/** V04: beside something that stands in one line only. */
export const besideOne: Fixer = (m) => {
  const base = m.snapshot.formulasAt(m.line.number)[0];
  const names =
    base?.makes.flatMap(({ items }) => items.flatMap((item) => (item.kind === 'in' ? [item.content.name.text] : []))) ??
    [];
  const once = names.filter(
    (name) => names.filter((other) => normaliseName(other) === normaliseName(name)).length === 1,
  );
  return once.slice(0, 4).map((name) => m.replace(name));
};

/** V05: each name that it could be. */
export const wholeName: Fixer = (m) => allSuggested(m.arg('candidates')).map((name) => m.replace(name));

// ---- menus -----------------------------------------------------------------------------------------------------------

/** U02: the near dish, else the dishes of the file. */
export const realDish: Fixer = (m) => {
  const near = suggested(m.arg('near'));
  const titles = m.snapshot.outline.recipes.flatMap(({ heading }) => heading.content.name?.text ?? []);
  return [...new Set([...(near === undefined ? [] : [near]), ...titles.slice(0, 5)])].map((name) => m.replace(name));
};
