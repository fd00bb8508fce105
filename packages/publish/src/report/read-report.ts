import { messages, type MessageCode } from '@quern/text';
import { tally, type Found, type Position } from './found.js';
import type { CheckReport } from './report-json.js';

/*
 * Reports and kept results come back from disks and other machines: whatever is read is looked at part by part before
 * any of it is believed.
 */

type Fields = Readonly<Record<string, unknown>>;

const isFields = (value: unknown): value is Fields =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const ASCII = /^[ -~]*$/;

/** Text without half a surrogate pair: no address and no UTF-8 could be made of that. */
const isText = (value: unknown): value is string =>
  typeof value === 'string' && (ASCII.test(value) || !/\p{Surrogate}/u.test(value));

const isCount = (value: unknown, least: number): value is number =>
  Number.isSafeInteger(value) && Number(value) >= least;

const isPosition = (value: unknown): value is Position =>
  isFields(value) && isCount(value['line'], 1) && isCount(value['column'], 1);

const isCode = (value: unknown): value is MessageCode => typeof value === 'string' && Object.hasOwn(messages, value);

const isRelated = (value: unknown): boolean =>
  isFields(value) && isText(value['file']) && isPosition(value['start']) && isText(value['note']);

/** Whether a value of unknown origin is a diagnostic as this version tells it. */
export function isFound(value: unknown): value is Found {
  if (!isFields(value)) return false;
  const { file, start, end, code, severity, message, help, source, related } = value;
  return (
    [file, message, help, source].every(isText) &&
    isPosition(start) &&
    isPosition(end) &&
    isCode(code) &&
    (severity === 'error' || severity === 'warning' || severity === 'hint') &&
    Array.isArray(related) &&
    related.every(isRelated)
  );
}

/**
 * The report that a text holds, as `quern check --format json` gives it. The sums are made anew, so that a report
 * cannot say that all is well above a list of errors.
 * @returns undefined when the text is no JSON or not such a report.
 */
export function readCheckReport(text: string): CheckReport | undefined {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return undefined;
  }
  if (!isFields(value) || value['format'] !== 'quern-check' || value['version'] !== 1) return undefined;
  const { files, diagnostics } = value;
  if (!isCount(files, 0) || !Array.isArray(diagnostics) || !diagnostics.every(isFound)) return undefined;
  return { format: 'quern-check', version: 1, files, summary: tally(diagnostics), diagnostics };
}
