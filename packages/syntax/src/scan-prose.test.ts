import { describe, expect, test } from 'vitest';
import { toExactText, type Rational } from '@quern/quantity';
import { scanProse, type Mention } from './scan-prose.js';

function shown(mention: Mention): string {
  const range = (low: Rational, high: Rational): string =>
    low.n === high.n && low.d === high.d ? toExactText(low) : `${toExactText(low)}..${toExactText(high)}`;
  const marks = `${mention.bracketed ? ' bracketed' : ''}${mention.kind === 'measure' && mention.each ? ' each' : ''}`;
  switch (mention.kind) {
    case 'length':
      return `${mention.lengths.map(toExactText).join('x')} ${mention.unit}${marks}`;
    case 'measure':
      return `${range(mention.low, mention.high)} ${mention.unit}${marks}`;
    case 'temperature':
      return `${range(mention.low, mention.high)} ${mention.scale}${marks}`;
    default:
      return `${mention.kind} ${range(mention.low, mention.high)}${marks}`;
  }
}

describe('figures in a sentence', () => {
  test.each([
    ['Scrape into the [2] oiled tins, 1167 g each, and smooth the tops.', ['1167 g each']],
    ['Beat in the butter a third at a time, [14 g] each.', ['14 g bracketed each']],
    ['Allow 30 g per person or 2 tbsp apiece.', ['30 g each', '2 tbsp each']],
    ['Use 1½ cups, then 250ml, then 1–2 tbsp.', ['1.5 cup', '250 ml', '1..2 tbsp']],
    // 1 lb 4 oz is 20/16 lb
    ['Add 1 lb 4 oz of shin.', ['1.25 lb']],
    ['Add 20 g and 100 ml.', ['20 g', '100 ml']],
    ['Bake at 180 °C (350 F) for 35 to 40 minutes.', ['180 C', '350 F', 'time 35..40']],
    ['Freeze at −18 °C, or at -20 C; hold 24–26°C.', ['-18 C', '-20 C', '24..26 C']],
    [
      'Leave for 1 h 30 min, half an hour, two days, 1 hour and 20 minutes.',
      ['time 90', 'time 30', 'time 2880', 'time 80'],
    ],
    ['Leave overnight.', ['time 480..960']],
    ['Rest 90 s.', ['time 1.5']],
    ['Roll to 18 x 18 cm, 4 mm thick, then 60cm.', ['18x18 cm', '4 mm', '60 cm']],
    ['It is done at 80 % or pH below 4.6.', ['percent 80', 'acidity 4.6']],
  ])('%s', (text, expected) => {
    expect(scanProse(text).map(shown)).toEqual(expected);
  });

  test.each([
    'Cut it into 2 in the tin.',
    'Give a second letter fold.',
    'Add the overnight dough.',
    'Turn 3 times, 5 c at most, in 4 slices.',
    'Cut [16] long triangles.',
    'Add 1,000 things.',
    'Serve at 8.',
    '',
  ])('none in: %s', (text) => {
    expect(scanProse(text)).toEqual([]);
  });
});
