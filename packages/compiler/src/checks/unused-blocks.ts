import { diagnose, nearest, type Diagnostic } from '@quern/text';
import type { BodyItem, Outline } from '@quern/syntax';
import { normaliseName, quoted } from '../names.js';
import { placeOf } from '../places.js';

/** Every name that a line of the file's recipes and cultures could mean a food or a culture by, normalised. */
export function outlineNames(outline: Outline): ReadonlySet<string> {
  const names = new Set<string>();
  const add = (name: { readonly text: string } | undefined): void => {
    if (name) names.add(normaliseName(name.text));
  };
  const visit = (item: BodyItem): void => {
    if (item.kind === 'in') {
      for (const line of [item.main, ...item.alternatives]) {
        add(line.content.name);
        add(line.content.as);
        add(line.content.on);
      }
    } else if (item.kind === 'out') {
      add(item.main.content.of);
      add(item.main.content.as);
    }
  };
  for (const recipe of outline.recipes) {
    for (const make of [...recipe.makes, ...recipe.variants.flatMap((variant) => variant.makes)])
      make.items.forEach(visit);
    for (const variant of recipe.variants) {
      for (const { content } of variant.facts) {
        if (content.kind === 'swap') add(content.to);
        if (content.kind === 'add') add(content.name);
      }
    }
  }
  for (const block of outline.cultures) {
    for (const { content } of block.facts)
      if (content.kind === 'parts') content.parts.forEach((part) => add(part.name));
  }
  return names;
}

/**
 * N18: a food or culture block that no line of the file uses. A file of blocks without recipes is a larder for others.
 * @param names what the lines name; asked for only when there are blocks.
 */
export function checkUnusedBlocks(
  names: () => ReadonlySet<string>,
  outline: Outline,
  file: string,
  report: (d: Diagnostic) => void,
): void {
  const blocks = [...outline.foods, ...outline.cultures];
  if (outline.recipes.length === 0 || blocks.length === 0) return;
  const used = names();
  for (const block of blocks) {
    const { name, block: word } = block.heading.content;
    if (!name || used.has(normaliseName(name.text))) continue;
    const near = nearest(normaliseName(name.text), used)[0];
    report(
      diagnose('N18', placeOf({ file, line: block.heading.line }, name.span), {
        block: word,
        name: name.text,
        near: near ? `did you mean ${quoted(near)}? If not, ` : '',
      }),
    );
  }
}
