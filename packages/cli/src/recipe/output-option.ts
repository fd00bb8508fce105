import { existsSync, realpathSync } from 'node:fs';
import { resolve } from 'node:path';
import { UsageError, type Options } from '../command.js';
import { ENDING } from '../files/walk.js';
import { writeAtomically } from '../files/write-atomically.js';
import type { System } from '../system/system.js';

/** Where a command's result goes. */
export const OUTPUT_OPTION = {
  output: {
    type: 'string',
    short: 'o',
    value: 'FILE',
    says: 'write to a file, whole or not at all, instead of the screen',
  },
} as const satisfies Options;

/** Whether a path ends as recipes do, or leads to such a file. */
function isRecipe(path: string): boolean {
  const real = existsSync(path) ? realpathSync(path) : path;
  return [path, real].some((one) => one.toLowerCase().endsWith(ENDING));
}

/** Writes a result to the file that was named, or to the output. */
export function giveOut(text: string, file: string | undefined, system: System): void {
  if (file === undefined) system.out.write(text);
  else if (isRecipe(resolve(system.folder, file)))
    throw new UsageError(
      `${file} is a file of recipes, and what is made from one is never written over it`,
      'name another file after -o',
    );
  else writeAtomically(resolve(system.folder, file), text, file);
}
