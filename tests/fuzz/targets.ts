/** What must hold of any text at all. Each target throws when it does not. */
import { compile } from '@quern/compiler';
import { createFoodBook } from '@quern/foods';
import { parseDocument, type Line } from '@quern/syntax';
import { memoryHost } from '@quern/testkit';

export type Target = (text: string) => void;

const foods = createFoodBook();

/** Every character of a text is in its lines, once and in order. */
function parse(text: string): void {
  const document = parseDocument('main.quern', text);
  const mark = document.byteOrderMark ? '\uFEFF' : '';
  const whole = mark + document.lines.map((line: Line) => line.text + line.ending).join('');
  if (whole !== text) throw new Error('the lines are not the text');
  for (const line of document.lines) {
    if (text.slice(line.start, line.start + line.text.length) !== line.text)
      throw new Error(`line ${line.number} is not where it says`);
    for (const { place } of line.parsed.messages) inside(place, line.text.length);
  }
}

/** A text compiles to the same thing each time, and whatever is said of it has a place in it. */
function compileTwice(text: string): void {
  const files = [{ path: 'main.quern', text }];
  const first = compile('main.quern', text, memoryHost(files, foods));
  const second = compile('main.quern', text, memoryHost(files, foods));
  for (const { place } of first.diagnostics) if (place.file === 'main.quern') inside(place, text.length);
  const codes = (compiled: typeof first) =>
    compiled.diagnostics.map(({ code, place }) => `${code}@${place.start}`).join();
  if (codes(first) !== codes(second)) throw new Error('two compilations say different things');
}

function inside(place: { readonly start: number; readonly end: number }, length: number): void {
  if (!(0 <= place.start && place.start <= place.end && place.end <= length)) {
    throw new Error(`a place outside the text: ${place.start}-${place.end} of ${length}`);
  }
}

export const targets = { parse, compile: compileTwice } satisfies Readonly<Record<string, Target>>;

/** Longest time a text of a few kilobytes may take, with room for a slow and busy machine. */
export const mostMilliseconds = 5000;
