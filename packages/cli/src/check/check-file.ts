import { tellDiagnostics, type Found } from '@quern/publish/report';
import { byPlace } from '@quern/text';
import { checkLabel } from '@quern/views/label';
import { UsageError } from '../command.js';
import { readText } from '../files/read-text.js';
import { sessionOf } from '../recipe/load.js';

/** A file to check. */
export interface Target {
  /** Absolute path. */
  readonly file: string;
  /** As reports name it: relative to the folder the command runs in. */
  readonly shown: string;
  /** Workspace root. */
  readonly root: string;
}

/** What a check of one file gave. */
export interface FileReport {
  readonly file: string;
  /** Its files are named by their paths from the root. */
  readonly found: readonly Found[];
  /** Paths from the root of all files it was compiled with, itself left out. */
  readonly uses: readonly string[];
  /** The file cannot be read: why. */
  readonly problem?: string;
  /** Files that it asked for and that were refused. */
  readonly refused: readonly string[];
}

/** Checks one file with all it uses. */
export function checkFile({ file, shown, root }: Target): FileReport {
  const nothing = { file, found: [], uses: [], refused: [] };
  try {
    const { session, workspace } = sessionOf(root);
    const name = workspace.pathOf(file);
    session.set(name, readText(file, shown));
    const compiled = session.compile(name);
    if (!compiled) return nothing;
    // What only the label sees (a promise that nothing breaks and nothing proves, a broken keyword) is asked for here too.
    const diagnostics = [...compiled.diagnostics, ...checkLabel(compiled)].sort(byPlace);
    const found = tellDiagnostics(diagnostics, (path) => session.text(path));
    const uses = usesOf(name, compiled.uses, (path) => session.compile(path)?.uses ?? []);
    const refused = [...workspace.refused].map(([path, why]) => `${shown} may not use ${path}: ${why}`);
    workspace.refused.clear();
    // What others use stays; a file that was only checked is let go, so that memory does not grow with the archive.
    session.forget(name);
    return { file, found, uses, refused };
  } catch (error) {
    if (error instanceof UsageError) return { ...nothing, problem: error.message };
    throw error;
  }
}

function usesOf(
  name: string,
  direct: readonly string[],
  usesOfFile: (path: string) => readonly string[],
): readonly string[] {
  const all = new Set<string>();
  const waiting = [...direct];
  for (let path = waiting.pop(); path !== undefined; path = waiting.pop()) {
    if (path === name || all.has(path)) continue;
    all.add(path);
    waiting.push(...usesOfFile(path));
  }
  return [...all].sort();
}
