import { singular } from '@quern/compiler';

/** The word after one and after any other number, from whichever was written: 'bottle' gives 'bottle' and 'bottles'. */
export function bothNumbers(written: string): { readonly one: string; readonly many: string } {
  const words = written.trim().split(/\s+/);
  const last = words.at(-1) ?? '';
  const one = singular(last.toLowerCase());
  const isPlural = one !== last.toLowerCase();
  const ahead = words
    .slice(0, -1)
    .map((word) => `${word} `)
    .join('');
  return { one: ahead + (isPlural ? one : last), many: ahead + (isPlural ? last : plural(last)) };
}

/** The English plural of a container's or a piece's word; regular but for those that kitchens use. */
function plural(word: string): string {
  if (/(?:loaf|half|leaf|shelf)$/i.test(word)) return word.slice(0, -1) + 'ves';
  if (/[^aeiou]y$/i.test(word)) return word.slice(0, -1) + 'ies';
  return word + (/(?:s|x|z|ch|sh)$/i.test(word) ? 'es' : 's');
}
