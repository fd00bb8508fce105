import type { Command } from '../command.js';

/** A command as the help lists it; its own file is loaded only when it is called, so that `quern` starts fast. */
export interface Registered {
  readonly name: string;
  /** A few words without a full stop. */
  readonly summary: string;
  load(): Promise<Command>;
}

/** Every command, in the order of the help. A new one is a file in this folder and a line here. */
export const registry: readonly Registered[] = [
  {
    name: 'check',
    summary: 'say what is wrong in recipes, and the way out',
    load: async () => (await import('./check.js')).check,
  },
  {
    name: 'tidy',
    summary: 'lay files out the one way, changing no word',
    load: async () => (await import('./tidy.js')).tidy,
  },
  {
    name: 'mend',
    summary: 'mend what needs no decision',
    load: async () => (await import('./mend.js')).mend,
  },
  {
    name: 'sheet',
    summary: 'print a weighing sheet, scaled to what you need',
    load: async () => (await import('./sheet.js')).sheet,
  },
  {
    name: 'basket',
    summary: 'add recipes up into a shopping list',
    load: async () => (await import('./basket.js')).basket,
  },
  {
    name: 'clock',
    summary: 'say when to start and what to do when',
    load: async () => (await import('./clock.js')).clock,
  },
  {
    name: 'label',
    summary: 'say what is in a dish, and what to be careful about',
    load: async () => (await import('./label.js')).label,
  },
  {
    name: 'card',
    summary: 'make a card of a recipe, or a site of a folder',
    load: async () => (await import('./card.js')).card,
  },
  {
    name: 'compare',
    summary: 'say what changed from one formula to another',
    load: async () => (await import('./compare.js')).compare,
  },
  {
    name: 'git-setup',
    summary: 'let git compare and merge recipes',
    load: async () => (await import('./git-setup.js')).gitSetup,
  },
  {
    name: 'git-driver',
    summary: 'what git calls once it is set up',
    load: async () => (await import('./git-driver.js')).gitDriver,
  },
  {
    name: 'desk',
    summary: 'open a page to write in, with every view beside the text',
    load: async () => (await import('./desk.js')).desk,
  },
  {
    name: 'foods',
    summary: 'show what the food table says, with its sources',
    load: async () => (await import('./foods.js')).foods,
  },
];
