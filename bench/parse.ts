/** Reading the notation, beside a Markdown and a YAML reader on the same bytes. */
import { LineCache, parseDocument } from '@quern/syntax';
import remarkParse from 'remark-parse';
import { unified } from 'unified';
import { parseDocument as parseYaml } from 'yaml';
import { recipeText } from './corpus.js';
import { inTurns, perSecond, type Measured } from './measure.js';

export async function parseSpeed(files: number, rounds: number): Promise<Measured[]> {
  const texts = Array.from({ length: files }, (_, index) => recipeText(index));
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
      quern: () => texts.map((text) => parseDocument('main.quern', text)),
      // As a session reads an archive: a line that was seen before is not read again.
      kept: () => {
        const lines = new LineCache();
        return texts.map((text) => parseDocument('main.quern', text, lines));
      },
      markdown: () => texts.map((text) => markdown.parse(text)),
      yaml: () => lists.map((text) => parseYaml(text)),
    },
    rounds,
  );
  const beside = (id: string, own: 'quern' | 'kept', other: 'markdown' | 'yaml', goal: number): Measured => {
    const ratio = times[other] / times[own];
    return {
      what: `${titles[own]} ${files} recipes (${(bytes / 1e6).toFixed(1)} MB) beside ${titles[other]} at ${perSecond(bytes, times[other])}`,
      value: `${perSecond(bytes, times[own])}, ${ratio.toFixed(1)} times`,
      goal: `at least ${goal} times`,
      reached: ratio >= goal,
      ratio: { id, value: ratio, better: 'more' },
    };
  };
  return [
    beside('parse-beside-markdown', 'quern', 'markdown', 10),
    beside('parse-beside-yaml', 'quern', 'yaml', 1),
    beside('parse-kept-beside-markdown', 'kept', 'markdown', 10),
    beside('parse-kept-beside-yaml', 'kept', 'yaml', 1),
  ];
}

const titles = {
  quern: 'read every line of',
  kept: 'read, keeping lines, as a session does,',
  markdown: 'remark-parse',
  yaml: 'yaml',
} as const;
