import { COMMON } from './arguments.js';
import type { Command, Option, Options } from './command.js';
import { registry } from './commands/registry.js';

const WIDTH = 80;

/** The help of `quern` itself: what commands there are. */
export function generalHelp(): string {
  const names = registry.map(({ name }) => name);
  const wide = longest(names) + 2;
  return [
    'quern: recipes and formulas as plain text, with their arithmetic, clock and label.',
    '',
    'use:',
    '  quern COMMAND [OPTION …] [PATH …]',
    '',
    'commands:',
    ...registry.map(({ name, summary }) => `  ${name.padEnd(wide)}${summary}`),
    '',
    'quern COMMAND --help tells more of a command; quern --version says which version this is.',
    'exit codes: 0 all well; 1 something is wrong in what was read; 2 wrong use, or a file cannot be read or written.',
    '',
  ].join('\n');
}

/** The help of a command: the same parts in the same order for each. */
export function commandHelp(name: string, summary: string, command: Command): string {
  return [
    `quern ${name}: ${summary}`,
    '',
    'use:',
    ...command.usage.map((form) => `  quern ${name} ${form}`.trimEnd()),
    '',
    ...command.about.flatMap((paragraph) => [...wrap(paragraph, ''), '']),
    'options:',
    ...optionLines({ ...command.options, ...COMMON }),
    ...(command.examples.length > 0
      ? [
          '',
          'examples:',
          ...command.examples.flatMap(({ line, says }) => [
            `  quern ${name} ${line}`.trimEnd(),
            ...wrap(says, '      '),
          ]),
        ]
      : []),
    '',
  ].join('\n');
}

function optionLines(options: Options): readonly string[] {
  const rows = Object.entries(options).map(([name, option]) => ({ form: optionForm(name, option), says: option.says }));
  const wide = Math.min(30, longest(rows.map(({ form }) => form)) + 2);
  return rows.flatMap(({ form, says }) => {
    const lines = wrap(says, ' '.repeat(wide + 2));
    if (form.length + 2 > wide) return [`  ${form}`, ...lines];
    return [`  ${form.padEnd(wide)}${lines[0]?.trimStart() ?? ''}`, ...lines.slice(1)];
  });
}

function optionForm(name: string, { short, type, value, multiple }: Option): string {
  const long = `--${name}${type === 'string' ? ` ${value ?? 'VALUE'}` : ''}${multiple ? ' …' : ''}`;
  return short === undefined ? long : `-${short}, ${long}`;
}

const longest = (texts: readonly string[]): number => texts.reduce((most, text) => Math.max(most, text.length), 0);

function wrap(text: string, indent: string): string[] {
  const lines: string[] = [];
  let line = indent;
  for (const word of text.split(' ')) {
    if (line.length > indent.length && line.length + 1 + word.length > WIDTH) {
      lines.push(line);
      line = indent + word;
    } else line += (line.length > indent.length ? ' ' : '') + word;
  }
  return [...lines, line];
}
