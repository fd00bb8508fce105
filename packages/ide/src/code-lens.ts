import { shift, type Span } from '@quern/text';
import { divide, printDecimal } from '@quern/quantity';
import type { Formula } from '@quern/compiler';
import { gramsText, minutesText, piecesText, shareText } from './figures.js';
import { readinessOf } from './readiness.js';
import type { Snapshot } from './snapshot.js';

export type LensCommand = 'sheet' | 'clock' | 'label' | 'compare';

/** A few words above a line, and what happens when they are pressed. */
export interface CodeLens {
  readonly span: Span;
  readonly title: string;
  /** Missing where the words only inform. */
  readonly command?: LensCommand;
  /** Title of the recipe, and the name of the variant if it is one. */
  readonly recipe: string;
  readonly variant?: string;
}

const COMMANDS: readonly { readonly command: LensCommand; readonly title: string }[] = [
  { command: 'sheet', title: 'Scale' },
  { command: 'clock', title: 'Clock' },
  { command: 'label', title: 'Label' },
  { command: 'compare', title: 'Compare with last revision' },
];

/** Above each recipe and variant: its figures, and the sheets that can be opened. */
export function codeLenses(snapshot: Snapshot): readonly CodeLens[] {
  const lenses: CodeLens[] = [];
  for (const { heading, variants } of snapshot.outline.recipes) {
    const recipe = heading.content.name?.text ?? '';
    const span = shift(heading.content.name?.span ?? heading.content.wordSpan, heading.line.start);
    lenses.push({ span, title: '', recipe });
    for (const { command, title } of COMMANDS) lenses.push({ span, title, command, recipe });
    for (const variant of variants) {
      const name = variant.heading.content.name;
      if (name === undefined) continue;
      const at = shift(name.span, variant.heading.line.start);
      lenses.push(
        { span: at, title: '', recipe, variant: name.text },
        { span: at, title: 'Scale', command: 'sheet', recipe, variant: name.text },
      );
    }
  }
  return lenses;
}

/** The words of a lens that informs; they are made when it comes into view, because they need the ledger. */
export function resolveLens(snapshot: Snapshot, lens: CodeLens): CodeLens {
  if (lens.command !== undefined) return lens;
  const line = snapshot.lineAt(lens.span.start).number;
  const formula = snapshot.formulaAt(line);
  return { ...lens, title: formula ? summary(formula) : 'not compiled' };
}

function summary(formula: Formula): string {
  const { dishGrams, pieces, servings, flour } = formula;
  const parts = [dishGrams ? gramsText(dishGrams) : 'weight not known'];
  if (pieces && pieces.n > 0n) {
    parts.push(`${piecesText(formula) ?? ''}${dishGrams ? ` of ${gramsText(divide(dishGrams, pieces))}` : ''}`);
  }
  if (servings) parts.push(`${printDecimal(servings, 0)} servings`);
  if (flour) parts.push(`hydration ${shareText(flour.hydration)}`);
  const { dish } = readinessOf(formula);
  if (dish.high.n > 0n) parts.push(minutesText(dish));
  return parts.join(' · ');
}
