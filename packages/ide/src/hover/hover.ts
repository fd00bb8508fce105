import { shift, type Span } from '@quern/text';
import { entryOf, type Line } from '@quern/syntax';
import { mentionAt } from '../mentions.js';
import { openingWord } from '../opening.js';
import type { Snapshot } from '../snapshot.js';
import { hoverAmount } from './amounts.js';
import { hoverFact } from './facts.js';
import { hoverName } from './names.js';
import { hoverHeat, hoverTime } from './steps.js';

/** What is said about a place, in Markdown. */
export interface Hover {
  readonly span: Span;
  readonly contents: string;
}

/** What hangs under the cursor: the meaning of a name, an amount, a time, a temperature, or of the line's first word. */
export function hover(snapshot: Snapshot, offset: number): Hover | undefined {
  const line = snapshot.lineAt(offset);
  const name = snapshot.nameAt(offset);
  if (name !== undefined) {
    const contents = hoverName(snapshot, name.meaning, name);
    if (contents !== undefined) return { span: name.span, contents };
  }
  const at = offset - line.start;
  const found = hoverPart(snapshot, line, at);
  if (found !== undefined) return { span: shift(found.span, line.start), contents: found.contents };
  const mention = mentionAt(snapshot, offset);
  if (mention !== undefined) {
    const contents = hoverName(snapshot, mention.meaning, mention);
    if (contents !== undefined) return { span: mention.span, contents };
  }
  const opening = openingHover(line, at);
  return opening && { span: shift(opening.span, line.start), contents: opening.contents };
}

/** A part of a line, with spans counted from its start. */
function hoverPart(snapshot: Snapshot, line: Line, at: number): Hover | undefined {
  const { content } = line.parsed;
  return (
    hoverAmount(snapshot, line, at) ??
    (content.kind === 'step' || content.kind === 'every' ? hoverTime(snapshot, line, at) : undefined) ??
    (content.kind === 'step' ? hoverHeat(content, at) : undefined) ??
    hoverFact(snapshot, line, at)
  );
}

/** The word that opens the line: how the line is written and what it says. */
function openingHover(line: Line, at: number): Hover | undefined {
  const { content } = line.parsed;
  const word = openingWord(content);
  const entry = word === undefined ? undefined : entryOf(word);
  if (entry === undefined || at < content.indent || at > content.indent + entry.word.length) return undefined;
  return {
    span: { start: content.indent, end: content.indent + entry.word.length },
    contents: `\`${entry.form}\`\n\n**${entry.word}**: ${entry.says}.\n\nFor instance \`${entry.example}\``,
  };
}
