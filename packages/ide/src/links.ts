import { shift, type Span } from '@quern/text';
import { resolvePath } from '@quern/compiler';
import type { Snapshot } from './snapshot.js';

export interface DocumentLink {
  readonly span: Span;
  /** A file of the workspace, or an address of the web. */
  readonly target:
    { readonly kind: 'file'; readonly path: string } | { readonly kind: 'web'; readonly address: string };
}

const ADDRESS = /\bhttps?:\/\/[^\s<>"]+[^\s<>".,;:!?)]/g;

/** What can be followed: the file of a `use` line, a photo, and web addresses in facts and remarks. */
export function documentLinks(snapshot: Snapshot): readonly DocumentLink[] {
  const links: DocumentLink[] = [];
  for (const { start, parsed, text } of snapshot.document.lines) {
    const { content } = parsed;
    if (content.kind === 'use') links.push(...fileLink(snapshot, shift(content.path.span, start), content.path.text));
    if (content.kind === 'text-fact' && content.word === 'photo' && !content.words.text.includes('://')) {
      links.push(...fileLink(snapshot, shift(content.words.span, start), content.words.text));
    }
    if ((content.kind === 'text-fact' || content.kind === 'comment') && text.includes('://')) {
      for (const found of text.matchAll(ADDRESS)) {
        const span = shift({ start: found.index, end: found.index + found[0].length }, start);
        links.push({ span, target: { kind: 'web', address: found[0] } });
      }
    }
  }
  return links;
}

function fileLink(snapshot: Snapshot, span: Span, written: string): DocumentLink[] {
  const path = resolvePath(snapshot.path, written);
  return path === undefined ? [] : [{ span, target: { kind: 'file', path } }];
}
