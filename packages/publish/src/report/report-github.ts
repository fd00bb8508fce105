import type { Found } from './found.js';

const KIND = { error: 'error', warning: 'warning', hint: 'notice' } as const;

const data = (text: string): string => text.replaceAll('%', '%25').replaceAll('\r', '%0D').replaceAll('\n', '%0A');
const property = (text: string): string => data(text).replaceAll(':', '%3A').replaceAll(',', '%2C');

/** One diagnostic as a workflow command of GitHub Actions, shown beside the line of a pull request. Ends in a line end. */
export function reportGithub({ file, start, end, code, severity, message, help }: Found): string {
  const where = `file=${property(file)},line=${start.line},endLine=${end.line},col=${start.column},endColumn=${end.column}`;
  return `::${KIND[severity]} ${where},title=${property(code)}::${data(`${message}\nway out: ${help}`)}\n`;
}
