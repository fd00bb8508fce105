import type { SheetData, SheetIn, SheetMake, SheetOut, SheetStep, SheetWeight } from '@quern/views';

/*
 * What stands in the columns of a sheet, the same in every output. Texts are not yet escaped for where they go.
 */

/** A row of the weighing table: weights on the left, what it is on the right. */
export interface WeighRow {
  readonly weight: string;
  readonly us: string;
  readonly percent: string;
  readonly what: string;
  readonly note: string;
}

const NOT_KNOWN = 'not known';

/** A line that puts something in, and what may stand in for it. */
export function inCells(row: SheetIn, data: SheetData): readonly WeighRow[] {
  return [
    inCell(row, data, row.optional ? 'optional: ' : ''),
    ...row.alternatives.map((other) => inCell(other, data, 'or ')),
  ];
}

function inCell(row: SheetIn, data: SheetData, ahead: string): WeighRow {
  return {
    weight: data.measures === 'us' ? '' : weightText(row),
    us: data.measures === 'metric' ? '' : usText(row, data),
    percent: row.percent?.text ?? '',
    what: ahead + whatIn(row),
    note: row.note ?? '',
  };
}

/** The name with what the amount says: '2 carrots', 'all leaven', 'a little fine salt', 'fine salt (2 % on flour)'. */
function whatIn({ name, said }: SheetIn): string {
  if (said === undefined) return name;
  return /%/.test(said) && !/ of$/.test(said) ? `${name} (${said})` : `${said} ${name}`;
}

/** An amount in words has no weight to be unknown. */
function weightText({ weight, about, said }: SheetIn): string {
  if (!weight) return said === 'a little' || said === 'enough' ? '' : NOT_KNOWN;
  return about ? `about ${weight.text}` : weight.text;
}

/** The cup or ounce measure with how far it is off; pieces stand with the name already. */
function usText(row: SheetIn, data: SheetData): string {
  if (row.us && row.us.manner !== 'counted') return measureWithError(row.us);
  if (data.measures === 'both' || row.us) return '';
  return weightText(row);
}

function measureWithError(us: NonNullable<SheetIn['us']>): string {
  if (!us.off || us.off.text === 'exact' || us.off.text.startsWith('under')) return us.text;
  return `${us.text} (${us.off.text}${us.off.near ? '' : ', no nearer measure'})`;
}

/** A line that takes something out. */
export function outCells(row: SheetOut, data: SheetData): WeighRow {
  const words = [row.said, row.what].filter(Boolean).join(' ');
  return {
    weight: data.measures === 'us' ? '' : (row.weight?.text ?? NOT_KNOWN),
    us:
      data.measures === 'metric'
        ? ''
        : row.us
          ? measureWithError(row.us)
          : data.measures === 'us'
            ? (row.weight?.text ?? NOT_KNOWN)
            : '',
    percent: '',
    what: words === '' ? row.verb : `${row.verb}: ${words}`,
    note: row.note ?? '',
  };
}

/** A remark after its kind: 'tip: …'; a note stands for itself. */
export const remarkText = (kind: string, text: string): string => (kind === 'note' ? text : `${kind}: ${text}`);

/** The title with the variant. */
export const titleOf = (data: SheetData): string =>
  data.variant === undefined ? data.title : `${data.title} (${data.variant})`;

/** What the sheet makes, a fact a line. */
export function yieldLines(data: SheetData): readonly string[] {
  const { pieces, servings, vessel, weight } = data.yield;
  const each = (of: SheetWeight | null): string => (of ? ` of ${of.text}` : '');
  return [
    scaleText(data),
    ...(pieces ? [`makes ${pieces.text}${each(pieces.each)}`] : []),
    ...(servings ? [`serves ${servings.text}${pieces ? '' : each(servings.each)}`] : []),
    `weighs ${weight?.text ?? NOT_KNOWN}`,
    ...(vessel ? [`in ${vessel}`] : []),
  ];
}

function scaleText({ scale }: SheetData): string {
  if (scale.factor === '1' || scale.words.startsWith('times')) return scale.words;
  return `${scale.words} (times ${factorText(scale.factor)})`;
}

/** A factor that is no short decimal and no fraction of a cook's is told to a thousandth. */
const factorText = (factor: string): string => (/\/\d{2,}$/.test(factor) ? `about ${approximate(factor)}` : factor);

function approximate(factor: string): string {
  const [top = '0', bottom = '1'] = factor.split('/');
  const thousandths = (BigInt(top) * 2000n + BigInt(bottom)) / (BigInt(bottom) * 2n);
  return `${thousandths / 1000n}.${(thousandths % 1000n).toString().padStart(3, '0')}`;
}

/** Facts of the formula beside its table. */
export function formulaFacts(
  formula: NonNullable<SheetData['formula']>,
): readonly { readonly name: string; readonly value: string }[] {
  return [
    { name: 'flour', value: formula.flour.text },
    { name: 'hydration', value: formula.hydration.text },
    { name: 'all water on flour', value: formula.allWater?.text ?? NOT_KNOWN },
    { name: 'prefermented flour', value: formula.prefermented.text },
    { name: 'total', value: `${formula.total.text}, ${formula.totalPercent.text}` },
  ];
}

/** A column of the weighing table. */
export interface WeighColumn {
  readonly key: 'weight' | 'us' | 'percent' | 'what';
  readonly title: string;
  readonly align: 'left' | 'right';
}

/** The columns that a sheet has, in order. */
export function columnsOf(data: SheetData): readonly WeighColumn[] {
  const columns: WeighColumn[] = [];
  if (data.measures !== 'us') columns.push({ key: 'weight', title: 'weight', align: 'right' });
  if (data.measures !== 'metric') columns.push({ key: 'us', title: 'cups and ounces', align: 'left' });
  if (data.formula) columns.push({ key: 'percent', title: 'on flour', align: 'right' });
  return [...columns, { key: 'what', title: 'what', align: 'left' }];
}

/** The last row of a make: what stands in its pot. */
export const totalCells = (make: SheetMake, data: SheetData): WeighRow => ({
  weight: data.measures === 'us' ? '' : (make.total?.text ?? NOT_KNOWN),
  us: data.measures === 'us' ? (make.total?.text ?? NOT_KNOWN) : '',
  percent: '',
  what: 'in the pot',
  note: '',
});

/** 'oven 45 min, at 250 C (475 F), until 97 C (207 F)'. */
export const stepHead = ({ lane, time, clauses }: SheetStep): string =>
  [[lane, time].filter(Boolean).join(' '), ...clauses].join(', ');
