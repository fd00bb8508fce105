import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { interval, single } from './interval.js';
import {
  decimalMark,
  PLAIN,
  printCount,
  printDecimal,
  printExact,
  printFixed,
  printInterval,
  printMeasure,
  printMixed,
  printPercent,
  printRange,
  styleFor,
  TYPOGRAPHIC,
  unitWord,
} from './print.js';
import { exact, rational } from './rational.js';

const anyRational = fc
  .tuple(fc.integer({ min: -9999, max: 9999 }), fc.integer({ min: 1, max: 99 }))
  .map(([n, d]) => rational(n, d));
const GERMAN = styleFor('de', TYPOGRAPHIC);

describe('mixed numbers', () => {
  test.each([
    [rational(3), '3', '3'],
    [rational(1, 2), '1/2', '½'],
    [rational(3, 2), '1 1/2', '1½'],
    [rational(-7, 4), '-1 3/4', '−1¾'],
    [rational(5, 12), '5/12', '5⁄12'],
    [rational(17, 12), '1 5/12', '1\u00a05⁄12'],
    [rational(0), '0', '0'],
  ])('%#', (value, plain, typographic) => {
    expect(printMixed(value)).toBe(plain);
    expect(printMixed(value, TYPOGRAPHIC)).toBe(typographic);
  });

  test('are what fraction.js prints', () => {
    fc.assert(
      fc.property(anyRational, (value) => {
        expect(printMixed(value)).toBe(new Fraction(value.n, value.d).toFraction(true));
      }),
    );
  });

  test('every typographic fraction is the character that Unicode decomposes to it', () => {
    for (let d = 2; d <= 8; d++) {
      for (let n = 1; n < d; n++) {
        const value = rational(n, d);
        const text = printMixed(value, TYPOGRAPHIC);
        expect(text.normalize('NFKC').replace('\u2044', '/')).toBe(`${value.n}/${value.d}`);
      }
    }
  });
});

describe('decimals', () => {
  test('are trimmed, or keep their zeros', () => {
    expect(printDecimal(exact('12.50'), 2)).toBe('12.5');
    expect(printDecimal(exact('120'), 2)).toBe('120');
    expect(printDecimal(exact('100'), 0)).toBe('100');
    expect(printFixed(exact('12.5'), 2)).toBe('12.50');
    expect(printDecimal(exact('-0.001'), 2)).toBe('0');
    expect(printFixed(exact('-0.001'), 2)).toBe('0.00');
    expect(printDecimal(exact('-0.25'), 2, GERMAN)).toBe('−0,25');
  });

  test('round as the platform rounds halves away from zero', () => {
    const platform = new Intl.NumberFormat('en', {
      maximumFractionDigits: 2,
      useGrouping: false,
      roundingMode: 'halfExpand',
    } as Intl.NumberFormatOptions);
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 9_999_999 }), (thousandths) => {
        const value = rational(thousandths, 1000);
        expect(printDecimal(value, 2)).toBe(platform.format(`${thousandths}E-3` as unknown as number));
      }),
    );
  });

  test('exact text loses nothing', () => {
    expect(printExact(rational(1, 8))).toBe('0.125');
    expect(printExact(rational(5, 3))).toBe('1 2/3');
    expect(printExact(rational(1, 8), GERMAN)).toBe('0,125');
  });

  test('counts are in cooks’ fractions, or in decimals', () => {
    expect(printCount(rational(3, 2))).toBe('1 1/2');
    expect(printCount(rational(2, 3))).toBe('2/3');
    expect(printCount(rational(13, 6))).toBe('2.17');
  });

  test('percents', () => {
    expect(printPercent(rational(200, 3), 1)).toBe('66.7 %');
    expect(printPercent(rational(2), 1, GERMAN)).toBe('2,0\u00a0%');
  });
});

describe('languages', () => {
  test('have the decimal mark that the Unicode CLDR gives them', () => {
    // The platform's copy of the CLDR, through Intl. Only languages it knows, else it answers for English.
    const tags =
      `af ar-EG az be bg bs ca cs cy da de de-AT de-CH de-DE de-LI el en en-AU en-GB en-US es es-AR es-CL es-CO es-CR es-DO es-ES
      es-GT es-HN es-MX es-NI es-PA es-PE es-PR es-SV es-US es-UY et eu fi fo fr fr-CA fr-FR ga gl he hi hr hu hy id is it it-CH
      it-IT ja ka kk ko ky lt lv mk mt nb nl nl-BE nn no pl pt pt-BR pt-PT ro ru sk sl sq sr sr-Latn-RS sv sw ta th tr uk uz vi zh`.split(
        /\s+/,
      );
    const wrong = tags.filter((tag) => {
      const there = new Intl.NumberFormat(tag, { numberingSystem: 'latn' })
        .formatToParts(1.5)
        .find(({ type }) => type === 'decimal');
      return Intl.NumberFormat.supportedLocalesOf(tag).length === 0 || there?.value !== decimalMark(tag);
    });
    expect(wrong).toEqual([]);
  });

  test('unknown ones have a point', () => {
    expect(decimalMark('')).toBe('.');
    expect(decimalMark('qq')).toBe('.');
    expect(styleFor('sv', PLAIN)).toEqual({ ...PLAIN, decimal: ',' });
  });
});

describe('ranges and measures', () => {
  test('ranges', () => {
    expect(printRange('340', '360')).toBe('340-360');
    expect(printRange('340', '360', TYPOGRAPHIC)).toBe('340–360');
    expect(printRange('12', '12')).toBe('12');
    const whole = (value: Parameters<typeof printDecimal>[0]): string => printDecimal(value, 0);
    expect(printInterval(interval(exact('11.8'), exact('12.2')), whole)).toBe('12');
  });

  test.each([
    [single(exact('60')), 'g', '60 g', '60\u00a0g'],
    [interval(exact('340'), exact('360')), 'g', '340-360 g', '340–360\u00a0g'],
    [single(rational(3, 2)), 'cup', '1 1/2 cups', '1½\u00a0cups'],
    [single(rational(1, 2)), 'cup', '1/2 cup', '½\u00a0cup'],
    [interval(rational(1, 2), rational(1)), 'cup', '1/2-1 cup', '½–1\u00a0cup'],
    [single(rational(2)), 'leaf', '2 leaves', '2\u00a0leaves'],
    [single(rational(1, 2)), 'kg', '0.5 kg', '0.5\u00a0kg'],
  ] as const)('%#', (range, unit, plain, typographic) => {
    expect(printMeasure(range, unit)).toBe(plain);
    expect(printMeasure(range, unit, TYPOGRAPHIC)).toBe(typographic);
  });

  test('the word after a number', () => {
    expect(unitWord('cup', rational(0))).toBe('cups');
    expect(unitWord('cup', rational(1))).toBe('cup');
    expect(unitWord('cup', rational(9, 8))).toBe('cups');
  });
});
