import { diagnose, singular, type Diagnostic } from '@quern/text';
import type { Formula, InItem } from '../model.js';
import { normaliseName } from '../names.js';
import { placeOf } from '../places.js';

/*
 * What stands after the comma of an in line is a note to the reader. Two things are written there that were meant to
 * count: a measure (Q18), and which part of the thing goes in (Q19).
 */

const MEASURE = /=\s*(?:about\s+)?[\d¼½¾⅐-⅞][^,]*/u;
const PART = /\b(juice|zest|rind|peel)(?:d|ed)?\b/i;
/** Whose juice or zest a cook takes and throws the rest away. */
const CITRUS = new Set(['lemon', 'lime', 'orange', 'grapefruit', 'clementine', 'mandarin', 'tangerine', 'yuzu']);

export function checkNotes(formula: Formula, report: (diagnostic: Diagnostic) => void): void {
  for (const make of formula.makes) for (const item of make.items) if (item.kind === 'in') checkNote(item, report);
}

function checkNote(item: InItem, report: (diagnostic: Diagnostic) => void): void {
  const { note, amount, equals, name } = item.content;
  if (!note) return;
  const measure = MEASURE.exec(note.text);
  if (measure) {
    const start = note.span.start + measure.index;
    const said = measure[0].trim();
    const rest = note.text.replace(measure[0], '').trim().replace(/,$/, '');
    const before = item.ref.line.text.slice(0, note.span.start).trim().replace(/,$/, '');
    report(
      diagnose('Q18', placeOf(item.ref, { start, end: start + said.length }), {
        measure: said,
        line: `${before} ${said}${rest === '' ? '' : `, ${rest}`}`,
      }),
    );
    return;
  }
  if (amount.kind !== 'count' || equals.length > 0) return;
  const one = singular(normaliseName(name.text).split(' ').at(-1) ?? '');
  const part = PART.exec(note.text)?.[1]?.toLowerCase();
  if (part !== undefined && CITRUS.has(one) && !/\band\b|\+|&/.test(note.text))
    report(diagnose('Q19', placeOf(item.ref, note.span), { name: name.text, part, one }));
}
