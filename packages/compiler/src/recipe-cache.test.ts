import { describe, expect, test } from 'vitest';
import { createFoodBook } from '@quern/foods';
import { LineCache } from '@quern/syntax';
import { Session } from './session.js';

const foods = createFoodBook();

const loaf = (name: string): string => `recipe ${name}

make leaven
  100 g strong wheat flour
  100 g water
  20 g starter
  hands 3 min: Stir.
  save 20 g as starter

make dough
  all leaven
  400 g strong wheat flour
  250 g water
  25 g beet syrup
  2 % fine salt on flour
  hands 8 min using mixer: Mix the flour, water and salt.

variant wholemeal
  swap strong wheat flour for wholemeal wheat flour

`;
const food = 'food beet syrup\n  contains nothing\n  weighs 1 tbsp = 20 g\n\n';
const culture = 'culture starter\n  parts 1 strong wheat flour, 1 water\n\n';
const file = `cup metric\n\n${loaf('One')}${loaf('Two')}${food}${loaf('Three')}${culture}kitchen Hall\n  has 1 mixer\n`;

function openSession(texts: Record<string, string> = {}): Session {
  return new Session({ read: (path) => texts[path], foods }, { lines: new LineCache() });
}

function compiled(session: Session, text: string) {
  session.set('main.quern', text);
  const result = session.compile('main.quern');
  if (result === undefined) throw new Error('no text');
  return result;
}

/** What a compilation says, without the identity of anything. */
function said(session: Session, text: string): string {
  const { diagnostics, formulas } = compiled(session, text);
  const weights = formulas.map(({ title, variant, dishGrams, makes, flour }) => [
    title,
    variant,
    dishGrams && `${dishGrams.n}/${dishGrams.d}`,
    makes.map(({ ref, items }) => [ref.line.start, items.map((item) => item.ref.line.start)]),
    flour && `${flour.hydration.n}/${flour.hydration.d}`,
  ]);
  return JSON.stringify({ diagnostics, weights }, undefined, 1);
}

const expectFresh = (session: Session, text: string): void =>
  expect(said(session, text)).toBe(said(openSession(), text));

describe('a recipe that has not changed', () => {
  test('is the same object again when nothing has moved', () => {
    const session = openSession();
    const before = compiled(session, file).formulas;
    const after = compiled(session, file.replace('recipe Three', 'recipe Seven')).formulas;
    expect(after[0]).toBe(before[0]);
    expect(after[3]).toBe(before[3]);
    expect(after[4]).not.toBe(before[4]);
  });

  test('is compiled for its new place when what changed stands above it', () => {
    const session = openSession();
    compiled(session, file);
    expectFresh(session, `// a remark\n${file}`);
    expectFresh(session, file);
  });

  test('knows a food or a culture that it names has changed', () => {
    const session = openSession();
    compiled(session, file);
    expectFresh(session, file.replace('1 tbsp = 20 g', '1 tbsp = 25 g'));
    expectFresh(session, file.replace('parts 1 strong', 'parts 3 strong'));
    expectFresh(session, file.replace('food beet syrup', 'food beat syrup'));
    expectFresh(session, file.replace('culture starter', 'culture barm'));
    expectFresh(session, `${file}food water\n  contains nothing\n`);
    expectFresh(session, file.replace('cup metric', 'cup us'));
    expectFresh(session, `${file}kitchen Hall\n  has 1 mixer\n`);
  });

  test('knows a file that the head uses has changed', () => {
    const texts: Record<string, string> = {
      'glaze.quern': 'recipe Glaze\n  50 g sugar\n  50 g water\n  hands 1 min: Stir.\n',
    };
    const session = openSession(texts);
    const text = `use Glaze from glaze.quern\n\nrecipe Buns\n  300 g strong wheat flour\n  half of Glaze\n  hands 5 min: Mix.\n`;
    expect(compiled(session, text).formulas[0]?.dishGrams).toEqual({ n: 350n, d: 1n });
    texts['glaze.quern'] = texts['glaze.quern']?.replace('50 g water', '150 g water') ?? '';
    expect(compiled(session, text).formulas[0]?.dishGrams).toEqual({ n: 400n, d: 1n });
  });
});

test('after each of many edits a kept file says what a fresh one says', () => {
  const session = openSession();
  let text = file;
  let seed = 7;
  const next = (below: number): number => {
    // Numerical Recipes' linear congruence: any sequence will do, as long as it is the same each time.
    seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0;
    return seed % below;
  };
  for (let round = 0; round < 150; round++) {
    const lines = text.split('\n');
    const at = next(lines.length);
    const line = lines[at] ?? '';
    const cut = next(line.length + 1);
    const edits = [
      line.slice(0, cut) + line.slice(cut + 1),
      `${line.slice(0, cut)}e${line.slice(cut)}`,
      `${line}\n${lines[next(lines.length)]}`,
      '',
    ];
    lines[at] = edits[next(edits.length)] ?? '';
    text = lines.join('\n');
    if (next(12) === 0) text = file;
    expectFresh(session, text);
  }
});

test('a food that another file describes can be used, with its allergens', () => {
  const larder = 'food frob syrup\n  contains sesame\n  weighs 1 tbsp = 20 g\n';
  const session = openSession({ 'larder.quern': larder });
  const { diagnostics, formulas } = compiled(
    session,
    'use frob syrup from larder.quern as syrup\n\nrecipe Drink\n  300 g water\n  2 tbsp syrup\n  hands 1 min: Stir the syrup into the water.\n',
  );
  expect(diagnostics).toEqual([]);
  expect(formulas[0]?.dishGrams).toEqual({ n: 340n, d: 1n });
  const item = formulas[0]?.makes[0]?.items[1];
  expect(item?.kind === 'in' && item.source.kind === 'food' && item.source.food.food?.allergens).toEqual(['sesame']);
});
