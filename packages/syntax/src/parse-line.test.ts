import { describe, expect, test } from 'vitest';
import { sentence, wayOut } from '@quern/text';
import { rational } from '@quern/quantity';
import type { InLine, StepLine } from './ast.js';
import { MOST_CHARACTERS, parseLine } from './parse-line.js';
import { printLine } from './print.js';

/** The line as the formatter writes it, and the codes of its messages: a line's meaning in one glance. */
function read(text: string): string {
  const { content, messages } = parseLine(text);
  return [printLine(content) ?? 'cannot be read', ...messages.map(({ code }) => code)].join(' | ');
}

/** The first message with the characters it points at. */
function complaint(text: string): string {
  const [first] = parseLine(text).messages;
  return first === undefined ? '' : `${first.code} ${text.slice(first.place.start, first.place.end)}`;
}

describe('ordinary input', () => {
  test.each([
    // fractions, dashes, spaces and marks of a phone
    ['½ tsp salt', '1/2 tsp salt | L04'],
    ['1½ cups sugar', '1 1/2 cups sugar | L04'],
    ['1 ⅓ cups sugar', '1 1/3 cups sugar | L04'],
    ['1⁄3 of dough', '1/3 of dough | L04'],
    ['10–14 g yeast', '10-14 g yeast | L04'],
    ['10 — 14 g yeast', '10-14 g yeast | L04'],
    ['10 to 14 g yeast', '10-14 g yeast'],
    ['200\u00a0g\u2009rye\u202fflour', '200 g rye flour'],
    ['200g rye flour', '200 g rye flour'],
    ['1,5 kg rye flour', '1.5 kg rye flour'],
    ['0,125 l water', '0.125 l water'],
    ['ABOUT 30 GRAMS Rye Flour', 'about 30 g Rye Flour'],
    ['2 Tbsp. oil', '2 tbsp oil'],
    ['wait 2 h at −18 °C: Freeze.', 'wait 2 h at -18 C: Freeze. | L04'],
    ['wait 2 h at 24 ° C: Leave.', 'wait 2 h at 24 C: Leave. | L04'],
    ['vessel 2 tins of 23×11×8cm', 'vessel 2 tins of 23 x 11 x 8 cm | L04'],
    // any script, emoji, right to left
    ['200 g لوز مقشر', '200 g لوز مقشر'],
    ['2 🌶️ chillies', '2 🌶️ chillies'],
    ['100 g crème fraîche, cold', '100 g crème fraîche, cold'],
    ['\u200f200 g שקדים', '200 g שקדים'],
    ['make עוגה', 'make עוגה'],
    // names that hold numbers, marks and small words
    ['500 g 00 flour', '500 g 00 flour'],
    ['250 g 70 % chocolate', '250 g 70 % chocolate'],
    ['2 g cream of tartar', '2 g cream of tartar'],
    ['30 g semi-skimmed milk', '30 g semi-skimmed milk'],
    ['1 lb of 00 flour', '1 lb 00 flour'],
    ['240 g half-and-half', '240 g half-and-half'],
  ])('%s', (text, expected) => {
    expect(read(text)).toBe(expected);
  });
});

describe('what goes in', () => {
  test.each([
    ['1 lb 4 oz beef shin', '1 lb 4 oz beef shin'],
    ['340-360 g water', '340-360 g water'],
    ['enough water = about 150 g, to cover', 'enough water = about 150 g, to cover'],
    ['a little fine salt = about 4 g, to taste', 'a little fine salt = about 4 g, to taste'],
    ['4 eggs = 50 g each', '4 eggs = 50 g each'],
    ['6 cloves = 2 g', '6 cloves = 2 g'],
    ['6 cloves garlic', '6 cloves garlic'],
    ['4 cloves of garlic', '4 cloves garlic'],
    ['2 tins of 400 g chopped tomatoes', '2 tins of 400 g chopped tomatoes'],
    ['6 servings of cheeks', '6 servings of cheeks'],
    ['2 loaves of rye', '2 loaves of rye'],
    ['optional all of brittle, snapped small', 'optional all brittle, snapped small'],
    ['or 78 g walnuts=2/3 cup', 'or 78 g walnuts = 2/3 cup'],
    ['90 g any nut', '90 g any nut'],
    ['half cream', 'half of cream'],
    ['40% of dough', '40 % of dough'],
    ['2 % fine salt on white cabbages', '2 % fine salt on white cabbages'],
    ['15 % coarse salt on lemons = 150 g', '15 % coarse salt on lemons = 150 g'],
    ['200 g flour as plain wheat flour, sifted', '200 g flour as plain wheat flour, sifted'],
    ['1 us pint milk', '1 us pint milk'],
    ['1 U.S. Pint milk', '1 us pint milk'],
    ['2 imperial fluid ounces milk', '2 imperial fl oz milk'],
  ])('%s', (text, expected) => {
    expect(read(text)).toBe(expected);
  });

  test('a unit with no name after it is the name: six cloves are the spice', () => {
    const spice = parseLine('6 cloves = 2 g').content as InLine;
    expect([spice.amount.kind, spice.name.text]).toEqual(['count', 'cloves']);
    const garlic = parseLine('6 cloves garlic').content as InLine;
    expect([garlic.amount.kind, garlic.name.text]).toEqual(['measure', 'garlic']);
  });

  test('numbers are exact from the first character', () => {
    const { amount } = parseLine('0.1 kg salt').content as InLine;
    expect(amount).toMatchObject({ range: { low: rational(1, 10), decimals: 1 } });
    const { amount: cup } = parseLine('2/3 cup sugar').content as InLine;
    expect(cup).toMatchObject({ range: { low: rational(2, 3), decimals: null } });
  });
});

describe('what comes out, what is done, what holds', () => {
  test.each([
    ['Lose 11% as water', 'lose 11 % as water'],
    ['bin 15 % white cabbages as cores', 'bin 15 % of white cabbages as cores'],
    ['save 640 g liquid as strained wine', 'save 640 g of liquid as strained wine'],
    ['bin all carrots', 'bin all carrots'],
    ['hands: Mix.', 'hands: Mix.'],
    ['wait 2-2 1/2 h at 26 C: Prove.', 'wait 2-2 1/2 h at 26 C: Prove.'],
    ['wait 1 h 30 min to 2 h: Prove.', 'wait 1 h 30 min - 2 h: Prove.'],
    ['wait overnight at 4 C: Leave.', 'wait overnight at 4 C: Leave.'],
    ['oven 20 min at 190 C = 375 F fan: Bake.', 'oven 20 min at 190 C = 375 F fan: Bake.'],
    [
      'oven 45 min at 250 C falling to 200 C until 97 C: Bake.',
      'oven 45 min at 250 C falling to 200 C until 97 C: Bake.',
    ],
    ['wait 3 d until pH below 4.6: Leave.', 'wait 3 d until pH below 4.6: Leave.'],
    ['hob 5 min using 2 rings, 1 shelf: Fry: hot.', 'hob 5 min using 2 rings, 1 shelf: Fry: hot.'],
    ['every 3 d,1 min:Turn.', 'every 3 d, 1 min: Turn.'],
    ['check 78% water on flour', 'check 78 % water on flour'],
    ['check 40 % flour from biga', 'check 40 % flour from biga'],
    ['check 70 % all water on flour', 'check 70 % all water on flour'],
    ['gives about 12 biscuits', 'gives about 12 biscuits'],
    ['per 100g Energy 1270kJ,fat 0.50 g', 'per 100 g energy 1270 kJ, fat 0.50 g'],
    ['baked 2041-02-16, 2 loaves, lost 11.4%: tighter', 'baked 2041-02-16, 2 loaves, lost 11.4 %: tighter'],
    [
      'use Lantern Cheeks from 02-beef-cheeks.quern as cheeks',
      'use Lantern Cheeks from 02-beef-cheeks.quern as cheeks',
    ],
    ['awake 7:00 – 23:00', 'awake 07:00-23:00 | L04'],
    ['Warning: hot sugar burns', 'warning hot sugar burns'],
    ['has 1 oven of 2 shelves at 50-250 C, 4 rings', 'has 1 oven of 2 shelves at 50-250 C, 4 rings'],
    ['has 1 deck at 475F', 'has 1 deck at 475 F'],
    ['oven 20 min using 1 shelf at 190 C: Bake.', 'oven 20 min using 1 shelf at 190 C: Bake.'],
    ['stand 2 h', 'stand 2 h'],
    ['stretch 20%', 'stretch 20 %'],
  ])('%s', (text, expected) => {
    expect(read(text)).toBe(expected);
  });

  test('a minus before a range of cold holds for both its ends', () => {
    for (const text of ['wait 1 d at -20-18 C: x', 'wait 1 d at -20--18 C: x', 'wait 1 d at −18–20 °C: x']) {
      const [clause] = (parseLine(text).content as StepLine).clauses;
      expect(clause, text).toMatchObject({ temperature: { low: rational(-20), high: rational(-18) } });
    }
  });

  test('with the word “to” each end of a range has its own sign, so that it can go across zero', () => {
    for (const [text, low, high] of [
      ['wait 1 d at -5 to 2 C: x', -5, 2],
      ['wait 1 d at −5 to 2 °C: x', -5, 2],
      ['wait 1 d at -2 to 4 C: x', -2, 4],
      ['wait 1 d at -5 to 0 C: x', -5, 0],
      ['wait 1 d at -5 to -2 C: x', -5, -2],
      ['wait 1 d at -2 to -5 C: x', -5, -2],
      ['wait 1 d at -5-2 C: x', -5, -2],
    ] as const) {
      const [clause] = (parseLine(text).content as StepLine).clauses;
      expect(clause, text).toMatchObject({ temperature: { low: rational(low), high: rational(high) } });
      const again = parseLine(printLine(parseLine(text).content) ?? '').content as StepLine;
      expect(again.clauses[0], text).toMatchObject({ temperature: { low: rational(low), high: rational(high) } });
    }
    const [down] = parseLine('wait 1 d at 4 to -2 C: x').messages;
    expect(down && sentence(down)).toBe('the range runs down, 4 to -2');
  });

  test('overnight is 8 to 16 hours (NOTATION 4.8)', () => {
    const { time } = parseLine('wait overnight: x').content as StepLine;
    expect([time?.low.minutes, time?.high.minutes]).toEqual([rational(480), rational(960)]);
  });

  test('brackets hold a number, a measure, or a share and a name; nothing else', () => {
    const text = 'hands 3 min: Into [2] tins, [14 g] each, [1/3 of butter], not [2 tins] or [butter] or [2 % of x y].';
    const { content, messages } = parseLine(text);
    const { brackets } = (content as StepLine).prose;
    expect(brackets.map(({ amount, of }) => [amount?.kind, of?.text])).toEqual([
      ['count', undefined],
      ['measure', undefined],
      ['share', 'butter'],
      [undefined, undefined],
      [undefined, undefined],
      ['share', 'x y'],
    ]);
    expect(messages.map(({ code, place }) => [code, text.slice(place.start, place.end)])).toEqual([
      ['L20', '[2 tins]'],
      ['L20', '[butter]'],
    ]);
    const third = brackets[2];
    expect(text.slice(third?.of?.span.start, third?.of?.span.end)).toBe('butter');
  });
});

describe('what cannot be read', () => {
  test.each([
    ['butter, soft', 'Q00 butter'],
    ['1-1/2 cups water', 'Q04 1-1/2'],
    ['wait 10-8 h: x', 'Q04 10-8'],
    ['oven 10 min at 250-220 C: x', 'Q04 250-220 C'],
    ['1,000 g water', 'Q05 1,000'],
    ['1 T sugar', 'Q06 T'],
    ['1 t sugar', 'Q06 t'],
    ['1 pint milk', 'Q20 pint'],
    ['2 fl. oz milk', 'Q20 fl. oz'],
    ['3 cm ginger', 'Q21 cm'],
    ['10 min', 'Q21 min'],
    ['1234567890123456 g salt', 'Q22 1234567890123456'],
    ['0.1234567891 g salt', 'Q22 0.1234567891'],
    ['1 000 g water', 'Q23 1 000'],
    ['2 x 400 g tomatoes', 'Q23 2 x'],
    ['1.2.3 g salt', 'Q24 1.2.3'],
    ['1/0 cup milk', 'Q24 1/0'],
    ['1 5/4 cups milk', 'Q24 1 5/4'],
    ['5 gms salt', 'Q25 gms'],
    ['2 tpsp honey', 'Q25 tpsp'],
    ['2 of dough', 'Q26 2'],
    ['hands 8 min', 'L03 hands 8 min'],
    ['discard 20 % of kale', 'L05 discard'],
    ['200 g', 'L12 '],
    ['200 g, soft', 'L12 , soft'],
    ['30 g butter = cold', 'L13 cold'],
    ['save 60 g of liquid', 'L14 save 60 g of liquid'],
    ['hob 3 min at hot: x', 'L15 hot'],
    ['oven 3 min at 180: x', 'L15 180'],
    ['hands 3 min warmly: x', 'L16 warmly'],
    ['Make a well in the flour', 'L17 Make a well in the flour'],
    ['make dough until it no longer sticks', 'L17 make dough until it no longer sticks'],
    ['use paste', 'L18 '],
    ['count rye as grain', 'L19 grain'],
    ['hands 3 min: Add [14 g.', 'L10 ['],
    ['- 200 g flour', 'L21 -'],
    ['two eggs', 'L21 two'],
    ['mkae dough', 'L21 mkae'],
    ['bake 30 min: until golden', 'L21 bake'],
    ['For the sauce:', 'L21 For the sauce:'],
    ['80 g rye bread: sliced', 'L24 :'],
    ['gives plenty', 'L25 plenty'],
    ['keeps well', 'L16 well'],
    ['<<<<<<< mine', 'L26 <<<<<<< mine'],
    ['=======', 'L26 ======='],
    ['date 2041-02-30', 'L32 2041-02-30'],
    ['date 2100-02-29', 'L32 2100-02-29'],
    ['awake 7:00-25:00', 'L33 25:00'],
    ['wait 3 d until pH 15: x', 'L34 15'],
    ['check 78 %', 'L35 78 %'],
    ['check half of dough', 'L35 half'],
  ])('%s', (text, expected) => {
    expect(complaint(text)).toBe(expected);
  });

  test('a line longer than the bound keeps its text and says so', () => {
    const { content, messages } = parseLine(`  hands 2 min: ${'x'.repeat(MOST_CHARACTERS)}`);
    expect(content).toEqual({ kind: 'bad', indent: 2, opening: 'hands' });
    expect(messages.map(({ code }) => code)).toEqual(['L27']);
  });

  test('every message says what to do', () => {
    const [message] = parseLine('1-1/2 cups water').messages;
    if (message === undefined) throw new Error('no message');
    expect(sentence(message)).toBe('the range runs down, 1 to 1/2');
    expect(wayOut(message)).toBe('for a mixed number write “1 1/2”');
    const [mistyped] = parseLine('  Leave to rest for 30 minutes.').messages;
    expect(mistyped?.args).toEqual({ words: 'Leave to rest for …', step: 'wait 30 min:' });
  });
});

describe('slips in the opening word', () => {
  test.each([
    ['hnads 2 min: Toast.', 'hands 2 min: Toast. | L01'],
    ['hand 2 min: Toast.', 'cannot be read | L22'],
    ['abuot 40 g oil', 'about 40 g oil | L01'],
    ['hafl of cream', 'half of cream | L01'],
    ['a litle salt', 'a little salt | L01'],
    ['bset after 2 d', 'best after 2 d | L01'],
    ['fre of nuts', 'free of nuts | L01'],
    ['kepes 2 d', 'keeps 2 d | L01'],
    // an English word of its own, however near
    ['bake 20 min: x', 'cannot be read | L21'],
    ['served 4', 'cannot be read | L21'],
    ['note: x', 'note x'],
    ['notes: x', 'cannot be read | L21'],
    // never a block
    ['recpe Toast', 'cannot be read | L21'],
    ['fod beet syrup', 'cannot be read | L21'],
  ])('%s', (text, expected) => {
    expect(read(text)).toBe(expected);
  });
});
