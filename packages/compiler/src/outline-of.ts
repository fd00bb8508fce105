import { outline, type Document, type Outline } from '@quern/syntax';

const outlines = new WeakMap<Document, Outline>();

/** The blocks of a document, read once for the compiler and for whoever asks about it later. */
export function outlineOf(document: Document): Outline {
  const known = outlines.get(document);
  if (known !== undefined) return known;
  const made = outline(document);
  outlines.set(document, made);
  return made;
}
