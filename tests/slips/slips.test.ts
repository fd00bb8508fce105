/**
 * Slips of the hand: one letter or figure wrong, missing, added, or two swapped, anywhere in the lines of the examples.
 * A slip that changes what the file means must be told. What cannot be known is counted and its rate is stated: a wrong
 * figure with nothing to check it against, or a word that is another word of the notation or of the food table.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { Session, type Compiled } from '@quern/compiler';
import { createFoodBook } from '@quern/foods';
import { LineCache, parseLine } from '@quern/syntax';
import { sentence } from '@quern/text';
import { meaningOf } from './meaning.js';

const folder = join(import.meta.dirname, '..', '..', 'examples');
const files = new Map(
  readdirSync(folder)
    .filter((name) => name.endsWith('.quern'))
    .map((name) => [name, readFileSync(join(folder, name), 'utf8')]),
);
const foods = createFoodBook();
const lines = new LineCache();

function compileWith(name: string, text: string): Compiled {
  const session = new Session({ read: (path) => (path === name ? text : files.get(path)), foods }, { lines });
  const compiled = session.compile(name);
  if (!compiled) throw new Error(`no file ${name}`);
  return compiled;
}

/** A small generator with a fixed start, so that a run can be repeated. */
function randomFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

const LETTERS = 'abcdefghijklmnopqrstuvwxyz';
const FIGURES = '0123456789';

interface Slip {
  readonly text: string;
  readonly line: number;
  /** The character it falls on: a figure, a letter, or another. */
  readonly on: 'figure' | 'letter' | 'mark';
  readonly before: string;
  readonly after: string;
}

function slip(text: string, random: () => number): Slip | undefined {
  const at = Math.floor(random() * text.length);
  const character = text.charAt(at);
  if (/\s/.test(character) && character !== ' ') return undefined;
  // A dash, a point or a space beside a figure belongs to the figure.
  const inFigure = /\d/.test(character) || (/[-./: ]/.test(character) && /\d/.test(text.charAt(at + 1)));
  const on = inFigure ? 'figure' : /\p{L}/u.test(character) ? 'letter' : 'mark';
  const pool = on === 'figure' ? FIGURES : LETTERS;
  const other = pool.charAt(Math.floor(random() * pool.length));
  const way = Math.floor(random() * 4);
  const next = text.charAt(at + 1);
  const changed =
    way === 0
      ? text.slice(0, at) + other + text.slice(at + 1)
      : way === 1
        ? text.slice(0, at) + text.slice(at + 1)
        : way === 2
          ? text.slice(0, at) + other + text.slice(at)
          : /\n/.test(next)
            ? text
            : text.slice(0, at) + next + character + text.slice(at + 2);
  if (changed === text) return undefined;
  const line = text.slice(0, at).split('\n').length - 1;
  return { text: changed, line, on, before: text.split('\n')[line] ?? '', after: changed.split('\n')[line] ?? '' };
}

/** Free words of a line: everything after a colon, notes after a comma, and facts that are words. */
function inFreeWords(before: string, after: string): boolean {
  let at = 0;
  while (at < before.length && before[at] === after[at]) at++;
  if (
    /^\s*(?:by|source|photo|note|tip|warning|serve with|keywords|\/\/|baked|recipe|menu|kitchen|course)\b|^\s*\/\//.test(
      before,
    )
  )
    return at > before.search(/\S+/) + (/^\s*(\S+)/.exec(before)?.[1]?.length ?? 0);
  const colon = before.search(/:(?!\d\d\b)/);
  if (colon >= 0 && at > colon) return true;
  const comma = before.search(/,(?!\d)/);
  return (
    comma >= 0 &&
    at > comma &&
    /^\s*(?:\d|about|all|half|rest|enough|a little|optional|or|save|keeps|best)/.test(before)
  );
}

/** How many slips, and where the row of random ones begins: more of them, or others, by hand. */
const RUNS = Number(process.env['QUERN_SLIPS'] ?? 1500);
const SEED = Number(process.env['QUERN_SLIPS_SEED'] ?? 20261125);

test(`of ${RUNS} slips in the examples none that could be known passes in silence`, { timeout: 3_600_000 }, () => {
  const random = randomFrom(SEED);
  const names = [...files.keys()];
  const originals = new Map(names.map((name) => [name, compileWith(name, files.get(name) ?? '')]));
  const meanings = new Map([...originals].map(([name, compiled]) => [name, meaningOf(compiled)]));
  const told = new Map(
    [...originals].map(([name, compiled]) => [
      name,
      new Set(compiled.diagnostics.map((one) => `${one.code} ${sentence(one)}`)),
    ]),
  );
  let tried = 0;
  let changed = 0;
  const silent: (Slip & { name: string })[] = [];
  while (tried < RUNS) {
    const name = names[Math.floor(random() * names.length)] ?? '';
    const made = slip(files.get(name) ?? '', random);
    if (!made || inFreeWords(made.before, made.after)) continue;
    tried++;
    const compiled = compileWith(name, made.text);
    if (meaningOf(compiled) === meanings.get(name)) continue;
    changed++;
    const before = told.get(name);
    if (compiled.diagnostics.every((one) => before?.has(`${one.code} ${sentence(one)}`)))
      silent.push({ ...made, name });
  }
  const figures = silent.filter((one) => one.on === 'figure');
  const words = silent.filter((one) => one.on !== 'figure');
  const percent = (count: number): string => `${((count * 100) / changed).toFixed(1)} %`;
  console.log(
    `${tried} slips, ${changed} of them change the meaning: ${percent(changed - silent.length)} are told, ${percent(figures.length)} are figures with nothing to check them, ${percent(words.length)} make another word or mark that is right by itself`,
  );
  if (process.env['QUERN_SLIPS_SHOW'])
    for (const one of silent.filter((slipped) => !isAnotherRightWord(slipped)))
      console.log(`${one.on}  ${one.name}:${one.line + 1}  ${one.before}   =>   ${one.after}`);
  expect(
    words.filter((one) => !isAnotherRightWord(one)).map((one) => `${one.name}: ${one.before} => ${one.after}`),
  ).toEqual([]);
});

/**
 * Whether a slip gave something that is right by itself, which nobody could know: a name that the writer is free to
 * choose (the dish's make, a variant, a thing saved, a block heading), or another food of the table.
 */
function isAnotherRightWord(one: Slip): boolean {
  if (/^\s*(?:make|variant|food|culture)\b/.test(one.before) && /^\s*(?:make|variant|food|culture)\b/.test(one.after))
    return true;
  if (/^\s*save\b.*\bas\b/.test(one.before)) return true;
  const before = nameIn(one.before);
  const after = nameIn(one.after);
  return before !== after && after !== undefined && foods.find(after).kind === 'found';
}

/** The food that an in line or a swap names. */
function nameIn(line: string): string | undefined {
  const content = parseLine(line).content;
  if (content.kind === 'in' || content.kind === 'or') return content.name.text;
  return content.kind === 'swap' ? content.to.text : content.kind === 'add' ? content.name.text : undefined;
}
