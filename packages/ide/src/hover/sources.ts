import { escapeMarkdown } from '../figures.js';
import type { Snapshot } from '../snapshot.js';

/** Where figures were seen: `. Sources: …; ….`, or a full stop when no source is named. */
export function sourceList(snapshot: Snapshot, ids: readonly string[]): string {
  const texts = [...new Set(ids)].map((id) =>
    id === 'stated' ? 'stated in this file' : (snapshot.foods.source(id) ?? id),
  );
  return texts.length === 0 ? '.' : `. Sources: ${texts.map(escapeMarkdown).join('; ')}.`;
}
