import { resolve } from 'node:path';
import { parseDocument, tidy as layOut } from '@quern/syntax';
import { defineCommand, UsageError, type ExitCode } from '../command.js';
import { readText } from '../files/read-text.js';
import { findFiles } from '../files/walk.js';
import { writeAtomically } from '../files/write-atomically.js';
import { seenFrom } from '../files/workspace.js';
import { plain } from '../system/plain.js';
import type { System } from '../system/system.js';

export const tidy = defineCommand({
  usage: ['[PATH …] [--check | --stdout]', '-'],
  about: [
    'Lays files out the one way: spaces, indents, plain marks, empty lines. No sentence, name or note is touched, no line is moved, a line that cannot be read stays as it is, and every line keeps its line end.',
    'A folder means every .quern file in it; without a path, the folder you are in. With “-” the text is read from the standard input and written to the standard output.',
  ],
  options: {
    check: { type: 'boolean', says: 'change nothing; say which files would change, and end with 1 if any would' },
    stdout: { type: 'boolean', says: 'write the result to the screen and change no file' },
  },
  examples: [
    { line: '', says: 'every recipe below this folder' },
    { line: '--check recipes', says: 'for continuous integration' },
  ],
  async run({ files, options, system }) {
    if (options.check && options.stdout)
      throw new UsageError('--check and --stdout cannot be asked for together', 'choose one of them');
    if (files.includes('-')) return fromStdin(files, options.check, system);
    const found = findFiles(files.length === 0 ? ['.'] : files, system.folder);
    if (found.length === 0) throw new UsageError(`there is no .quern file in ${files.join(', ') || 'this folder'}`);
    if (options.stdout && found.length > 1) throw new UsageError('--stdout takes one file', 'name it');
    return tidyFiles(found, options, system);
  },
});

async function fromStdin(files: readonly string[], check: boolean, system: System): Promise<ExitCode> {
  if (files.length > 1) throw new UsageError('“-” stands alone', 'quern tidy - reads the standard input');
  const text = await system.readStdin();
  const result = laidOut(text);
  if (!check) system.out.write(result);
  return check && result !== text ? 1 : 0;
}

const laidOut = (text: string): string => layOut(text, parseDocument('', text)).text;

function tidyFiles(
  files: readonly string[],
  options: { readonly check: boolean; readonly stdout: boolean },
  system: System,
): ExitCode {
  let changed = 0;
  for (const file of files) {
    const shown = seenFrom(system.folder, file);
    const text = readText(file, shown);
    const result = laidOut(text);
    if (options.stdout) {
      system.out.write(result);
      continue;
    }
    if (result === text) continue;
    changed++;
    if (!options.check) writeAtomically(resolve(system.folder, file), result, shown, { over: text });
    system.out.write(`${options.check ? 'would tidy' : 'tidied'} ${plain(shown)}\n`);
  }
  if (!options.stdout)
    system.err.write(
      `${files.length} ${files.length === 1 ? 'file' : 'files'}, ${changed} ${options.check ? 'to tidy' : 'tidied'}\n`,
    );
  return options.check && changed > 0 ? 1 : 0;
}
