import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { FINE_SCALE, KITCHEN_SCALE, showFormula, showGrams, TOTALS, type FormulaLine, type Rounding } from './grams.js';
import { styleFor, TYPOGRAPHIC } from './print.js';
import {
  absolute,
  compare,
  divide,
  exact,
  HUNDRED,
  multiply,
  rational,
  subtract,
  sum,
  type Rational,
} from './rational.js';

const policies: readonly Rounding[] = [KITCHEN_SCALE, FINE_SCALE, TOTALS];

describe('grams as a scale shows them', () => {
  test.each([
    // grams, an ordinary line, a small dose, a fine scale, a total
    ['0', '0 g', '0 g', '0.0 g', '0 g'],
    ['0.04', '0.04 g', '0.04 g', '0.04 g', '0.04 g'],
    ['0.5', '0.5 g', '0.5 g', '0.5 g', '0.5 g'],
    ['7.26', '7.3 g', '7.3 g', '7.3 g', '7.3 g'],
    ['12.34', '12 g', '12.3 g', '12.3 g', '12 g'],
    ['20', '20 g', '20 g', '20.0 g', '20 g'],
    ['333.3', '333 g', '333 g', '333.3 g', '333 g'],
    ['1234', '1235 g', '1235 g', '1234 g', '1.234 kg'],
    ['25500', '25.50 kg', '25.500 kg', '25500 g', '25.50 kg'],
    ['-12.3', '-12 g', '-12.3 g', '-12.3 g', '-12 g'],
  ])('%s g', (grams, ordinary, small, fine, total) => {
    expect(showGrams(exact(grams), KITCHEN_SCALE).text).toBe(ordinary);
    expect(showGrams(exact(grams), KITCHEN_SCALE, { dose: 'small' }).text).toBe(small);
    expect(showGrams(exact(grams), FINE_SCALE).text).toBe(fine);
    expect(showGrams(exact(grams), TOTALS).text).toBe(total);
  });

  test('parts, styles and volumes', () => {
    expect(showGrams(exact('7.26'), KITCHEN_SCALE, { style: styleFor('de') })).toMatchObject({
      number: '7,3',
      unit: 'g',
      text: '7,3 g',
      value: exact('7.3'),
      step: exact('0.1'),
    });
    expect(showGrams(exact('1500'), TOTALS, { measure: 'volume', style: TYPOGRAPHIC }).text).toBe('1.500\u00a0l');
    expect(showGrams(exact('150'), KITCHEN_SCALE, { measure: 'volume' }).text).toBe('150 ml');
  });

  test('one more digit when a percentage would move too far', () => {
    // 20.44 g of seed on 400 g of flour is 5.11 %; 20 g would be 5.00 %, 20.4 g is 5.10 %.
    const percent = { flour: rational(400) };
    expect(showGrams(exact('20.44'), KITCHEN_SCALE).text).toBe('20 g');
    expect(showGrams(exact('20.44'), KITCHEN_SCALE, { percent }).text).toBe('20.4 g');
    expect(showGrams(exact('20.44'), KITCHEN_SCALE, { percent: { ...percent, bound: exact('0.001') } }).text).toBe(
      '20.44 g',
    );
    expect(() => showGrams(exact('20'), KITCHEN_SCALE, { percent: { ...percent, bound: rational(0) } })).toThrow(
      RangeError,
    );
  });

  test('without flour there is no percentage to keep', () => {
    expect(showGrams(exact('20.44'), KITCHEN_SCALE, { percent: { flour: rational(0) } }).text).toBe('20 g');
  });

  test('a policy without a last step is refused', () => {
    const broken: Rounding = { ...KITCHEN_SCALE, id: 'broken', steps: { ordinary: [], small: [] } };
    expect(() => showGrams(rational(1), broken)).toThrow('broken');
  });
});

const anyGrams = fc
  .tuple(fc.integer({ min: 1, max: 20_000_000 }), fc.integer({ min: 1, max: 12 }))
  .map(([n, d]) => rational(n, 1000 * d));
const anyPolicy = fc.constantFrom(...policies);
const anyDose = fc.constantFrom('ordinary' as const, 'small' as const);
const anyBound = fc.constantFrom(exact('0.05'), exact('0.01'), exact('0.5'));

const percentOf = (grams: Rational, flour: Rational): Rational => multiply(HUNDRED, divide(grams, flour));
const apart = (a: Rational, b: Rational): Rational => absolute(subtract(a, b));

/** What the text says, read without looking at the value beside it. */
function readBack(text: string): Rational {
  const [number = '', unit = ''] = text.split(' ');
  return multiply(exact(number), rational(unit === 'kg' ? 1000 : 1));
}

describe('laws', () => {
  test('the text says exactly the value beside it', () => {
    fc.assert(
      fc.property(anyGrams, anyPolicy, anyDose, (grams, policy, dose) => {
        const shown = showGrams(grams, policy, { dose });
        expect(readBack(shown.text)).toEqual(shown.value);
        expect(shown.text).toBe(`${shown.number} ${shown.unit}`);
      }),
    );
  });

  test('no amount is moved past the relative bound, and none becomes nothing', () => {
    fc.assert(
      fc.property(anyGrams, anyPolicy, anyDose, (grams, policy, dose) => {
        const { value } = showGrams(grams, policy, { dose });
        expect(compare(apart(value, grams), multiply(grams, policy.relativeBound))).toBeLessThanOrEqual(0);
        expect(value.n > 0n).toBe(true);
      }),
    );
  });

  test('no percentage is moved past its bound', () => {
    fc.assert(
      fc.property(anyGrams, anyGrams, anyPolicy, anyDose, anyBound, (grams, flour, policy, dose, bound) => {
        const { value } = showGrams(grams, policy, { dose, percent: { flour, bound } });
        expect(compare(apart(percentOf(value, flour), percentOf(grams, flour)), bound)).toBeLessThanOrEqual(0);
      }),
    );
  });

  test('a formula’s percentages, reckoned from the figures shown, are all within the bound', () => {
    const line = fc.record({ grams: anyGrams, dose: anyDose, flour: fc.boolean() });
    fc.assert(
      fc.property(fc.array(line, { minLength: 1, maxLength: 8 }), anyPolicy, anyBound, (others, policy, bound) => {
        const lines: readonly FormulaLine[] = [{ grams: rational(1000, 3), flour: true }, ...others];
        const shown = showFormula(lines, policy, { bound });
        const flour = sum(lines.filter((l) => l.flour).map((l) => l.grams));
        const shownFlour = sum(shown.filter((_, index) => lines[index]?.flour).map(({ text }) => readBack(text)));
        lines.forEach(({ grams }, index) => {
          const said = percentOf(readBack(shown[index]?.text ?? ''), shownFlour);
          expect(compare(apart(said, percentOf(grams, flour)), bound)).toBeLessThanOrEqual(0);
        });
      }),
    );
  });

  test('a formula that is true in round figures is shown in them', () => {
    const lines = [
      { grams: rational(1000), flour: true },
      { grams: rational(750), flour: false },
      { grams: rational(20), flour: false, dose: 'small' as const },
    ];
    expect(showFormula(lines, KITCHEN_SCALE).map(({ text }) => text)).toEqual(['1000 g', '750 g', '20 g']);
  });

  test('flour that comes in a product counts, though no line weighs it out', () => {
    // A spoon of flour in an almond filling: 7.67 g of 190 g. 7.7 g moves it by 0.02 points, which is within the bound.
    const lines = [
      { grams: exact('7.67'), flour: true },
      { grams: exact('100'), flour: false },
    ];
    const texts = showFormula(lines, KITCHEN_SCALE, { flourBesides: exact('182.33') }).map(({ text }) => text);
    expect(texts).toEqual(['7.7 g', '100 g']);
  });

  test('a formula without flour is rounded line by line', () => {
    const lines = [
      { grams: exact('1234'), flour: false },
      { grams: exact('20.44'), flour: false },
    ];
    expect(showFormula(lines, KITCHEN_SCALE).map(({ text }) => text)).toEqual(['1235 g', '20 g']);
  });
});
