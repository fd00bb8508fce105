import { slips } from '@quern/text';
import { lineWords, type LineWord } from './classify.js';
import { englishNeighbours } from './english-neighbours.js';

/*
 * A mistyped opening word. It is read as the word that was meant only when that cannot do harm: one slip, onto a word
 * of the body or a fact, never onto a block word (a block takes all lines under it), and never when what was written is
 * an English word of its own.
 */

/** The shortest word that is repaired: with fewer letters one slip can mean too many things. */
const SHORTEST = 3;

const HEAD = /[A-Za-z]+/y;
const TWO_WORDS = /([A-Za-z]+)[^\S\r\n]+([A-Za-z]+)/y;

const repairable = lineWords.filter((entry) => entry.kind !== 'block');

/** The entry one slip away from what stands at `from`, if there is exactly one, and how many characters it takes. */
export function repair(text: string, from: number): { entry: LineWord; length: number } | undefined {
  TWO_WORDS.lastIndex = from;
  HEAD.lastIndex = from;
  const pair = TWO_WORDS.exec(text);
  const found: { entry: LineWord; length: number }[] = [];
  const one = HEAD.exec(text)?.[0] ?? '';
  const end = text[from + one.length];
  if (one.length >= SHORTEST && (end === undefined || /[\s:,]/.test(end))) {
    const written = one.toLowerCase();
    if (!isEnglish(written)) {
      for (const entry of repairable) {
        if (!entry.word.includes(' ') && entry.word.length >= SHORTEST && slips(written, entry.word, 1) === 1)
          found.push({ entry, length: one.length });
      }
    }
  }
  if (pair !== null) {
    const [whole, first = '', second = ''] = pair;
    for (const entry of repairable) {
      const [wantedFirst = '', wantedSecond] = entry.word.split(' ');
      if (wantedSecond === undefined) continue;
      const inFirst = slips(first.toLowerCase(), wantedFirst, 1);
      const inSecond = slips(second.toLowerCase(), wantedSecond, 1);
      const wrong = inFirst > 0 ? first : second;
      if (inFirst + inSecond === 1 && !isEnglish(wrong.toLowerCase())) found.push({ entry, length: whole.length });
    }
  }
  return found.length === 1 ? found[0] : undefined;
}

/** Whether a word near one of ours is an English word itself. */
export function isEnglish(word: string): boolean {
  return englishNeighbours.has(word);
}
