import { cardScript, cardStyle } from '@quern/publish';
import type { Element, ElementContent, Root } from 'hast';
import { SKIP, visit } from 'unist-util-visit';
import type { VFile } from 'vfile';

/**
 * A rehype plugin: puts the cards that `remarkQuern` made in their places. Stands after `remark-rehype`, and before a
 * sanitizer if there is one.
 */
export function rehypeQuern(): (tree: Root, file: VFile) => void {
  return (tree, file) => {
    visit(tree, 'element', (node, index, parent) => {
      const number = markOf(node);
      if (number === undefined || index === undefined || !parent) return undefined;
      const cards = file.data.quern?.[number];
      if (!cards) return undefined;
      // The tree of the card has the shape of hast.
      parent.children.splice(index, 1, ...(cards as unknown as Element[]));
      return [SKIP, index + cards.length];
    });
  };
}

/** The number of the card that stands for `<pre><code data-quern>` or for `<p><img data-quern></p>`. */
function markOf(node: Element): number | undefined {
  const [only, ...others] = node.children;
  if (others.length > 0 || only?.type !== 'element') return undefined;
  const isBlock = node.tagName === 'pre' && only.tagName === 'code';
  const isPicture = node.tagName === 'p' && only.tagName === 'img';
  const mark = only.properties['dataQuern'];
  return (isBlock || isPicture) && typeof mark === 'string' && /^\d+$/.test(mark) ? Number(mark) : undefined;
}

export interface RehypeQuernAssetsOptions {
  /** Puts the card's style sheet before the first card; true by default. */
  readonly style?: boolean;
  /** Puts the card's script after the last card; true by default. Without it cards stand as printed. */
  readonly script?: boolean;
}

/**
 * A rehype plugin: gives a page that has cards their style sheet and their script, once. Stands after a sanitizer, which
 * would take both out. A site that links the two as files needs it not.
 */
export function rehypeQuernAssets(options: RehypeQuernAssetsOptions = {}): (tree: Root) => void {
  return (tree) => {
    let found = false;
    visit(tree, 'element', (node) => {
      const { className } = node.properties;
      if (Array.isArray(className) && className.includes('quern-card')) found = true;
    });
    if (!found) return;
    const asset = (tagName: 'style' | 'script', value: string): ElementContent => ({
      type: 'element',
      tagName,
      properties: {},
      children: [{ type: 'text', value }],
    });
    if (options.style !== false) tree.children.unshift(asset('style', cardStyle));
    if (options.script !== false) tree.children.push(asset('script', cardScript));
  };
}
