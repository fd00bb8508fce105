/** Recipes as text, compiled with the food table that comes with Quern, and their labels. */
import { compile, type Compiled, type Formula } from '@quern/compiler';
import { createFoodBook } from '@quern/foods';
import { memoryHost, splitExample } from '@quern/testkit';
import { label, type Label, type LabelOptions, type StatementItem } from '@quern/views';
import type { Diagnostic } from '@quern/text';

export const foods = createFoodBook();

/** Compiles the first file; others follow after lines `=== NAME`. */
export function compiled(text: string): Compiled {
  const files = splitExample(text);
  return compile('main.quern', files[0]?.text ?? '', memoryHost(files, foods));
}

/** The first formula, or the variant of that name. */
export function formula(text: string, variant?: string): Formula {
  const found = compiled(text).formulas.find((one) => one.variant === variant);
  if (!found) throw new Error(`no formula ${variant ?? ''}`);
  return found;
}

export function labelled(
  text: string,
  options: Partial<LabelOptions> = {},
): { readonly value: Label; readonly diagnostics: readonly Diagnostic[] } {
  return label(formula(text), { market: 'eu', ...options });
}

/** A statement as a reader sees it. */
export function words(items: readonly StatementItem[]): string {
  return items
    .map(({ segments, quantity, parts }) => {
      const name = segments.map(({ text }) => text).join('');
      return name + (quantity === undefined ? '' : ` (${quantity})`) + (parts.length === 0 ? '' : ` [${words(parts)}]`);
    })
    .join(', ');
}

/** A value that a test takes for granted. @throws Error when it is not there. */
export function known<T>(value: T | undefined): T {
  if (value === undefined) throw new Error('a value that was taken for granted is not there');
  return value;
}
