import type { Lasting, Tag } from '@quern/views';
import { plainText } from '../escape.js';
import { htmlPage } from '../card/card-page.js';
import { element, type Child, type ElementNode } from '../html/tree.js';
import { dateWords, firstDay, lastDay } from './dates.js';
import { runNodes } from './label-page.js';
import { ingredientRuns, tagAllergenWords, takenOutRuns } from './words.js';

/** Label sizes that sheets are sold in, millimetres across and down. Common practice, no source. */
export const TAG_SIZES = {
  '99x57': [99, 57],
  '99x68': [99, 68],
  a7: [74, 105],
  a6: [105, 148],
} as const satisfies Record<string, readonly [number, number]>;

export type TagSize = keyof typeof TAG_SIZES;

export interface TagOptions {
  /** The day it was made, an ISO date; without it there is a line to write it on. */
  readonly madeOn?: string;
  /** `a7` without it. */
  readonly size?: TagSize;
  readonly language?: string;
}

/** A line of dates: what it is called, and the day or a line to write on. */
interface Dated {
  readonly name: string;
  readonly day: string | undefined;
  readonly note: string;
}

const AFTER_OPENING = /\bopen(?:ed|ing)\b/i;
/** Kept cold it is dated by safety, 'use by'; otherwise by quality, 'best before' (Regulation (EU) No 1169/2011, Article 24). */
function dateName({ at }: Lasting): string {
  const degrees = at === undefined ? undefined : /^(-?\d+(?:\.\d+)?)(?: to (-?\d+(?:\.\d+)?))? °([CF])$/.exec(at);
  if (!degrees) return 'Best before';
  const value = Number(degrees[2] ?? degrees[1]);
  const celsius = degrees[3] === 'C' ? value : ((value - 32) * 5) / 9;
  return celsius <= 8 && celsius > -5 ? 'Use by' : 'Best before';
}

const keptAt = ({ at, note }: Lasting): string =>
  [at === undefined ? '' : `kept at ${at.replace('-', '\u2212')}`, note].filter((part) => part !== '').join(', ');

function dates(tag: Tag, madeOn: string | undefined): Dated[] {
  const closed = tag.keeps.filter(({ note }) => !AFTER_OPENING.test(note));
  const from = (day: string | undefined, lasting: Lasting, reckon: typeof lastDay): string | undefined =>
    day === undefined ? undefined : dateWords(reckon(day, lasting));
  return [
    { name: 'Made on', day: madeOn === undefined ? undefined : dateWords(madeOn), note: '' },
    ...tag.bestAfter.map((one) => ({ name: 'Best from', day: from(madeOn, one, firstDay), note: one.note })),
    ...closed.map((one) => ({ name: dateName(one), day: from(madeOn, one, lastDay), note: keptAt(one) })),
  ];
}

function opened(tag: Tag): string[] {
  return tag.keeps
    .filter(({ note }) => AFTER_OPENING.test(note))
    .map((one) => {
      const time = one.parts.map(
        ({ value, unit }) => `${value.d === 1n ? value.n : `${value.n}/${value.d}`} ${unitWord(unit, value.n)}`,
      );
      return `Once opened: ${time.join(' ')}${one.at === undefined ? '' : ` at ${one.at}`}.`;
    });
}

const UNIT_WORDS: Readonly<Record<string, readonly [string, string]>> = {
  d: ['day', 'days'],
  h: ['hour', 'hours'],
  week: ['week', 'weeks'],
  month: ['month', 'months'],
};
const unitWord = (unit: string, count: bigint): string => UNIT_WORDS[unit]?.[count === 1n ? 0 : 1] ?? unit;

const careWords = ({ every, text }: Tag['care'][number]): string =>
  `Every ${every.replace(/^(\d+) (\w+)$/, (whole, count: string, unit: string) => (UNIT_WORDS[unit] ? `${count === '1' ? '' : `${count} `}${unitWord(unit, BigInt(count))}` : whole))}: ${text}`;

/** The small label as plain text. */
export function tagText(tag: Tag, options: TagOptions = {}): string {
  const takenOut = takenOutRuns(tag.statement);
  const lines = [
    tag.name,
    `Ingredients: ${ingredientRuns(tag.statement)
      .map(({ text }) => text)
      .join('')}`,
    takenOut && takenOut.map(({ text }) => text).join(''),
    tagAllergenWords(tag).join(' '),
    tag.netWeight === undefined ? 'Net weight: ____' : `Net weight: ${tag.netWeight}`,
    ...dates(tag, options.madeOn).map(
      ({ name, day, note }) => `${name}: ${day ?? '____'}${note === '' ? '' : ` (${note})`}`,
    ),
    ...opened(tag),
    ...tag.care.map(careWords),
    ...tag.warnings,
    tag.by.length > 0 ? `Made by ${tag.by.join(', ')}` : undefined,
  ];
  return lines.flatMap((line) => (line === undefined ? [] : [plainText(line)])).join('\n') + '\n';
}

/*
 * Type is not smaller than the law asks: an x-height of 1.2 mm (Regulation (EU) No 1169/2011, Article 13(2)). The faces
 * named here have an x-height of at least 0.46 of their size, so 8 pt (2.8 mm) gives 1.3 mm. It is as large as the words
 * leave room for. What does not fit at 8 pt goes on to a second label; nothing is cut off.
 */
const POINTS = [12, 11, 10.5, 10, 9.5, 9, 8.5, 8] as const;
const MILLIMETRES_A_POINT = 25.4 / 72;
const MARGIN = 3.5;

/** The largest size at which the words are likely to fit, reckoned by a mean width of letters; at least 8 pt. */
function typeSize(tag: Tag, options: TagOptions, [across, down]: readonly [number, number]): number {
  const [title = '', ...lines] = tagText(tag, options).trimEnd().split('\n');
  const fits = (points: number): boolean => {
    const em = points * MILLIMETRES_A_POINT;
    const rows = (text: string, size: number): number =>
      Math.ceil((text.length * 0.54 * em * size) / (across - 2 * MARGIN));
    const words = lines.reduce((sum, line) => sum + rows(line, 1) * 1.25 * em + 1, 0);
    return rows(title, 1.6) * 1.15 * 1.6 * em + words + 6 <= down - 2 * MARGIN;
  };
  return POINTS.find(fits) ?? 8;
}

/** A class for each size, so that the words change no style. */
const sizeClass = (points: number): string => `quern-size-${String(points).replace('.', '-')}`;

function tagStyle([across, down]: readonly [number, number]): string {
  return `
@page{size:${across}mm ${down}mm;margin:${MARGIN}mm}
html,body{margin:0}
.quern-tag{box-sizing:border-box;width:${across}mm;min-height:${down}mm;padding:${MARGIN}mm;color:#111;background:#fff;
font:8pt/1.25 "Liberation Sans",Arial,Helvetica,system-ui,sans-serif;overflow-wrap:break-word}
${POINTS.map((points) => `.${sizeClass(points)}{font-size:${points}pt}`).join('')}
.quern-tag h1{font:700 1.6em/1.15 "Iowan Old Style",Palatino,Charter,"Bitstream Charter",Georgia,serif;margin:0 0 1mm}
.quern-tag p{margin:0 0 .8mm}
.quern-tag p:last-child{margin-bottom:0}
.quern-tag strong{font-weight:700;text-decoration:underline;text-underline-offset:.12em}
.quern-tag dl{display:grid;grid-template-columns:max-content 1fr;gap:.3mm 2mm;margin:1mm 0;padding:.8mm 0;border-block:.25mm solid #111}
.quern-tag dt{font-weight:700}
.quern-tag dd{margin:0}
.quern-tag .quern-write{display:inline-block;width:22mm;border-bottom:.2mm solid #111}
.quern-tag .quern-maker{margin-top:1mm;break-before:avoid}
@media screen{body{background:#ddd;display:flow-root}.quern-tag{margin:6mm auto;box-shadow:0 0 0 .3mm #999}}
@media print{.quern-tag{width:auto;min-height:0;padding:0}.quern-tag :is(p,dl){break-inside:avoid}}
`;
}

/** The small label as a tree. */
export function tagTree(tag: Tag, options: TagOptions = {}): ElementNode {
  const takenOut = takenOutRuns(tag.statement);
  const line = (): ElementNode => element('span', { className: ['quern-write'] }, '\u00a0');
  const rows: Child[] = [
    element('dt', {}, 'Net weight'),
    element('dd', {}, tag.netWeight ?? line()),
    ...dates(tag, options.madeOn).flatMap(({ name, day, note }) => [
      element('dt', {}, name),
      element('dd', {}, day ?? line(), note === '' ? undefined : `${day === undefined ? ' ' : ', '}${note}`),
    ]),
  ];
  return element(
    'article',
    {
      className: ['quern-tag', sizeClass(typeSize(tag, options, TAG_SIZES[options.size ?? 'a7']))],
      lang: options.language ?? 'en',
    },
    element('h1', {}, tag.name),
    element('p', {}, element('b', {}, 'Ingredients: '), runNodes(ingredientRuns(tag.statement))),
    takenOut && element('p', {}, runNodes(takenOut)),
    element('p', {}, tagAllergenWords(tag).join(' ')),
    element('dl', {}, ...rows),
    ...opened(tag).map((words) => element('p', {}, words)),
    ...tag.care.map((one) => element('p', {}, careWords(one))),
    ...tag.warnings.map((words) => element('p', {}, words)),
    tag.by.length > 0 && element('p', { className: ['quern-maker'] }, `Made by ${tag.by.join(', ')}`),
  );
}

/** The small label as a page that prints at a common label size. */
export function tagPage(tag: Tag, options: TagOptions = {}): string {
  const size = TAG_SIZES[options.size ?? 'a7'];
  return htmlPage({
    title: `${tag.name}: tag`,
    language: options.language ?? 'en',
    style: tagStyle(size),
    scriptHashes: [],
    body: [element('main', {}, tagTree(tag, options))],
  });
}
