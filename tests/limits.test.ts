/** How large things may be: what is beyond a limit is said in words, and costs no more time than what is within it. */
import { describe, expect, test } from 'vitest';
import { compile, type Compiled } from '@quern/compiler';
import { createFoodBook } from '@quern/foods';
import { memoryHost, type SourceText } from '@quern/testkit';

const foods = createFoodBook();

function compiled(text: string, others: readonly SourceText[] = []): Compiled {
  return compile('main.quern', text, memoryHost([{ path: 'main.quern', text }, ...others], foods));
}

const codes = (one: Compiled) => [...new Set(one.diagnostics.map(({ code }) => code))];

/** A recipe whose makes draw such a share of the one before. */
const chain = (makes: number, share: string) =>
  `recipe Chain\n${Array.from(
    { length: makes },
    (_, index) =>
      `make link ${index}\n${index > 0 ? `  ${share} link ${index - 1}\n` : ''}  100 g butter\n  hands 1 min: Melt the butter.\n`,
  ).join('')}`;

/** Files that each use the next; the last one makes butter. */
const files = (count: number): SourceText[] =>
  Array.from({ length: count }, (_, index) => {
    const last = index === count - 1;
    const use = last ? '' : `use stage ${index + 1} from stage-${index + 1}.quern\n`;
    const line = last ? '50 g butter' : `10 g stage ${index + 1}`;
    return { path: `stage-${index}.quern`, text: `${use}recipe stage ${index}\n${line}\nhands 1 min: Stir.\n` };
  });

// Times are for a slow and busy machine; without the limits each of these would take minutes or hours.
describe('beyond the limits', { timeout: 60_000 }, () => {
  test('a line of five million characters is not read', () => {
    expect(codes(compiled(`recipe Long\nnote ${'x'.repeat(5_000_000)}\n`))).toEqual(['L27']);
  });

  test('a number of three thousand digits is no number', () => {
    expect(
      codes(compiled(`recipe Digits\n  ${'9'.repeat(3000)} g butter\n  hands 1 min: Melt the butter.\n`)),
    ).toContain('Q22');
  });

  test('a thousand makes that draw awkward shares of each other are cut off', () => {
    const one = compiled(chain(1000, '37.123456789 % of'));
    expect(codes(one)).toContain('M16');
    expect(one.formulas[0]?.makes.length).toBe(64);
  });

  test('a thousand saved things are cut off', () => {
    const saves = Array.from(
      { length: 1000 },
      (_, index) => `  save 37.123456789 % as part ${index}\n  all part ${index}\n`,
    );
    expect(
      codes(compiled(`recipe Saves\nmake first\n  1 kg butter\n${saves.join('')}  hands 1 min: Melt.\n`)),
    ).toContain('M16');
  });

  test('a thousand variants are cut off', () => {
    const variants = Array.from({ length: 1000 }, (_, index) => `variant number ${index}\n  times 2\n`);
    const one = compiled(`recipe Many\n  100 g butter\n  hands 1 min: Melt the butter.\n${variants.join('')}`);
    expect(codes(one)).toContain('V06');
    expect(one.formulas.length).toBe(65);
  });

  test('a thousand lines that each take a share are cut off', () => {
    const lines = Array.from({ length: 1000 }, (_, index) => `  lose 0.${100_000_000 + index} % as water\n`);
    const one = compiled(`recipe Boiled\n  900 kg water\n  10 kg butter\n  hands 1 min: Boil.\n${lines.join('')}`);
    expect(codes(one)).toEqual(['M18']);
    const on = compiled(
      `recipe Rich\n  900 kg water\n${'  1.37 % butter on all\n'.repeat(1000)}  hands 1 min: Stir.\n`,
    );
    expect(codes(on)).toContain('M18');
  });

  test('a recipe of fifty thousand lines is cut off', () => {
    const one = compiled(`recipe Long\n${'  1 g butter\n'.repeat(50_000)}  hands 1 min: Melt the butter.\n`);
    expect(codes(one)).toContain('M18');
    expect(one.formulas.length).toBe(1);
  });

  test('variants of a long recipe are fewer', () => {
    const variants = Array.from({ length: 60 }, (_, index) => `variant number ${index}\n  times 2\n`);
    const lines = '  1 g butter\n'.repeat(990);
    const one = compiled(`recipe Many\n${lines}  hands 1 min: Melt the butter.\n${variants.join('')}`);
    expect(codes(one)).toEqual(['V06']);
    // Three thousand lines in all, by three times the thousand.
    expect(one.formulas.length).toBe(4);
  });

  test('twelve hundred recipes in a file are cut off', () => {
    const recipes = Array.from(
      { length: 1200 },
      (_, index) => `recipe Number ${index}\n  1 g butter\n  hands: Melt the butter.\n`,
    );
    const one = compiled(recipes.join(''));
    expect(codes(one)).toContain('M18');
    expect(one.formulas.length).toBe(1000);
  });

  test('two thousand files, each using the next, are not followed', () => {
    const stages = files(2000);
    const text = `use stage 0 from stage-0.quern\nrecipe Deep\n  10 g stage 0\n  hands 1 min: Stir.\n`;
    expect(codes(compiled(text, stages))).toContain('N21');
  });
});

describe('within the limits', () => {
  test('sixty-four makes are no mistake', () => {
    const one = compiled(chain(64, 'all'));
    expect(codes(one)).toEqual([]);
    expect(one.formulas[0]?.makes.length).toBe(64);
  });

  test('sixty files that use each other are no mistake', () => {
    const text = `use stage 0 from stage-0.quern\nrecipe Deep\n  10 g stage 0\n  hands 1 min: Stir.\n`;
    expect(codes(compiled(text, files(60)))).toEqual([]);
  });
});
