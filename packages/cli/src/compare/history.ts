import { existsSync } from 'node:fs';
import { normaliseName, type Compiled, type FoodBook, type Formula } from '@quern/compiler';
import { figuresOf, partsOf, planKitchen, type RevisionInput } from '@quern/views';
import { RecipeError } from '../command.js';
import { readText } from '../files/read-text.js';
import { PastCompiler } from '../git/at-revision.js';
import { pathInRepository, type Repository } from '../git/git.js';
import { ObjectReader } from '../git/objects.js';
import { revisionsOf, type FileRevision } from '../git/revisions.js';

export interface HistoryRequest {
  readonly file: string;
  readonly shown: string;
  readonly recipe: string | undefined;
  readonly variant: string | undefined;
  /** Today, for what is not committed. */
  readonly today: string;
  progress(done: number, of: number): void;
}

const NAME_LENGTH = 8;

/** Every revision of a recipe of a file, oldest first; last what stands in the working tree, if that is not committed. */
export async function historyOfFile(
  repository: Repository,
  foods: FoodBook,
  request: HistoryRequest,
): Promise<readonly RevisionInput[]> {
  const path = pathInRepository(repository, request.file);
  const revisions = revisionsOf(repository, path, request.shown);
  const reader = new ObjectReader(repository);
  try {
    const past = new PastCompiler(reader, foods);
    const read = new RevisionReader(past, request);
    const inputs: RevisionInput[] = [];
    for (const revision of revisions) {
      inputs.push(await read.revision(revision));
      request.progress(inputs.length, revisions.length);
    }
    const [last] = revisions.slice(-1);
    const now = last && (await uncommitted(past, read, request, last, path));
    return now ? [...inputs, now] : inputs;
  } finally {
    reader.close();
  }
}

/** Finds the recipe in each revision, also when it was renamed on the way. */
class RevisionReader {
  constructor(
    readonly past: PastCompiler,
    readonly request: HistoryRequest,
  ) {}

  async revision({ commit, day, subject, path, blob }: FileRevision): Promise<RevisionInput> {
    const compiled = await this.past.compile(commit, path, blob);
    return this.input(compiled, { name: commit.slice(0, NAME_LENGTH), day, subject });
  }

  input(compiled: Compiled | undefined, about: Pick<RevisionInput, 'name' | 'day' | 'subject'>): RevisionInput {
    const formula = compiled && this.#choose(compiled);
    return { ...about, formula: formula && compiled && figuresOf(formula, handsOnOf(formula, compiled)) };
  }

  #choose({ formulas }: Compiled): Formula | undefined {
    const { recipe, variant } = this.request;
    const bases = formulas.filter((formula) => formula.variant === undefined);
    const named =
      recipe === undefined ? undefined : bases.find(({ title }) => normaliseName(title) === normaliseName(recipe));
    // A file of one recipe is that recipe, whatever it was called.
    const base = named ?? (bases.length === 1 ? bases[0] : undefined);
    if (variant === undefined || !base) return base;
    return formulas.find(
      (formula) =>
        formula.title === base.title &&
        formula.variant !== undefined &&
        normaliseName(formula.variant) === normaliseName(variant),
    );
  }
}

async function uncommitted(
  past: PastCompiler,
  read: RevisionReader,
  request: HistoryRequest,
  last: FileRevision,
  path: string,
): Promise<RevisionInput | undefined> {
  if (!existsSync(request.file)) return undefined;
  const text = readText(request.file, request.shown);
  if (text === (await past.reader.text(last.blob))) return undefined;
  const compiled = await past.compileText('HEAD', path, text);
  return read.input(compiled, { name: 'not committed', day: request.today, subject: '' });
}

/** @throws RecipeError when no revision holds such a recipe. */
export function requireReadable(revisions: readonly RevisionInput[], { shown, recipe, variant }: HistoryRequest): void {
  if (revisions.some(({ formula }) => formula)) return;
  const what =
    variant === undefined
      ? recipe === undefined
        ? 'one recipe alone'
        : `a recipe “${recipe}”`
      : `a variant “${variant}”`;
  throw new RecipeError(
    `no revision of ${shown} holds ${what}`,
    recipe === undefined ? 'name one with --recipe' : 'check the spelling of the name',
  );
}

/** Minutes that somebody works, by what is written: hands-on steps at their top, and every visit of care. No plan is made. */
function handsOnOf(formula: Formula, { kitchens }: Compiled): number | undefined {
  const { activities, diagnostics } = partsOf([{ formula }], planKitchen(kitchens[0]));
  if (activities.length === 0 || diagnostics.some(({ severity }) => severity === 'error')) return undefined;
  return activities.reduce((sum, { cooks, time, care }) => {
    const visits = care.reduce(
      (all, one) => all + one.falls.filter((fall) => fall < time.preferred).length * one.lasts,
      0,
    );
    return sum + (cooks > 0 ? time.preferred : 0) + visits;
  }, 0);
}
