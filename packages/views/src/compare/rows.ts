import { printMinutes, rational } from '@quern/quantity';
import type { BothFigures, Change, Figured, LineFinding, ProblemChange } from './changes.js';
import type { PartChange } from './difference.js';
import type { PartName } from './parts.js';
import type { WordRun } from './word-runs.js';

/** How a row is set: `alarm` for what somebody has to know, `relief` for what is no longer there, else `plain`. */
export type Tone = 'alarm' | 'relief' | 'plain';

/** One change, both sides beside each other. */
export interface ComparisonRow {
  readonly label: string;
  /** Empty on the side that has nothing. */
  readonly before: string;
  readonly after: string;
  /** '+9.4 %', '2.34 % to 2.56 % on flour'. */
  readonly note: string;
  readonly tone: Tone;
  /** Words of a sentence: what stayed, went and came. */
  readonly runs?: readonly WordRun[];
  /** Lines of the two files, from one. */
  readonly lines: { readonly before?: number; readonly after?: number };
}

const row = (label: string, before: string, after: string, more: Partial<ComparisonRow> = {}): ComparisonRow => ({
  label,
  before,
  after,
  note: '',
  tone: 'plain',
  lines: {},
  ...more,
});

/** A change in rows: mostly one; a line that differs in its words has one more for them. */
export function rowsOf(change: Change): readonly ComparisonRow[] {
  switch (change.kind) {
    case 'allergen': {
      const worse = RISK[change.after] > RISK[change.before];
      return [row(change.allergen, change.before, change.after, { tone: worse ? 'alarm' : 'relief' })];
    }
    case 'unsaid': {
      const food = change.after ?? change.before ?? '';
      const said = (there: boolean): string => (there ? 'nothing is known of its allergens' : '');
      const [was, is] = [change.before !== undefined, change.after !== undefined];
      return [row(food, said(was), said(is), { tone: is ? 'alarm' : 'relief' })];
    }
    case 'promise': {
      const tone = change.after === 'contradicted' || change.after === 'cannot confirm' ? 'alarm' : 'plain';
      return [row(`“${change.promise}”`, change.before ?? 'not promised', change.after ?? 'not promised', { tone })];
    }
    case 'caution':
      return [
        row(change.title, change.before ?? '', change.after ?? '', {
          tone: change.before === undefined ? 'alarm' : change.after === undefined ? 'relief' : 'plain',
        }),
      ];
    case 'problem':
      return [problemRow(change)];
    case 'nutrition':
      return [figures(`${change.nutrient.replace('of which ', '')}, ${change.per}`, change)];
    case 'yield':
    case 'bakers':
      return [figures(change.figure, change)];
    case 'share':
      return [figures(change.food, change)];
    case 'weighed':
      return [figures(change.food, change, change.line)];
    case 'clock':
      return [row(change.figure, change.before ?? '', change.after ?? '', { note: minutesMore(change.minutes) })];
    case 'rescaled':
      return [
        row('the same formula', change.before?.text ?? '', change.after?.text ?? '', {
          note: `times ${change.factor.text}`,
        }),
      ];
    case 'line':
      return lineRows(change);
  }
}

const RISK = { 'not named': 0, 'may contain': 1, contains: 2 } as const;

function problemRow({ code, severity, before, after }: ProblemChange): ComparisonRow {
  const tone = after === undefined ? 'relief' : severity === 'error' ? 'alarm' : 'plain';
  return row(`${severity} ${code}`, before ?? '', after ?? '', {
    tone,
    note: after === undefined ? 'no longer' : 'new',
  });
}

const text = (figure: Figured | undefined): string => figure?.text ?? '';

function figures(label: string, { before, after, percent }: BothFigures, said = ''): ComparisonRow {
  const note = [said, text(percent)].filter((part) => part !== '').join('; ');
  return row(label, before ? text(before) : 'not known', after ? text(after) : 'not known', { note });
}

const lasting = (minutes: number): string => printMinutes(rational(minutes));

function minutesMore(minutes: number | undefined): string {
  if (minutes === undefined) return '';
  return minutes > 0 ? `${lasting(minutes)} more` : `${lasting(-minutes)} less`;
}

// ---- lines -----------------------------------------------------------------------------------------------------------

function lineRows(finding: LineFinding): readonly ComparisonRow[] {
  const { action, change, lines } = finding;
  if (action === 'added' || action === 'removed' || action === 'split' || action === 'merged')
    return wholeLine(finding);
  if (action === 'reordered') {
    return [row(stepLabel(finding), '', '', { note: 'comes in another order', lines })];
  }
  const wording = change.parts.filter(({ runs }) => runs !== undefined);
  const figures = change.parts.filter(({ runs }) => runs === undefined);
  const moved = action === 'moved' ? movedNote(finding) : '';
  const rows: ComparisonRow[] = [];
  if (figures.length > 0 || moved !== '') {
    const note = [moved, ...figureNotes(finding)].filter((part) => part !== '').join('; ');
    const [before, after] = sides(finding, figures);
    rows.push(row(labelOf(finding), before, after, { note, lines }));
  }
  for (const part of wording) {
    const label = part.part === 'note' ? `${labelOf(finding)}, note` : labelOf(finding);
    rows.push(row(label, part.before, part.after, { lines, ...(part.runs ? { runs: part.runs } : {}) }));
  }
  return rows;
}

/** A line, or a block with its lines, that is there on one side only. */
function wholeLine(finding: LineFinding): readonly ComparisonRow[] {
  const { action, role, before, after, inside, other, lines } = finding;
  const made = other === undefined ? '' : action === 'split' ? `made apart from ${other}` : `made as part of ${other}`;
  const label = labelOf(finding);
  const shown = (line: string | undefined): string =>
    line === undefined ? '' : [withoutName(line, finding), ...inside].filter((one) => one !== '').join('\n');
  const note = [made, ...figureNotes(finding)].filter((part) => part !== '').join('; ');
  const tone = role === 'unreadable' && after !== undefined ? 'alarm' : 'plain';
  const [was, is] = [shown(before), shown(after)];
  // A block without lines is there all the same.
  const there = (side: string | undefined, lines: string): string =>
    side !== undefined && lines === '' ? side : lines;
  return [row(label, there(before, was), there(after, is), { note, tone, lines })];
}

/** The line without what the label says already. */
function withoutName(line: string, { role, subject }: LineFinding): string {
  if (isBlock(role)) return '';
  const name = subject.after === '' ? subject.before : subject.after;
  if (role === 'food' || role === 'product' || role === 'alternative')
    return line.replace(` ${name}`, '').replace(/^or /, '');
  return line;
}

const isBlock = (role: LineFinding['role']): boolean =>
  role === 'make' || role === 'variant' || role === 'recipe' || role === 'block';

function movedNote({ where, other }: LineFinding): string {
  const [from, to] = [where.before.make, where.after.make];
  if (other !== undefined) return '';
  return from === to ? 'moved' : `from ${from ?? 'the recipe'} to ${to ?? 'the recipe'}`;
}

function figureNotes({ change, grams, share, action, beyond }: LineFinding): readonly string[] {
  const alone = action === 'added' || action === 'removed';
  const written = change.parts.find(({ part }) => part === 'amount')?.values;
  const inGrams = written?.before?.kind === 'grams' && written.after?.kind === 'grams';
  const times = beyond ? ` beyond times ${beyond.text}` : '';
  const percent = grams?.percent ? `${grams.percent.text}${times}` : '';
  const weight =
    grams === undefined || alone ? '' : inGrams ? percent : `${both(grams)}${percent === '' ? '' : ` (${percent})`}`;
  return [weight, share === undefined ? '' : `${both(share)} on flour`];
}

function both({ before, after }: BothFigures): string {
  if (!before || !after) return text(before ?? after);
  return `${before.text} to ${after.text}`;
}

/** The parts that differ, in the order in which a line is written. */
function sides(finding: LineFinding, parts: readonly PartChange[]): readonly [string, string] {
  const named = finding.action === 'swapped' || finding.action === 'renamed';
  if (parts.length === 0) return ['', ''];
  const told = (side: 'before' | 'after'): string => {
    const own = parts.toSorted((a, b) => ORDER.indexOf(a.part) - ORDER.indexOf(b.part));
    const texts = own.map(({ part, [side]: value }) => prefixed(part, value));
    // A name alone says which food; with it stands how much.
    const amount = named && !parts.some(({ part }) => part === 'amount') ? amountOf(finding, side) : '';
    return [amount, ...texts].filter((one) => one !== '').join(' ');
  };
  return [told('before'), told('after')];
}

const ORDER: readonly PartName[] = [
  'optional',
  'verb',
  'busy',
  'every',
  'amount',
  'time',
  'name',
  'of',
  'as',
  'on',
  'from',
  'heat',
  'until',
  'using',
  'lasts',
  'second measure',
  'clock',
  'weight',
  'value',
  'note',
  'words',
];
const PREFIX: Partial<Record<PartName, string>> = {
  on: 'on ',
  as: 'as ',
  of: 'of ',
  from: 'from ',
  heat: 'at ',
  until: 'until ',
  using: 'using ',
  'second measure': '= ',
  weight: '= ',
};

const prefixed = (part: PartName, value: string): string => (value === '' ? '' : `${PREFIX[part] ?? ''}${value}`);

/** What stands before the name on a line. */
function amountOf(finding: LineFinding, side: 'before' | 'after'): string {
  const line = finding[side] ?? '';
  const name = finding.subject[side];
  const at = line.indexOf(` ${name}`);
  return at < 0 || finding.role === 'make' ? '' : line.slice(0, at).replace(/^or /, '');
}

function labelOf(finding: LineFinding): string {
  const { role, subject } = finding;
  const name = subject.after === '' ? subject.before : subject.after;
  switch (role) {
    case 'food':
    case 'product':
      return name;
    case 'alternative':
      return `or ${name}`;
    case 'make':
    case 'variant':
    case 'recipe':
      return `${role} ${name}`;
    case 'block':
      return finding.after ?? finding.before ?? name;
    case 'step':
      return stepLabel(finding);
    default:
      return name;
  }
}

const LABEL_WORDS = 4;

/** 'oven: Bake until dark …'. */
function stepLabel({ subject, change }: LineFinding): string {
  const content = (change.after ?? change.before)?.node.content;
  const lane = subject.after === '' ? subject.before : subject.after;
  const words = content?.kind === 'step' ? content.prose.text.split(/\s+/) : [];
  const start = words.slice(0, LABEL_WORDS).join(' ');
  return start === '' ? lane : `${lane}: ${start}${words.length > LABEL_WORDS ? ' …' : ''}`;
}
