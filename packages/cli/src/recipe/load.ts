import { resolve } from 'node:path';
import { Session, normaliseName, type Compiled, type FoodBook, type Formula } from '@quern/compiler';
import { createFoodBook } from '@quern/foods';
import { reportText, tellDiagnostics } from '@quern/publish/report';
import { nearest, type Diagnostic } from '@quern/text';
import { listOf } from '../arguments.js';
import { RecipeError, UsageError, type Options } from '../command.js';
import { readText } from '../files/read-text.js';
import { rootOf, seenFrom, Workspace } from '../files/workspace.js';
import { paintFor, widthOf } from '../system/paint.js';
import type { System } from '../system/system.js';

/** Options of every command that works on a recipe of a file. */
export const RECIPE_OPTIONS = {
  recipe: { type: 'string', value: 'TITLE', says: 'which recipe of the file, when it holds several' },
  variant: { type: 'string', value: 'NAME', says: 'a variant of the recipe' },
  root: {
    type: 'string',
    value: 'FOLDER',
    says: 'the folder that recipes may use files of; else the repository, else where you are',
  },
} as const satisfies Options;

/** A file compiled, with the world it was read from. */
export interface Loaded {
  readonly compiled: Compiled;
  readonly session: Session;
  readonly workspace: Workspace;
  /** The path as the reader gave it. */
  readonly shown: string;
}

let book: FoodBook | undefined;
/** The food table, made when it is first needed. */
export const foodBook = (): FoodBook => (book ??= createFoodBook());

const sessions = new Map<string, { readonly session: Session; readonly workspace: Workspace }>();

/** The session of a workspace root; one for each, so that files are read once. */
export function sessionOf(root: string): { readonly session: Session; readonly workspace: Workspace } {
  const known = sessions.get(root);
  if (known) return known;
  const workspace = new Workspace(root);
  const made = { session: new Session({ read: workspace.read, foods: foodBook() }), workspace };
  sessions.set(root, made);
  return made;
}

/** Reads and compiles a file. What is wrong with it is not told yet. */
export function loadFile(path: string, system: Pick<System, 'folder'>, root?: string): Loaded {
  const full = resolve(system.folder, path);
  // Read first by itself, so that a file that cannot be read says why.
  const text = readText(full, path);
  const { session, workspace } = sessionOf(rootOf(full, system.folder, root));
  const name = workspace.pathOf(full);
  session.set(name, text);
  const compiled = session.compile(name);
  if (!compiled) throw new UsageError(`cannot read ${path}`);
  return { compiled, session, workspace, shown: path };
}

/**
 * Tells the errors of a loaded file on the error stream, and what a view says besides; the sheet or list is made all the
 * same, with gaps where they fall.
 */
export function tellErrors(
  { compiled, session, workspace }: Loaded,
  system: System,
  also: readonly Diagnostic[] = [],
): void {
  const errors = [...compiled.diagnostics.filter(({ severity }) => severity === 'error'), ...also];
  const inFolder = (path: string): string => seenFrom(system.folder, resolve(workspace.root, path));
  for (const found of tellDiagnostics(errors, (path) => session.text(path))) {
    const related = found.related.map((other) => ({ ...other, file: inFolder(other.file) }));
    system.err.write(
      reportText(
        { ...found, file: inFolder(found.file), related },
        { paint: paintFor(system), width: widthOf(system) },
      ),
    );
  }
}

export interface Choice {
  readonly recipe?: string | undefined;
  readonly variant?: string | undefined;
}

/**
 * The one recipe or variant that is meant.
 * @throws RecipeError when the file holds none of that name, or several and none was named.
 */
export function chooseFormula({ compiled, shown }: Loaded, { recipe, variant }: Choice): Formula {
  const bases = compiled.formulas.filter((formula) => formula.variant === undefined);
  if (bases.length === 0 && compiled.formulas.length > 0) return chooseOther(compiled.formulas, variant, shown);
  const base = chooseBase(bases, recipe, shown);
  if (variant === undefined) return base;
  const wanted = normaliseName(variant);
  const found = compiled.formulas.find(
    (formula) =>
      formula.title === base.title && formula.variant !== undefined && normaliseName(formula.variant) === wanted,
  );
  if (found) return found;
  const near = nearest(wanted, base.variants.map(normaliseName))[0];
  const names = base.variants.length === 0 ? 'it has none' : `it has ${listOf(base.variants)}`;
  throw new RecipeError(
    `“${base.title}” has no variant “${variant}”`,
    near === undefined ? names : `did you mean ${near}?`,
  );
}

/** A variant of a file that holds nothing else: its recipe stands in another file. */
function chooseOther(formulas: readonly Formula[], variant: string | undefined, shown: string): Formula {
  const names = formulas.map((formula) => formula.variant ?? '');
  const wanted = variant === undefined ? undefined : normaliseName(variant);
  const found = formulas.filter((formula) => wanted === undefined || normaliseName(formula.variant ?? '') === wanted);
  const [only, second] = found;
  if (!only) throw new RecipeError(`${shown} has no variant “${variant ?? ''}”`, `it has ${listOf(names)}`);
  if (second)
    throw new RecipeError(`${shown} holds ${names.length} variants`, `say which with --variant: ${listOf(names)}`);
  return only;
}

function chooseBase(bases: readonly Formula[], recipe: string | undefined, shown: string): Formula {
  const [only, second] = bases;
  const titles = bases.map(({ title }) => title);
  if (recipe !== undefined) {
    const wanted = normaliseName(recipe);
    const exact = bases.find(({ title }) => normaliseName(title) === wanted);
    const parts = bases.filter(({ title }) => normaliseName(title).includes(wanted));
    const [part] = parts;
    if (exact) return exact;
    if (part && parts.length === 1) return part;
    throw new RecipeError(
      `${shown} has no recipe “${recipe}”`,
      titles.length === 0 ? undefined : `it has ${listOf(titles)}`,
    );
  }
  if (!only) throw new RecipeError(`${shown} holds no recipe`, 'begin one with a line “recipe NAME”');
  if (second)
    throw new RecipeError(`${shown} holds ${titles.length} recipes`, `say which with --recipe: ${listOf(titles)}`);
  return only;
}
