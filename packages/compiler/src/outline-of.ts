import { outline, type Document, type Outline } from '@quern/syntax';

/** The blocks of a document, read once for the compiler and for whoever asks about it later. */
export function outlineOf(document: Document): Outline {
  return document.once(outline);
}
