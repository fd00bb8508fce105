/** The singular of an English word for a vessel, a tool or a piece: enough for what a kitchen has, no dictionary. */
export function singular(words: string): string {
  if (/(?:sh|ch|x|ss)es$/.test(words)) return words.slice(0, -2);
  if (/(?:^| )(?:shelves|loaves|knives|halves|leaves)$/.test(words))
    return words.replace(/(?:ves)$/, (found) => (/knives$/.test(words) ? 'fe' : found && 'f'));
  if (/[^s]ies$/.test(words)) return `${words.slice(0, -3)}y`;
  return /[^s]s$/.test(words) ? words.slice(0, -1) : words;
}
