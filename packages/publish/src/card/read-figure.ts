import { add, parseRational, type Rational } from '@quern/quantity';

const GLYPHS: Readonly<Record<string, string>> = {
  '½': '1/2', '⅓': '1/3', '⅔': '2/3', '¼': '1/4', '¾': '3/4', '⅛': '1/8', '⅜': '3/8', '⅝': '5/8', '⅞': '7/8',
}; // prettier-ignore

/** More figures than any kitchen needs, and few enough to reckon with at once. */
const MOST_CHARACTERS = 20;

/**
 * The number that a reader writes into the field: `3`, `1.5`, `1,5`, `2 1/2`, `2½`.
 * @returns undefined when it is none. A comma followed by three digits could be a thousand, and is refused.
 */
export function readFigure(text: string): Rational | undefined {
  const plain = text
    .normalize('NFC')
    .replace(/[½⅓⅔¼¾⅛⅜⅝⅞]/g, (glyph) => ` ${GLYPHS[glyph] ?? ''}`)
    .replace(/\u2044/g, '/')
    .trim()
    .replace(/\s+/g, ' ');
  if (plain.length > MOST_CHARACTERS || /^[1-9]\d{0,2},\d{3}$/.test(plain)) return undefined;
  const mixed = /^(\d+) (\d+\/\d+)$/.exec(plain);
  if (!mixed) return parseRational(plain.replace(',', '.'));
  const [whole, part] = [parseRational(mixed[1] ?? ''), parseRational(mixed[2] ?? '')];
  return whole && part && add(whole, part);
}
