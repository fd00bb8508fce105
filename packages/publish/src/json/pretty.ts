import { jsonDocument } from '../escape.js';

/** Data of a view as JSON, two spaces, a line end at the end: the same text for the same data. */
export function jsonText(data: { readonly format: string; readonly version: number }): string {
  return jsonDocument(data);
}
