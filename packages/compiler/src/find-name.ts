import { singular } from '@quern/text';
import type { Bracket, Prose } from '@quern/syntax';
import { normaliseName } from './names.js';

/*
 * Finding a food or product by name in a sentence. In prose nothing is marked; a find serves hover, bold type, rename
 * and warnings, never arithmetic.
 */

export interface Found {
  readonly start: number;
  readonly end: number;
  /** `name`: every word of it; `last`: its last word alone; `word`: some other word of it. */
  readonly how: 'name' | 'last' | 'word';
}

interface Word {
  readonly start: number;
  readonly end: number;
  readonly folded: string;
}

const WORD = /[\p{L}\p{M}][\p{L}\p{M}'’-]*/gu;
// Words too common to stand for a food by themselves.
const WEAK = new Set([
  'of',
  'and',
  'the',
  'with',
  'in',
  'a',
  'an',
  'fresh',
  'dry',
  'dried',
  'fine',
  'whole',
  'plain',
  'white',
  'red',
  'black',
  'green',
  'brown',
  'cold',
  'hot',
  'warm',
  'soft',
  'large',
  'small',
  'strong',
  'ground',
  'instant',
]);

const cache = new Map<string, readonly Word[]>();

function wordsOf(text: string): readonly Word[] {
  const known = cache.get(text);
  if (known) return known;
  const words: Word[] = [];
  for (const found of text.matchAll(WORD)) {
    words.push({
      start: found.index,
      end: found.index + found[0].length,
      folded: singular(found[0].normalize('NFC').toLowerCase()),
    });
  }
  if (cache.size > 5_000) cache.clear();
  cache.set(text, words);
  return words;
}

/** The first place in a sentence where a name is spoken of: the whole name, else its last word, else any word of it. */
export function findName(text: string, name: string): Found | undefined {
  return findAll(text, name)[0];
}

/** Every place; only finds of the best kind are given. */
export function findAll(text: string, name: string): readonly Found[] {
  const wanted = normaliseName(name).split(' ').map(singular);
  const words = wordsOf(text);
  const whole = runs(words, wanted, 'name');
  if (whole.length > 0) return whole;
  const last = wanted.at(-1) ?? '';
  if (!WEAK.has(last)) {
    const byLast = runs(words, [last], 'last');
    if (byLast.length > 0) return byLast;
  }
  return wanted
    .slice(0, -1)
    .filter((word) => !WEAK.has(word))
    .flatMap((word) => runs(words, [word], 'word'));
}

function runs(words: readonly Word[], wanted: readonly string[], how: Found['how']): Found[] {
  const found: Found[] = [];
  for (let at = 0; at + wanted.length <= words.length; at++) {
    if (!wanted.every((word, index) => words[at + index]?.folded === word)) continue;
    found.push({ start: words[at]?.start ?? 0, end: words[at + wanted.length - 1]?.end ?? 0, how });
  }
  return found;
}

/** The sentence with a name changed where the finder is sure: the whole name or its last word. */
export function replaceName(prose: Prose, from: string, to: string): Prose {
  const places = findAll(prose.text, from).filter((place) => place.how !== 'word');
  if (places.length === 0) return prose;
  let text = '';
  let position = 0;
  const shifts: { at: number; by: number }[] = [];
  for (const place of places) {
    const written = prose.text.slice(place.start, place.end);
    const put = matchCase(written, to);
    text += prose.text.slice(position, place.start) + put;
    position = place.end;
    shifts.push({ at: place.end, by: put.length - written.length });
  }
  text += prose.text.slice(position);
  const moved = (offset: number): number =>
    shifts.reduce((sum, shift) => (offset - prose.span.start >= shift.at ? sum + shift.by : sum), offset);
  const brackets: Bracket[] = prose.brackets.map((bracket) => {
    const span = { start: moved(bracket.span.start), end: moved(bracket.span.end) };
    const of =
      bracket.of && normaliseName(bracket.of.text) === normaliseName(from)
        ? { of: { span: bracket.of.span, text: to } }
        : {};
    return {
      ...bracket,
      span,
      text: text.slice(span.start - prose.span.start + 1, span.end - prose.span.start - 1),
      ...of,
    };
  });
  return { span: { start: prose.span.start, end: prose.span.start + text.length }, text, brackets };
}

function matchCase(written: string, to: string): string {
  const first = written.charAt(0);
  return first !== first.toLowerCase() ? to.charAt(0).toUpperCase() + to.slice(1) : to;
}
