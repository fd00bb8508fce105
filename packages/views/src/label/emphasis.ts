/** A stretch of words; `emphasis` marks the name of an allergen, in capitals already. */
export interface Segment {
  readonly text: string;
  readonly emphasis: boolean;
}

const stem = (word: string): string => word.toLowerCase().replace(/ies$/, 'y').replace(/s$/, '');

/**
 * A food's name with the allergens in it set apart: `whole WHEAT flour`, `butter (MILK)`. The class is added in brackets
 * when the name itself does not say it; 'spelt (wheat)' adds what stands in its brackets.
 */
export function emphasise(name: string, allergens: readonly string[]): Segment[] {
  const loud = new Set<string>();
  const added: string[] = [];
  const nameWords = new Set((name.match(/\p{L}+/gu) ?? []).map(stem));
  for (const allergen of allergens) {
    const [, head = allergen, inside] = /^(.*?)(?: \((.*)\))?$/.exec(allergen) ?? [];
    const words = (head.match(/\p{L}+/gu) ?? []).map(stem);
    if (words.length > 0 && words.every((word) => nameWords.has(word))) {
      for (const word of words) loud.add(word);
      if (inside !== undefined) added.push(inside);
    } else {
      added.push(inside === undefined ? head : `${head}, ${inside}`);
    }
  }
  const segments: Segment[] = [];
  const push = (text: string, emphasis: boolean): void => {
    const last = segments.at(-1);
    if (last && last.emphasis === emphasis) segments[segments.length - 1] = { text: last.text + text, emphasis };
    else segments.push({ text, emphasis });
  };
  for (const piece of name.match(/\p{L}+|[^\p{L}]+/gu) ?? [name]) {
    const isLoud = loud.has(stem(piece));
    push(isLoud ? piece.toUpperCase() : piece, isLoud);
  }
  for (const [index, one] of [...new Set(added)].entries()) {
    push(index === 0 ? ' (' : ', ', false);
    push(one.toUpperCase(), true);
  }
  if (added.length > 0) push(')', false);
  return segments;
}
