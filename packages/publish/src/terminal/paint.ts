/**
 * How a text is set off in a terminal. Every function gives back its text with marks around it that take no room;
 * `NO_PAINT` gives it back as it is, for files, pipes and tests.
 */
export interface Paint {
  strong(text: string): string;
  quiet(text: string): string;
  error(text: string): string;
  warning(text: string): string;
  hint(text: string): string;
  good(text: string): string;
}

const same = (text: string): string => text;

export const NO_PAINT: Paint = { strong: same, quiet: same, error: same, warning: same, hint: same, good: same };
