/** A whole check of a recipe, messages of the label included, beside reading the same text as Markdown. */
import { Session } from '@quern/compiler';
import { createFoodBook } from '@quern/foods';
import { checkLabel } from '@quern/views';
import remarkParse from 'remark-parse';
import { unified } from 'unified';
import { recipeText } from './corpus.js';
import { inTurns, type Measured } from './measure.js';

export async function checkSpeed(files: number, rounds: number): Promise<Measured[]> {
  const texts = Array.from({ length: files }, (_, index) => recipeText(index));
  const session = new Session({ read: () => undefined, foods: createFoodBook() });
  const markdown = unified().use(remarkParse);
  const check = (text: string): number => {
    session.set('main.quern', text);
    const compiled = session.compile('main.quern');
    if (!compiled) throw new Error('the text was given');
    const found = compiled.diagnostics.length + checkLabel(compiled).length;
    session.forget('main.quern');
    return found;
  };
  const times = await inTurns(
    { check: () => texts.map(check), markdown: () => texts.map((text) => markdown.parse(text)) },
    rounds,
  );
  const each = times.check / files;
  const value = times.check / times.markdown;
  return [
    {
      what: `check ${files} recipes in one thread, beside reading them as Markdown with remark-parse`,
      value: `${each.toFixed(2)} ms a recipe, ${value.toFixed(1)} times`,
      goal: 'under 1.5 ms a recipe: 10,000 in under 10 s on two cores',
      reached: each < 1.5,
      ratio: { id: 'check-beside-markdown', value, better: 'less' },
    },
  ];
}
