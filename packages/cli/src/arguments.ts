import { parseArgs, type ParseArgsConfig } from 'node:util';
import { nearest } from '@quern/text';
import { UsageError, type Options, type Values } from './command.js';
import { COLOUR_CHOICES } from './system/paint.js';

/** Options that every command has. */
export const COMMON = {
  help: { type: 'boolean', short: 'h', says: 'show this help' },
  color: {
    type: 'string',
    value: 'WHEN',
    choices: COLOUR_CHOICES,
    says: 'colour the output: auto (default), always or never',
  },
} as const satisfies Options;

export interface Parsed<O extends Options> {
  readonly values: Values<O & typeof COMMON>;
  readonly files: readonly string[];
}

/**
 * Reads the arguments of a command.
 * @throws UsageError for an unknown option, a missing value, a value that is not among the choices, or an option given
 * twice that may be given once.
 */
export function readArguments<O extends Options>(args: readonly string[], own: O): Parsed<O> {
  const options: Options = { ...own, ...COMMON };
  const known = Object.keys(options);
  const { tokens, positionals } = parse(args, options);
  const values: Record<string, string | boolean | string[] | undefined> = {};
  for (const [name, option] of Object.entries(options))
    values[name] = option.type === 'boolean' ? false : option.multiple ? [] : undefined;
  for (const token of tokens) {
    if (token.kind !== 'option') continue;
    const option = options[token.name];
    if (!option) throw unknownOption(token.rawName, known);
    if (option.type === 'boolean') {
      if (token.value !== undefined) throw new UsageError(`${token.rawName} takes no value`);
      values[token.name] = true;
      continue;
    }
    const value = valueOf(token, option.value ?? 'VALUE');
    if (option.choices && !option.choices.includes(value)) {
      throw new UsageError(`${token.rawName} cannot be “${value}”`, `choose ${listOf(option.choices)}`);
    }
    if (option.multiple) values[token.name] = [...(values[token.name] as string[]), value];
    else if (values[token.name] !== undefined) throw new UsageError(`${token.rawName} is given twice`, 'give it once');
    else values[token.name] = value;
  }
  return { values: values as Values<O & typeof COMMON>, files: positionals };
}

type Token = ReturnType<typeof parse>['tokens'][number];

function parse(args: readonly string[], options: Options) {
  const config: NonNullable<ParseArgsConfig['options']> = {};
  for (const [name, { type, short }] of Object.entries(options))
    config[name] = { type, multiple: true, ...(short ? { short } : {}) };
  // Not strict: the messages are ours. An option that is not known comes as a token all the same.
  return parseArgs({ args: [...args], options: config, strict: false, allowPositionals: true, tokens: true });
}

function valueOf(token: Extract<Token, { kind: 'option' }>, what: string): string {
  const { value, rawName, inlineValue } = token;
  if (value === undefined) throw new UsageError(`${rawName} needs a value`, `write ${rawName} ${what}`);
  if (!inlineValue && value.startsWith('-') && value.length > 1) {
    throw new UsageError(
      `${rawName} needs a value before ${value}`,
      `write ${rawName} ${what}, or ${rawName}=${value} if that is the value`,
    );
  }
  return value;
}

function unknownOption(written: string, known: readonly string[]): UsageError {
  const near = nearest(written.replace(/^-+/, ''), known);
  const help =
    near.length > 0 ? `did you mean ${listOf(near.map((name) => `--${name}`))}?` : 'see --help for those there are';
  return new UsageError(`there is no option ${written}`, help);
}

/** 'a', 'a or b', 'a, b or c'. */
export function listOf(words: readonly string[]): string {
  if (words.length <= 1) return words.join('');
  return `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`;
}
