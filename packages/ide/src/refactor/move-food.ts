import type { Span } from '@quern/text';
import { resolvePath, outlineOf } from '@quern/compiler';
import { usualEnding } from '@quern/syntax';
import type { FileEdits } from '../edits.js';
import type { Snapshot } from '../snapshot.js';
import type { Refactoring } from './refactor.js';

/** The file of a folder in which its foods stand together. */
const FOODS_FILE = 'foods.quern';

/** Moves a food block into the foods file of the folder and uses it from there. */
export function moveFood(snapshot: Snapshot, span: Span): readonly Refactoring[] {
  const line = snapshot.lineAt(span.start);
  const block = snapshot.outline.foods.find(({ heading }) => heading.line.number === line.number);
  const name = block?.heading.content.name?.text;
  const target = resolvePath(snapshot.path, FOODS_FILE);
  if (block === undefined || name === undefined || target === undefined || target === snapshot.path) return [];
  const { lines } = snapshot.document;
  const ending = usualEnding(lines);
  const last = [block.heading, ...block.facts].map((one) => one.line.number).reduce((a, b) => Math.max(a, b));
  const text = lines
    .slice(line.number, last + 1)
    .map((one) => one.text)
    .join(ending);
  const after = lines[last];
  if (after === undefined) return [];
  // The empty line below the block goes with it; at the end of the file the one above.
  const below = lines[last + 1];
  const cutEnd =
    below?.text.trim() === ''
      ? below.start + below.text.length + below.ending.length
      : after.start + after.text.length + after.ending.length;
  const above = lines[line.number - 1];
  const isLast = cutEnd === snapshot.text.length;
  const cutStart = isLast && above?.text.trim() === '' ? above.start : line.start;
  const edits: FileEdits[] = [
    {
      file: snapshot.path,
      edits: [useLine(snapshot, name, ending), { span: { start: cutStart, end: cutEnd }, text: '' }],
    },
    inFoodsFile(snapshot, target, text, ending),
  ];
  return [{ title: `Move ${name} to ${FOODS_FILE}`, kind: 'move', edits }];
}

/** `use NAME from foods.quern` at the head of the file, under the `use` lines that stand there. */
function useLine(snapshot: Snapshot, name: string, ending: string): { span: Span; text: string } {
  const last = snapshot.outline.head.at(-1)?.line;
  const use = `use ${name} from ${FOODS_FILE}`;
  if (last !== undefined) {
    const end = last.start + last.text.length;
    return { span: { start: end, end }, text: ending + use };
  }
  const start = snapshot.document.byteOrderMark ? 1 : 0;
  return { span: { start, end: start }, text: use + ending + ending };
}

function inFoodsFile(snapshot: Snapshot, target: string, text: string, ending: string): FileEdits {
  const there = snapshot.session.document(target);
  if (there === undefined)
    return { file: target, edits: [{ span: { start: 0, end: 0 }, text: text + ending }], create: true };
  const end = there.text.length;
  const gap =
    outlineOf(there).foods.length > 0 || there.text !== ''
      ? there.text.endsWith(ending)
        ? ending
        : ending + ending
      : '';
  return { file: target, edits: [{ span: { start: end, end }, text: gap + text + ending }] };
}
