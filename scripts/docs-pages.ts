import { compile } from '@quern/compiler';
import { createFoodBook } from '@quern/foods';
import { checkClock, checkLabel } from '@quern/views';
import { memoryHost } from '@quern/testkit';
import { diagnosticPages, type Check } from './diagnostic-pages.js';

const foods = createFoodBook();

/** What the compiler, the clock and the label say of the first file; the others can be used from it. */
export const check: Check = (files) => {
  const [main] = files;
  if (main === undefined) throw new Error('an example without a file');
  const compiled = compile(main.path, main.text, memoryHost(files, foods));
  return [...compiled.diagnostics, ...checkClock(compiled), ...checkLabel(compiled)];
};

/** The pages of docs/diagnostics by name. */
export const pages = (): Map<string, string> => diagnosticPages(check);
