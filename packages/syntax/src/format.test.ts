import { describe, expect, test } from 'vitest';
import { applyEdits } from '@quern/text';
import { tidy } from './format.js';

describe('tidy', () => {
  test('turns a page of phone typing into the usual text', () => {
    const phone = [
      'Recipe  Ferry Biscuits',
      'By Tam Brack',
      'Gives 24 biscuits',
      '250g  Wheat Flour , sifted',
      '2½ Tbsp  butter,cold',
      'ABOUT 30 Grams sugar=2 Tablespoons',
      '1,5 TSP baking powder',
      'Rest of  syrup',
      'Half syrup',
      'Hands 8–10 MIN until 24°C:  Mix  “well” – do not – knead.',
      ':   And 1½ times more',
      'Oven 12 to 14 min at 190 °C=375°F FAN: Bake.',
      'Lose 6% as water',
      'Keeps 2 Weeks at 18–20 °C, in a tin',
      '// the long ones',
      'Make icing=1,5 kg',
      '1/2 of sugar',
      'Vessel 2 tins of 23×11×8cm',
    ].join('\n');
    expect(tidy(phone).text).toBe(
      [
        'recipe Ferry Biscuits',
        'by Tam Brack',
        'gives 24 biscuits',
        '  250 g Wheat Flour, sifted',
        '  2 1/2 tbsp butter, cold',
        '  about 30 g sugar = 2 tbsp',
        '  1.5 tsp baking powder',
        '  rest of syrup',
        '  half of syrup',
        '  hands 8-10 min until 24 C: Mix  “well” – do not – knead.',
        '  : And 1½ times more',
        '  oven 12-14 min at 190 C = 375 F fan: Bake.',
        '  lose 6 % as water',
        '  keeps 2 weeks at 18-20 C, in a tin',
        '',
        '// the long ones',
        'make icing = 1.5 kg',
        '  1/2 of sugar',
        '  vessel 2 tins of 23 x 11 x 8 cm',
        '',
      ].join('\n'),
    );
  });

  test('leaves lines that cannot be read, and mistyped ones, as they are', () => {
    const text = 'recipe A\n\n   butter ,  soft\n\thnads 2 min:  Stir.\n  Mix  well.\n';
    expect(tidy(text).text).toBe(text);
  });

  test('keeps line ends and byte-order mark, and gives a new line the line end above it', () => {
    expect(tidy('\ufeffrecipe A\r\n20 g oil\r\nmake b\r\n30 g oil').text).toBe(
      '\ufeffrecipe A\r\n  20 g oil\r\n\r\nmake b\r\n  30 g oil\r\n',
    );
  });

  test('runs of empty lines become one, and no other empty line goes', () => {
    expect(tidy('recipe A\n\n  20 g oil\n\n \n\n  hands 1 min: Stir.\n\n\n').text).toBe(
      'recipe A\n\n  20 g oil\n\n  hands 1 min: Stir.\n',
    );
  });

  test('puts an empty line before a block, above its remarks, but not before a course of a menu', () => {
    const text =
      'menu Supper\ndate 2041-02-16\ncourse 19:30\n  4 servings of tart\ncourse 20:15\n  4 servings of figs\n// ours\nkitchen Hall\n';
    expect(tidy(text).text).toBe(text.replace('// ours', '\n// ours'));
  });

  test('keeps fractions fractions, decimals decimals and the zeros that say how finely was measured', () => {
    const text =
      'recipe A\n\n  1/2 tsp salt\n  0.50 g yeast\n  1 1/2-2 cups water\n  wait 1 1/2 h: Leave.\n  wait 1.5 h: Leave.\n';
    expect(tidy(text).changed).toBe(false);
  });

  test('gives the least edits, which make the text', () => {
    const text = 'recipe A\n\n  20 g  oil\n  hands 1–2 min: Stir.\n';
    const { edits, text: after } = tidy(text);
    expect(edits).toEqual([
      { span: { start: 17, end: 18 }, text: '' },
      { span: { start: 31, end: 32 }, text: '-' },
    ]);
    expect(applyEdits(text, edits)).toBe(after);
    expect(tidy('').edits).toEqual([]);
  });
});
