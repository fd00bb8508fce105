import type { Diagnostic } from '@quern/text';
import type { Formula } from '@quern/compiler';
import { awakeHours, formulasRequest, label, plainCalendar, planClock } from '@quern/views';
import type { Snapshot } from './snapshot.js';

const known = new WeakMap<Formula, readonly Diagnostic[]>();

/**
 * What only the label and the clock can tell, recipe by recipe, for when nobody types: each turn gives what one recipe
 * adds to what the compiler said. Whoever asks may stop between turns.
 */
export function* slowDiagnostics(snapshot: Snapshot): Generator<readonly Diagnostic[]> {
  const { compiled } = snapshot;
  const told = new Set(compiled.diagnostics.map(placeKey));
  for (const { heading } of snapshot.outline.recipes) {
    for (const formula of compiled.formulasAt(heading.line.number)) {
      const found = known.get(formula) ?? ofFormula(snapshot, formula);
      known.set(formula, found);
      const fresh = found.filter((one) => one.place.file === snapshot.path && !told.has(placeKey(one)));
      for (const one of fresh) told.add(placeKey(one));
      yield fresh;
    }
  }
}

const placeKey = ({ code, place }: Diagnostic): string => `${code} ${place.start} ${place.end}`;

function ofFormula({ compiled }: Snapshot, formula: Formula): readonly Diagnostic[] {
  const fromLabel = label(formula, { market: 'none', kitchens: compiled.kitchens }).diagnostics;
  const kitchen = compiled.kitchens[0];
  const request = formula.variant === undefined ? formulasRequest([formula], kitchen) : undefined;
  if (request === undefined) return fromLabel;
  const calendar = plainCalendar(awakeHours(kitchen));
  return [...fromLabel, ...planClock(request, { mode: 'free', calendar }).diagnostics];
}
