import type { Span, TextEdit } from '@quern/text';
import { normaliseName } from '@quern/compiler';
import { parseLine } from '@quern/syntax';
import type { FileEdits } from './edits.js';
import { mentionsOf } from './mentions.js';
import type { Meaning, NameKind } from './names.js';
import { meaningAt } from './references.js';
import { snapshotOf, type Snapshot } from './snapshot.js';

export type RenameAnswer =
  | { readonly kind: 'edits'; readonly edits: readonly FileEdits[] }
  /** Why it cannot be renamed, as a sentence. */
  | { readonly kind: 'refused'; readonly why: string };

const RENAMED: ReadonlySet<NameKind> = new Set([
  'make',
  'saved',
  'recipe',
  'variant',
  'food',
  'culture',
  'alias',
  'table-food',
  'unknown-food',
]);

/** The name to be changed at an offset and what it is now; undefined where nothing can be renamed. */
export function prepareRename(
  snapshot: Snapshot,
  offset: number,
): { readonly span: Span; readonly name: string } | undefined {
  const at = meaningAt(snapshot, offset);
  if (at === undefined || !RENAMED.has(at.meaning.kind)) return undefined;
  return { span: at.span, name: snapshot.text.slice(at.span.start, at.span.end) };
}

/**
 * Gives a make, a saved thing, a food, a culture, a variant or a recipe another name wherever it is named: on lines, in
 * the files that use it, and in sentences where the finder is sure. A food of the table is renamed in this file, which
 * makes its lines name another food.
 */
export function rename(snapshot: Snapshot, offset: number, newName: string): RenameAnswer {
  const turns = renameByFile(snapshot, offset, newName);
  for (;;) {
    const turn = turns.next();
    if (turn.done === true) return turn.value;
  }
}

/** The same, a file a turn, so that whoever asks may stop between files. */
export function* renameByFile(snapshot: Snapshot, offset: number, newName: string): Generator<undefined, RenameAnswer> {
  const at = meaningAt(snapshot, offset);
  if (at === undefined || !RENAMED.has(at.meaning.kind))
    return { kind: 'refused', why: 'Nothing that can be renamed stands here.' };
  const name = newName.trim().replace(/\s+/g, ' ');
  const refusal = refuse(snapshot, at.meaning, name);
  if (refusal !== undefined) return { kind: 'refused', why: refusal };
  const everywhere = at.meaning.file !== undefined;
  const files = everywhere ? [...new Set([snapshot.path, ...snapshot.files])] : [snapshot.path];
  const edits: FileEdits[] = [];
  for (const file of files) {
    const here = file === snapshot.path ? snapshot : snapshotOf(snapshot.session, file, files);
    const changes = here ? renamesIn(here, at.meaning, name) : [];
    if (changes.length > 0) edits.push({ file, edits: changes });
    yield;
  }
  return { kind: 'edits', edits };
}

function renamesIn(snapshot: Snapshot, meaning: Meaning, name: string): TextEdit[] {
  const named = snapshot.names.filter((one) => one.meaning.key === meaning.key);
  const edits: TextEdit[] = [];
  const recipes = new Set<number>();
  for (const { span, recipe, line } of named) {
    if (recipe !== undefined) recipes.add(recipe);
    const { content } = snapshot.line(line)?.parsed ?? {};
    // In `walnut halves as walnuts` the first name is the writer's own words for it.
    const ownWords =
      (content?.kind === 'in' || content?.kind === 'or') &&
      content.as !== undefined &&
      span.start === (snapshot.line(line)?.start ?? 0) + content.name.span.start;
    if (!ownWords) edits.push({ span, text: name });
  }
  const last = name.split(' ').at(-1) ?? name;
  for (const recipe of recipes) {
    for (const { span, text, how } of mentionsOf(snapshot, meaning, recipe)) {
      edits.push({ span, text: likeCase(text, how === 'name' ? name : last) });
    }
  }
  return edits;
}

/** A name in a sentence in the case in which it is spoken there: a title may be spoken in small letters. */
function likeCase(written: string, name: string): string {
  const first = written.charAt(0);
  const capital = first !== first.toLowerCase();
  const initial = name.charAt(0);
  return (capital ? initial.toUpperCase() : initial.toLowerCase()) + name.slice(1);
}

function refuse(snapshot: Snapshot, meaning: Meaning, name: string): string | undefined {
  if (name === '') return 'A name needs at least one letter.';
  // The name is read where it has to be understood, by the parser itself.
  const { content, messages } = parseLine(meaning.kind === 'recipe' ? `recipe ${name}` : `make ${name}`);
  if (
    content.kind !== 'block' ||
    content.equal !== undefined ||
    content.name?.text !== name ||
    messages.some(({ severity }) => severity === 'error')
  ) {
    return `“${name}” cannot be a name: at most six words, without =, a comma or a full stop.`;
  }
  const id = normaliseName(name);
  if (['all', 'flour', 'liquid', 'nothing'].includes(id)) return `“${name}” has a meaning of its own.`;
  const taken = snapshot.names.find(
    (one) =>
      one.role === 'declared' &&
      one.meaning.kind === meaning.kind &&
      one.meaning.key !== meaning.key &&
      normaliseName(one.text) === id &&
      sameHome(one.meaning, meaning),
  );
  return taken && `“${taken.text}” is the name of something else here.`;
}

/** Whether two things are named in the same recipe (or in the same file, where names are the file's). */
const sameHome = (a: Meaning, b: Meaning): boolean => homeOf(a) === homeOf(b);
const homeOf = ({ key }: Meaning): string => key.replace(/[/#@][^/#@]*$/, '');
