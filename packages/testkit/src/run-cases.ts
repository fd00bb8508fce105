import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { formatCases, parseCases } from './case-file.js';
import type { SourceText } from './world.js';

/**
 * Makes the text of a section from the files of a case. `argument` is what follows the section's first word
 * (`fix L01`: 'L01').
 */
export type SectionRenderer = (files: readonly SourceText[], argument: string) => string;

/**
 * Registers one test for each expected section of each case in each `.txt` file of a folder. With the environment variable
 * UPDATE=1 the sections are rewritten in place and the difference in version control is the review.
 * @throws Error when the folder holds no case: such a test could not fail.
 */
export function runCases(folder: string, renderers: Readonly<Record<string, SectionRenderer>>): void {
  const topics = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.txt'))
    .sort();
  if (topics.length === 0) throw new Error(`no case file in ${folder}`);
  const update = process.env['UPDATE'] === '1';
  for (const topic of topics) runTopic(join(folder, topic), topic.replace(/\.txt$/, ''), renderers, update);
}

function runTopic(
  path: string,
  topic: string,
  renderers: Readonly<Record<string, SectionRenderer>>,
  update: boolean,
): void {
  const file = parseCases(readFileSync(path, 'utf8'));
  /** What each section came to, by case and section; written only when asked for. */
  const seen = new Map<string, string>();
  describe(topic, () => {
    file.cases.forEach(({ heading, files, expected }, caseIndex) => {
      describe(heading, () => {
        expected.forEach(({ title, text }, index) => {
          test(title, () => {
            const actual = render(title, files, renderers);
            if (update) seen.set(`${caseIndex} ${index}`, actual);
            else expect(actual.trimEnd()).toBe(text.trimEnd());
          });
        });
      });
    });
    if (!update) return;
    afterAll(() => {
      const cases = file.cases.map((one, caseIndex) => ({
        ...one,
        expected: one.expected.map(({ title, text }, index) => ({
          title,
          text: seen.get(`${caseIndex} ${index}`) ?? text,
        })),
      }));
      writeFileSync(path, formatCases({ ...file, cases }));
    });
  });
}

function render(
  title: string,
  files: readonly SourceText[],
  renderers: Readonly<Record<string, SectionRenderer>>,
): string {
  const [kind = '', ...rest] = title.split(' ');
  const renderer = renderers[kind];
  if (renderer === undefined) {
    throw new Error(`no section is called “${kind}”; there are ${Object.keys(renderers).join(', ')}`);
  }
  return renderer(files, rest.join(' '));
}
