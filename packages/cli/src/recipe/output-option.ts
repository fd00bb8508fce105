import { resolve } from 'node:path';
import type { Options } from '../command.js';
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

/** Writes a result to the file that was named, or to the output. */
export function giveOut(text: string, file: string | undefined, system: System): void {
  if (file === undefined) system.out.write(text);
  else writeAtomically(resolve(system.folder, file), text, file);
}
