import {
  compare,
  parseRational,
  rational,
  add,
  units,
  unitSpellings,
  type Interval,
  type Rational,
  type TemperatureScale,
  type UnitId,
} from '@quern/quantity';

/*
 * Weights, volumes and temperatures that stand in a sentence. They are found for the eye alone (to be told in the
 * reader's measure) and never reckoned with, so a miss does no harm.
 */

/** Where a figure stands: offsets into the text. */
interface FigurePlace {
  readonly start: number;
  readonly end: number;
}

export type ProseFigure =
  | (FigurePlace & { readonly kind: 'measure'; readonly range: Interval; readonly unit: UnitId })
  | (FigurePlace & { readonly kind: 'temperature'; readonly range: Interval; readonly scale: TemperatureScale });

const GLYPHS: Readonly<Record<string, string>> = {
  '¼': '1/4',
  '½': '1/2',
  '¾': '3/4',
  '⅓': '1/3',
  '⅔': '2/3',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

const FRACTION = String.raw`\d{1,9}[/⁄]\d{1,9}|[¼½¾⅓⅔⅛⅜⅝⅞]`;
const NUMBER = String.raw`(?:\d{1,9}(?:[ \u00a0](?:${FRACTION})|[¼½¾⅓⅔⅛⅜⅝⅞])|${FRACTION}|\d{1,9}(?:[.,]\d{1,9})?)`;
const RANGE = String.raw`(${NUMBER})(?:\s?[-–—]\s?(${NUMBER})|\sto\s(${NUMBER}))?`;

// Spellings of weights and volumes, the longest first; a drop and a pinch say the same in every kitchen.
const WORDS = [...unitSpellings]
  .filter(([, id]) => ['mass', 'volume'].includes(units[id].dimension) && id !== 'pinch' && id !== 'drop')
  .map(([spelling]) => spelling)
  .sort((a, b) => b.length - a.length || (a < b ? -1 : 1));

const FIGURE = new RegExp(
  String.raw`(?<![\p{L}\p{N}/.,])${RANGE}[\s\u00a0]?(?:(${WORDS.join('|')})|°?[\s\u00a0]?([CF]))(?![\p{L}\p{N}])`,
  'giu',
);

/** Every weight, volume and temperature of a sentence, in order. A range that runs down is left alone. */
export function proseFigures(text: string): readonly ProseFigure[] {
  const figures: ProseFigure[] = [];
  for (const found of text.matchAll(FIGURE)) {
    const [whole, first = '', dashed, spoken, word, scale] = found;
    const low = readNumber(first);
    const high = readNumber(dashed ?? spoken ?? first);
    if (!low || !high || compare(low, high) > 0) continue;
    const place = { start: found.index, end: found.index + whole.length };
    const unit = word === undefined ? undefined : unitSpellings.get(word.toLowerCase());
    if (unit) figures.push({ kind: 'measure', ...place, range: { low, high }, unit });
    // A small letter after a figure is not a scale: `2 c` may be anything.
    else if (scale === 'C' || scale === 'F')
      figures.push({ kind: 'temperature', ...place, range: { low, high }, scale });
  }
  return figures;
}

function readNumber(written: string): Rational | undefined {
  const text = written
    .replace(/[¼½¾⅓⅔⅛⅜⅝⅞]/g, (glyph) => ` ${GLYPHS[glyph] ?? ''}`)
    .replace('⁄', '/')
    .replace(',', '.')
    .trim();
  const parts = text.split(/[\s\u00a0]+/).map(parseRational);
  let total: Rational = rational(0);
  for (const part of parts) {
    if (!part) return undefined;
    total = add(total, part);
  }
  return total;
}
