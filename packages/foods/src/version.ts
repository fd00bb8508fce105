/**
 * A fingerprint of the table, so that what was computed with one table is never taken for another's. FNV-1a on 32 bits,
 * twice with different beginnings. It tells editions apart; it is no defence against forgery.
 */
export function versionOf(text: string): string {
  let first = 0x811c9dc5;
  let second = 0x1b873593;
  for (let index = 0; index < text.length; index++) {
    const unit = text.charCodeAt(index);
    first = Math.imul(first ^ unit, 0x01000193);
    second = Math.imul(second ^ unit, 0x01000193);
  }
  return [first, second].map((part) => (part >>> 0).toString(16).padStart(8, '0')).join('');
}
