import fc from 'fast-check';
import type { LineContent } from '@quern/syntax';

/*
 * Lines as people write them: every kind, every spelling that is read. For the laws of parser, printer and formatter.
 */

const one = fc.constantFrom;
const join = (...parts: fc.Arbitrary<string>[]): fc.Arbitrary<string> =>
  fc.tuple(...parts).map((words) => words.join(''));
const maybe = (part: fc.Arbitrary<string>): fc.Arbitrary<string> => fc.oneof(fc.constant(''), part);
const space = fc.oneof(
  { weight: 8, arbitrary: one(' ') },
  { weight: 1, arbitrary: one('  ', '\t', '\u00a0', '\u2009') },
);

const whole = fc.integer({ min: 0, max: 3000 }).map(String);
const decimal = fc
  .tuple(fc.integer({ min: 0, max: 99 }), one('.', ','), fc.integer({ min: 0, max: 99 }))
  .map(([a, mark, b]) => `${a}${mark}${b}`);
const proper = fc
  .tuple(fc.integer({ min: 1, max: 8 }), fc.integer({ min: 1, max: 8 }))
  .map(([a, b]) => [a, a + b] as const);
const fraction = fc.oneof(
  one('½', '¼', '⅔', '⅞'),
  fc.tuple(proper, one('/', '⁄')).map(([[a, b], mark]) => `${a}${mark}${b}`),
);
const mixed = fc.oneof(
  fc.tuple(fc.integer({ min: 1, max: 20 }), fraction).map(([a, part]) => `${a} ${part}`),
  fc.tuple(fc.integer({ min: 1, max: 20 }), one('½', '¼')).map(([a, part]) => `${a}${part}`),
);
export const number = fc.oneof(whole, decimal, fraction, mixed);
const upward = fc
  .tuple(fc.integer({ min: 1, max: 400 }), fc.integer({ min: 0, max: 400 }), one('-', '–', '—', '−', ' - ', ' to '))
  .map(([low, more, dash]) => `${low}${dash}${low + more}`);
export const range = fc.oneof(
  { weight: 3, arbitrary: number },
  { weight: 1, arbitrary: upward },
  { weight: 1, arbitrary: one('1-1 1/2', '½–¾', '2-2½', '1.5-2.25') },
);

const unit = one(
  'g',
  'kg',
  'mg',
  'oz',
  'lb',
  'ml',
  'cl',
  'dl',
  'l',
  'tsp',
  'tbsp',
  'cup',
  'Cups',
  'grams',
  'Tbsp',
  'us pint',
  'imperial fl oz',
  'us quarts',
  'litres',
  'pinch',
  'cloves',
  'sprigs',
  'leaves',
  'slices',
  'bunch',
  'sheets',
);
const about = maybe(one('about ', 'About '));
export const measure = fc.oneof(join(about, range, one(' ', ''), unit), one('1 lb 4 oz', 'about 2 lb 1 1/2 oz'));

const WORDS =
  'rye flour wheat butter leaven crème fraîche sunflower seeds semi-skimmed milk T55 00 لوز 胡麻 🌰 for red wine vinegar half-and-half brown Flour water any (cold) jus d’orange stock cheese Œufs'.split(
    ' ',
  );
const START = 'rye wheat butter leaven crème لوز 胡麻 sunflower semi-skimmed brown red stock base 🌰nuts Œufs'.split(
  ' ',
);
export const name = fc
  .tuple(one(...START), fc.array(one(...WORDS), { maxLength: 3 }))
  .map(([first, rest]) => [first, ...rest].join(' '));
/** Names for places where small words part one name from the next. */
export const plainName = fc
  .tuple(one(...START), fc.array(one('rye', 'butter', 'seeds', 'crème', '🌰', 'T55'), { maxLength: 2 }))
  .map(([first, rest]) => [first, ...rest].join(' '));
const words = fc
  .array(one('soft', 'and', 'cold;', 'at', '20 g,', '½', '“so”', 'über', '=', '24 °C', 'x'), {
    minLength: 1,
    maxLength: 6,
  })
  .map((all) => all.join(' '));
const note = maybe(join(one(',', ', ', ' , '), words));
const equal = maybe(join(one(' = ', '='), fc.oneof(measure, join(range, one(' '))), maybe(one(' each'))));

const shareWord = one('all', 'half', 'rest', 'all of', 'half of', 'rest of', 'All');
const share = fc.oneof(
  shareWord,
  join(fraction, one(' of')),
  join(one('40', '12.5', '33 1/3', '10-20'), one(' % of', '% of')),
);
const pack = join(
  about,
  one('1', '2', '2-3'),
  one(' '),
  one('tins', 'bottles', 'small jars'),
  one(' of '),
  fc.tuple(whole, one(' g', ' ml')).map((all) => all.join('')),
);
const portion = join(one('6', '2', '1/2'), one(' servings of', ' loaves of'));
const percent = join(about, range, one(' %', '%'));
const open = one('enough', 'a little', 'A little');

const putIn = fc.oneof(
  join(
    fc.oneof(measure, share, pack, portion, open, join(about, range)),
    space,
    fc.oneof(name, join(one('any '), plainName)),
    maybe(join(one(' as '), name)),
    equal,
    note,
  ),
  join(
    percent,
    space,
    plainName,
    maybe(join(one(' as '), plainName)),
    maybe(join(one(' on '), fc.oneof(name, one('flour', 'all')))),
    equal,
    note,
  ),
);
const inLine = join(maybe(one('optional ', 'Optional ')), putIn);
const orLine = join(one('or ', 'Or '), putIn);
const outLine = fc.oneof(
  join(
    one('lose', 'bin', 'Bin'),
    space,
    fc.oneof(measure, percent, share, open),
    space,
    plainName,
    maybe(join(one(' as '), plainName)),
    note,
  ),
  join(
    one('save', 'Save'),
    space,
    fc.oneof(measure, percent),
    maybe(join(one(' of '), plainName)),
    one(' as '),
    plainName,
    note,
  ),
  join(one('lose '), fc.oneof(measure, percent, one('all', 'half', 'rest')), one(' as water')),
);

const timeUnit = one('s', 'min', 'h', 'd', 'week', 'weeks', 'months', 'hours', 'MIN');
export const time = fc.oneof(
  join(about, range, space, timeUnit),
  one(
    'overnight',
    '30 min or more',
    '1 h 30 min',
    '1 h 30 min - 2 h',
    '2 h-2 h 30 min',
    '1½ h',
    'about overnight',
    '1-2 weeks',
    '90 min to 2 h',
  ),
);
const degree = one(' C', ' F', '°C', ' °F', ' c', ' ° C');
export const temperature = fc.oneof(
  join(one('24', '190', '98.6', '4'), degree),
  join(one('150-160', '18–22', '18 to 22'), degree),
  one('-18 C', '−18 °C', '-20-18 C', '-20--18 C', '-5 to 2 C', '-20 to -18 C'),
);
const clause = fc.oneof(
  join(
    one(' at '),
    temperature,
    maybe(join(one(' = '), temperature)),
    maybe(join(one(' falling to ', ' rising to '), temperature)),
    maybe(one(' fan')),
  ),
  join(one(' until '), fc.oneof(temperature, one('pH 4.2', 'pH below 4.6', 'ph 4'))),
  join(one(' using '), one('hob', '1 shelf', '2 rings, mixer', '1/2 shelf', 'Churn', '1 oven of 2 shelves')),
);
export const prose = fc
  .array(
    one(
      'Mix',
      'the [14 g]',
      'butter:',
      '[half of cream],',
      'for 10 min.',
      '[2]',
      'at 180 °C',
      '“hot”',
      '🌰',
      '1/2 = x',
      'it’s',
    ),
    { maxLength: 6 },
  )
  .map((all) => all.join(' '));
const told = join(one(':', ': ', ' :  '), prose);
const stepLine = join(
  one('hands', 'wait', 'oven', 'hob', 'Hands', 'OVEN'),
  maybe(join(space, time)),
  fc.array(clause, { maxLength: 3 }).map((all) => all.join('')),
  told,
);
const everyLine = join(one('every '), time, maybe(join(one(', ', ','), time)), told);
const moreLine = join(one(':'), prose);
const checkLine = fc.oneof(
  join(one('check '), measure, maybe(join(one(' '), plainName))),
  join(
    one('check '),
    percent,
    one(' '),
    fc.oneof(plainName, one('all water', 'water')),
    maybe(fc.oneof(join(one(' on '), plainName), join(one(' from '), plainName))),
  ),
);

const blockLine = fc.oneof(
  join(one('recipe ', 'variant ', 'food ', 'culture ', 'kitchen ', 'menu ', 'Make '), plainName),
  join(one('make '), plainName, one(' = ', '='), measure),
  join(one('course '), one('19:30', '7:05', '00:00'), maybe(join(one(' '), plainName))),
);

const date = one('2041-02-16', '2040-02-29', '1999-12-31');
const factLine = fc.oneof(
  join(
    one('by ', 'source ', 'photo ', 'note ', 'tip ', 'warning ', 'serve with ', 'language ', 'Serve with '),
    one('Idony Farrow', 'soft figs, cold', 'x/y.jpg', '½ = “so”', 'en'),
  ),
  join(
    one('keywords ', 'free of ', 'contains ', 'traces '),
    one('nuts', 'nothing', 'rye, tin loaf', 'milk,eggs , nuts'),
  ),
  join(one('cup '), one('us', 'metric', 'Australian')),
  join(
    one('gives '),
    fc.oneof(pack, measure, join(one('2', 'about 16', '2-3', '12'), one(' crescents', ' slices', ''))),
  ),
  join(one('serves '), one('2', '4-6', '40 slices', '8 small pots')),
  join(
    one('vessel '),
    one(
      '2 loaf tins of 23 x 11 x 8 cm',
      '1 tin of 23×11cm',
      '1 1/2 trays of 9 x 5 in',
      '1 crock of 3 l',
      '2 rings of 8½ x 2 inches',
    ),
  ),
  join(one('basis ', 'drop '), plainName),
  join(one('count '), plainName, one(' as flour', ' as water', ' as other')),
  join(
    one('use '),
    plainName,
    one(' from '),
    one('02-a.quern', 'pastry/short.quern'),
    maybe(join(one(' as '), plainName)),
  ),
  join(one('keeps '), time, maybe(join(one(' at '), temperature)), note),
  join(one('best after '), time, note),
  join(
    one('per 100 g ', 'per 100ml '),
    one('energy 1270 kJ, fat 0.0 g', 'Energy 300 kcal,salt 1,5 g', 'vitamin c 3 mg, folate 12 µg'),
  ),
  join(one('parts '), one('1 rye, 1 water', '1/2 rye flour,1.50 water')),
  join(one('weighs '), one('1 tbsp = 20 g', '1 = about 50 g', '2 slices = 80 g')),
  join(
    one('swap '),
    plainName,
    maybe(join(one(' in '), plainName)),
    one(' for '),
    maybe(join(measure, one(' '))),
    plainName,
  ),
  join(one('add '), measure, one(' '), plainName, one(' beside '), plainName),
  join(one('times '), number),
  join(one('has '), one('1 oven of 2 shelves, 4 rings, 1 cook', 'churn', '2 mixing bowls')),
  one('awake 07:00-23:00', 'awake 7:00–22:30', 'awake 6:00 to 21:00'),
  join(one('room '), temperature),
  join(one('stand ', 'hold '), time),
  one('stretch 10 %', 'stretch 5-10%'),
  join(one('date '), date),
  join(
    one('baked '),
    date,
    maybe(one(', 2 loaves')),
    maybe(one(', lost 11.4 %', ', lost 11-12%')),
    maybe(join(one(': '), one('crumb tighter, [2] days', 'x: y'))),
  ),
);

/** A line that can be read, of any kind, without an indent. */
export const readableLine = fc.oneof(
  inLine,
  orLine,
  outLine,
  stepLine,
  everyLine,
  moreLine,
  checkLine,
  blockLine,
  factLine,
  one('', '// a remark', '//', '  '),
);

/** Any line: readable, damaged, or nothing like a line. */
export const anyLine = fc.oneof(
  { weight: 3, arbitrary: readableLine },
  {
    weight: 2,
    arbitrary: fc
      .tuple(readableLine, fc.nat(), fc.nat(), fc.string({ unit: 'binary', maxLength: 3 }))
      .map(([line, at, length, text]) => damaged(line, at, length, text)),
  },
  { weight: 1, arbitrary: fc.string({ unit: 'grapheme' }).map((text) => text.replace(/[\r\n]/g, ' ')) },
);

/** The line with a stretch of it replaced. */
export function damaged(line: string, at: number, length: number, text: string): string {
  const start = at % (line.length + 1);
  return (line.slice(0, start) + text + line.slice(start + (length % 4))).replace(/[\r\n]/g, ' ');
}

/** A file of any lines. */
export const anyFile = fc
  .tuple(
    fc.array(fc.tuple(one('', '  ', '\t'), anyLine, one('\n', '\n', '\n', '\r\n', '\r')), { maxLength: 25 }),
    one('', '\ufeff'),
    fc.boolean(),
  )
  .map(([lines, mark, cut]) => {
    const text = lines.map(([indent, line, ending]) => indent + line + ending).join('');
    return mark + (cut ? text.replace(/[\r\n]+$/, '') : text);
  });

/** A tree without its places, its indent and what only tells how a thing was spelled. */
export function bare(content: LineContent): unknown {
  return JSON.parse(
    JSON.stringify(content, (key, value: unknown) => {
      if (key === 'span' || key === 'wordSpan' || key === 'laneSpan' || key === 'indent') return undefined;
      return typeof value === 'bigint' ? value.toString() : value;
    }),
  ) as unknown;
}
