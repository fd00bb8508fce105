import { readdirSync, readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { compile, type Compiled } from '@quern/compiler';
import { createFoodBook } from '@quern/foods';
import { cardHtml, cardJsonLd, cardMarkdown, cardText, cardTree, recipeCard, toHtml } from '@quern/publish';
import { exact, multiply, parseRational, toExactText } from '@quern/quantity';
import { showScaled, type CardAmount, type CardData } from '@quern/views';
import { describe, expect, test } from 'vitest';
import { hebrewLoaf, plainCordial, tinLoaf } from './cards.js';

const EXAMPLES = new URL('../../examples/', import.meta.url);
const names = readdirSync(EXAMPLES).filter((name) => name.endsWith('.quern'));
const foods = createFoodBook();
const textOf = (name: string): string => readFileSync(new URL(name, EXAMPLES), 'utf8');
const compiled = (name: string, text: string): Compiled =>
  compile(name, text, { foods, read: (path) => (names.includes(path) ? textOf(path) : undefined) });

function baseCards(file: Compiled): CardData[] {
  return file.formulas
    .filter((formula) => formula.variant === undefined)
    .map((formula) => recipeCard(file, formula).value);
}

/** Every amount of a card that follows its size, in order. */
function amounts(card: CardData): CardAmount[] {
  return card.makes.flatMap((make) => [
    ...make.ingredients.flatMap((item) => [item.amount, ...item.alternatives.map((other) => other.amount)]),
    ...make.steps.flatMap((step) => [
      ...[step.sentence, ...step.more].flat().flatMap((run) => (run.kind === 'amount' ? [run.amount] : [])),
      ...step.saved.map((saved) => saved.amount),
    ]),
  ]);
}

test('there are examples to look at', () => expect(names.length).toBeGreaterThanOrEqual(7));

describe.each(names)('%s', (name) => {
  const text = textOf(name);
  const cards = baseCards(compiled(name, text));

  test('prints in every format, under 60 kB with its script', () => {
    for (const card of cards) {
      expect(gzipSync(cardHtml(card)).length).toBeLessThan(60_000);
      expect(cardText(card)).not.toContain('undefined');
      expect(cardMarkdown(card)).not.toContain('undefined');
      expect(cardHtml(card)).not.toMatch(/>undefined|undefined</);
      expect(cardJsonLd(card)).toMatchObject({ '@type': 'Recipe', name: card.title });
      expect(card.makes.length).toBeGreaterThan(0);
      expect(card.times.total).toBeDefined();
    }
  });

  /*
   * The page multiplies the amounts of one card; the compiler multiplies the lines of the file (`times` in a variant)
   * and reckons everything anew. Both must print the same, to the last digit.
   */
  test.each(['1/2', '3', '7/3'])('scaled by %s in the page it is what the compiler makes of it', (times) => {
    for (const card of cards) {
      const [block = ''] = text.split(/^(?=recipe )/m).filter((part) => part.startsWith(`recipe ${card.title}`));
      const twin = compiled(
        name,
        text.replace(block, `${block.trimEnd()}\n\nvariant in the test\n  times ${times}\n\n`),
      );
      const formula = twin.formulas.find(({ title, variant }) => title === card.title && variant === 'in the test');
      if (!formula) throw new Error('no variant');
      const wanted = amounts(recipeCard(twin, formula).value);
      const factor = exact(times);
      const scaled = amounts(card).map(({ scale, words, metric, us }) => ({
        words,
        ...(scale ? showScaled(scale, factor) : { metric, us }),
      }));
      expect(scaled.length).toBe(wanted.length);
      expect(scaled.length).toBeGreaterThan(2);
      for (const [index, one] of scaled.entries()) {
        const other = wanted[index];
        expect(one.metric).toBe(other?.metric);
        // A measure that the file states is printed as written at its own size; scaled it is reckoned by both.
        expect(one.us).toBe(other?.us);
      }
      const count = parseRational(card.yield.count);
      expect(toExactText(multiply(count ?? factor, factor))).toBe(recipeCard(twin, formula).value.yield.count);
    }
  });
});

/*
 * What the cards look like as text, committed and compared; the fixtures do not depend on the food table. Written anew
 * with `npx vitest run tests/publish/examples.test.ts --update`, and then looked at.
 */
describe('as committed', () => {
  test.each([
    ['tin-loaf', tinLoaf],
    ['cordial', plainCordial],
    ['hebrew', hebrewLoaf],
  ])('%s', async (name, card) => {
    // One element a line, so that a difference can be read.
    const html = toHtml(cardTree(card)).replace(
      /(<\/(?:p|li|tr|dd|dt|div|h\d|section|header|thead|tbody|table|ol|ul|dl)>)/g,
      '$1\n',
    );
    await expect(html).toMatchFileSnapshot(`../golden/card/${name}.html`);
    await expect(cardText(card)).toMatchFileSnapshot(`../golden/card/${name}.txt`);
    await expect(cardMarkdown(card)).toMatchFileSnapshot(`../golden/card/${name}.md`);
    await expect(JSON.stringify(cardJsonLd(card), null, 1)).toMatchFileSnapshot(`../golden/card/${name}.json`);
  });
});
