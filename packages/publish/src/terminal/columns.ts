import { plainText } from '../escape.js';

/*
 * Texts set in columns. Widths are counted in what a reader sees: an accent written as a character of its own takes no
 * room, and the wide characters of East Asian scripts and emoji take two.
 */

const NO_ROOM = /[\p{Mn}\p{Me}\p{Cf}]/u;
// The ranges of Unicode Standard Annex 11 that terminals show in two columns, and emoji shown as pictures.
const WIDE =
  /[\u1100-\u115f\u2e80-\u303e\u3041-\u33ff\u3400-\u4dbf\u4e00-\u9fff\ua000-\ua4cf\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe4f\uff00-\uff60\uffe0-\uffe6]|[\u{20000}-\u{3fffd}]|\p{Emoji_Presentation}/u;

// Latin letters, quotation marks and dashes: one column each.
const PLAIN = /^[ -~\u00a0-\u00ac\u00ae-\u02ff\u2010-\u2027]*$/;

/** Columns that a text takes in a terminal. */
export function displayWidth(text: string): number {
  if (PLAIN.test(text)) return text.length;
  let width = 0;
  for (const character of text) {
    if (NO_ROOM.test(character)) continue;
    width += WIDE.test(character) ? 2 : 1;
  }
  return width;
}

export type Align = 'left' | 'right';

/** The text with spaces to a width; longer texts are left as they are. */
export function pad(text: string, width: number, align: Align): string {
  const room = ' '.repeat(Math.max(0, width - displayWidth(text)));
  return align === 'left' ? text + room : room + text;
}

/** The words of a text in lines of at most so many columns; a longer word has a line of its own. */
export function wrapWords(text: string, width: number): readonly string[] {
  const lines: string[] = [];
  let line = '';
  let taken = 0;
  for (const word of plainText(text).split(' ')) {
    const needed = displayWidth(word);
    if (line !== '' && taken + 1 + needed > width) {
      lines.push(line);
      line = word;
      taken = needed;
    } else {
      taken += line === '' ? needed : 1 + needed;
      line = line === '' ? word : `${line} ${word}`;
    }
  }
  lines.push(line);
  return lines;
}
