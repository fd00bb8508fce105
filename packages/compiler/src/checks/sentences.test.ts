import { describe, expect, test } from 'vitest';
import { said } from '../test/recipes.js';

/** What is said of a make with these lines; a hint that figures do not scale is left out. */
const saidOf = (...lines: string[]): string[] =>
  said(`recipe R\n\nmake m\n${lines.map((line) => `  ${line}\n`).join('')}`).filter((one) => !one.startsWith('Q09'));

describe('a food of a sentence that no line puts in', () => {
  test.each([
    ['Mix the flour and water, then fold in the Walnuts.', 'walnuts'],
    ['Mix the flour and water. Add a pinch of nutmeg.', 'nutmeg'],
    ['Mix the flour and water. Add 2 eggs.', 'eggs'],
    ['Mix the flour and water, then add [2] eggs.', 'eggs'],
  ])('%s', (sentence, name) => {
    expect(saidOf('200 g plain flour', '100 g water', `hands 2 min: ${sentence}`)).toEqual([
      `N10 6: this step speaks of “${name}”, but no line puts it in`,
    ]);
  });

  test('its amount is told as one that no line carries', () => {
    expect(saidOf('200 g plain flour', '100 g water', 'hands 2 min: Mix the flour with 150 g butter.')).toEqual([
      'Q13 6: this sentence says “150 g butter”, but no line puts it in',
    ]);
  });

  test('what goes in under another name, or was made, is not missed', () => {
    expect(saidOf('200 g plain flour', '100 g water', 'hands 2 min: Dust with 20 g of the flour.')).toEqual([]);
    expect(saidOf('300 g whole milk', 'hands 2 min: Warm 50 g of the milk.')).toEqual([]);
  });
});

describe('a food that no sentence speaks of', () => {
  const dough = ['300 g plain flour', '60 g butter', '50 g raisins'];
  test('is told where the step names what else goes in', () => {
    expect(saidOf(...dough, 'hands 5 min: Rub the butter into the flour.')).toEqual([
      'N11 6: no sentence says what to do with raisins, though the step in line 7 names what else goes in',
    ]);
  });

  test.each([
    'Rub the butter into the flour and stir in the fruit.',
    'Rub the butter into the flour and add everything else.',
    'Rub the butter in.',
    'Mix to a dough.',
  ])('is not told: %s', (sentence) => {
    expect(saidOf(...dough, `hands 5 min: ${sentence}`)).toEqual([]);
  });

  test('is not told when a later sentence comes back to it', () => {
    expect(
      saidOf(...dough, 'hands 5 min: Rub the butter into the flour.', 'hands 2 min: Scatter with raisins.'),
    ).toEqual([]);
  });
});

test('a step without a time is offered the one that its sentence says', () => {
  const text = 'recipe R\n\nmake m\n  200 g water\n  hob: Simmer the water for 10 minutes.\n';
  expect(said(text)).toEqual(['T01 5: this hob line has no time; the timetable counts it as 1 min']);
});

describe('notes', () => {
  test('a measure in a note is told, with the line as it was meant', () => {
    expect(saidOf('2 onions, sliced = 200 g', 'hands 5 min: Fry the onions.')).toEqual([
      'Q18 4: “= 200 g” stands after the comma, where nothing is reckoned with',
    ]);
  });

  test('of a lemon that is only juiced the whole counts, and that is told', () => {
    const told = (line: string): string[] => saidOf(line, '100 g sugar', 'hands 5 min: Stir the lemon and sugar.');
    expect(told('1/2 lemon, juiced')).toEqual([
      'Q19 4: the whole of lemon counts here, though the note speaks of its juice',
    ]);
    expect(told('1 lemon, zest and juice')).toEqual([]);
    expect(told('1 lemon = about 80 g, juiced')).toEqual([]);
    expect(told('2 lemons, sliced')).toEqual([]);
  });
});

test('marks of a phone are told once a file', () => {
  expect(saidOf('½ tsp salt', '1 – 2 kg water', '¼ tsp sugar', 'hands 2–3 min: Stir.')).toEqual([
    'L04 4: the formatter will write “½” as “1/2”, and such marks in 3 more lines',
  ]);
});
