import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Session, type Compiled, type Formula } from '@quern/compiler';
import { createFoodBook } from '@quern/foods';

/* Recipes for the tests of sheets and shopping lists. */

export const root = join(import.meta.dirname, '..', '..');
const examples = join(root, 'examples');

const foods = createFoodBook();
const session = new Session({
  read: (path) => (path.includes('..') ? undefined : readFileSync(join(examples, path), 'utf8')),
  foods,
});

export const exampleNames: readonly string[] = readdirSync(examples)
  .filter((name) => name.endsWith('.quern'))
  .map((name) => name.replace(/\.quern$/, ''))
  .sort();

/** A file of `examples/` with what it uses. */
export function example(name: string): Compiled {
  const compiled = session.compile(`${name}.quern`);
  if (!compiled) throw new Error(`no example ${name}`);
  return compiled;
}

/** Every recipe and variant of the examples. */
export const exampleFormulas: readonly Formula[] = exampleNames.flatMap((name) => example(name).formulas);

/**
 * The first recipe of a text.
 * @throws Error when a line of it has an error: then a test on it would prove nothing.
 */
export function recipeOf(text: string): Formula {
  const local = new Session({ read: () => undefined, foods });
  local.set('main.quern', text);
  const compiled = local.compile('main.quern');
  const errors = compiled?.diagnostics.filter(({ severity }) => severity === 'error').map(({ code }) => code) ?? [];
  const [formula] = compiled?.formulas ?? [];
  if (!formula || errors.length > 0) throw new Error(`the recipe does not compile: ${errors.join(', ')}`);
  return formula;
}

/** A recipe with mistakes in it. */
export function brokenRecipeOf(text: string): Formula {
  const local = new Session({ read: () => undefined, foods });
  local.set('main.quern', text);
  const [formula] = local.compile('main.quern')?.formulas ?? [];
  if (!formula) throw new Error('no recipe');
  return formula;
}
