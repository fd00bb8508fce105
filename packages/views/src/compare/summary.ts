import { absolute, compare, exact, printMinutes, rational, type Rational } from '@quern/quantity';
import type { Change, LineFinding, NutritionChange } from './changes.js';
import type { Comparison } from './comparison.js';

/*
 * A comparison in one sentence. Every kind of change has its phrase, so that what is not named really is the same.
 */

/** Told one by one up to this many; above it, counted. */
const MOST_NAMED = 2;

export function summaryOf({ changes, same }: Pick<Comparison, 'changes' | 'same'>): string {
  if (same) return 'Nothing has changed.';
  const phrases = PHRASES.flatMap(({ of, tell, many }) => {
    const own = changes.filter(of);
    if (own.length === 0) return [];
    return own.length <= MOST_NAMED || many === undefined
      ? [[...new Set(own.map(tell))].join(', ')]
      : [many(own.length, own)];
  });
  const sentence = phrases.filter((phrase) => phrase !== '').join('; ');
  return `${sentence.charAt(0).toUpperCase()}${sentence.slice(1)}; everything else the same.`;
}

interface Phrase {
  of(change: Change): boolean;
  tell(change: Change): string;
  /** When there are more than can be named. */
  readonly many?: (count: number, own: readonly Change[]) => string;
}

type Kind<K extends Change['kind']> = Extract<Change, { readonly kind: K }>;

function kind<K extends Change['kind']>(
  wanted: K,
  tell: (change: Kind<K>) => string,
  more: { readonly where?: (change: Kind<K>) => boolean; readonly many?: Phrase['many'] } = {},
): Phrase {
  const is = (change: Change): change is Kind<K> => change.kind === wanted;
  return {
    of: (change) => is(change) && (more.where?.(change) ?? true),
    tell: (change) => (is(change) ? tell(change) : ''),
    ...(more.many ? { many: more.many } : {}),
  };
}

const line = (
  where: (finding: LineFinding) => boolean,
  tell: (finding: LineFinding) => string,
  many: (count: number) => string,
): Phrase => kind('line', tell, { where, many });

const isWording = ({ change }: LineFinding): boolean =>
  change.kind === 'changed' && change.parts.length > 0 && change.parts.every(({ runs }) => runs !== undefined);
const isFood = ({ role }: LineFinding): boolean => role === 'food' || role === 'alternative';
const name = ({ subject }: LineFinding): string => (subject.after === '' ? subject.before : subject.after);
const is =
  (...actions: readonly LineFinding['action'][]) =>
  ({ action }: LineFinding): boolean =>
    actions.includes(action);

/** `2 % to 2.2 % on flour`, or `16 g to 17.5 g`. */
function amounts({ share, grams, change }: LineFinding): string {
  const told = share ?? grams;
  if (told?.before && told.after) return `${told.before.text} to ${told.after.text}${share ? ' on flour' : ''}`;
  const part =
    change.parts.find(({ part }) => part === 'amount') ?? change.parts.find(({ runs }) => runs === undefined);
  return part
    ? `${part.before === '' ? 'nothing' : part.before} to ${part.after === '' ? 'nothing' : part.after}`
    : 'otherwise';
}

const counted =
  (one: string, many: string) =>
  (count: number): string =>
    `${count} ${count === 1 ? one : many}`;

function nutritionPhrase({ nutrient, percent, before, after }: NutritionChange): string {
  const told = percent?.text ?? `${before?.text ?? 'not known'} to ${after?.text ?? 'not known'}`;
  return `${nutrient.replace('of which ', '').toLowerCase()} ${told}`;
}

function ledgerPhrase(one: LineFinding): string {
  const goes = one.role === 'product' ? 'goes in' : 'is new';
  return `${name(one)} ${one.action === 'added' ? goes : one.action === 'removed' ? 'is gone' : amounts(one)}`;
}

/** The figure that moved most, for its size. */
function greatest(changes: readonly Change[]): NutritionChange {
  const figures = changes.filter((change) => change.kind === 'nutrition');
  const size = ({ percent }: NutritionChange): Rational => absolute(exact(percent?.exact ?? '0'));
  return figures.reduce((most, one) => (compare(size(one), size(most)) > 0 ? one : most));
}

const PHRASES: readonly Phrase[] = [
  kind('allergen', ({ allergen, before, after }) =>
    after === 'contains'
      ? `now contains ${allergen}`
      : after === 'may contain'
        ? `${before === 'contains' ? 'only ' : 'now '}may contain ${allergen}`
        : `no longer names ${allergen}`,
  ),
  kind('unsaid', ({ before, after }) =>
    after === undefined ? `${before ?? ''} is gone, of which nothing was known` : `nothing is known of ${after}`,
  ),
  kind(
    'promise',
    ({ promise, before, after }) =>
      `“${promise}” ${after === undefined ? 'is no longer promised' : before === undefined ? `is now promised and ${after}` : `is now ${after}`}`,
  ),
  kind(
    'caution',
    ({ title, after }) =>
      after === undefined ? `no longer: ${title.toLowerCase()}` : `caution: ${title.toLowerCase()}`,
    { many: counted('caution', 'cautions differ') },
  ),
  kind('problem', ({ code }) => `a check now fails (${code})`, {
    where: ({ after, severity }) => after !== undefined && severity === 'error',
    many: (count) => `${count} checks now fail`,
  }),
  kind(
    'problem',
    ({ code, before }) =>
      before === undefined ? `a new remark of the check (${code})` : `a remark of the check is gone (${code})`,
    {
      where: ({ after, severity }) => after === undefined || severity !== 'error',
      many: (count) => `${count} remarks of the check differ`,
    },
  ),
  kind('rescaled', ({ factor }) => `the same formula times ${factor.text}`),
  line(
    (one) => one.role === 'recipe' && is('renamed')(one),
    ({ subject }) => `now called ${subject.after}`,
    counted('recipe', 'recipes renamed'),
  ),
  line(
    (one) => isFood(one) && is('swapped')(one),
    ({ subject }) => `${subject.after} instead of ${subject.before}`,
    (count) => `${count} foods exchanged`,
  ),
  line(
    (one) => isFood(one) && is('added')(one),
    (one) => `${name(one)} comes in`,
    (count) => `${count} foods come in`,
  ),
  line(
    (one) => isFood(one) && is('removed')(one),
    (one) => `${name(one)} is left out`,
    (count) => `${count} foods left out`,
  ),
  line(
    (one) => isFood(one) && is('renamed')(one),
    ({ subject }) => `${subject.before} is now called ${subject.after}`,
    (count) => `${count} foods called otherwise`,
  ),
  line(
    (one) => isFood(one) && is('changed')(one) && !isWording(one),
    (one) => `${name(one)} ${amounts(one)}`,
    (count) => `${count} amounts`,
  ),
  kind(
    'bakers',
    ({ figure, before, after }) => `${figure} ${before?.text ?? 'not known'} to ${after?.text ?? 'not known'}`,
    { where: ({ figure }) => figure === 'hydration' },
  ),
  kind(
    'yield',
    ({ percent }) =>
      `${(percent?.text ?? '').replace(/^[+-]| (?:more|less)$/g, '')} ${percent?.exact.startsWith('-') ? 'lighter' : 'heavier'}`,
    { where: ({ figure, percent }) => figure === 'weight' && percent !== undefined },
  ),
  kind(
    'yield',
    ({ figure, before, after }) => `${figure} ${before?.text ?? 'not known'} to ${after?.text ?? 'not known'}`,
    { where: ({ figure, percent }) => (figure !== 'weight' || percent === undefined) && figure !== 'weight of each' },
  ),
  kind('nutrition', nutritionPhrase, {
    many: (count, own) =>
      `${nutritionPhrase(greatest(own))} and ${count - 1} more ${count === 2 ? 'figure' : 'figures'} of the label`,
  }),
  kind('clock', ({ figure, minutes, before, after }) =>
    minutes === undefined
      ? `begin ${after ?? ''} instead of ${before ?? ''}`
      : `${figure} ${printMinutes(absolute(rational(minutes)))} ${minutes > 0 ? 'more' : 'less'}`,
  ),
  line(
    ({ role }) => role === 'keeping',
    () => 'it keeps otherwise',
    () => 'it keeps otherwise',
  ),
  line(
    (one) => one.role === 'make' && is('split')(one),
    (one) => `${name(one)} is made apart from ${one.other ?? ''}`,
    (count) => `${count} makes made apart`,
  ),
  line(
    (one) => one.role === 'make' && is('merged')(one),
    (one) => `${name(one)} is made as part of ${one.other ?? ''}`,
    (count) => `${count} makes put together`,
  ),
  line(
    (one) => one.role === 'make' && is('renamed')(one),
    ({ subject }) => `the make ${subject.before} is now called ${subject.after}`,
    (count) => `${count} makes called otherwise`,
  ),
  line(
    (one) => one.role === 'make' && is('added', 'removed', 'changed')(one),
    (one) =>
      `the make ${name(one)} ${one.action === 'added' ? 'is new' : one.action === 'removed' ? 'is gone' : 'differs'}`,
    (count) => `${count} makes`,
  ),
  line(
    (one) => is('moved')(one),
    (one) => `${name(one)} goes into another make`,
    (count) => `${count} lines in another make`,
  ),
  line(
    (one) =>
      (one.role === 'product' || one.role === 'out') && !is('moved')(one) && !isWording(one) && !one.change.follows,
    (one) => ledgerPhrase(one),
    (count) => `${count} lines of the ledger`,
  ),
  line(
    (one) => (one.role === 'step' || one.role === 'care') && !is('moved')(one) && !isWording(one),
    (one) =>
      `a step ${one.action === 'added' ? 'more' : one.action === 'removed' ? 'less' : one.action === 'reordered' ? 'comes in another order' : 'takes its time or heat otherwise'}`,
    (count) => `${count} steps`,
  ),
  line(
    ({ role }) =>
      role === 'check' ||
      role === 'promise' ||
      role === 'yield' ||
      role === 'fact' ||
      role === 'edit' ||
      role === 'variant' ||
      role === 'block' ||
      role === 'unreadable',
    (one) => `${one.role === 'variant' ? 'the variant ' : ''}${name(one)}`,
    (count) => `${count} other lines`,
  ),
  kind(
    'weighed',
    ({ food, before, after }) => `${food} weighs ${before?.text ?? 'not known'} to ${after?.text ?? 'not known'}`,
    { many: (count) => `${count} lines in per cent weigh otherwise` },
  ),
  kind('share', () => 'the percentages that follow', { many: () => 'the percentages that follow' }),
  line(
    (one) => isWording(one) || one.role === 'words' || one.role === 'remark',
    () => 'wording',
    () => 'wording',
  ),
  line(
    ({ role }) => role === 'credit',
    (one) => name(one),
    (count) => `${count} lines about the recipe`,
  ),
];
