import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { compile, type Compiled, type Formula } from '@quern/compiler';
import { createFoodBook } from '@quern/foods';

const foods = createFoodBook();

/** A text compiled with the built-in food table and no other file. */
export function compileText(text: string): Compiled {
  return compile('main.quern', text, { read: () => undefined, foods });
}

const formulas = new Map<string, Formula>();

/**
 * The recipe in `formulas/NAME.quern`, compiled once.
 * @throws Error when it does not compile: then nothing in it proves anything.
 */
export function formulaOf(name: string): Formula {
  const known = formulas.get(name);
  if (known) return known;
  const { formulas: compiled, diagnostics } = compileText(
    readFileSync(join(import.meta.dirname, 'formulas', `${name}.quern`), 'utf8'),
  );
  const errors = diagnostics.filter(({ severity }) => severity === 'error').map(({ code }) => code);
  const [first] = compiled;
  if (first === undefined || errors.length > 0) throw new Error(`${name}.quern does not compile: ${errors.join(', ')}`);
  formulas.set(name, first);
  return first;
}
