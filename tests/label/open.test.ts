/** What is left open or cannot be read is never passed over, and never taken for absent. */
import { describe, expect, test } from 'vitest';
import { labelText, tagPage, tagText } from '@quern/publish';
import { labelled, words } from './world.js';

const CHOICE = `recipe Bars
serves 8
keywords vegan

make bars
  200 g rolled oats
  90 g any nut
  100 g sugar
  hands 5 min: Press.
`;

describe('a choice left open', () => {
  const { value, diagnostics } = labelled(CHOICE);

  test('is named in the statement, and told at the top', () => {
    expect(words(value.statement.items)).toBe('rolled OATS, sugar, any nut');
    expect(labelText(value)).not.toMatch(/any nut \[not in the food table\]/);
    expect(value.alerts.join(' ')).toMatch(/Left to choose: any nut/);
    expect(value.complete).toBe(false);
  });

  test('may contain what any of its foods does', () => {
    const may = value.allergens.mayContain.map(({ name }) => name);
    expect(may).toEqual(expect.arrayContaining(['walnut', 'almond', 'hazelnut', 'peanuts']));
    expect(value.allergens.contains.map(({ name }) => name)).toEqual(['oats']);
  });

  test('surely contains what all of its foods do', () => {
    const cheese = labelled(CHOICE.replace('any nut', 'any hard cheese')).value;
    expect(cheese.allergens.contains.map(({ name }) => name)).toContain('milk');
    expect(words(cheese.statement.items)).toMatch(/any hard cheese \(MILK\)/);
    expect(cheese.promises[0]?.verdict).toBe('contradicted');
  });

  test('breaks a promise as one thing, with its line', () => {
    const promised = CHOICE.replace('serves 8', 'serves 8\nfree of nuts');
    const [verdict] = labelled(promised).value.promises;
    expect(verdict?.verdict).toBe('contradicted');
    expect(verdict?.against.map(({ food }) => food)).toEqual(['any nut']);
  });

  test('makes figures at least, with one message', () => {
    const told = diagnostics.filter(({ code }) => code === 'A02').map(({ args }) => args['name']);
    expect(told).toEqual(['any nut']);
    expect(value.declaration.rows.find(({ nutrient }) => nutrient === 'fat')?.values[0]?.atLeast).toBe(true);
  });

  test('is one name in a caution', () => {
    const text = value.cautions.find(({ id }) => id === 'whole-nuts')?.text;
    expect(text).toMatch(/any nut/);
    expect(text).not.toMatch(/almonds/);
  });
});

describe('a line that cannot be read', () => {
  const { value } = labelled(`recipe Balls
keywords vegan
free of peanuts

make balls
  200 g rolled oats
  100 g
  80 g dates
  hands 5 min: Roll.
`);

  test('is named in the statement and among the allergens', () => {
    expect(words(value.statement.unweighed)).toMatch(/a line that cannot be read/);
    expect(value.allergens.cannotSay.map(({ name }) => name)).toEqual(['a line that cannot be read']);
    expect(tagText(value.tag)).toMatch(/Cannot say: nothing is known of a line that cannot be read/);
  });

  test('leaves every promise open', () => {
    expect(value.promises.map(({ verdict }) => verdict)).toEqual(['cannot confirm', 'cannot confirm']);
  });
});

describe('a thing from a file that cannot be read', () => {
  const { value } = labelled(
    'use pastry from nowhere.quern\n\nrecipe Pie\nserves 2\n\nmake pie\n  100 g pastry\n  50 g sugar\n  hands 1 min: Mix.\n',
  );

  test('stands among the ingredients, not among what was taken out', () => {
    expect(words(value.statement.unweighed)).toBe('pastry');
    expect(value.statement.takenOut).toEqual([]);
    expect(value.allergens.cannotSay.map(({ name }) => name)).toEqual(['pastry']);
  });

  test('makes every figure at least, and those for 100 g not known', () => {
    expect(value.weight).toBeUndefined();
    const energy = value.declaration.rows.find(({ nutrient }) => nutrient === 'energyKcal');
    expect(energy?.values[0]?.text).toBeUndefined();
    expect(energy?.values[1]?.atLeast).toBe(true);
  });
});

test('a recipe that nothing goes into has no list, and says so', () => {
  const text = labelText(labelled('recipe Air\nserves 2\n\nmake air\n  hands 5 min: Wait.\n').value);
  expect(text).toMatch(/Ingredients: none are written\./);
  expect(text).not.toMatch(/no ingredient is on this list/);
});

test('a tag never says that nothing on a list is in it, for it names no list', () => {
  const { value } = labelled(
    'recipe Rice\nserves 2\n\nmake rice\n  200 g white rice\n  400 g water\n  hob 12 min: Boil.\n',
  );
  expect(labelText(value)).toMatch(/As far as the food table knows, no ingredient is on this list/);
  for (const text of [tagText(value.tag), tagPage(value.tag)]) {
    expect(text).not.toMatch(/no ingredient/i);
    expect(text).toMatch(/What is not named here has not been shown to be absent/);
  }
});

test('at least less than something is printed as at least nothing', () => {
  const text = labelText(
    labelled('recipe Broth\nserves 2\n\nmake broth\n  500 g water\n  3 g lard\n  5 g frobnut\n  hob 5 min: Boil.\n')
      .value,
  );
  expect(text).toMatch(/at least/);
  expect(text).not.toMatch(/at least (?:<|less)/);
});

describe('an estimated open amount', () => {
  /** Salt in 100 g as a market prints it, of 100 g of water and some salt. */
  const salt = (line: string): unknown =>
    labelled(`recipe Brine\n\nmake brine\n  96 g water\n  ${line}\n  hands 1 min: Stir.\n`).value.declaration.rows.find(
      ({ nutrient }) => nutrient === 'salt',
    )?.values[0];

  // 4 g more or less by 15 %: 3.4 to 4.6 g. In 100 g of what it then weighs: 3.42 and 4.57 g; the table
  // gives 38.8 g of sodium in 100 g of salt, so that 2.5 times it is 96.9 % of them. By hand.
  test('is a range of 15 % on either side, which is how wide `about` is elsewhere', () => {
    expect(salt('a little fine salt = about 4 g, to taste')).toMatchObject({ between: ['3.3 g', '4.4 g'] });
    expect(salt('a little fine salt = 4 g')).toMatchObject({ between: ['3.3 g', '4.4 g'] });
  });

  test('is the range that is written, if one is', () => {
    expect(salt('a little fine salt = 3-5 g')).toMatchObject({ between: ['2.9 g', '4.8 g'] });
  });

  test('and a plain amount is none', () => {
    expect(salt('4 g fine salt')).not.toHaveProperty('between');
  });
});
