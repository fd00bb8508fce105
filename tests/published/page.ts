import { prove } from './proof.js';
import { count, report } from './report.js';
import { tables } from './tables.js';

const results = prove(tables);

/** The text of docs/proof.md. */
export const page = (): string => report(results);

export const sums = () => count(results);

/** What failed, one line each. */
export const failures = (): string[] =>
  results.flatMap(({ row, finding }) =>
    finding.kind === 'failed'
      ? [`${row.table} ${row.key}: published ${row.value} ${row.unit}, Quern ${finding.quern}`]
      : [],
  );
