import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { compile, Session, type Compiled, type Formula } from '@quern/compiler';
import { createFoodBook } from '@quern/foods';
import { compareInputs } from '@quern/publish';
import { compareFiles, type Change, type Comparison, type FileComparison, type LineFinding } from '@quern/views';

/* Files in two states, compared as the command does it. */

const foods = createFoodBook();
/** Recipes of their own, so that a change to an example changes no expected comparison. */
const files = join(import.meta.dirname, 'files');
const read = (path: string): string | undefined =>
  /^[\w-]+\.quern$/.test(path) ? readFileSync(join(files, path), 'utf8') : undefined;

export const recipeText = (name: string): string => readFileSync(join(files, `${name}.quern`), 'utf8');

/** A text as a file that stands beside them. */
export function compiled(text: string, path = 'loaf.quern'): Compiled {
  return compile(path, text, { read, foods });
}

export function compiledWith(files: Readonly<Record<string, string>>, path: string): Compiled {
  const found = new Session({ read: (name) => files[name], foods }).compile(path);
  if (!found) throw new Error(`no ${path}`);
  return found;
}

export const inputs = (formula: Formula, file: Compiled): ReturnType<typeof compareInputs> =>
  compareInputs(formula, file, { market: 'none' });

/** All that changed, with what the label and the clock say. */
export const compared = (before: string, after: string): FileComparison =>
  compareFiles(compiled(before), compiled(after), inputs);

/** The one recipe of both texts, by its lines and its ledger alone. */
export function recipe(before: string, after: string): Comparison {
  const [only] = compareFiles(compiled(before), compiled(after)).recipes;
  if (!only) throw new Error('the two texts share no recipe');
  return only;
}

export const linesOf = ({ changes }: { readonly changes: readonly Change[] }): readonly LineFinding[] =>
  changes.filter((change) => change.kind === 'line');

/** 'swapped honey', for a short look at what changed in the lines. */
export const told = (comparison: { readonly changes: readonly Change[] }): readonly string[] =>
  linesOf(comparison).map(
    ({ action, role, subject }) => `${action} ${role} ${subject.after === '' ? subject.before : subject.after}`,
  );

export function edited(text: string, ...edits: readonly (readonly [from: string, to: string])[]): string {
  return edits.reduce((old, [from, to]) => {
    if (!old.includes(from)) throw new Error(`“${from}” does not stand in the text`);
    return old.replace(from, to);
  }, text);
}
