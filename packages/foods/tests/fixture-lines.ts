import { readFileSync } from 'node:fs';
import { join } from 'node:path';

const folder = join(import.meta.dirname, 'fixtures');

/** Lines of a fixture that are no remark. For tests only. */
export const fixtureLines = (name: string): readonly string[] =>
  readFileSync(join(folder, name), 'utf8')
    .split('\n')
    .filter((line) => line !== '' && !line.startsWith('#'));
