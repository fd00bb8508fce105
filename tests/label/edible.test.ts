/** Peel, stone and shell: what is counted by its edible portion, and what is not. */
import { describe, expect, test } from 'vitest';
import { toApproximateNumber } from '@quern/quantity';
import { compositionOf, nutritionOf, type Label } from '@quern/views';
import { labelText } from '@quern/publish';
import { foods, formula, known, labelled, words } from './world.js';

const recipe = (...lines: readonly string[]): string =>
  `recipe Bowl\nserves 4\n\nmake bowl\n${lines.map((line) => `  ${line}\n`).join('')}  hands 5 min: Mix.\n`;
const made = (...lines: readonly string[]): Label => labelled(recipe(...lines)).value;
const notes = (...lines: readonly string[]): string => made(...lines).notes.join(' ');

describe('things that are counted', () => {
  // USDA National Nutrient Database for Standard Reference, release 28: bananas, raw (09040), refuse 36 % skin, energy
  // 89 kcal; eggs, whole, raw (01123), refuse 12 % shell, protein 12.56 g in 100 g.
  test('as they are bought give nutrients by the edible portion', () => {
    const nutrition = nutritionOf(compositionOf(formula(recipe('6 eggs = 390 g'))));
    expect(toApproximateNumber(known(nutrition.total('protein')).amount.usual)).toBeCloseTo(390 * 0.88 * 0.1256, 6);
    expect(toApproximateNumber(known(nutrition.per100('protein')).amount.usual)).toBeCloseTo(12.56, 6);
    expect(notes('6 eggs = 390 g')).toMatch(/Weighed whole.*eggs 88 %/);
    const bananas = nutritionOf(compositionOf(formula(recipe('3 bananas = 500 g'))));
    expect(toApproximateNumber(known(bananas.total('energyTable')).amount.usual)).toBeCloseTo(500 * 0.64 * 0.89, 6);
  });

  test('leave the finished weight as the ledger has it, and the order goes by what is eaten', () => {
    const value = made('3 bananas = 500 g', '340 g rolled oats');
    expect(value.weight?.text).toBe('840 g');
    expect(words(value.statement.items)).toBe('rolled OATS, bananas');
  });

  test('without a weight go by the published weight of the edible part', () => {
    // The same source: a medium banana is 118 g without its skin.
    const nutrition = nutritionOf(compositionOf(formula(recipe('3 bananas'))));
    expect(toApproximateNumber(known(nutrition.total('energyTable')).amount.usual)).toBeCloseTo(3 * 118 * 0.89, 6);
    expect(notes('3 bananas')).not.toMatch(/bananas/);
  });

  test('with a weight that may be either count as edible, and the label says so', () => {
    expect(notes('4 eggs = 200 g')).toMatch(/Weights count as edible: eggs/);
    // The peel of a lemon may be eaten: nothing is taken off.
    expect(notes('8 lemons = 1 kg')).toMatch(/Weights count as edible: lemons/);
  });

  test('of which a line bins some are left to that line', () => {
    const binned = ['3 bananas = 500 g', 'hands 2 min: Peel.', 'bin 36 % of bananas as skins'];
    expect(notes(...binned)).not.toMatch(/bananas/);
    const nutrition = nutritionOf(compositionOf(formula(recipe(...binned))));
    expect(toApproximateNumber(known(nutrition.total('energyTable')).amount.usual)).toBeCloseTo(320 * 0.89, 6);
  });

  test('are not taken for peeled because something else is trimmed', () => {
    const trimmed = ['3 bananas = 500 g', '500 g sugar', 'hands 2 min: Stir.', 'bin 10 g as drips'];
    expect(notes(...trimmed)).toMatch(/Weighed whole.*bananas 64 %/);
  });
});

describe('a form', () => {
  const total = (nutrient: 'protein' | 'energyTable', ...lines: readonly string[]): number =>
    toApproximateNumber(known(nutritionOf(compositionOf(formula(recipe(...lines)))).total(nutrient)).amount.usual);

  // USDA National Nutrient Database for Standard Reference, release 28: plums, raw (09279), refuse 6 % pits, 46 kcal;
  // mangos, raw (09176), refuse 29 % seeds and skin, 60 kcal; potatoes, flesh and skin, raw (11352), refuse 25 % parings
  // and trimmings, 77 kcal; eggs (01123), refuse 12 % shell; lemons, raw, without peel (09150), refuse 47 % peel and seeds, 29 kcal.
  test.each([
    ['500 g plums, stoned', 500 * 0.94 * 0.46],
    ['500 g stoned plums', 500 * 0.46],
    ['500 g plums', 500 * 0.46],
    ['1 kg mangoes, peeled and stoned', 1000 * 0.71 * 0.6],
    ['1 kg peeled mangoes', 1000 * 0.6],
    ['1 kg potatoes, peeled', 1000 * 0.75 * 0.77],
    ['1 kg peeled potatoes', 1000 * 0.77],
    ['1 kg potatoes, not peeled', 1000 * 0.77],
    ['1 kg potatoes, unpeeled', 1000 * 0.77],
    ['500 g lemons, peeled', 500 * 0.53 * 0.29],
    ['500 g lemons, pared thinly, the peel kept', 500 * 0.29],
  ])('says when it was weighed: %s', (line, kilocalories) => {
    expect(total('energyTable', line)).toBeCloseTo(kilocalories, 6);
  });

  test('after the comma makes even eggs of an open weight eggs in their shells', () => {
    expect(total('protein', '300 g egg, shelled')).toBeCloseTo(300 * 0.88 * 0.1256, 6);
    // Without a weight the table's is that of the edible part: 50 g a large egg (the same source).
    expect(total('protein', '6 eggs, shelled')).toBeCloseTo(6 * 50 * 0.1256, 6);
  });

  test('is told in a note', () => {
    expect(notes('500 g plums, stoned')).toMatch(/Weighed whole.*plums 94 %/);
    expect(notes('500 g plums')).not.toMatch(/Weighed whole/);
    expect(notes('1 kg mangoes')).toMatch(/Weights count as edible: mangoes.*after a comma/);
    expect(notes('1 kg peeled mangoes')).not.toMatch(/mangoes/);
  });
});

test('an explanation shows what share is eaten, the entry of the table and the text of its source', () => {
  const value = labelled(recipe('3 bananas = 500 g'), { sourceText: (id) => foods.source(id) }).value;
  const text = labelText(value, { explain: true, width: 400 });
  expect(text).toMatch(/bananas +320\.00 g \(64 % is eaten\).*banana: usda\/09040/);
  expect(text).toMatch(/usda\/09040: .*Bananas, raw/);
});
