/** Reading the notation, beside a Markdown and a YAML reader on the same bytes. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { LineCache, parseDocument } from '@quern/syntax';
import remarkParse from 'remark-parse';
import { unified } from 'unified';
import { parseDocument as parseYaml } from 'yaml';
import { recipeText } from './corpus.js';
import { inTurns, perSecond, type Measured } from './measure.js';

const goals = { markdown: 10, yaml: 1 } as const;
const titles = { markdown: 'remark-parse', yaml: 'yaml' } as const;

export async function parseSpeed(files: number, rounds: number): Promise<Measured[]> {
  const made = Array.from({ length: files }, (_, index) => recipeText(index));
  return [
    ...(await beside('parse', `${files} recipes made for this`, made, rounds)),
    ...(await beside('parse-examples', 'the examples, ten times over', repeated(examples(), 10), rounds)),
  ];
}

/** Recipes as people write them: of shapes so many that one line in fifty is read by the grammar itself. */
function examples(): string[] {
  const folder = join(import.meta.dirname, '..', 'examples');
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.quern'))
    .map((path) => readFileSync(join(folder, path), 'utf8'));
}

const repeated = (texts: readonly string[], times: number): string[] =>
  Array.from({ length: times }, () => texts).flat();

async function beside(id: string, what: string, texts: readonly string[], rounds: number): Promise<Measured[]> {
  const bytes = Buffer.byteLength(texts.join(''));
  // A recipe is not YAML; as a list of its lines it is, at nearly the same size.
  const lists = texts.map((text) =>
    text
      .split('\n')
      .map((line) => `- ${JSON.stringify(line)}`)
      .join('\n'),
  );
  const markdown = unified().use(remarkParse);
  const times = await inTurns(
    {
      every: () => texts.map((text) => parseDocument('main.quern', text)),
      // As an editor reads: a line that was seen before is not read again.
      kept: () => {
        const lines = new LineCache();
        return texts.map((text) => parseDocument('main.quern', text, lines));
      },
      markdown: () => texts.map((text) => markdown.parse(text)),
      yaml: () => lists.map((text) => parseYaml(text)),
    },
    rounds,
  );
  const ratio = (name: string, own: 'every' | 'kept', other: 'markdown' | 'yaml'): Measured => {
    const value = times[other] / times[own];
    const read = own === 'every' ? 'read every line of' : 'read, keeping lines,';
    return {
      what: `${read} ${what} (${(bytes / 1e6).toFixed(1)} MB) beside ${titles[other]} at ${perSecond(bytes, times[other])}`,
      value: `${perSecond(bytes, times[own])}, ${value.toFixed(1)} times`,
      goal: `at least ${goals[other]} times`,
      reached: value >= goals[other],
      ratio: { id: `${name}-beside-${other}`, value, better: 'more' },
    };
  };
  return [
    ratio(id, 'every', 'markdown'),
    ratio(id, 'every', 'yaml'),
    ratio(`${id}-kept`, 'kept', 'markdown'),
    ratio(`${id}-kept`, 'kept', 'yaml'),
  ];
}
