import { singular } from '@quern/text';
import type { InLine } from '@quern/syntax';

/*
 * Words by which things are counted and that are no units of the notation, since each has a size of its own: `2 rashers
 * bacon`, `1 tin chopped tomatoes`, `2 handfuls spinach`. After a bare number they are read as `2 rashers of bacon` is,
 * where no food goes by the whole name. Weighed only where a weight of that piece is published or written.
 */

/** Packages: what one holds is written on it. */
const PACKAGES = new Set(
  'tin can jar packet pack package sachet bag box tub bottle carton pot punnet block'.split(' '),
);

const PIECES = new Set(
  (
    'handful knob dash splash glug drizzle squeeze dollop lump scoop ladle spoonful dessertspoon dsp glass mug teacup wineglass gill ' +
    'head bulb rasher fillet stalk ear ball cube wedge strip rib stem cob pod strand round square segment scraping grating grind twist'
  ).split(' '),
);

const SIZES = /^(?:small|medium|large|big|good|generous|heaped|thick|thin|fat)$/i;

const isPiece = (word: string): boolean => PIECES.has(word) || PACKAGES.has(word);

/** Whether a thing is counted by this word: 'handfuls', 'small bunch'. */
export function isPieceWord(words: string): boolean {
  const last = singular(words.toLowerCase().split(/\s+/).at(-1) ?? '');
  return isPiece(last) || last === 'bunch';
}

export const isPackage = (words: string): boolean => PACKAGES.has(singular(words.toLowerCase()));

/** The line with the piece apart from the name; undefined when its name does not begin with one. */
export function withPieceApart(content: InLine): InLine | undefined {
  const { amount, name } = content;
  if (amount.kind !== 'count') return undefined;
  const words = name.text.split(' ');
  const length = SIZES.test(words[0] ?? '') ? 2 : 1;
  const piece = words.slice(0, length).join(' ');
  const rest = words.slice(words[length]?.toLowerCase() === 'of' ? length + 1 : length).join(' ');
  if (rest === '' || !isPiece(singular(words[length - 1]?.toLowerCase() ?? ''))) return undefined;
  const start = name.span.end - rest.length;
  return {
    ...content,
    amount: { ...amount, kind: 'portion', of: piece },
    name: { span: { start, end: name.span.end }, text: rest },
  };
}
