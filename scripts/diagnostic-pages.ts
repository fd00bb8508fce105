/** The pages of docs/diagnostics, made from the registry: one a code, and the list of all. */
import { messages, type Diagnostic, type Message, type MessageCode } from '@quern/text';
import { draw, splitExample, type SourceText } from '@quern/testkit';

/** What the compiler says of the first of these files. */
export type Check = (files: readonly SourceText[]) => readonly Diagnostic[];

const areas: Readonly<Record<string, string>> = {
  L: 'Lines',
  N: 'Names',
  Q: 'Amounts',
  M: 'Ledger',
  F: 'Flour',
  C: 'Cultures',
  T: 'Time and heat',
  A: 'Allergens and nutrition',
  V: 'Variants',
  U: 'Menus',
};

const generated = '<!-- Generated from the registry of messages by `npm run docs`. Do not edit. -->';

export const codes = Object.keys(messages).sort() as MessageCode[];

/** Every page by its file name. */
export function diagnosticPages(check: Check): Map<string, string> {
  const pages = new Map([['README.md', index()]]);
  for (const code of codes) pages.set(`${code}.md`, page(code, messages[code], check));
  return pages;
}

function page(code: MessageCode, message: Message, check: Check): string {
  const bad = splitExample(message.bad);
  const said = check(bad).filter((diagnostic) => diagnostic.code === code);
  return `${[
    generated,
    `# ${code}: ${message.name}`,
    `${capital(message.severity)}. ${capital(areaOf(code))}. [All messages](README.md)`,
    message.why.trim(),
    `## A file in which it is said`,
    ...bad.map(listing),
    `The compiler says:`,
    fenced('text', draw(said, bad, true)),
    `## The same, mended`,
    ...splitExample(message.good).map(listing),
  ].join('\n\n')}\n`;
}

function listing(file: SourceText, index: number): string {
  const title = index === 0 ? '' : `\`${file.path}\`:\n\n`;
  return title + fenced('quern', file.text);
}

/** A fence longer than any in the text. */
function fenced(language: string, text: string): string {
  const ticks = '`'.repeat(Math.max(3, ...(text.match(/`+/g) ?? []).map((run) => run.length + 1)));
  return `${ticks}${language}\n${text.trimEnd()}\n${ticks}`;
}

function index(): string {
  const byArea = Object.entries(areas).map(([letter, title]) => {
    const rows = codes
      .filter((code) => code.startsWith(letter))
      .map((code) => {
        const { severity, text } = messages[code];
        return `| [${code}](${code}.md) | ${severity} | ${text.replaceAll(/\{\w+\}/g, '…').replaceAll('|', '\\|')} |`;
      });
    return `## ${title}\n\n| code | severity | message |\n| --- | --- | --- |\n${rows.join('\n')}`;
  });
  return `${[
    generated,
    '# Messages',
    'Everything the compiler can say about a file. An error stops the figures that depend on it; a warning should be looked at; a hint may be left alone. A code never gets a new meaning.',
    ...byArea,
  ].join('\n\n')}\n`;
}

/** The area a code belongs to, by its letter. */
export function areaOf(code: string): string {
  const area = areas[code.charAt(0)];
  if (area === undefined) throw new Error(`the letter of ${code} stands for no area`);
  return area;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
