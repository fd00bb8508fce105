import { contains, shift, type Span } from '@quern/text';
import { findAll, type Found } from '@quern/compiler';
import type { BodyItem, Line, MakeBlock, Prose } from '@quern/syntax';
import type { Meaning } from './names.js';
import type { Snapshot } from './snapshot.js';

/*
 * Names spoken of in sentences. Nothing is marked there, so they are found: a make's own in lines and saved names first,
 * then what is inside the products it drew (NOTATION 4.2). A miss does no harm.
 */

export interface Mention {
  readonly span: Span;
  readonly text: string;
  readonly line: number;
  readonly meaning: Meaning;
  readonly how: Found['how'];
}

/** The sentences of an item of a make, each with its line. */
function sentencesOf(item: BodyItem): readonly { readonly line: Line; readonly prose: Prose }[] {
  if (item.kind !== 'step') return [];
  return [item.main, ...item.more, ...item.every].map(({ line, content }) => ({ line, prose: content.prose }));
}

/** The make of the outline that a line stands in. */
export function makeBlockAt(snapshot: Snapshot, line: number): MakeBlock | undefined {
  let found: MakeBlock | undefined;
  let from = -1;
  for (const recipe of snapshot.outline.recipes) {
    if (recipe.heading.line.number > line) break;
    for (const make of [...recipe.makes, ...recipe.variants.flatMap((variant) => variant.makes)]) {
      const number = (make.heading?.line ?? make.unnamed ?? recipe.heading.line).number;
      if (number <= line && number > from) {
        found = make;
        from = number;
      }
    }
  }
  return found;
}

/** What the sentences of a make may speak of: its own lines' names, then those of the makes it draws. */
export function spokenOf(snapshot: Snapshot, make: MakeBlock): readonly Meaning[] {
  const seen = new Map<string, Meaning>();
  for (const item of make.items) {
    const lines = item.kind === 'in' ? [item.main, ...item.alternatives] : [item.main];
    for (const { line } of lines) {
      for (const { meaning, text } of snapshot.namesOn(line.number)) {
        if (isNameable(meaning) && !seen.has(meaning.key)) seen.set(meaning.key, { ...meaning, name: text });
      }
    }
  }
  return [...seen.values()];
}

const isNameable = ({ kind }: Meaning): boolean => !['reserved', 'file', 'class', 'kitchen', 'menu'].includes(kind);

/** Every mention in the sentences of a make, in the order of the text; of two that overlap the longer one. */
export function mentionsIn(snapshot: Snapshot, make: MakeBlock): readonly Mention[] {
  const names = spokenOf(snapshot, make);
  const found: Mention[] = [];
  for (const item of make.items) {
    for (const { line, prose } of sentencesOf(item)) found.push(...mentionsInSentence(line, prose, names));
  }
  return found;
}

function mentionsInSentence(line: Line, prose: Prose, names: readonly Meaning[]): readonly Mention[] {
  const found: Mention[] = [];
  for (const meaning of names) {
    for (const { start, end, how } of findAll(prose.text, meaning.name)) {
      const span = shift({ start, end }, line.start + prose.span.start);
      found.push({ span, text: prose.text.slice(start, end), line: line.number, meaning, how });
    }
  }
  found.sort((a, b) => a.span.start - b.span.start || b.span.end - a.span.end || rank(a.how) - rank(b.how));
  // A share in brackets names its thing itself, so that is a name and no mention.
  const named = prose.brackets.flatMap(({ of }) => (of ? [shift(of.span, line.start)] : []));
  let end = 0;
  return found.filter(({ span }) => {
    if (span.start < end || named.some((one) => span.start < one.end && one.start < span.end)) return false;
    end = span.end;
    return true;
  });
}

const rank = (how: Found['how']): number => (how === 'name' ? 0 : how === 'last' ? 1 : 2);

/** The name spoken of at a place in a sentence. */
export function mentionAt(snapshot: Snapshot, offset: number): Mention | undefined {
  const line = snapshot.lineAt(offset);
  const { content } = line.parsed;
  if (content.kind !== 'step' && content.kind !== 'more' && content.kind !== 'every') return undefined;
  if (!contains(content.prose.span, offset - line.start)) return undefined;
  const make = makeBlockAt(snapshot, line.number);
  if (make === undefined) return undefined;
  return mentionsInSentence(line, content.prose, spokenOf(snapshot, make)).find(({ span }) => contains(span, offset));
}

/** The mentions of one meaning in the sentences of a recipe; only those the finder is sure of unless `all`. */
export function mentionsOf(snapshot: Snapshot, meaning: Meaning, recipe: number, all = false): readonly Mention[] {
  const block = snapshot.outline.recipes.find(({ heading }) => heading.line.number === recipe);
  if (block === undefined) return [];
  const makes = [...block.makes, ...block.variants.flatMap((variant) => variant.makes)];
  return makes
    .flatMap((make) => mentionsIn(snapshot, make))
    .filter((mention) => mention.meaning.key === meaning.key && (all || mention.how !== 'word'));
}
