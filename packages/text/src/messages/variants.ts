import { defineMessages } from './define.js';

const base =
  'recipe Scones\n\nmake scones\n  300 g strong wheat flour\n  60 g unsalted butter\n  150 g whole milk\n  hands 5 min: Rub in the butter and stir in the milk.\n';

/** A recipe with so many variants. */
const manyVariants = (count: number): string =>
  base + Array.from({ length: count }, (_, index) => `variant batch ${index + 2}\n  times ${index + 2}\n`).join('');

export const variantMessages = defineMessages({
  V01: {
    name: 'variant selects nothing',
    severity: 'error',
    text: 'nothing here is called “{name}”',
    help: '{near}write the name as the recipe’s lines have it',
    why: 'An edit that selects nothing is usually stale: the recipe changed and the variant did not.',
    bad: `${base}\nvariant plain\n  swap margarine for sunflower oil\n`,
    good: `${base}\nvariant plain\n  swap unsalted butter for sunflower oil\n`,
  },
  V02: {
    name: 'swapped count has no weight',
    severity: 'warning',
    text: 'the amount is a count and {name} has no piece weight',
    help: 'give an amount in grams: `swap … for 100 g {name}`',
    why: 'A count of one food says nothing about the weight of another.',
    bad: 'recipe Soup\n\nmake soup\n  2 leeks\n  500 g water\n  hob 20 min: Simmer.\n\nvariant barley\n  swap leeks for pearl barley\n',
    good: 'recipe Soup\n\nmake soup\n  2 leeks\n  500 g water\n  hob 20 min: Simmer.\n\nvariant barley\n  swap leeks for 100 g pearl barley\n',
  },
  V03: {
    name: 'step still speaks of it',
    severity: 'warning',
    text: 'line {line} still says “{name}”',
    help: 'write that make anew under the variant',
    why: 'The food is dropped, but a sentence still tells the reader to use it.',
    bad: `${base}\nvariant lean\n  drop unsalted butter\n`,
    good: `${base}\nvariant lean\n  make scones\n    300 g strong wheat flour\n    150 g whole milk\n    hands 5 min: Stir in the milk.\n`,
  },
  V04: {
    name: 'variant selects several lines',
    severity: 'error',
    text: '“{name}” stands in {count} lines, so it is not clear which one is meant',
    help: 'name a food that stands in one line only, or write the make anew under the variant',
    why: '`add … beside` inserts after one line.',
    bad: 'recipe Cake\n\nmake cake\n  100 g sugar\n  200 g whole milk\n  hands 2 min: Stir.\n  20 g sugar\n  hands 1 min: Sprinkle.\n\nvariant spiced\n  add 2 g ground cinnamon beside sugar\n',
    good: 'recipe Cake\n\nmake cake\n  100 g sugar\n  200 g whole milk\n  hands 2 min: Stir.\n  20 g sugar\n  hands 1 min: Sprinkle.\n\nvariant spiced\n  add 2 g ground cinnamon beside whole milk\n',
  },
  V06: {
    name: 'too many variants',
    severity: 'error',
    text: 'a recipe has at most {most} variants; this one and those below it are left out',
    help: 'make a recipe of its own of some of them',
    why: 'Every variant is the whole recipe, worked out and checked anew.',
    bad: manyVariants(65),
    good: manyVariants(2),
  },
  V07: {
    name: 'variant of no recipe',
    severity: 'error',
    text: '“{name}” is no whole recipe as it stands, so nothing of it can be varied',
    help: 'let the last `use` line above the variant bring in a recipe by its title',
    why: 'A variant in a file of its own is of the recipe that the last `use` line of the head brings in.',
    bad: 'use paste from paste.quern\n\nvariant sweet\n  swap water for honey\n=== paste.quern\nrecipe Cake\n\nmake paste\n  100 g sugar\n  100 g water\n  hands 1 min: Stir.\n\nmake cake\n  all paste\n  hands 1 min: Spread.\n',
    good: 'use Cake from paste.quern\n\nvariant sweet\n  swap water for honey\n=== paste.quern\nrecipe Cake\n\nmake paste\n  100 g sugar\n  100 g water\n  hands 1 min: Stir.\n\nmake cake\n  all paste\n  hands 1 min: Spread.\n',
  },
  V05: {
    name: 'variant name could be several',
    severity: 'error',
    text: '“{name}” could be {candidates}',
    help: 'write the whole name',
    why: 'An edit that could mean two foods is not guessed.',
    bad: 'recipe Cake\n\nmake cake\n  100 g brown sugar\n  100 g caster sugar\n  200 g whole milk\n  hands 2 min: Stir.\n\nvariant honeyed\n  swap sugar for honey\n',
    good: 'recipe Cake\n\nmake cake\n  100 g brown sugar\n  100 g caster sugar\n  200 g whole milk\n  hands 2 min: Stir.\n\nvariant honeyed\n  swap brown sugar for honey\n',
  },
});
