import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { convert, densityOf, gramsToMillilitres, millilitresToGrams } from './convert.js';
import { absolute, compare, divide, exact, multiply, ONE, rational, subtract, type Rational } from './rational.js';
import {
  printScoopError,
  printScoops,
  scoop,
  scoopsVolume,
  toolSize,
  type Scooped,
  type ScoopOptions,
  type ScoopTool,
} from './scoops.js';
import { sizeOf, type CupSystem } from './units.js';
import { TYPOGRAPHIC } from './print.js';

const US: ScoopOptions = { cups: 'us' };
const cups = (n: number, d = 1): Rational => convert(rational(n, d), 'cup', 'ml');
const text = (ml: Rational, options: ScoopOptions = US): string => printScoops(scoop(ml, options));

describe('so much that the tolerance is a cup', () => {
  test('is told in the nearest whole cups, however much it is', () => {
    // 34 cups could lose one and stay within 3 %; nobody does.
    expect(text(cups(34))).toBe('34 cups');
    expect(text(cups(1001, 10))).toBe('100 cups');
    expect(text(cups(10 ** 15))).toBe(`${10 ** 15} cups`);
  });
});

describe('a volume as a cook measures it', () => {
  test.each([
    [cups(1), '1 cup'],
    [cups(1, 2), '1/2 cup'],
    [cups(2, 3), '2/3 cup'],
    [cups(3, 4), '3/4 cup'],
    [cups(3, 2), '1 1/2 cups'],
    [cups(8, 3), '2 2/3 cups'],
    [cups(3), '3 cups'],
    [cups(12), '12 cups'],
    [cups(1, 8), '2 tbsp'],
    [cups(7, 16), '1/4 cup + 3 tbsp'],
    [cups(7, 12), '1/3 cup + 1/4 cup'],
    [cups(1, 16), '1 tbsp'],
    [cups(1, 48), '1 tsp'],
    [cups(1, 96), '1/2 tsp'],
    [cups(3, 192), '3/4 tsp'],
    [cups(3, 384), '1/4 tsp + 1/8 tsp'],
    [cups(7, 384), '3/4 tsp + 1/8 tsp'],
    [cups(1, 384), '1/8 tsp'],
    [cups(11, 96), '1 tbsp + 2 1/2 tsp'],
  ])('exactly what a set of measures holds (%#)', (ml, expected) => {
    expect(text(ml)).toBe(expected);
  });

  test('nine tablespoons are never asked for', () => {
    // 9 tbsp, exactly half a cup and one spoon more.
    expect(text(cups(9, 16), { cups: 'us', tolerance: rational(0) })).toBe('1/2 cup + 1 tbsp');
  });

  test('a wider tolerance takes fewer scoops and says how far off they are', () => {
    const target = cups(42, 100);
    const near = scoop(target, US);
    expect(printScoops(near)).toBe('1/3 cup + 1 tbsp + 1 tsp');
    const wide = scoop(target, { cups: 'us', tolerance: exact('0.2') });
    expect(printScoops(wide)).toBe('1/2 cup');
    expect(printScoopError(wide)).toBe('+19.0 %');
  });

  test('what is smaller than every measure is said to be', () => {
    const teaspoon = sizeOf('tsp');
    expect(text(divide(teaspoon, rational(16)))).toBe('a pinch');
    expect(text(divide(teaspoon, rational(20)))).toBe('a pinch');
    expect(text(divide(teaspoon, rational(40)))).toBe('less than a pinch');
    expect(text(rational(0))).toBe('nothing');
    expect(scoop(divide(teaspoon, rational(40)), US).kind).toBe('less-than-a-pinch');
  });

  test('when nothing is near enough the nearest is given, marked', () => {
    const found = scoop(multiply(sizeOf('tsp'), exact('0.31')), US);
    expect(found).toMatchObject({ kind: 'scoops', withinTolerance: false });
    expect(printScoops(found)).toBe('1/4 tsp');
    expect(printScoopError(found)).toBe('-19.4 %');
  });

  test('impossible questions are refused', () => {
    expect(() => scoop(rational(-1), US)).toThrow(RangeError);
    expect(() => scoop(rational(1), { cups: 'us', tolerance: rational(-1) })).toThrow(RangeError);
  });

  test('typographic fractions', () => {
    expect(printScoops(scoop(cups(3, 2), US), TYPOGRAPHIC)).toBe('1½\u00a0cups');
  });
});

describe('facts of the trade', () => {
  // Common practice, no source: 2/3 cup of brown sugar is about 140 g; 1/4 cup and 3 tablespoons of butter about 100 g;
  // 1 3/8 cups of wheat flour about 175 g; 1/4 cup of spirit about 60 g. Held against published grams per cup:
  // USDA National Nutrient Database SR27, WEIGHT file, NDB 19334 (brown sugar, packed, 220 g), 01145 (butter, 227 g),
  // 20081 (white flour, 125 g); from memory: spirit of 40 % by volume weighs 0.948 g per ml.
  const perCup = (grams: string): Rational => densityOf(exact(grams), sizeOf('cup'));
  const grams = (ml: Rational, density: Rational): Rational => millilitresToGrams(ml, density);
  const within = (value: Rational, of: Rational, bound: string): boolean =>
    compare(absolute(subtract(divide(value, of), ONE)), exact(bound)) <= 0;

  test('2/3 cup of brown sugar is about 140 g', () => {
    expect(within(grams(cups(2, 3), perCup('220')), rational(140), '0.05')).toBe(true);
    const ml = gramsToMillilitres(rational(140), perCup('220'));
    expect(text(ml, { cups: 'us', tolerance: exact('0.05') })).toBe('2/3 cup');
  });

  test('1/4 cup and 3 tablespoons of butter are about 100 g', () => {
    expect(within(grams(cups(7, 16), perCup('227')), rational(100), '0.01')).toBe(true);
    expect(text(gramsToMillilitres(rational(100), perCup('227')))).toBe('1/4 cup + 3 tbsp');
  });

  test('1 3/8 cups of wheat flour are about 175 g', () => {
    expect(within(grams(cups(11, 8), perCup('125')), rational(175), '0.03')).toBe(true);
    const found = scoop(gramsToMillilitres(rational(175), perCup('125')), US);
    expect(found.kind === 'scoops' && within(found.volume, cups(11, 8), '0.03')).toBe(true);
  });

  test('1/4 cup of spirit is about 60 g', () => {
    expect(within(grams(cups(1, 4), exact('0.948')), rational(60), '0.07')).toBe(true);
    const ml = gramsToMillilitres(rational(60), exact('0.948'));
    expect(text(ml, { cups: 'us', tolerance: exact('0.07') })).toBe('1/4 cup');
  });
});

const systems: readonly CupSystem[] = ['us', 'metric', 'australian'];

describe('laws, in every system of cups', () => {
  const anySystem = fc.constantFrom(...systems);
  // 0.001 ml to 20 l, and the odd fractions that scaling gives.
  const anyVolume = fc
    .tuple(fc.bigInt({ min: 1n, max: 20_000_000n }), fc.bigInt({ min: 1n, max: 7n }))
    .map(([n, d]) => rational(n, 1000n * d));
  const anyTolerance = fc.integer({ min: 0, max: 100 }).map((n) => rational(n, 1000));

  test('the scoops less the target are the error stated, and the tolerance is kept or its breach is told', () => {
    fc.assert(
      fc.property(anyVolume, anySystem, anyTolerance, (target, system, tolerance) => {
        const found = scoop(target, { cups: system, tolerance });
        if (found.kind !== 'scoops') return;
        const volume = scoopsVolume(found.scoops, system);
        expect(found.volume).toEqual(volume);
        expect(found.error).toEqual(subtract(volume, target));
        expect(multiply(found.relativeError, target)).toEqual(found.error);
        expect(compare(absolute(found.relativeError), tolerance) <= 0).toBe(found.withinTolerance);
      }),
      { numRuns: 500 },
    );
  });

  test('no spoon is counted past the next larger measure', () => {
    fc.assert(
      fc.property(anyVolume, anySystem, (target, system) => {
        const found = scoop(target, { cups: system });
        if (found.kind !== 'scoops') return;
        const most = { 'half-cup': 1n, 'third-cup': 2n, 'quarter-cup': 1n, tablespoon: 3n, teaspoon: 3n };
        for (const { tool, count } of found.scoops) {
          if (tool === 'cup') continue;
          expect(count <= (most[tool as keyof typeof most] ?? 1n)).toBe(true);
        }
        expect(printScoops(found)).not.toMatch(/\d\.\d/);
      }),
      { numRuns: 500 },
    );
  });

  test('of a bigger amount at 3 % something always comes within the tolerance', () => {
    fc.assert(
      fc.property(fc.integer({ min: 10_000, max: 5_000_000 }), anySystem, (microlitres, system) => {
        const found = scoop(rational(microlitres, 1000), { cups: system });
        expect(found).toMatchObject({ kind: 'scoops', withinTolerance: true });
      }),
      { numRuns: 500 },
    );
  });

  test('nobody finds fewer scoops by trying them all', () => {
    fc.assert(
      fc.property(fc.integer({ min: 200, max: 1_200_000 }), anySystem, (microlitres, system) => {
        const found = scoop(rational(microlitres, 1000), { cups: system });
        if (found.kind !== 'scoops' || !found.withinTolerance) return;
        expect(scoopsCounted(found)).toBe(fewestByTrying(microlitres / 1000, system));
      }),
      { numRuns: 150 },
    );
  });
});

const scoopsCounted = (found: Scooped & { kind: 'scoops' }): number =>
  Number(found.scoops.reduce((total, { count }) => total + count, 0n));

/** Tries every way to take one, two, three… scoops of any measure, in machine numbers, until one is within 3 %. */
function fewestByTrying(target: number, system: CupSystem): number {
  const tools: ScoopTool[] = [
    'cup',
    'half-cup',
    'third-cup',
    'quarter-cup',
    'tablespoon',
    'teaspoon',
    'half-teaspoon',
    'quarter-teaspoon',
    'eighth-teaspoon',
  ];
  const sizes = tools.map((tool) => {
    const size = toolSize(tool, system);
    return Number(size.n) / Number(size.d);
  });
  let sums = new Set([0]);
  for (let scoops = 1; scoops < 20; scoops++) {
    const next = new Set<number>();
    for (const total of sums) {
      for (const size of sizes) {
        const more = total + size;
        if (more <= target * (1.03 + 1e-12)) next.add(Math.round(more * 1e9) / 1e9);
      }
    }
    for (const total of next) if (Math.abs(total - target) <= target * (0.03 + 1e-9)) return scoops;
    sums = next;
  }
  return Infinity;
}
