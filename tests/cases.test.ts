/** Text in, text out: every case in tests/cases. `UPDATE=1 npx vitest run tests/cases.test.ts` rewrites what is expected. */
import { join } from 'node:path';
import { compile, type Compiled } from '@quern/compiler';
import { createFoodBook } from '@quern/foods';
import { sheetText } from '@quern/publish';
import { tidy } from '@quern/syntax';
import { draw, memoryHost, runCases, type SourceText } from '@quern/testkit';
import { readScale, findScale, sheet } from '@quern/views';

const foods = createFoodBook();

/** The first file compiled; it may use the others. */
function compiled(files: readonly SourceText[]): Compiled {
  const [main] = files;
  if (!main) throw new Error('a case without a file');
  return compile(main.path, main.text, memoryHost(files, foods));
}

/** The sheet, at the size of the section's title: `sheet 2 1/2`. */
function sheetSection(files: readonly SourceText[], times: string): string {
  const [formula] = compiled(files).formulas;
  if (!formula) throw new Error('no recipe in the first file');
  if (times === '') return sheetText(sheet(formula, { percentages: true }));
  const request = readScale('times', times);
  const scale = request.ok ? findScale(request.value, formula) : request;
  if (!scale.ok) return `${scale.problem}\n${scale.help}\n`;
  return sheetText(sheet(formula, { scale: scale.value }));
}

runCases(join(import.meta.dirname, 'cases'), {
  diagnostics: (files) => draw(compiled(files).diagnostics, files),
  tidy: ([file]) => tidy(file?.text ?? '').text,
  sheet: sheetSection,
});
