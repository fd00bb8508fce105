import type { Span } from '@quern/text';
import { normaliseName } from '@quern/compiler';
import { usualEnding, type RecipeBlock } from '@quern/syntax';
import type { Snapshot } from '../snapshot.js';
import type { Refactoring } from './refactor.js';

/** At a recipe: half of it. At an in line: the recipe without that food, or with what may
 * stand in for it. */
export function addVariant(snapshot: Snapshot, span: Span): readonly Refactoring[] {
  const line = snapshot.lineAt(span.start);
  const { content } = line.parsed;
  const recipe = snapshot.outline.recipes.findLast(({ heading }) => heading.line.number <= line.number);
  if (recipe === undefined) return [];
  if (content.kind === 'block' && content.block === 'recipe') {
    return [variant(snapshot, recipe, 'half', ['times 1/2'], 'Add a variant of half the size')];
  }
  if (content.kind !== 'in' || content.amount.kind === 'share' || snapshot.blockAt(line.number)?.block === 'course')
    return [];
  const name = content.name.text;
  const item = snapshot.itemAt(line.number)?.item;
  const others = item?.kind === 'in' ? item.alternatives.map(({ content: or }) => or.name.text) : [];
  return [
    ...others.map((other) =>
      variant(snapshot, recipe, other, [`swap ${name} for ${other}`], `Add a variant with ${other}`),
    ),
    variant(snapshot, recipe, `without ${name}`, [`drop ${name}`], `Add a variant without ${name}`),
  ];
}

function variant(
  snapshot: Snapshot,
  recipe: RecipeBlock,
  label: string,
  edits: readonly string[],
  title: string,
): Refactoring {
  const { lines } = snapshot.document;
  const ending = usualEnding(lines);
  const taken = new Set(recipe.variants.map(({ heading }) => normaliseName(heading.content.name?.text ?? '')));
  let name = label;
  for (let number = 2; taken.has(normaliseName(name)); number++) name = `${label} ${number}`;
  const last = lines[lastLine(snapshot, recipe)] ?? recipe.heading.line;
  const end = last.start + last.text.length;
  const text = ['', '', `variant ${name}`, ...edits.map((edit) => `  ${edit}`)].join(ending);
  return { title, kind: 'rewrite', edits: [{ file: snapshot.path, edits: [{ span: { start: end, end }, text }] }] };
}

/** The last line of a recipe with its makes and variants that is not empty. */
function lastLine(snapshot: Snapshot, recipe: RecipeBlock): number {
  const { lines } = snapshot.document;
  let block = recipe.heading.line.number;
  let last = block;
  for (let number = block + 1; number < lines.length; number++) {
    const { content } = lines[number]?.parsed ?? {};
    if (content?.kind === 'block') {
      if (content.block === 'recipe') break;
      block = number;
    }
    const own = lines[block]?.parsed.content;
    const belongs = own?.kind === 'block' && ['recipe', 'make', 'variant'].includes(own.block);
    if (belongs && content?.kind !== 'blank' && content?.kind !== 'comment') last = number;
  }
  return last;
}
