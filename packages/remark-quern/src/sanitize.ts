import { defaultSchema, type Schema } from 'hast-util-sanitize';

/** Elements of a card that sanitizers do not know. */
const TAGS = ['article', 'header', 'section', 'footer', 'bdi', 'time', 'cite', 'caption', 'dl', 'dt', 'dd'];

/** Attributes that a card has, anywhere on it: all are made by Quern, and none can run anything. */
const ATTRIBUTES: NonNullable<Schema['attributes']>[string] = [
  ['className', /^quern-/],
  'lang',
  'dir',
  ['role', 'note', 'group'],
  'ariaLabel',
  'ariaLabelledBy',
  'scope',
  'dateTime',
  ['dataMeasures', 'both', 'metric', 'us'],
  'dataQuernScale',
  'dataQuernYield',
  'dataQuernScaled',
  'dataQuernNotNumber',
  'dataQuernShowMetric',
  'dataQuernShowUs',
];

type Definitions = NonNullable<Schema['attributes']>[string];

/** Both lists of attributes as one: of two entries for one attribute a sanitizer sees only the first, so they are joined. */
function join(theirs: Definitions, ours: Definitions): Definitions {
  const named = (entry: Definitions[number]): string => (typeof entry === 'string' ? entry : entry[0]);
  const joined = theirs.map((entry): Definitions[number] => {
    const own = ours.find((other) => named(other) === named(entry));
    // An attribute that is let through with any value stays so.
    if (own === undefined || typeof entry === 'string') return entry;
    return typeof own === 'string' ? own : [...entry, ...own.slice(1)];
  });
  const known = new Set(theirs.map(named));
  return [...joined, ...ours.filter((entry) => !known.has(named(entry)))];
}

/** A schema of `rehype-sanitize` that lets cards through besides what it lets through already. */
export function allowCards(schema: Schema): Schema {
  const theirs = schema.attributes ?? {};
  const tags = new Set([...Object.keys(theirs), ...TAGS, '*']);
  const attributes = Object.fromEntries([...tags].map((tag) => [tag, join(theirs[tag] ?? [], ATTRIBUTES)]));
  return { ...schema, tagNames: [...new Set([...(schema.tagNames ?? []), ...TAGS])], attributes };
}

/** GitHub's rules, which `rehype-sanitize` has by default, and cards. */
export const quernSchema: Schema = allowCards(defaultSchema);
