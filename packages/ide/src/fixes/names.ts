import { nearest } from '@quern/text';
import { normaliseName } from '@quern/compiler';
import { relativePath } from '../completion/candidates.js';
import { makeBlockAt } from '../mentions.js';
import { allSuggested, suggested, type Fix, type Fixer, type Mending } from './fix.js';

/* Mending names that mean nothing, or more than one thing. */

/** A block at the end of the file for what the packet says. Nothing is said of allergens until the writer says it. */
function foodBlock(m: Mending, name: string): Fix {
  const last = m.snapshot.document.lines.at(-1);
  const { text } = m.snapshot;
  const gap = text.endsWith(m.ending) || text === '' ? '' : m.ending;
  const block = [
    '',
    `food ${name}`,
    '  // per 100 g energy … kJ, fat … g, saturates … g, carbohydrate … g, sugars … g, protein … g, salt … g',
    '  // contains … (the allergens on the packet, or nothing)',
    '',
  ].join(m.ending);
  const at = last ? last.start + last.text.length : 0;
  return m.fix(`Add a food block for ${name}`, [{ span: { start: at, end: at }, text: gap + block }]);
}

/** N01, A02, A07: the near name, or a block that says what it is. */
export const unknownFood: Fixer = (m) => {
  const near = suggested(m.arg('near'));
  return [...(near === undefined ? [] : [m.replace(near)]), foodBlock(m, m.arg('name'))];
};

/** N02: the near product, or a make to be filled. */
export const missingProduct: Fixer = (m) => {
  const near = suggested(m.arg('near'));
  const heading = makeBlockAt(m.snapshot, m.line.number)?.heading?.line;
  const name = m.arg('name');
  const make = heading ? [m.fix(`Make ${name} above`, [m.before(heading, `make ${name}`, '')])] : [];
  return [...(near === undefined ? [] : [m.replace(near)]), ...make];
};

/** N03: another name for the second. */
export const anotherName: Fixer = (m) => {
  const taken = new Set(
    m.snapshot.names.filter(({ role }) => role === 'declared').map(({ text }) => normaliseName(text)),
  );
  let number = 2;
  while (taken.has(normaliseName(`${m.written} ${number}`))) number++;
  return [m.replace(`${m.written} ${number}`)];
};

/** N04: each food that it could be, under its own name or settled by `as`. */
export const chooseFood: Fixer = (m) => {
  const answer = m.snapshot.foods.find(m.arg('name'));
  if (answer.kind !== 'ambiguous') return [];
  const { content } = m;
  const inLine = content.kind === 'in' || content.kind === 'or';
  const names = answer.candidates.slice(0, 6).map(({ name }) => name);
  const plain = names.map((name) => m.replace(name));
  const settled = inLine ? names.map((name) => m.replace(`${m.written} as ${name}`, `Settle it: as ${name}`)) : [];
  return [...plain, ...settled];
};

/** N05: the whole name in the sentence. */
export const wholeName: Fixer = (m) => allSuggested(m.arg('candidates')).map((name) => m.replace(name));

/** N06: the made thing drawn whole, or the food meant by `as`. */
export const madeOrFood: Fixer = (m) => {
  const { content } = m;
  if (content.kind !== 'in' && content.kind !== 'or') return [];
  const { name, amount } = content;
  return [
    m.inLine({ start: name.span.end, end: name.span.end }, ` as ${name.text}`, 'Mean the food of the table'),
    m.inLine({ start: amount.span.start, end: name.span.start }, 'all ', `Draw all of the ${name.text} made above`),
  ];
};

/** N07: the name with its accents, which can only be meant. */
export const withAccents: Fixer = (m) => [m.replace(m.arg('near'), `Write “${m.arg('near')}”`, true)];

/** N09, N14: the file of that name, or nearly, as it is reached from here; else the line kept as a remark. */
export const nearFile: Fixer = (m) => {
  const wanted = m.arg('path').split(/[/\\]/).at(-1) ?? '';
  const paths = m.snapshot.files
    .filter((file) => file !== m.snapshot.path)
    .map((file) => relativePath(m.snapshot.path, file));
  const same = paths.filter((path) => path.split('/').at(-1) === wanted);
  const near = nearest(
    wanted,
    paths.map((path) => path.split('/').at(-1) ?? ''),
  );
  const close = paths.filter((path) => near.includes(path.split('/').at(-1) ?? ''));
  return [...[...new Set([...same, ...close])].map((path) => m.replace(path)), m.asRemark()];
};

/** N10: a line with a little of it, to be weighed; or all of it when it is made above. */
export const putIn: Fixer = (m) => {
  const name = m.arg('name');
  const step = m.place?.item.ref.line ?? m.line;
  const indent = step.text.slice(0, step.text.length - step.text.trimStart().length);
  const product = m.place?.formula.products.get(normaliseName(name));
  const line = product ? `all ${name}` : `a little ${name}`;
  return [m.fix(`Put in “${line}” above this step`, [m.before(step, indent + line)])];
};

/** N12: a name that says nothing else. */
export const notReserved: Fixer = (m) => [m.replace(`${m.written} mix`)];

/** N13: the name as a food rather than a class. */
export const notAClass: Fixer = (m) => {
  const { content } = m;
  if (content.kind !== 'in' && content.kind !== 'or') return [];
  return [
    m.inLine(
      { start: content.amount.span.end, end: content.name.span.start },
      ' ',
      'Name one food instead of any of a class',
    ),
  ];
};

/** N15: half flour and half water, to be corrected. */
export const addParts: Fixer = (m) => {
  const recipe = m.snapshot.compiled.formulas.find((formula) => formula.cultures.has(normaliseName(m.arg('name'))));
  const flour = recipe?.makes
    .flatMap(({ items }) => items)
    .find((item) => item.kind === 'in' && item.source.kind === 'food' && recipe.isFlour(item.source.food));
  const name = flour?.kind === 'in' ? flour.content.name.text : 'strong wheat flour';
  return [m.fix(`Add parts to correct: 1 ${name}, 1 water`, [m.after(m.line, `  parts 1 ${name}, 1 water`)])];
};

/** N17: the near name, or no `as`: then it is taken evenly from the pot. */
export const takenAs: Fixer = (m) => {
  const near = suggested(m.arg('near'));
  const before = m.line.text.slice(0, m.span.start - m.line.start);
  const as = /\s+as\s+$/i.exec(before);
  const evenly = as
    ? [m.inLine({ start: as.index, end: m.span.end - m.line.start }, '', 'Take it evenly from the pot')]
    : [];
  return [...(near === undefined ? [] : [m.replace(near)]), ...evenly];
};

/** N18: the name that the lines have, or the block taken away. */
export const unusedBlock: Fixer = (m) => {
  const near = suggested(m.arg('near'));
  const { lines } = m.snapshot.document;
  const from = m.line.number;
  let to = from;
  while (lines[to + 1] !== undefined && lines[to + 1]?.parsed.content.kind !== 'block') to++;
  const away = m.fix(
    'Take the block away',
    lines.slice(from, to + 1).map((line) => m.without(line)),
  );
  return [...(near === undefined ? [] : [m.replace(near)]), away];
};

/** N19: the thing that a kitchen has. The number before it stays. */
export const nearThing: Fixer = (m) => {
  const near = m.arg('near');
  if (near === '') return [];
  const number = /^\s*[\d./]+\s+/.exec(m.written)?.[0] ?? '';
  return [m.replace(number + near)];
};

/** N20: the name as the lines have it, or no such line. */
export const nearOrNone: Fixer = (m) => {
  const near = suggested(m.arg('near'));
  return [...(near === undefined ? [] : [m.replace(near)]), m.fix('Take the line away', [m.without(m.line)])];
};
