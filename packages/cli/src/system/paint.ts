import type { Paint } from '@quern/publish';
import type { Sink, System } from './system.js';

export const COLOUR_CHOICES = ['auto', 'always', 'never'] as const;

/**
 * Whether to colour: `--color` decides; with `auto`, NO_COLOR (no-color.org) says no, FORCE_COLOR yes, else a terminal
 * that is not called dumb.
 */
export function wantsColour(choice: string | undefined, out: Sink, environment: System['environment']): boolean {
  if (choice === 'always') return true;
  if (choice === 'never') return false;
  if (environment['NO_COLOR']) return false;
  if (environment['FORCE_COLOR'] && environment['FORCE_COLOR'] !== '0') return true;
  return out.isTerminal && environment['TERM'] !== 'dumb';
}

const ansi =
  (on: number, off: number) =>
  (text: string): string =>
    `\u001b[${on}m${text}\u001b[${off}m`;

const ANSI: Paint = {
  strong: ansi(1, 22),
  quiet: ansi(2, 22),
  error: ansi(31, 39),
  warning: ansi(33, 39),
  hint: ansi(36, 39),
  good: ansi(32, 39),
};

// As `NO_PAINT` of publish; written here so that help and errors are told without loading every view.
const same = (text: string): string => text;
const PLAIN: Paint = { strong: same, quiet: same, error: same, warning: same, hint: same, good: same };

/** Marks for a terminal, or none. */
export const paintFor = (system: Pick<System, 'colour'>): Paint => (system.colour ? ANSI : PLAIN);

const NARROWEST = 60;
const WIDEST = 120;

/** Columns to set text in: those of the terminal within reason, 100 for files and pipes. */
export function widthOf({ out }: Pick<System, 'out'>): number {
  return Math.max(NARROWEST, Math.min(WIDEST, out.columns ?? 100));
}
