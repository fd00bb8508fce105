import { createFoodBook } from '@quern/foods';
import { toDecimal, type Rational } from '@quern/quantity';
import { sentence } from '@quern/text';
import { Session } from '../session.js';
import type { Compiled, Formula, Make } from '../model.js';

/*
 * For the tests of this package: recipes inline, with the built-in food table. `=== NAME` begins another file.
 */

const foods = createFoodBook();

export function compileText(text: string): Compiled {
  const parts = text.split(/^=== (.*)\n/m);
  const files = new Map<string, string>([['main.quern', parts[0] ?? '']]);
  for (let index = 1; index < parts.length; index += 2) files.set(parts[index] ?? '', parts[index + 1] ?? '');
  const compiled = new Session({ read: (path) => files.get(path), foods }).compile('main.quern');
  if (!compiled) throw new Error('main.quern is always there');
  return compiled;
}

export function formulaOf(text: string, variant?: string): Formula {
  const found = compileText(text).formulas.find((formula) => formula.variant === variant);
  if (!found) throw new Error(`no formula ${variant ?? ''}`);
  return found;
}

export function makeOf(formula: Formula, name: string): Make {
  const found = formula.makes.find((make) => make.name === name);
  if (!found) throw new Error(`no make ${name}`);
  return found;
}

/** `CODE line: sentence` of each message, hints too. */
export function said(text: string): string[] {
  const { diagnostics, document } = compileText(text);
  return diagnostics.map((one) => {
    const line = document.lines.findLastIndex((candidate) => candidate.start <= one.place.start) + 1;
    return `${one.code} ${line}: ${sentence(one)}`;
  });
}

export const codes = (text: string): string[] => said(text).map((line) => line.split(' ')[0] ?? '');

export const grams = (value: Rational | undefined, places = 1): string =>
  value ? toDecimal(value, places) : 'unknown';

/** Grams in a pot by food name. */
export function potOf(make: Make): Record<string, string> {
  const result: Record<string, string> = {};
  for (const part of make.pot.parts) {
    const mass = { n: part.grams.n, d: part.grams.d };
    const lost = part.waterLost;
    const left = { n: mass.n * lost.d - lost.n * mass.d, d: mass.d * lost.d };
    result[part.food.name] = toDecimal(left, 2);
  }
  return result;
}
