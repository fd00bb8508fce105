import type { FoodBook } from '@quern/compiler';
import type { CardWords } from '@quern/publish';
import { MARKETS, type Market } from '@quern/views';

/** How recipes in Markdown become cards. A block may say otherwise for itself, behind its language word. */
export interface RemarkQuernOptions {
  /** Which measures stand on the card; both by default. */
  readonly measures?: 'both' | 'metric' | 'us';
  /** Whose list of allergens and whose rounding; `none`, the default, names everything that is known. */
  readonly market?: Market;
  /** Name of the variant to show. */
  readonly variant?: string;
  /** `2`, `1/2`, `6 loaves`, `5 kg`. */
  readonly scale?: string;
  /** Level of the card's title, 2 by default. */
  readonly headingLevel?: 1 | 2 | 3 | 4;
  /** The card's own words, for a page in another language. */
  readonly words?: CardWords;
  /** Address to show for a photograph as written; undefined to leave it out. */
  readonly photo?: (path: string) => string | undefined;
  /** Whether the card can be scaled in the page, when the page has the script; true by default. */
  readonly scalable?: boolean;
  /** Text of a file, for `file=…`, for pictures of recipes, and for `use … from`. Without it only blocks are read. */
  readonly read?: (path: string) => string | undefined;
  /** The food table; the one that comes with Quern by default. */
  readonly foods?: FoodBook;
}

/** What a single block asks for. */
export interface BlockOptions {
  readonly measures?: 'both' | 'metric' | 'us';
  readonly market?: Market;
  readonly variant?: string;
  readonly scale?: string;
  readonly recipe?: string;
  readonly file?: string;
}

export interface BlockRead {
  readonly options: BlockOptions;
  /** What could not be read, a sentence each. */
  readonly problems: readonly string[];
}

const NAMES = ['measures', 'market', 'variant', 'scale', 'recipe', 'file'] as const;
type Name = (typeof NAMES)[number];
const isName = (word: string): word is Name => (NAMES as readonly string[]).includes(word);

const CHOICES: Readonly<Partial<Record<Name, readonly string[]>>> = {
  measures: ['both', 'metric', 'us'],
  market: MARKETS,
};

/**
 * Reads `measures=us variant="one loaf" scale=1/2`. What follows a `{` or stands without `=` belongs to others (line
 * numbers, highlights) and is left to them.
 */
export function readBlockOptions(meta: string): BlockRead {
  const options: Partial<Record<Name, string>> = {};
  const problems: string[] = [];
  const own = meta.replace(/\{.*/s, '');
  for (const [, name = '', quoted, single, bare] of own.matchAll(/([\w-]+)=(?:"([^"]*)"|'([^']*)'|(\S+))/g)) {
    const value = quoted ?? single ?? bare ?? '';
    if (!isName(name)) {
      problems.push(`“${name}” is not an option of a recipe; write one of ${NAMES.join(', ')}`);
      continue;
    }
    const choices = CHOICES[name];
    if (choices && !choices.includes(value)) problems.push(`“${name}” is ${choices.join(', ')}, not “${value}”`);
    else options[name] = value;
  }
  // Checked against the lists of choices above.
  return { options: options as BlockOptions, problems };
}
