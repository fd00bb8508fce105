import { UcumLhcUtils } from '@lhncbc/ucum-lhc';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  canConvert,
  convert,
  convertInterval,
  densityOf,
  dimensionOf,
  fromBase,
  gramsToMillilitres,
  millilitresToGrams,
  toBase,
} from './convert.js';
import { interval } from './interval.js';
import { exact, rational, toApproximateNumber } from './rational.js';
import { units, type CupSystem, type UnitId } from './units.js';

const unitIds = Object.keys(units) as UnitId[];
const anyUnit = fc.constantFrom(...unitIds);
const anyCups = fc.constantFrom<CupSystem>('us', 'metric', 'australian');
const anyValue = fc
  .tuple(fc.integer({ min: -100_000, max: 100_000 }), fc.integer({ min: 1, max: 96 }))
  .map(([n, d]) => rational(n, d));

/** Our units in UCUM codes; the rest has none (a pinch, a clove). */
const UCUM: Partial<Record<UnitId, string>> = {
  mg: 'mg', g: 'g', kg: 'kg', oz: '[oz_av]', lb: '[lb_av]',
  ml: 'mL', cl: 'cL', dl: 'dL', l: 'L', tsp: '[tsp_us]', tbsp: '[tbs_us]', cup: '[cup_us]',
  'us-fl-oz': '[foz_us]', 'us-pint': '[pt_us]', 'us-quart': '[qt_us]', 'us-gallon': '[gal_us]',
  'imperial-fl-oz': '[foz_br]', 'imperial-pint': '[pt_br]', 'imperial-quart': '[qt_br]', 'imperial-gallon': '[gal_br]',
  drop: '[drp]', mm: 'mm', cm: 'cm', m: 'm', inch: '[in_i]', kj: 'kJ', kcal: '[Cal]',
}; // prettier-ignore

describe('conversion', () => {
  test('agrees with an independent UCUM library for every pair of units it knows', () => {
    const library = UcumLhcUtils.getInstance();
    const known = Object.entries(UCUM) as [UnitId, string][];
    let pairs = 0;
    for (const [from, fromCode] of known) {
      for (const [to, toCode] of known.filter(([id]) => canConvert(from, id))) {
        const { status, toVal } = library.convertUnitTo(fromCode, 7.25, toCode);
        expect(status).toBe('succeeded');
        const here = toApproximateNumber(convert(exact('7.25'), from, to));
        expect(Math.abs(here / (toVal ?? 0) - 1)).toBeLessThan(1e-12);
        pairs++;
      }
    }
    // 5 of mass, 16 of volume, 4 of length, 2 of energy.
    expect(pairs).toBe(25 + 256 + 16 + 4);
  });

  test('there and back is the identity, in every system of cups', () => {
    fc.assert(
      fc.property(anyValue, anyUnit, anyUnit, anyCups, (value, from, to, cups) => {
        if (!canConvert(from, to)) {
          expect(() => convert(value, from, to, cups)).toThrow(RangeError);
          return;
        }
        expect(convert(convert(value, from, to, cups), to, from, cups)).toEqual(value);
        expect(fromBase(toBase(value, from, cups), from, cups)).toEqual(value);
      }),
    );
  });

  test('goes by way of any third unit', () => {
    fc.assert(
      fc.property(anyValue, anyUnit, anyUnit, anyUnit, anyCups, (value, a, b, c, cups) => {
        fc.pre(canConvert(a, b) && canConvert(b, c));
        expect(convert(convert(value, a, b, cups), b, c, cups)).toEqual(convert(value, a, c, cups));
      }),
    );
  });

  test('counting units turn into themselves only', () => {
    expect(canConvert('clove', 'leaf')).toBe(false);
    expect(convert(rational(6), 'clove', 'clove')).toEqual(rational(6));
    expect(dimensionOf('clove')).toBe('count');
    expect(() => convert(rational(6), 'g', 'ml')).toThrow('g cannot be told in ml');
  });

  test('the cup is the file’s', () => {
    expect(convert(rational(1), 'cup', 'tbsp', 'us')).toEqual(rational(16));
    expect(convert(rational(1), 'cup', 'tbsp', 'metric')).toEqual(rational(50, 3));
    expect(convert(rational(1), 'cup', 'tbsp', 'australian')).toEqual(rational(25, 2));
  });

  test('both ends of a range', () => {
    expect(convertInterval(interval(rational(1), rational(2)), 'kg', 'g')).toEqual(
      interval(rational(1000), rational(2000)),
    );
  });
});

describe('density', () => {
  test('grams to millilitres and back is the identity', () => {
    const above = fc
      .tuple(fc.integer({ min: 1, max: 9999 }), fc.integer({ min: 1, max: 999 }))
      .map(([n, d]) => rational(n, d));
    fc.assert(
      fc.property(anyValue, above, (grams, density) => {
        expect(millilitresToGrams(gramsToMillilitres(grams, density), density)).toEqual(grams);
      }),
    );
  });

  test('a litre of water is a kilogram, a US cup of it about 237 g', () => {
    // USDA National Nutrient Database SR27, WEIGHT file, NDB 14411: 1 cup (8 fl oz) of tap water is 237 g.
    expect(millilitresToGrams(rational(1000), rational(1))).toEqual(rational(1000));
    const cup = convert(rational(1), 'cup', 'ml');
    expect(toApproximateNumber(millilitresToGrams(cup, densityOf(rational(237), exact('236.6'))))).toBeCloseTo(237, 0);
  });

  test('a density of nothing is refused', () => {
    expect(() => gramsToMillilitres(rational(1), rational(0))).toThrow(RangeError);
    expect(() => millilitresToGrams(rational(1), rational(-1))).toThrow(RangeError);
    expect(() => densityOf(rational(1), rational(0))).toThrow(RangeError);
    expect(() => densityOf(rational(0), rational(1))).toThrow(RangeError);
  });
});

test('a 9 by 5 inch loaf tin is one of 22 to 23 by 12 to 13 cm (common practice, no source)', () => {
  const long = toBase(rational(9), 'inch');
  const wide = toBase(rational(5), 'inch');
  expect([toApproximateNumber(long), toApproximateNumber(wide)]).toEqual([22.86, 12.7]);
});
