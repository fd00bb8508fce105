import { jsonText } from '../json/pretty.js';
import { tally, type Found, type Tally } from './found.js';

/** What `quern check --format json` gives; `docs/json/check.schema.json` describes it. */
export interface CheckReport {
  readonly format: 'quern-check';
  readonly version: 1;
  /** Files that were looked at. */
  readonly files: number;
  readonly summary: Tally;
  readonly diagnostics: readonly Found[];
}

export function checkReport(found: readonly Found[], files: number): CheckReport {
  return { format: 'quern-check', version: 1, files, summary: tally(found), diagnostics: found };
}

/** The reports of several shards as one: what one run over all files would have given. */
export function mergeReports(reports: readonly CheckReport[]): CheckReport {
  const found = reports.flatMap(({ diagnostics }) => diagnostics);
  const inOrder = [...found].sort((a, b) => compareText(a.file, b.file));
  return checkReport(
    inOrder,
    reports.reduce((total, { files }) => total + files, 0),
  );
}

const compareText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

export const reportJson = (report: CheckReport): string => jsonText(report);
