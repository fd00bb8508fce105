import type {
  AllergenMention,
  Caution,
  Explanation,
  Label,
  Printed,
  Statement,
  StatementItem,
  Verdict,
} from '@quern/views';

/*
 * The label in words, for every renderer alike. Names come from the recipe as they are written; the sentences are ours,
 * and in English. Nothing is left out for want of space.
 */

/** A stretch of a sentence; `strong` is set apart by weight and capitals, not by colour. */
export interface Run {
  readonly text: string;
  readonly strong: boolean;
}

const plain = (text: string): Run => ({ text, strong: false });

/** The words of a figure, and the two ends where the recipe leaves it open. */
export function figureParts({ text, between, atLeast }: Printed): { readonly figure: string; readonly range: string } {
  if (text === undefined) return { figure: 'not known', range: '' };
  return {
    // 'At least less than 0.5 g' says nothing.
    figure: atLeast ? `at least ${text.replace(/^(?:<|less than )[\d.]+/, '0')}` : text,
    range: between ? `(${between[0]} to ${between[1]})` : '',
  };
}

/** A figure: 'at least 12 g (11 g to 13 g)', 'not known'. */
export function figureWords(printed: Printed): string {
  const { figure, range } = figureParts(printed);
  return range === '' ? figure : `${figure} ${range}`;
}

function join(lists: readonly (readonly Run[])[], between: string): Run[] {
  return lists.flatMap((list, index) => (index === 0 ? list : [plain(between), ...list]));
}

/** An item with its parts in brackets; brackets in brackets are square, and round again inside those. */
function itemRuns(item: StatementItem, depth = 0): Run[] {
  const runs: Run[] = item.segments.map(({ text, emphasis }) => ({ text, strong: emphasis }));
  if (item.quantity !== undefined) runs.push(plain(` (${item.quantity})`));
  if (item.parts.length > 0) {
    const [open, close] = depth % 2 === 0 ? [' (', ')'] : [' [', ']'];
    const parts = item.parts.map((part) => itemRuns(part, depth + 1));
    runs.push(plain(open), ...join(parts, ', '), plain(close));
  } else if (!item.inTable) {
    runs.push(plain(' [not in the food table]'));
  }
  return runs;
}

/** The statement of ingredients as one sentence. */
export function ingredientRuns(statement: Statement): Run[] {
  const lists = [
    ...statement.items.map((item) => itemRuns(item)),
    ...statement.unweighed.map((item) => [...itemRuns(item), plain(' (amount not known)')]),
  ];
  return lists.length === 0 ? [plain('none are written.')] : [...join(lists, ', '), plain('.')];
}

/** What was cooked with and taken out again; undefined when nothing was. */
export function takenOutRuns(statement: Statement): Run[] | undefined {
  if (statement.takenOut.length === 0) return undefined;
  return [
    plain('Cooked with and taken out: '),
    ...join(
      statement.takenOut.map((item) => itemRuns(item)),
      ', ',
    ),
    plain('.'),
  ];
}

const mentioned = (mentions: readonly AllergenMention[]): string =>
  mentions.map(({ name, status }) => (status === 'must' ? name : `${name} (${status})`)).join(', ');

/** What is said of allergens, a sentence a line. Silence about one says nothing, and the last line says so. */
export function allergenWords({ allergens, statement }: Pick<Label, 'allergens' | 'statement'>): string[] {
  const lines = allergenLines({ allergens });
  const { items, unweighed, takenOut } = statement;
  if (lines.length === 0 && items.length + unweighed.length + takenOut.length > 0) {
    lines.push('As far as the food table knows, no ingredient is on this list.');
  }
  return [...lines, NOT_ABSENT];
}

const NOT_ABSENT = 'What is not named here has not been shown to be absent.';

/** The same for a tag, where no list is named: a sentence that nothing is on it could be taken for a promise. */
export const tagAllergenWords = (tag: Pick<Label, 'allergens'>): string[] => [...allergenLines(tag), NOT_ABSENT];

function allergenLines({ allergens }: Pick<Label, 'allergens'>): string[] {
  const lines: string[] = [];
  if (allergens.contains.length > 0) lines.push(`Contains: ${mentioned(allergens.contains)}.`);
  if (allergens.mayContain.length > 0) lines.push(`May contain: ${mentioned(allergens.mayContain)}.`);
  if (allergens.cannotSay.length > 0) {
    lines.push(`Cannot say: nothing is known of ${allergens.cannotSay.map(({ name }) => name).join(', ')}.`);
  }
  for (const { name, threshold } of [...allergens.contains, ...allergens.mayContain]) {
    if (threshold !== undefined)
      lines.push(`${name}: to be declared from ${threshold}; how much there is here is not known.`);
  }
  lines.push(...allergens.notes.map((note) => `${note}.`));
  return lines;
}

/** Where something comes from: 'butter', 'walnuts (may be put in)'. */
function reasonWords({ food, why }: Verdict['against'][number]): string {
  switch (why) {
    case 'ingredient':
      return food;
    case 'optional':
      return `${food} (may be put in)`;
    case 'alternative':
      return `${food} (may stand in for another)`;
    case 'traces':
      return `traces in ${food}`;
    case 'kitchen':
      return `traces declared by ${food}`;
    case 'unknown':
    case 'unread':
      return `nothing is known of ${food}`;
  }
}

/** Why each allergen is named. */
export function allergenReasons({ allergens }: Pick<Label, 'allergens'>): string[] {
  return [...allergens.contains, ...allergens.mayContain].map(
    ({ name, because }) => `${name}: from ${because.map(reasonWords).join(', ')}`,
  );
}

/** One food's share in a figure, cell by cell: food, grams, in 100 g, in all, entry of the table and its sources. */
export function explanationCells(
  { food, grams, eaten, per100, amount, stays, entry, sources }: Explanation['rows'][number],
  unit: string,
): string[] {
  return [
    food,
    eaten === undefined ? `${grams} g` : `${grams} g (${eaten} % is eaten)`,
    per100 === undefined ? 'no figure' : `${per100} ${unit} in 100 g`,
    per100 === undefined ? 'not known' : `${amount} ${unit}${stays === undefined ? '' : ` (${stays} % stays)`}`,
    entry === undefined ? 'not in the table' : sources.length === 0 ? entry : `${entry}: ${sources.join(' ')}`,
  ];
}

/** What became of a promise. */
export function verdictWords({ promised, verdict, against }: Verdict): string {
  const reasons = against.map(reasonWords).join(', ');
  switch (verdict) {
    case 'contradicted':
      return `“${promised.text}” is contradicted by ${reasons}.`;
    case 'cannot confirm':
      return `“${promised.text}” cannot be confirmed: ${reasons === '' ? 'it is nothing that can be checked' : reasons}.`;
    case 'not contradicted':
      return `“${promised.text}”: no ingredient speaks against it, which is no proof. Traces are known only where they are declared.`;
  }
}

const WEIGHTS: Readonly<Record<Caution['weight'], string>> = { check: 'Check', care: 'Take care', note: 'Note' };

/** How pressing a caution is, in a word. */
export const weightWord = (weight: Caution['weight']): string => WEIGHTS[weight];

/** Which part the figures for a portion are for. */
export function portionWords({ name, count, between, household }: Label['portions'][number]): string {
  const open = between ? ` (${between[0]} to ${between[1]})` : '';
  return `${household === undefined ? '' : `${household} `}Portion: one ${name}, of ${count}${open}.`;
}

export const NO_CAUTION = 'None of the cautions applies to what is written.';

/** The finished weight in words. */
export function weightWords({ weight }: Pick<Label, 'weight'>): string {
  if (!weight) return 'Finished weight: not known.';
  const range = weight.between ? ` (${weight.between[0]} to ${weight.between[1]})` : '';
  return `Finished weight: ${weight.text}${range}.`;
}

/** The name of the dish, with its variant. */
export const titleWords = ({ title, variant }: Pick<Label, 'title' | 'variant'>): string =>
  variant === undefined ? title : `${title}, ${variant}`;
