import { defineMessages } from './define.js';

export const menuMessages = defineMessages({
  U01: {
    name: 'dish not divisible',
    severity: 'error',
    text: '{amount} of {name} cannot be drawn: {said}',
    help: 'count it as that recipe does, or add `serves` (for servings) or `gives` (for pieces) to it',
    why: 'A share of a dish is reckoned on its servings or its pieces.',
    bad: 'recipe Soup\n\nmake soup\n  500 g water\n  hob 20 min: Simmer.\n\nmenu Supper\ncourse 19:00 first\n  6 servings of Soup\n',
    good: 'recipe Soup\nserves 4\n\nmake soup\n  500 g water\n  hob 20 min: Simmer.\n\nmenu Supper\ncourse 19:00 first\n  6 servings of Soup\n',
  },
  U02: {
    name: 'no such dish',
    severity: 'error',
    text: 'no recipe here is called “{name}”',
    help: '{near}write the title of a recipe of this file, or bring it in with `use {name} from FILE`',
    why: 'A menu puts in dishes: recipes of this file, or of the files it uses.',
    bad: 'recipe Soup\nserves 4\n\nmake soup\n  500 g water\n  hob 20 min: Simmer.\n\nmenu Supper\ncourse 19:00 first\n  6 servings of Stew\n',
    good: 'recipe Soup\nserves 4\n\nmake soup\n  500 g water\n  hob 20 min: Simmer.\n\nmenu Supper\ncourse 19:00 first\n  6 servings of Soup\n',
  },
});
