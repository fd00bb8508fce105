import { ownValue } from '@quern/text';

const VES: Readonly<Record<string, string>> = {
  shelves: 'shelf',
  loaves: 'loaf',
  halves: 'half',
  leaves: 'leaf',
  knives: 'knife',
};

/** The singular of English words for a vessel, a tool or a piece: enough for what a kitchen has, no dictionary. */
export function singular(words: string): string {
  const last = words.slice(words.lastIndexOf(' ') + 1);
  const irregular = ownValue(VES, last);
  if (irregular !== undefined) return words.slice(0, words.length - last.length) + irregular;
  if (/(?:sh|ch|x|ss)es$/.test(words)) return words.slice(0, -2);
  if (/[^s]ies$/.test(words)) return `${words.slice(0, -3)}y`;
  return /[^s]s$/.test(words) ? words.slice(0, -1) : words;
}
