/*
 * The view prints figures in plain ASCII marks, as Quern files are written; a page sets them as printers do. Only for
 * figures that the program made: prose prints as it was typed.
 */

const FRACTIONS: Readonly<Record<string, string>> = {
  '1/2': '½', '1/3': '⅓', '2/3': '⅔', '1/4': '¼', '3/4': '¾', '1/5': '⅕', '2/5': '⅖', '3/5': '⅗', '4/5': '⅘',
  '1/6': '⅙', '5/6': '⅚', '1/8': '⅛', '3/8': '⅜', '5/8': '⅝', '7/8': '⅞',
}; // prettier-ignore

/** `10-14 h` as `10–14 h`, `1 1/2 cups` as `1½ cups`, `23 x 11 cm` as `23 × 11 cm`, `-18 C` as `−18 °C`; no line breaks inside a figure. */
export function typesetFigure(text: string): string {
  return text
    .replace(/(?:(\d+) )?\b(\d+\/\d+)\b/g, (whole, units: string | undefined, fraction: string) => {
      const glyph = FRACTIONS[fraction];
      return glyph === undefined ? whole.replace(' ', '\u00A0').replace('/', '\u2044') : `${units ?? ''}${glyph}`;
    })
    .replace(/(^|[^\d\p{L}.½⅓⅔¼¾⅛⅜⅝⅞])-(?=\d)/gu, '$1\u2212')
    .replace(/(?<=[\d½⅓⅔¼¾⅛⅜⅝⅞])-(?=\d)/g, '–')
    .replace(/(?<=\d) x (?=\d)/g, '\u00A0×\u00A0')
    .replace(/(?<=\d) ([CF])(?!\p{L})/gu, '\u00A0°$1')
    .replace(
      /(?<=[\d½⅓⅔¼¾⅛⅜⅝⅞]) (?=(?:g|kg|mg|oz|lb|ml|cl|dl|l|cups?|tbsp|tsp|h|min|s|d|cm|mm|%)(?!\p{L}))/gu,
      '\u00A0',
    );
}
