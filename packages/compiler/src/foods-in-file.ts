import { diagnose, type Diagnostic, type Place } from '@quern/text';
import type { FoodAnswer, FoodBook } from './food-book.js';
import type { LedgerFood } from './model.js';
import { normaliseName, quoted } from './names.js';

/** What is known of the line on which an unknown name stands. */
export interface Hints {
  /** Names of the file that are near. */
  readonly near?: readonly string[];
  /** What to do, if more than a block for the food can be said. */
  readonly way?: string | undefined;
  /** Whether its weight is known all the same. */
  readonly weighed?: boolean;
}

/**
 * Foods as one file sees them: its own `food` blocks first, then the table. The same written name always gives the
 * same LedgerFood, so that a food's key is equal wherever the same food is meant.
 */
export class FoodScope {
  readonly #known = new Map<string, { food: LedgerFood; problem?: FoodAnswer }>();
  readonly #byKey = new Map<string, LedgerFood>();

  constructor(
    readonly book: FoodBook,
    /** The file's own foods by normalised name. */
    readonly own: ReadonlyMap<string, LedgerFood>,
  ) {}

  /** The food a name means. What is wrong with the name is told by `problemOf`, so that a name used often is reported where it stands. */
  resolve(name: string): LedgerFood {
    return this.#look(name).food;
  }

  /** Whether the table or the file knows the name. */
  knows(name: string): boolean {
    return this.#look(name).food.from !== 'unknown';
  }

  /** Whether a food goes by this name, be it one or several. */
  isNamed(name: string): boolean {
    const { food, problem } = this.#look(name);
    return food.from !== 'unknown' || problem?.kind === 'ambiguous';
  }

  /** The message for a name that is not one food of the table or the file, at a place. */
  problem(
    name: string,
    place: Place,
    { near: alsoNear = [], way, weighed = true }: Hints = {},
  ): Diagnostic | undefined {
    const { problem } = this.#look(name);
    if (!problem || problem.kind === 'found') return undefined;
    const unknown = weighed ? 'nutrition and allergens' : 'weight, nutrition and allergens';
    if (problem.kind === 'ambiguous') {
      const [first] = problem.candidates;
      return diagnose('N04', place, {
        name,
        candidates: problem.candidates
          .slice(0, 4)
          .map((food) => quoted(food.name))
          .join(', '),
        first: first?.name ?? name,
        unknown,
      });
    }
    if (problem.accents && problem.near[0]) return diagnose('N07', place, { name, near: problem.near[0] });
    const near = way === undefined ? (alsoNear[0] ?? problem.near[0]) : undefined;
    return diagnose('N01', place, {
      name,
      unknown,
      near: near ? `did you mean ${quoted(near)}? If not, ` : '',
      way: way ?? `write a \`food ${name}\` block with what its label says, or settle it with \`as NAME\``,
    });
  }

  #look(name: string): { food: LedgerFood; problem?: FoodAnswer } {
    const normal = normaliseName(name);
    const known = this.#known.get(normal);
    if (known) return known;
    const made = this.#make(name, normal);
    this.#known.set(normal, made);
    return made;
  }

  #make(name: string, normal: string): { food: LedgerFood; problem?: FoodAnswer } {
    const own = this.own.get(normal);
    if (own) return { food: own };
    const answer = this.book.find(name);
    if (answer.kind !== 'found') {
      return { food: { key: `unknown:${normal}`, name, from: 'unknown' }, problem: answer };
    }
    const { match } = answer;
    const key = match.food.id;
    const first = this.#byKey.get(key);
    // 'chopped walnuts' and 'walnuts' are one food in the ledger; the form stays with the name that was written.
    const food: LedgerFood = { key, name: first?.name ?? name, food: match.food, match, from: 'table' };
    if (!first) this.#byKey.set(key, food);
    return { food };
  }
}
