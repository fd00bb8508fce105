import { UcumLhcUtils } from '@lhncbc/ucum-lhc';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { interval, single } from './interval.js';
import { styleFor, TYPOGRAPHIC } from './print.js';
import { absolute, compare, exact, rational, subtract, toApproximateNumber, type Rational } from './rational.js';
import {
  acidity,
  agreeOnDial,
  agreeOnThermometer,
  degrees,
  dial,
  differenceBetween,
  gasMark,
  isPossible,
  printAcidity,
  printDegrees,
  shownDegrees,
  temperatureDifference,
  temperaturePoint,
  thermometer,
  warmer,
} from './temperature.js';

const C = (n: number): Rational => rational(n);
const anyDegrees = fc
  .tuple(fc.integer({ min: -2000, max: 6000 }), fc.integer({ min: 1, max: 10 }))
  .map(([n, d]) => rational(n, d));
const anyScale = fc.constantFrom('C' as const, 'F' as const);

describe('points and differences', () => {
  test('agree with an independent UCUM library', () => {
    const library = UcumLhcUtils.getInstance();
    for (let fahrenheit = -40; fahrenheit <= 500; fahrenheit += 27) {
      const there = library.convertUnitTo('[degF]', fahrenheit, 'Cel').toVal ?? NaN;
      expect(toApproximateNumber(temperaturePoint(C(fahrenheit), 'F').celsius)).toBeCloseTo(there, 9);
      const back = library.convertUnitTo('Cel', fahrenheit, '[degF]').toVal ?? NaN;
      expect(toApproximateNumber(degrees(temperaturePoint(C(fahrenheit), 'C'), 'F'))).toBeCloseTo(back, 9);
    }
  });

  test('there and back is the identity', () => {
    fc.assert(
      fc.property(anyDegrees, anyScale, (value, scale) => {
        expect(degrees(temperaturePoint(value, scale), scale)).toEqual(value);
        expect(degrees(temperatureDifference(value, scale), scale)).toEqual(value);
      }),
    );
  });

  test('a point and the difference to another give the other, in either scale', () => {
    fc.assert(
      fc.property(anyDegrees, anyDegrees, anyScale, (a, b, scale) => {
        const [from, to] = [temperaturePoint(a, scale), temperaturePoint(b, scale)];
        expect(warmer(from, differenceBetween(from, to))).toEqual(to);
        expect(degrees(differenceBetween(from, to), scale)).toEqual(subtract(b, a));
      }),
    );
  });

  test('18 F warmer is 10 C warmer', () => {
    expect(temperatureDifference(C(18), 'F')).toEqual(temperatureDifference(C(10), 'C'));
    expect(temperaturePoint(C(18), 'F')).not.toEqual(temperaturePoint(C(10), 'C'));
  });

  test('the scales meet at -40, and nothing is colder than -273.15 C', () => {
    // From memory: the definition of both scales.
    expect(temperaturePoint(C(-40), 'F')).toEqual(temperaturePoint(C(-40), 'C'));
    expect(isPossible(temperaturePoint(exact('-273.15'), 'C'))).toBe(true);
    expect(isPossible(temperaturePoint(exact('-459.67'), 'F'))).toBe(true);
    expect(isPossible(temperaturePoint(C(-460), 'F'))).toBe(false);
  });
});

describe('the dial of an oven', () => {
  test('330 F is 165 C (common practice, no source)', () => {
    expect(dial(temperaturePoint(C(330), 'F'), 'C')).toEqual(C(165));
    expect(agreeOnDial(C(165), C(330))).toBe(true);
  });

  test.each([
    // NIST OWM, Metric Kitchen, culinary temperatures: 120 C is 250 F, 160 C is 325 F, 180 C is 350 F, 190 C is 375 F,
    // 200 C is 400 F, 230 C is 450 F, and a cool oven 90 C is 200 F.
    [90, 200],
    [120, 250],
    [160, 325],
    [180, 350],
    [190, 375],
    [200, 400],
    [230, 450],
    [260, 500],
  ])('%i C is marked %i F', (celsius, fahrenheit) => {
    expect(dial(temperaturePoint(C(celsius), 'C'), 'F')).toEqual(C(fahrenheit));
    expect(agreeOnDial(C(celsius), C(fahrenheit))).toBe(true);
  });

  test('a step too far is not the same position', () => {
    expect(agreeOnDial(C(180), C(375))).toBe(false);
    expect(agreeOnDial(C(200), C(350))).toBe(false);
    // A slip of the scale.
    expect(agreeOnDial(C(350), C(350))).toBe(false);
  });

  test('a mark is never further away than half a step, and agrees where a step of 5 C lets it', () => {
    fc.assert(
      fc.property(fc.integer({ min: 80, max: 300 }), (celsius) => {
        const point = temperaturePoint(C(celsius), 'C');
        const off = absolute(subtract(dial(point, 'F'), degrees(point, 'F')));
        expect(compare(off, exact('12.5'))).toBeLessThanOrEqual(0);
        expect(agreeOnDial(C(celsius), dial(point, 'F'))).toBe(true);
      }),
    );
  });

  test('what is written in the asked scale is printed as written', () => {
    const point = temperaturePoint(C(330), 'F');
    expect(shownDegrees(point, 'F', 'oven', 'F')).toEqual(C(330));
    expect(shownDegrees(point, 'F', 'oven')).toEqual(C(325));
    expect(shownDegrees(point, 'C', 'oven', 'F')).toEqual(C(165));
  });
});

describe('thermometers', () => {
  test.each([
    // US FDA Food Code, figures in both scales: 5 C (41 F), 57 C (135 F), 60 C (140 F), 63 C (145 F), 74 C (165 F); from memory.
    [5, 41],
    [57, 135],
    [60, 140],
    [63, 145],
    [74, 165],
  ])('%i C and %i F are one temperature', (celsius, fahrenheit) => {
    expect(agreeOnThermometer(C(celsius), C(fahrenheit))).toBe(true);
    expect(thermometer(temperaturePoint(C(fahrenheit), 'F'), 'C')).toEqual(C(celsius));
  });

  test('a freezer at -18 C is 0 F (common practice, no source)', () => {
    expect(shownDegrees(temperaturePoint(C(-18), 'C'), 'F', 'food')).toEqual(C(0));
    expect(agreeOnThermometer(C(-18), C(0))).toBe(true);
  });

  test('two degrees off is not one temperature', () => {
    expect(agreeOnThermometer(C(74), C(160))).toBe(false);
    expect(agreeOnThermometer(C(24), C(78))).toBe(false);
  });

  test('a core temperature and a ferment keep their degree where an oven would lose it', () => {
    expect(shownDegrees(temperaturePoint(C(97), 'C'), 'F', 'food')).toEqual(C(207));
    expect(shownDegrees(temperaturePoint(C(24), 'C'), 'F', 'food')).toEqual(C(75));
    // Proving in the oven.
    expect(shownDegrees(temperaturePoint(C(35), 'C'), 'F', 'oven')).toEqual(C(95));
  });
});

describe('gas marks', () => {
  // Tables of published gas marks are compared row by row in tests/published.
  test('between two marks the nearer is taken, the cooler of two as near', () => {
    expect(gasMark(C(185), 'C')).toBe('4');
    expect(gasMark(C(210), 'C')).toBe('6');
    expect(gasMark(C(165), 'C')).toBe('3');
    expect(gasMark(C(360), 'F')).toBe('4');
  });

  test('outside the marks there is none', () => {
    expect(gasMark(C(60), 'C')).toBeUndefined();
    expect(gasMark(C(280), 'C')).toBeUndefined();
    expect(gasMark(C(200), 'F')).toBeUndefined();
    expect(gasMark(C(550), 'F')).toBeUndefined();
  });
});

describe('printing', () => {
  test('degrees', () => {
    expect(printDegrees(single(C(24)), 'C')).toBe('24 C');
    expect(printDegrees(interval(C(150), C(160)), 'C')).toBe('150-160 C');
    expect(printDegrees(interval(C(150), C(160)), 'C', TYPOGRAPHIC)).toBe('150–160\u00a0°C');
    expect(printDegrees(single(C(-18)), 'C', TYPOGRAPHIC)).toBe('−18\u00a0°C');
    expect(printDegrees(interval(C(-20), C(-18)), 'C')).toBe('-20 to -18 C');
    expect(printDegrees(single(exact('24.5')), 'C', styleFor('de'))).toBe('24,5 C');
  });

  test('acidity', () => {
    const sour = acidity(exact('4.2'));
    expect(sour && printAcidity(sour)).toBe('pH 4.2');
    expect(sour && printAcidity(sour, styleFor('fr'))).toBe('pH 4,2');
    expect(acidity(C(-1))).toBeUndefined();
    expect(acidity(C(15))).toBeUndefined();
    expect(acidity(C(14))).toEqual({ kind: 'ph', value: C(14) });
  });
});
