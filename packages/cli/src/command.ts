import type { System } from './system/system.js';

/** 0: all well. 1: something is wrong in what was read. 2: the command was used wrongly, or a file cannot be read or written. */
export type ExitCode = 0 | 1 | 2;

/** An option of a command, as it is parsed and as its help shows it. */
export interface Option {
  readonly type: 'string' | 'boolean';
  /** May be given more than once. */
  readonly multiple?: true;
  readonly short?: string;
  /** What stands for the value in the help: 'NAME', '3/16'. */
  readonly value?: string;
  /** A few words, without a full stop. */
  readonly says: string;
  /** The only values allowed. */
  readonly choices?: readonly string[];
}

export type Options = Readonly<Record<string, Option>>;

/** The values of options: a text, several texts, or whether it was given. */
export type Values<O extends Options> = {
  readonly [K in keyof O]: O[K]['type'] extends 'boolean'
    ? boolean
    : O[K] extends { readonly multiple: true }
      ? readonly string[]
      : string | undefined;
};

/** What a command is called with. */
export interface Call<O extends Options = Options> {
  readonly files: readonly string[];
  readonly options: Values<O>;
  readonly system: System;
}

/** A command of `quern`: one file in `commands/`, one line in `commands/registry.ts`. */
export interface Command<O extends Options = Options> {
  /** Forms of use after the command's name: '[PATH …]'. */
  readonly usage: readonly string[];
  /** What it does, a paragraph each. */
  readonly about: readonly string[];
  readonly options: O;
  /** Arguments after `quern NAME`, and what they do. */
  readonly examples: readonly { readonly line: string; readonly says: string }[];
  run(call: Call<O>): Promise<ExitCode>;
}

/** Gives a command the types of its own options. */
export function defineCommand<const O extends Options>(command: Command<O>): Command<O> {
  return command;
}

/** A mistake in how the command was called, or a file that cannot be read or written: told in one line, exit code 2. */
export class UsageError extends Error {
  constructor(
    message: string,
    readonly help?: string,
  ) {
    super(message);
    this.name = 'UsageError';
  }
}

/** Something in a recipe stands in the way of what was asked: told in one line, exit code 1. */
export class RecipeError extends Error {
  constructor(
    message: string,
    readonly help?: string,
  ) {
    super(message);
    this.name = 'RecipeError';
  }
}
