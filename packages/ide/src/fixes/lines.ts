import { nearest, type Span } from '@quern/text';
import { normaliseName } from '@quern/compiler';
import { lineWords, parseLine } from '@quern/syntax';
import { relativePath } from '../completion/candidates.js';
import { otherFiles, writtenIn } from '../completion/used-names.js';
import { readsWell, type Fix, type Fixer } from './fix.js';

/* Mending lines that cannot be read, or that stand where they cannot. */

/** L01: a slip in the first word, understood already. */
export const openingSlip: Fixer = (m) => [m.replace(m.arg('read'), `Write “${m.arg('read')}”`, true)];

/** L02: a block line above. */
export const openBlock: Fixer = (m) => {
  const block = m.arg('block');
  return [m.fix(`Begin a ${block} above`, [m.before(m.line, `${block} Untitled`)])];
};

/** L03: the colon after the last word that can be read as a time or a condition. */
export const addColon: Fixer = (m) => {
  const text = m.line.text.trimEnd();
  const ends = [...text.matchAll(/\S(?=\s|$)/g)].map((found) => found.index + 1).reverse();
  for (const at of ends) {
    const said = text.slice(at).trim();
    if (!readsWell(`${text.slice(0, at)}: ${said}`)) continue;
    const title = said === '' ? 'End it with a colon' : `Put a colon before “${firstWords(said)}”`;
    return [m.inLine({ start: at, end: at }, ':', title)];
  }
  return [];
};

const firstWords = (text: string): string => {
  const words = text.split(/\s+/);
  return words.slice(0, 4).join(' ') + (words.length > 4 ? ' …' : '');
};

/** L04: the plain mark that the formatter would write. */
export const plainMark: Fixer = (m) => {
  // A glyph right behind a digit is the fraction of a mixed number: `1½` is `1 1/2`.
  const glued =
    m.arg('plain').includes('/') && m.arg('plain').length > 1 && /\d/.test(m.snapshot.text[m.span.start - 1] ?? '');
  return [m.replace(`${glued ? ' ' : ''}${m.arg('plain')}`, `Write “${m.arg('plain')}”`, true)];
};

const OUT_WORDS = {
  lose: 'it evaporates or is gone',
  bin: 'thrown away',
  save: 'kept under a name',
} as const;

/** L05: which of the three ways out is meant; the likeliest first. */
export const wayOutWord: Fixer = (m) => {
  const word = m.arg('word').toLowerCase();
  const likely = /disc|throw|peel|trim|drain/.test(word)
    ? 'bin'
    : /keep|reserve|hold/.test(word)
      ? 'save'
      : /evap|reduc|boil/.test(word)
        ? 'lose'
        : 'bin';
  const words = (['lose', 'bin', 'save'] as const).toSorted((a, b) => Number(b === likely) - Number(a === likely));
  return words.map((one) => m.replace(one, `Write “${one}” (${OUT_WORDS[one]})`));
};

/** L07, T05: care that nothing lasts long enough for becomes a step done once. */
export const careAsStep: Fixer = (m) => {
  const { content } = m;
  if (content.kind !== 'every') return [];
  const time = content.duration ? ` ${m.line.text.slice(content.duration.span.start, content.duration.span.end)}` : '';
  return [
    m.inLine(
      { start: content.indent, end: content.prose.span.start },
      `hands${time}: `,
      'Make it a step that is done once',
    ),
  ];
};

/** L08: what stands in for nothing goes in itself. */
export const orAsIn: Fixer = (m) => {
  const { content } = m;
  if (content.kind !== 'or') return [];
  return [
    m.inLine(
      { start: content.indent, end: content.amount.span.start },
      '',
      'Put it in instead of standing in for something',
    ),
  ];
};

/** L10: the bracket closed behind the figure, or a bracket that nothing opens taken away. */
export const closeBracket: Fixer = (m) => {
  if (m.written === ']') return [m.replace('', 'Take the bracket away')];
  const rest = m.line.text.slice(m.span.end - m.line.start);
  let best = 0;
  for (const found of rest.matchAll(/[\p{L}\p{N}%](?=[\s,.;:!?)]|$)/gu)) {
    const end = found.index + 1;
    const { content } = parseLine(`hands 1 min: [${rest.slice(0, end)}]`);
    const amount = content.kind === 'step' ? content.prose.brackets[0]?.amount : undefined;
    if (amount === undefined) continue;
    if (best === 0 || amount.kind === 'measure') best = end;
    if (amount.kind === 'measure') break;
  }
  if (best === 0) return [m.replace('(', 'Write a round bracket')];
  const at = m.span.end + best;
  return [m.fix(`Close the bracket behind “${rest.slice(0, best)}”`, [{ span: { start: at, end: at }, text: ']' }])];
};

/** L13: words after `=` are a note. */
export const equalsAsNote: Fixer = (m) => {
  const before = m.line.text.slice(0, m.span.start - m.line.start);
  const equals = /\s*=\s*$/.exec(before);
  if (equals === null) return [];
  return [m.inLine({ start: equals.index, end: before.length }, ', ', 'Make it a note', true)];
};

/** L14: a name for what is saved. */
export const nameSaved: Fixer = (m) => {
  const text = m.line.text.trimEnd();
  const note = text.search(/,(?!\d)/);
  const at = note < 0 ? text.length : note;
  const found = m.arg('found').replace(/^nothing$/, '');
  const name = found === '' ? 'saved part' : `saved ${found}`;
  return [m.inLine({ start: at, end: at }, ` as ${name}`, `Call it “${name}”`)];
};

const CLAUSE = /\s(?:at|until|using|falling to|rising to|fan)(?=\s|:)/gi;

/** L15, L16, L34: words that are no time or temperature go behind the colon, where the cook reads them. */
export const behindColon: Fixer = (m) => {
  const { text, start } = m.line;
  const from = m.span.start - start;
  const colon = text.indexOf(':', from);
  if (colon < 0) return [];
  const clauses = [...text.matchAll(CLAUSE)].map((found) => found.index);
  const begin =
    clauses.findLast((at) => at < from && text.slice(at, from).trim().split(/\s+/).length <= 2) ??
    text.slice(0, from).trimEnd().length;
  const end = Math.min(clauses.find((at) => at >= from) ?? colon, colon);
  const words = text.slice(begin, end).trim();
  const said = text.slice(colon + 1).trim();
  if (words === '') return [];
  const moved = `${text.slice(0, begin)}${text.slice(end, colon)}: (${words})${said === '' ? '' : ` ${said}`}`;
  return [m.inLine({ start: 0, end: text.trimEnd().length }, moved, `Put “${words}” behind the colon`)];
};

/** L17, L22: a sentence becomes the step it seems to be. */
export const sentenceAsStep: Fixer = (m) => {
  const { indent } = m.content;
  const step = m.arg('step');
  const lanes = [step, ...['hands:', 'wait:', 'oven:', 'hob:'].filter((lane) => !step.startsWith(lane.slice(0, -1)))];
  const steps = lanes.map((lane) => m.inLine({ start: indent, end: indent }, `${lane} `, `Make it a step: ${lane}`));
  return [...steps, m.inLine({ start: indent, end: indent }, 'note ', 'Make it a note')];
};

/** L18: the file of the workspace that has a thing of that name; else the line kept as a remark. */
export const findFile: Fixer = (m) => {
  const name = m.line.text
    .trim()
    .replace(/^use\s+/i, '')
    .replace(/\s+from\b.*$/i, '');
  if (name === '') return [m.asRemark()];
  const found = [...otherFiles(m.snapshot)]
    .filter((other) => writtenIn(other).titles.some((title) => normaliseName(title) === normaliseName(name)))
    .map((other) => {
      const path = relativePath(m.snapshot.path, other.path);
      return m.inLine(
        { start: m.content.indent, end: m.line.text.trimEnd().length },
        `use ${name} from ${path}`,
        `Use it from ${path}`,
      );
    });
  return [...found, m.asRemark()];
};

/** L19: what the food is counted as. */
export const countAs: Fixer = (m) => {
  if (!/\bas\s+\S+\s*$/i.test(m.line.text)) return [];
  const at = /\bas\s+/i.exec(m.line.text);
  const start = (at?.index ?? 0) + (at?.[0].length ?? 0);
  return ['flour', 'water', 'other'].map((word) =>
    m.inLine({ start, end: m.line.text.trimEnd().length }, word, `Count it as ${word}`),
  );
};

/** L20: words in brackets that scale nothing stand in round ones. */
export const roundBrackets: Fixer = (m) => [m.replace(`(${m.written.slice(1, -1)})`, 'Write round brackets', true)];

/** L21: a near first word, the step it seems to be, or a remark. */
export const knownWord: Fixer = (m) => {
  const near = nearest(
    m.arg('word').toLowerCase(),
    lineWords.map(({ word }) => word),
  );
  const words = near.map((word) => m.replace(word));
  const step = /“((?:hands|wait|oven|hob)\b[^:”]*:)/.exec(m.arg('way'))?.[1];
  const { indent } = m.content;
  const steps =
    step === undefined ? [] : [m.inLine({ start: indent, end: indent }, `${step} `, `Make it a step: ${step}`)];
  return [...words, ...steps, m.asRemark()];
};

/** L24: what is left over becomes a note where one may follow, else a remark above. */
export const leftOver: Fixer = (m) => {
  const fixes: Fix[] = [];
  const from = m.span.start - m.line.start;
  const before = m.line.text.slice(0, from).trimEnd();
  const rest = m.line.text
    .slice(from)
    .replace(/^[:;–—]\s*/, '')
    .trim();
  const noted = `${before}, ${rest}`;
  if (rest !== '' && readsWell(noted))
    fixes.push(m.inLine({ start: 0, end: m.line.text.trimEnd().length }, noted, 'Make it a note'));
  if (readsWell(before)) {
    const edits = [
      m.before(m.line, `${m.indent}// ${rest}`),
      m.edit(m.line, { start: before.length, end: m.line.text.length }, ''),
    ];
    fixes.push(m.fix('Keep it as a remark above', edits));
  }
  return fixes;
};

/** L25, L35: a fact that cannot be read is kept as a remark. */
export const asRemark: Fixer = (m) => [m.asRemark()];

/** L26: one of the two versions that version control left. */
export const resolveConflict: Fixer = (m) => {
  const { lines } = m.snapshot.document;
  const here = m.line.number;
  const startsWith = (mark: string) => (number: number) => lines[number]?.text.startsWith(mark) === true;
  const numbers = lines.map((_, number) => number);
  const first = numbers.slice(0, here + 1).findLast(startsWith('<<<<<<<'));
  if (first === undefined) return [];
  const middle = numbers.slice(first).find(startsWith('======='));
  const last = numbers.slice(first).find(startsWith('>>>>>>>'));
  if (middle === undefined || last === undefined || last < middle) return [];
  const drop = (from: number, to: number) => lines.slice(from, to + 1).map((line) => m.without(line));
  return [
    m.fix('Keep the first version', [...drop(first, first), ...drop(middle, last)]),
    m.fix('Keep the second version', [...drop(first, middle), ...drop(last, last)]),
  ];
};

const MOST_WORDS = 400;

/** L27: a long step goes on in lines that begin with a colon. */
export const cutLine: Fixer = (m) => {
  const { text } = m.line;
  const colon = text.indexOf(':');
  if (colon < 0 || !/^\s*(?:hands|wait|oven|hob|:)/i.test(text)) return [];
  const sentences =
    text
      .slice(colon + 1)
      .trim()
      .match(/[^.!?]+[.!?]*\s*/g) ?? [];
  const parts: string[] = [];
  for (const sentence of sentences) {
    const last = parts.length - 1;
    if (last >= 0 && (parts[last] ?? '').length + sentence.length <= MOST_WORDS) parts[last] += sentence;
    else parts.push(sentence);
  }
  if (parts.some((part) => part.length > 3900)) return [];
  const [head = '', ...more] = parts.map((part) => part.trim());
  const cut = [`${text.slice(0, colon + 1)} ${head}`, ...more.map((part) => `${m.indent}: ${part}`)].join(m.ending);
  return [m.inLine({ start: 0, end: text.length }, cut, 'Cut it into several lines', true)];
};

/** L28: edits get a variant to stand in; anything else is kept as a remark. */
export const rightBlock: Fixer = (m) => {
  const edit = ['swap', 'drop', 'add', 'times'].includes(m.content.kind);
  const variant = edit ? [m.fix('Begin a variant above', [m.before(m.line, '', 'variant changed')])] : [];
  return [...variant, m.asRemark()];
};

/** L29: words that go on nothing become a step. */
export const wordsAsStep: Fixer = (m) => {
  const { indent } = m.content;
  const span: Span = { start: indent, end: indent };
  return ['hands', 'wait', 'oven', 'hob'].map((lane) => m.inLine(span, lane, `Make it a step: ${lane}`));
};

/** L30: one of two facts that cannot both hold. */
export const dropSecond: Fixer = (m) => [m.fix('Take this line away', [m.without(m.line)]), m.asRemark()];

/** L32: the order of a date is changed only where it can be read in one way; a day too high becomes the last of its month. */
export const realDate: Fixer = (m) => {
  const found = m.arg('found');
  const turned = /^(\d{1,2})[./-](\d{1,2})[./-](\d{4})$/.exec(found);
  if (turned) {
    const [, first = '', second = '', year = ''] = turned;
    const orders = [
      [second, first],
      [first, second],
    ].filter(([month = '', day = '']) => inMonth(year, month) >= Number(day) && Number(day) > 0);
    return [
      ...new Set(orders.map(([month = '', day = '']) => `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`)),
    ].map((date) => m.replace(date));
  }
  const [, year = '', month = ''] = /^(\d{4})-(\d{2})-\d{2}$/.exec(found) ?? [];
  const last = inMonth(year, month);
  return last > 0 ? [m.replace(`${year}-${month}-${last}`)] : [];
};

/** Days of a month; 0 when there is no such month. */
function inMonth(year: string, month: string): number {
  const leap = Number(year) % 4 === 0 && (Number(year) % 100 !== 0 || Number(year) % 400 === 0);
  return [31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][Number(month) - 1] ?? 0;
}

/** L33: the hour brought into the day. */
export const realClock: Fixer = (m) => {
  const [, hour, minute = '00'] = /^(\d{1,2})[:.h]?(\d{2})?/i.exec(m.arg('found')) ?? [];
  if (hour === undefined) return [];
  const time = `${String(Number(hour) % 24).padStart(2, '0')}:${Number(minute) > 59 ? '59' : minute}`;
  return [m.replace(time)];
};
