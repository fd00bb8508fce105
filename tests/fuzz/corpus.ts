import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { messages } from '@quern/text';
import { splitExample } from '@quern/testkit';

const root = join(import.meta.dirname, '..', '..');

function filesIn(folder: string): string[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.quern'))
    .sort()
    .map((name) => readFileSync(join(root, folder, name), 'utf8'));
}

/** Whole recipes, the published formulas, and the good and bad example of every message. */
export const corpus: readonly string[] = [
  ...filesIn('examples'),
  ...filesIn('tests/published/formulas'),
  ...Object.values(messages).flatMap(({ bad, good }) =>
    [...splitExample(bad), ...splitExample(good)].map(({ text }) => text),
  ),
];
