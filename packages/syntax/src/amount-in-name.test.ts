import { expect, test } from 'vitest';
import { parseLine } from './parse-line.js';

/** The place and the way out of Q27, or the name that was read. */
function told(line: string): string {
  const { content, messages } = parseLine(line);
  const [message] = messages;
  if (message?.code === 'Q27')
    return `${line.slice(message.place.start, message.place.end)}: ${message.args.way ?? ''}`;
  return message?.code ?? (content.kind === 'in' || content.kind === 'or' ? content.name.text : content.kind);
}

test.each([
  ['100 g (4 oz) butter', '4 oz: both measure the same: write “100 g butter = 4 oz”'],
  ['100g/4oz butter', '4oz: both measure the same: write “100 g butter = 4 oz”'],
  ['300 ml/½ pint milk', '½ pint: both measure the same: write “300 ml milk = ½ pint”'],
  ['1 cup (240 ml) whole milk', '240 ml: both measure the same: write “1 cup whole milk = 240 ml”'],
  ['2 onions (about 300 g), sliced', 'about 300 g: both measure the same: write “2 onions = about 300 g”'],
  ['1 (14-oz) can tomatoes', '14-oz: write “1 can of 14 oz tomatoes”'],
  ['1 cup plus 2 tbsp plain flour', '2 tbsp: write two lines, “1 cup plain flour” and “2 tbsp plain flour”'],
  ['100 g sugar and 50 g honey', '50 g: write two lines, “100 g sugar” and “50 g honey”'],
  ['100 g butter or 80 ml olive oil', '80 ml: write “100 g butter”, and under it “or 80 ml olive oil”'],
  ['1 heaped tbsp cocoa', 'heaped tbsp: write “1 tbsp cocoa, heaped”'],
  ['1 tbsp heaped cocoa powder', 'heaped cocoa powder: write “1 tbsp cocoa powder, heaped”'],
  ['2 tsp (heaping) sugar', '(heaping) sugar: write “2 tsp sugar, heaping”'],
  ['gives 1 cup (240 ml)', '(240 ml): a yield is stated once: write “gives 1 cup” or “gives 240 ml”'],
  [
    'gives 2 cups (480 ml) of sauce',
    '(480 ml): a yield is stated once: write “gives 2 cups of sauce” or “gives 480 ml of sauce”',
  ],
  ['or 1 scant cup sugar', 'scant cup: write “1 cup sugar, scant”'],
])('%s', (line, expected) => {
  expect(told(line)).toBe(expected);
});

test.each([
  ['100 g dark chocolate 70 % cocoa', 'dark chocolate 70 % cocoa'],
  ['500 g type 00 flour', 'type 00 flour'],
  ['200 g cup mushrooms', 'cup mushrooms'],
  ['1 l 3.5 % milk', '3.5 % milk'],
  ['2 large eggs', 'large eggs'],
  ['1 lb 4 oz flour', 'flour'],
  ['200 g pound cake', 'pound cake'],
  ['200 g rounded rice', 'rounded rice'],
])('%s names a food', (line, name) => {
  expect(told(line)).toBe(name);
});
