/**
 * The words that may stand beside the name of a food without making it another food. A word that is not listed here is
 * never dropped: `heritage carrots` is unknown, with `carrot` as a near name, and `salted butter` is an entry of its own.
 */

/** Sizes: kept as the size of the match, for the weight of a piece. */
const SIZES = new Map([
  ['small', 'small'],
  ['medium', 'medium'],
  ['large', 'large'],
  ['big', 'large'],
  ['jumbo', 'jumbo'],
  ['extra large', 'extra large'],
  ['very large', 'extra large'],
  ['extra small', 'extra small'],
  ['medium sized', 'medium'],
  ['good sized', 'medium'],
  ['small sized', 'small'],
  ['large sized', 'large'],
]);

/** Forms: kept as the form of the match, for weights by volume. */
const FORMS = new Map(
  Object.entries({
    chopped: 'chopped',
    diced: 'diced',
    cubed: 'diced',
    minced: 'minced',
    sliced: 'sliced',
    shredded: 'grated',
    grated: 'grated',
    crumbled: 'crumbled',
    crushed: 'crushed',
    mashed: 'mashed',
    puréed: 'puréed',
    pureed: 'puréed',
    ground: 'ground',
    packed: 'packed',
    'loosely packed': 'loose',
    loose: 'loose',
    unpacked: 'loose',
    sifted: 'sifted',
    melted: 'melted',
    whipped: 'whipped',
    whole: 'whole',
    halved: 'halved',
    quartered: 'quartered',
    slivered: 'slivered',
    flaked: 'flaked',
    torn: 'torn',
    toasted: 'toasted',
    beaten: 'beaten',
    segmented: 'segments',
  }),
);

/** States that change neither weight nor worth enough to matter: what is done to a thing before it is weighed. */
const STATES = new Set(
  `fresh ripe unrefined cold cool warm hot chilled soft softened organic firm washed rinsed cleaned scrubbed trimmed good best
  finest quality plain natural seedless unwaxed local seasonal additional extra room temperature tender raw peeled
  pitted stoned deseeded seeded cored hulled shelled podded drained unpeeled prepared separated unsifted`.split(/\s+/),
);

/** Adverbs before a form: `finely chopped`. */
const ADVERBS = new Set(
  'finely roughly coarsely freshly thinly thickly lightly firmly loosely well very newly'.split(' '),
);

/** Words that are true of some foods only, by what the food is in the kitchen. */
const BY_ROLE = new Map<string, readonly string[]>([
  ['frozen', ['fruit', 'vegetable']],
  ['baby', ['vegetable']],
  ['unsalted', ['nut', 'seed']],
  ['blanched', ['vegetable']],
  ['runny', ['sugar']],
  ['dry', ['cereal', 'sugar']],
  ['stale', ['cereal']],
  ['free range', ['egg', 'meat']],
  ['lean', ['meat']],
  ['boned', ['meat']],
  ['jointed', ['meat']],
  ['smooth', ['fat', 'nut']],
  ['strong', ['liquid']],
  ['unsweetened', ['liquid', 'fruit', 'spice']],
]);

/** Parts of a plant or an animal whose name after the food says only how it is counted: `basil leaves`, `thyme sprigs`. */
const PARTS = new Set('leaf sprig stalk stick bulb head clove floret rib fillet bunch slice wedge spear'.split(' '));

export interface Peeled {
  /** What is left of the name. */
  readonly head: string;
  readonly form: string;
  readonly size: string;
  readonly piece: string;
  /** Qualifiers that hold only for foods of one of these roles. */
  readonly roles: readonly (readonly string[])[];
}

type Step = (word: string, into: Peeled) => Peeled | undefined;

const step: Step = (word, into) => {
  const size = SIZES.get(word);
  if (size !== undefined) return into.size === '' ? { ...into, size } : undefined;
  const form = FORMS.get(word);
  if (form !== undefined) return { ...into, form: into.form === '' ? form : into.form };
  if (STATES.has(word) || ADVERBS.has(word)) return into;
  const roles = BY_ROLE.get(word);
  return roles ? { ...into, roles: [...into.roles, roles] } : undefined;
};

function peelFront(peeled: Peeled): Peeled | undefined {
  const words = peeled.head.split(' ');
  for (const count of [2, 1]) {
    if (words.length <= count) continue;
    const next = step(words.slice(0, count).join(' '), peeled);
    if (next) return { ...next, head: words.slice(count).join(' ') };
  }
  return undefined;
}

function peelBack(peeled: Peeled): Peeled | undefined {
  const words = peeled.head.split(' ');
  const last = words.at(-1);
  if (last === undefined || words.length < 2) return undefined;
  const rest = words.slice(0, -1).join(' ');
  if (PARTS.has(last)) return peeled.piece === '' ? { ...peeled, piece: last, head: rest } : undefined;
  const next = step(last, peeled);
  return next ? { ...next, head: rest } : undefined;
}

/** What a food is for: `butter for greasing`. */
const PURPOSE =
  / for (?:the |a )?(?:brushing|coating|cooking|deep frying|dish|drizzling|dusting|finishing|frying|garnish|glazing|greasing|kneading|pan|rolling|rolling out|serving|sprinkling|tin|tins|topping|work surface|worktop)$/;

const peelPurpose = (peeled: Peeled): Peeled | undefined =>
  PURPOSE.test(peeled.head) ? { ...peeled, head: peeled.head.replace(PURPOSE, '') } : undefined;

/** `juice of a lemon` is `juice of lemon`: the article says only that it is one. */
const ONE = / of (?:a|an|one|1|the) /;

const peelArticle = (peeled: Peeled): Peeled | undefined =>
  ONE.test(peeled.head) ? { ...peeled, head: peeled.head.replace(ONE, ' of ') } : undefined;

/** `sprig of thyme` and `sprigs thyme` are `thyme` by the sprig. */
function peelPartOf(peeled: Peeled): Peeled | undefined {
  const found = /^(\S+) of (.+)$/.exec(peeled.head);
  const [, part = '', rest = ''] = found ?? [];
  return PARTS.has(part) && peeled.piece === '' ? { ...peeled, piece: part, head: rest } : undefined;
}

/**
 * The names that remain when known qualifiers are taken away, the longest first. Words are taken from the front first,
 * so `finely chopped fresh parsley leaves` gives `chopped fresh parsley leaf`, …, `parsley leaf`, `parsley`.
 */
export function* peel(name: string): Generator<Peeled> {
  const waiting: Peeled[] = [{ head: name, form: '', size: '', piece: '', roles: [] }];
  const seen = new Set<string>([name]);
  for (let next = waiting.shift(); next; next = waiting.shift()) {
    for (const shorter of [peelPurpose(next), peelArticle(next), peelFront(next), peelPartOf(next), peelBack(next)]) {
      if (!shorter || seen.has(shorter.head)) continue;
      seen.add(shorter.head);
      yield shorter;
      waiting.push(shorter);
    }
  }
}
