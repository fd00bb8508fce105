/** Random damage to texts, at the level of bytes and of words, in a form that fast-check can shrink. */
import fc from 'fast-check';

/** One act of damage. Positions are shares of the text's length, so that they fit any text. */
type Mutation =
  | { readonly kind: 'cut'; readonly from: number; readonly length: number }
  | { readonly kind: 'repeat'; readonly from: number; readonly length: number; readonly times: number }
  | { readonly kind: 'move'; readonly from: number; readonly length: number; readonly to: number }
  | { readonly kind: 'insert'; readonly at: number; readonly text: string }
  | { readonly kind: 'byte'; readonly at: number; readonly value: number }
  | { readonly kind: 'line'; readonly at: number; readonly text: string };

/** What a reader of the notation might trip over: its own words and marks, and what text in the wild brings along. */
const dictionary = [
  ...['recipe ', 'make ', 'variant ', 'food ', 'culture ', 'kitchen ', 'menu ', 'course ', 'use ', ' from ', 'gives '],
  ...['all ', 'half of ', 'rest of ', 'about ', 'enough ', 'a little ', 'optional ', 'or ', 'lose ', 'bin ', 'save '],
  ...[
    'hands ',
    'wait ',
    'oven ',
    'hob ',
    'every ',
    ' at ',
    ' until ',
    ' using ',
    ' falling to ',
    ' on ',
    ' of ',
    ' as ',
  ],
  ...[
    'check ',
    'times ',
    'swap ',
    'drop ',
    'add ',
    ' beside ',
    ' in ',
    ' for ',
    'count ',
    'per 100 g ',
    'weighs ',
    'parts ',
  ],
  ...[
    ':',
    '=',
    ',',
    '%',
    '[',
    ']',
    '//',
    '-',
    '–',
    '—',
    '−',
    '×',
    '⁄',
    '°',
    '½',
    '⅓',
    '1/2',
    '1/0',
    '0',
    '0 g',
    '-1 g',
  ],
  ...['1.000,5', '1,000', '1e9', '99999999999999999999999999', '0.00000000000000000001', 'NaN', 'Infinity', 'T', 't'],
  ...['\uFEFF', '\r', '\r\n', '\n', '\n\n', '\t', '\u00A0', '\u2028', '\u0000', '\u202E', '\u200D', '\uD800', '\uFFFD'],
  ...[
    '🥖',
    '👩‍🍳',
    'שלום',
    'מלח',
    'قمح',
    'crème',
    'cre\u0300me',
    'İ',
    'ß',
    '<script>',
    '"',
    "'",
    '`',
    '\\',
    '${',
    '{{',
    '<<<<<<< ',
  ],
  ...['__proto__', 'constructor', 'toString', '../', '/etc/', 'file:', 'x'.repeat(300)],
];

const share = fc.double({ min: 0, max: 1, noNaN: true });
const length = fc.double({ min: 0, max: 0.3, noNaN: true });
const word = fc.oneof(
  { weight: 4, arbitrary: fc.constantFrom(...dictionary) },
  fc.string({ unit: 'binary', maxLength: 6 }),
);

const mutation: fc.Arbitrary<Mutation> = fc.oneof(
  fc.record({ kind: fc.constant('cut' as const), from: share, length }),
  fc.record({ kind: fc.constant('repeat' as const), from: share, length, times: fc.integer({ min: 2, max: 4 }) }),
  fc.record({ kind: fc.constant('move' as const), from: share, length, to: share }),
  { weight: 3, arbitrary: fc.record({ kind: fc.constant('insert' as const), at: share, text: word }) },
  fc.record({ kind: fc.constant('byte' as const), at: share, value: fc.integer({ min: 0, max: 255 }) }),
  fc.record({ kind: fc.constant('line' as const), at: share, text: word }),
);

/** A text of the corpus after a few acts of damage. */
export function damaged(corpus: readonly string[], most = 8): fc.Arbitrary<string> {
  return fc
    .tuple(fc.constantFrom(...corpus), fc.array(mutation, { minLength: 1, maxLength: most }))
    .map(([text, mutations]) => mutations.reduce(mutate, text));
}

function mutate(text: string, act: Mutation): string {
  const at = (position: number) => Math.floor(position * text.length);
  switch (act.kind) {
    case 'cut':
      return text.slice(0, at(act.from)) + text.slice(at(act.from) + at(act.length));
    case 'repeat': {
      const piece = text.slice(at(act.from), at(act.from) + at(act.length));
      return text.slice(0, at(act.from)) + piece.repeat(act.times) + text.slice(at(act.from) + piece.length);
    }
    case 'move': {
      const piece = text.slice(at(act.from), at(act.from) + at(act.length));
      const rest = text.slice(0, at(act.from)) + text.slice(at(act.from) + piece.length);
      const to = Math.floor(act.to * rest.length);
      return rest.slice(0, to) + piece + rest.slice(to);
    }
    case 'insert':
      return text.slice(0, at(act.at)) + act.text + text.slice(at(act.at));
    case 'byte': {
      const bytes = Buffer.from(text);
      if (bytes.length > 0) bytes[Math.floor(act.at * (bytes.length - 1))] = act.value;
      return bytes.toString();
    }
    case 'line': {
      const lines = text.split('\n');
      lines.splice(Math.floor(act.at * lines.length), 0, act.text);
      return lines.join('\n');
    }
  }
}
