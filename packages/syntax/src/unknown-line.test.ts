import { expect, test } from 'vitest';
import { wayOut } from '@quern/text';
import { parseLine } from './parse-line.js';

/** The way out of the first message. */
function way(line: string): string {
  const [message] = parseLine(line).messages;
  return message ? wayOut(message) : '';
}

test.each([
  ['a pinch of salt', 'write the number in figures: “1 pinch of salt”'],
  ['pinch of salt', 'write the number: “1 pinch of salt”'],
  ['ca. 20 g parsley', 'write “about 20 g parsley”'],
  ['approx 2 tbsp oil', 'write “about 2 tbsp oil”'],
  ['~20 g parsley', 'write “about 20 g parsley”'],
  ['zest of 1 lemon', 'write how much of it goes in, such as “1 tbsp lemon zest”'],
  ['juice of half a lemon', 'write how much of it goes in, such as “1 tbsp lemon juice”'],
  ['fold in the cream', 'say who or what is busy: “hands: fold …”'],
  ['slice the bread thin', 'say who or what is busy: “hands: slice …”'],
  ['mkae dough', 'did you mean “make”?'],
  ['• 20 g parsley', 'take away the “•”: a line begins with its amount or its word'],
])('%s', (line, expected) => {
  expect(way(line)).toBe(expected);
});

test.each(['a few drops tabasco', 'salt, to taste', 'some oil'])('%s has no amount', (line) => {
  expect(parseLine(line).messages[0]?.code).toBe('Q00');
});

test.each([
  ['1 pt milk', 'write “us pint” or “imperial pint”, or give it in ml'],
  ['2 qts water', 'write “us quarts” or “imperial quarts”, or give it in ml'],
  ['1 c. sugar', 'for a cup write “cup”; a temperature belongs in a step'],
  ['2 EL olive oil', 'write “tbsp”; if it begins the name, write “2 pieces EL …”'],
  ['hob 5 min Simmer', 'put a colon between the time and the sentence: “hob 5 min: …”'],
])('%s', (line, expected) => {
  expect(way(line)).toBe(expected);
});
