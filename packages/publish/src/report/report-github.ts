import type { Found } from './found.js';

const KIND = { error: 'error', warning: 'warning', hint: 'notice' } as const;

/** Controls that a log shown in a terminal would obey; line ends are encoded below. */
const CONTROLS = /[\u0000-\u0009\u000b\u000c\u000e-\u001f\u007f-\u009f]/g;

const data = (text: string): string =>
  text
    .replace(/\p{Surrogate}/gu, '\uFFFD')
    .replace(CONTROLS, '\uFFFD')
    .replaceAll('%', '%25')
    .replaceAll('\r', '%0D')
    .replaceAll('\n', '%0A');
const property = (text: string): string => data(text).replaceAll(':', '%3A').replaceAll(',', '%2C');

/** One diagnostic as a workflow command of GitHub Actions, shown beside the line of a pull request. Ends in a line end. */
export function reportGithub({ file, start, end, code, severity, message, help }: Found): string {
  const where = `file=${property(file)},line=${start.line},endLine=${end.line},col=${start.column},endColumn=${end.column}`;
  return `::${KIND[severity]} ${where},title=${property(code)}::${data(`${message}\nway out: ${help}`)}\n`;
}
