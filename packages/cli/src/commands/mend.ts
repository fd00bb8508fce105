import { relative, resolve } from 'node:path';
import { fixesFor, mendAll, snapshotOf, type Snapshot } from '@quern/ide';
import { LineTable, sentence, type Diagnostic } from '@quern/text';
import { defineCommand, UsageError, type ExitCode } from '../command.js';
import { findFiles } from '../files/walk.js';
import { withSlashes } from '../files/workspace.js';
import { writeAtomically } from '../files/write-atomically.js';
import { loadFile } from '../recipe/load.js';
import { plain } from '../system/plain.js';
import type { System } from '../system/system.js';

export const mend = defineCommand({
  usage: ['[PATH …] [--check | --stdout] [--offers]'],
  about: [
    'Makes the fixes that need no decision: a slip in a first word, a typographic mark, words after an equals sign that are a note. They are those that an editor makes with “fix all”; none changes an amount, a food, an allergen or a time.',
    'A folder means every .quern file in it; without a path, the folder you are in. With --offers it also says which other messages can be mended, and how, for you to decide.',
  ],
  options: {
    check: { type: 'boolean', says: 'change nothing; say which files would change, and end with 1 if any would' },
    stdout: { type: 'boolean', says: 'write the result to the screen and change no file' },
    offers: { type: 'boolean', says: 'say which messages are left that could be mended, and how' },
    root: {
      type: 'string',
      value: 'FOLDER',
      says: 'the folder that recipes may use files of; else the repository, else where you are',
    },
  },
  examples: [
    { line: '', says: 'every recipe below this folder' },
    { line: '--check recipes', says: 'for continuous integration' },
    { line: 'loaf.quern --offers', says: 'mend a file, and say what else could be done' },
  ],
  async run({ files, options, system }) {
    if (options.check && options.stdout)
      throw new UsageError('--check and --stdout cannot be asked for together', 'choose one of them');
    const found = findFiles(files.length === 0 ? ['.'] : files, system.folder);
    if (found.length === 0) throw new UsageError(`there is no .quern file in ${files.join(', ') || 'this folder'}`);
    if (options.stdout && found.length > 1) throw new UsageError('--stdout takes one file', 'name it');
    return mendFiles(found, options, system);
  },
});

interface MendOptions {
  readonly check: boolean;
  readonly stdout: boolean;
  readonly offers: boolean;
  readonly root: string | undefined;
}

function mendFiles(files: readonly string[], options: MendOptions, system: System): ExitCode {
  let changed = 0;
  for (const file of files) {
    const shown = withSlashes(relative(system.folder, file)) || file;
    const { session, workspace } = loadFile(file, system, options.root);
    const path = workspace.pathOf(file);
    const snapshot = snapshotOf(session, path);
    if (snapshot === undefined) throw new UsageError(`cannot read ${shown}`);
    const { text, mended } = mendAll(snapshot);
    if (options.stdout) system.out.write(text);
    else if (text !== snapshot.text) {
      changed++;
      if (!options.check) {
        writeAtomically(resolve(system.folder, file), text, shown, { over: snapshot.text });
        session.set(path, text);
      }
      system.out.write(`${options.check ? 'would mend' : 'mended'} ${plain(shown)}: ${codesOf(mended)}\n`);
    }
    if (options.offers) system.err.write(offersOf(snapshotOf(session, path) ?? snapshot, shown));
  }
  if (!options.stdout)
    system.err.write(
      `${files.length} ${files.length === 1 ? 'file' : 'files'}, ${changed} ${options.check ? 'to mend' : 'mended'}\n`,
    );
  return options.check && changed > 0 ? 1 : 0;
}

/** `L01, 2 × L04`. */
function codesOf(mended: readonly Diagnostic[]): string {
  const times = new Map<string, number>();
  for (const { code } of mended) times.set(code, (times.get(code) ?? 0) + 1);
  return [...times].map(([code, count]) => (count === 1 ? code : `${count} × ${code}`)).join(', ');
}

/** Each message that could be mended, with the ways to do it. */
function offersOf(snapshot: Snapshot, shown: string): string {
  const table = new LineTable(snapshot.text);
  return snapshot.compiled.diagnostics
    .flatMap((diagnostic) => {
      const fixes = fixesFor(snapshot, diagnostic);
      if (fixes.length === 0) return [];
      const { line, column } = table.at(diagnostic.place.start);
      const head = `${shown}:${line + 1}:${column + 1} ${diagnostic.code} ${sentence(diagnostic)}`;
      return [[plain(head), ...fixes.map(({ title }) => `  ${plain(title)}`), ''].join('\n')];
    })
    .join('');
}
