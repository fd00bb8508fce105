import { toDecimal, toExactText } from '@quern/quantity';
import { expect, test } from 'vitest';
import { createFoodBook, describeFood } from './index.js';

const book = createFoodBook();

const described = (name: string) => {
  const answer = book.find(name);
  if (answer.kind !== 'found') throw new Error(`no food “${name}”`);
  return describeFood(answer.match.food, book);
};

test('every figure of a description has its source', () => {
  const almonds = described('almonds');
  // USDA SR28 no. 12061: a cup of whole almonds 143 g; the mill's chart has 142 g.
  const whole = almonds.perMillilitre.find((weight) => weight.what === 'whole');
  expect(whole?.sources.map((source) => source.text).join('\n')).toContain('no. 12061, Nuts, almonds');
  expect(whole?.sources).toHaveLength(2);
  expect(almonds.nutrientSources.map((source) => source.id)).toEqual(['usda/12061']);
  for (const weight of [...almonds.perMillilitre, ...almonds.perPiece]) {
    for (const { id, text } of weight.sources) expect(text, id).not.toBe(id);
  }
});

test('a weight whose form or size nobody names is said so', () => {
  const onion = described('onions');
  expect(onion.perPiece.map((weight) => weight.what)).toContain('as it comes');
  expect(onion.perPiece.map((weight) => weight.what)).toContain('large slice');
  expect(onion.ediblePercent && toExactText(onion.ediblePercent)).toBe('90'); // USDA SR28 no. 11282: refuse 10 %
});

test('what is not known is not described', () => {
  const oil = described('vegetable oil');
  expect(oil.allergens).toEqual({ kind: 'unknown', surely: [] });
  expect(described('butter').nutrients.map((entry) => entry.nutrient)).not.toContain('sodium');
  expect(described('custard powder').nutrients).toEqual([]);
});

test('a stand-in says that it is one', () => {
  const cracked = described('cracked rye');
  expect(cracked.nutrientSources[0]?.text).toMatch(/standing in for this food: .*no\. 20062, Rye grain/);
  const protein = cracked.nutrients.find((entry) => entry.nutrient === 'protein');
  expect(protein && toDecimal(protein.amount, 1)).toBe('10.3');
});
