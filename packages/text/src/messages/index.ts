import { lineMessages } from './lines.js';
import { nameMessages } from './names.js';
import { amountMessages } from './amounts.js';
import { ledgerMessages } from './ledger.js';
import { timeMessages } from './time.js';
import { labelMessages } from './label.js';
import { variantMessages } from './variants.js';
import { menuMessages } from './menus.js';
import type { ArgumentsOf } from './define.js';

export type { Message } from './define.js';

/** Every message there is. One registry, a file an area. */
export const messages = {
  ...lineMessages,
  ...nameMessages,
  ...amountMessages,
  ...ledgerMessages,
  ...timeMessages,
  ...labelMessages,
  ...variantMessages,
  ...menuMessages,
} as const;

export type MessageCode = keyof typeof messages;
export type MessageArguments<C extends MessageCode> = ArgumentsOf<(typeof messages)[C]>;
