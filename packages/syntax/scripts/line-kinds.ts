import type { LineWord } from '../src/classify.js';

/** The list of grammar/lines.json. */
export interface LineList {
  readonly description: string;
  readonly figure: string;
  readonly wordEnd: string;
  readonly kinds: readonly { readonly kind: string; readonly says: string }[];
  readonly words: readonly LineWord[];
}

/** The TypeScript module that carries the list into the parser; the package cannot read files. */
export function lineKindsModule(list: LineList): string {
  const words = list.words.map((word) => `  ${JSON.stringify(word)},`).join('\n');
  return `// Made from grammar/lines.json by packages/syntax/scripts/generate.ts. Change that list, not this file.
import type { LineWord } from '../classify.js';

export const lineWords: readonly LineWord[] = [
${words}
];
`;
}
