/** Reading the notation, beside a Markdown and a YAML reader on the same bytes. */
import { parseDocument } from '@quern/syntax';
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
      markdown: () => texts.map((text) => markdown.parse(text)),
      yaml: () => lists.map((text) => parseYaml(text)),
    },
    rounds,
  );
  const beside = (id: string, name: string, other: number, goal: number): Measured => {
    const ratio = other / times.quern;
    return {
      what: `read ${files} recipes (${(bytes / 1e6).toFixed(1)} MB) beside ${name} at ${perSecond(bytes, other)}`,
      value: `${perSecond(bytes, times.quern)}, ${ratio.toFixed(1)} times`,
      goal: `at least ${goal} times`,
      reached: ratio >= goal,
      ratio: { id, value: ratio, better: 'more' },
    };
  };
  return [
    beside('parse-beside-markdown', 'remark-parse', times.markdown, 10),
    beside('parse-beside-yaml', 'yaml', times.yaml, 1),
  ];
}
