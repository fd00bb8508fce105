/**
 * Random edits over the examples: after each one the state that was kept equals a fresh reading, nothing throws wherever
 * the editor asks, and memory stays flat.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { Session, type Compiled } from '@quern/compiler';
import { createFoodBook } from '@quern/foods';
import * as ide from '@quern/ide';
import { parseDocument } from '@quern/syntax';

const examples = resolve(import.meta.dirname, '..', '..', 'examples');

export interface Soaked {
  readonly edits: number;
  /** What went wrong, with the edit and the text: empty when all is well. */
  readonly failures: readonly string[];
  /** Bytes of live memory after each tenth of the edits. */
  readonly memory: readonly number[];
  /** Characters of all texts together at those times: memory is held against them. */
  readonly characters: readonly number[];
}

/** Numbers that look random and are the same for the same seed (32-bit xorshift). */
function numbersFrom(seed: number): (below: number) => number {
  let state = (seed * 2_654_435_761 + 1) >>> 0 || 1;
  return (below) => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    state >>>= 0;
    return state % Math.max(1, below);
  };
}

const PIECES = [
  ...['a', 'e', ' ', '\n', '\r\n', '1', ',', ':', '=', '%', '[', ']', '-', '–', '½', '\ufeff', '\t', '//', '🥖'],
  ...['make ', 'recipe ', 'food ', 'culture ', 'variant ', 'kitchen ', 'menu ', 'all ', 'half of ', 'rest of ', '2 % '],
  ...[
    ' on flour',
    ' as water',
    ' at 24 C',
    'hands 5 min: ',
    'wait 1-2 h: ',
    'lose 10 % ',
    'save 20 g as ',
    'use x from ',
  ],
  ...[
    '  100 g water\n',
    '  2 eggs = 100 g\n',
    'times 1/2\n',
    'swap water for milk\n',
    '  check 100 g\n',
    'free of milk\n',
  ],
];

/** One random edit of a text. */
function edited(text: string, next: (below: number) => number): string {
  const lines = text.split('\n');
  const at = next(text.length + 1);
  const pick = (): string => PIECES[next(PIECES.length)] ?? '';
  switch (next(8)) {
    case 0:
      return text.slice(0, at) + text.slice(at + 1 + next(3));
    case 1:
      return text.slice(0, at) + text.slice(at + next(40));
    case 2:
      lines.splice(next(lines.length), 1);
      return lines.join('\n');
    case 3:
      lines.splice(next(lines.length), 0, lines[next(lines.length)] ?? '');
      return lines.join('\n');
    case 4: {
      const [from, to] = [next(lines.length), next(lines.length)];
      [lines[from], lines[to]] = [lines[to] ?? '', lines[from] ?? ''];
      return lines.join('\n');
    }
    default:
      return text.slice(0, at) + pick() + text.slice(at);
  }
}

/** A value as text, large whole numbers included. */
const told = (value: unknown): string =>
  JSON.stringify(value, (_, part: unknown) => (typeof part === 'bigint' ? `${part}n` : part));

/** Everything that a compilation says, without the identity of anything. */
function said(compiled: Compiled | undefined): string {
  return told(
    compiled && [
      compiled.diagnostics,
      compiled.formulas.map(({ id, dishGrams, makes, flour, broken }) => [
        id,
        dishGrams,
        flour?.hydration,
        broken,
        makes.map(({ name, ref, items }) => [name, ref.line.number, items.map((item) => item.ref.line.start)]),
      ]),
    ],
  );
}

/** Asks everything that an editor asks, somewhere. */
function askAll(snapshot: ide.Snapshot, next: (below: number) => number): string {
  const offset = next(snapshot.text.length + 1);
  const span = { start: offset, end: Math.min(snapshot.text.length, offset + next(200)) };
  ide.hover(snapshot, offset);
  ide.completion(snapshot, offset);
  ide.signatureHelp(snapshot, offset);
  ide.codeActions(snapshot, span);
  ide.fixAll(snapshot);
  ide.references(snapshot, offset);
  ide.rename(snapshot, offset, 'another name');
  ide.foldingRanges(snapshot);
  ide.selectionRanges(snapshot, offset);
  ide.documentLinks(snapshot);
  ide.formatRange(snapshot, span);
  ide.codeLenses(snapshot).map((lens) => ide.resolveLens(snapshot, lens));
  const item = ide.prepareHierarchy(snapshot, offset);
  if (item !== undefined) ide.incoming(snapshot, item);
  return told([
    ide.semanticTokens(snapshot),
    ide.inlayHints(snapshot, 0, Infinity, ide.ALL_HINTS),
    ide.documentSymbols(snapshot),
  ]);
}

/** @param say is told how far it is. */
export function soak(edits: number, seed: number, say: (line: string) => void = () => undefined): Soaked {
  setFlagsFromString('--expose-gc');
  const collect = runInNewContext('gc') as () => void;
  const foods = createFoodBook();
  const originals = new Map(
    readdirSync(examples)
      .filter((name) => name.endsWith('.quern'))
      .map((name) => [name, readFileSync(join(examples, name), 'utf8')]),
  );
  const names = [...originals.keys()];
  const texts = new Map(originals);
  const host = { foods, read: (path: string) => texts.get(path) };
  const session = ide.editorSession(host);
  const next = numbersFrom(seed);
  const failures: string[] = [];
  const memory: number[] = [];
  const characters: number[] = [];
  for (let edit = 1; edit <= edits && failures.length < 5; edit++) {
    const name = names[next(names.length)] ?? '';
    // Now and then a file is as it was, so that edits do not wear everything down to nothing.
    const before = texts.get(name) ?? '';
    const text =
      next(40) === 0 || before.length < 40 || before.length > 20_000
        ? (originals.get(name) ?? '')
        : edited(before, next);
    texts.set(name, text);
    session.set(name, text);
    try {
      const snapshot = ide.snapshotOf(session, name, names);
      const fresh = new Session(host);
      if (told(snapshot?.document) !== told(parseDocument(name, text))) throw new Error('another document');
      if (said(session.compile(name)) !== said(fresh.compile(name))) throw new Error('another compilation');
      if (snapshot && edit % 10 === 0) {
        const freshSnapshot = ide.snapshotOf(fresh, name, names);
        const seen = askAll(snapshot, next);
        if (freshSnapshot && seen !== askAll(freshSnapshot, () => 0)) throw new Error('other answers');
        if (session.text(name) !== text) throw new Error('asking has changed the text');
      }
    } catch (error) {
      failures.push(
        `edit ${edit} of seed ${seed} in ${name}: ${error instanceof Error ? error.stack : String(error)}\n${text}`,
      );
    }
    if (edit % Math.max(1, Math.floor(edits / 10)) === 0) {
      collect();
      memory.push(process.memoryUsage().heapUsed);
      characters.push([...texts.values()].reduce((sum, text) => sum + text.length, 0));
      say(
        `${edit} edits: ${((memory.at(-1) ?? 0) / 1e6).toFixed(1)} MB live, ${Math.round((characters.at(-1) ?? 0) / 1000)} thousand characters of text`,
      );
    }
  }
  return { edits, failures, memory, characters };
}
