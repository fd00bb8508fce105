/** Published figures against what Quern computes: rows, rules and findings. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

/** A published figure, as printed. */
export interface Row {
  readonly table: string;
  readonly key: string;
  readonly value: string;
  readonly unit: string;
  readonly tolerance: string;
  readonly source: string;
  readonly seenAt: string;
  /** The figure could not be seen in a source: it is compared, and counted apart. */
  readonly fromMemory: boolean;
}

export type Finding =
  | { readonly kind: 'passed'; readonly quern: string }
  | { readonly kind: 'failed'; readonly quern: string }
  | { readonly kind: 'does not apply'; readonly reason: string };

/** Claims rows by key, and finds out about them. */
export interface Rule {
  readonly claims: (key: string) => boolean;
  readonly check: (row: Row) => Finding;
}

export interface Table {
  /** Name of the file without `.tsv`. */
  readonly name: string;
  readonly rules: readonly Rule[];
}

export interface Result {
  readonly row: Row;
  readonly finding: Finding;
}

/** Which keys: those that match a pattern, or those of a list. */
export type Keys = RegExp | readonly string[];

export function rule(keys: Keys, check: (row: Row) => Finding): Rule {
  return { claims: (key) => (keys instanceof RegExp ? keys.test(key) : keys.includes(key)), check };
}

/** For rows that say nothing about Quern; the reason is printed. */
export function doesNotApply(keys: Keys, reason: string): Rule {
  return rule(keys, () => ({ kind: 'does not apply', reason }));
}

/** Passed when `holds`; `quern` is what Quern says, as a person reads it. */
export function found(holds: boolean, quern: string): Finding {
  return { kind: holds ? 'passed' : 'failed', quern };
}

const header = 'key\tvalue\tunit\ttolerance\tsource\tseen_at';

export function readTable(name: string): Row[] {
  const [first, ...lines] = readFileSync(join(import.meta.dirname, `${name}.tsv`), 'utf8')
    .trimEnd()
    .split(/\r?\n/);
  if (first !== header) throw new Error(`${name}.tsv does not begin with the usual heading`);
  return lines.map((line, index) => {
    const cells = line.split('\t');
    if (cells.length !== 6) throw new Error(`${name}.tsv line ${index + 2}: ${cells.length} cells instead of 6`);
    const [key = '', value = '', unit = '', tolerance = '', source = '', seenAt = ''] = cells;
    const fromMemory = [tolerance, source, seenAt].some((cell) => /\bfrom memory\b/.test(cell));
    return { table: name, key, value, unit, tolerance, source, seenAt, fromMemory };
  });
}

/** Checks every row. A row that no rule or more than one rule claims has failed. */
export function prove(tables: readonly Table[]): Result[] {
  return tables.flatMap(({ name, rules }) => readTable(name).map((row) => ({ row, finding: findingOf(row, rules) })));
}

function findingOf(row: Row, rules: readonly Rule[]): Finding {
  const [first, ...others] = rules.filter((one) => one.claims(row.key));
  if (first === undefined) return { kind: 'failed', quern: 'no rule claims this row' };
  if (others.length > 0) return { kind: 'failed', quern: `${others.length + 1} rules claim this row` };
  try {
    return first.check(row);
  } catch (error) {
    return { kind: 'failed', quern: error instanceof Error ? error.message : String(error) };
  }
}
