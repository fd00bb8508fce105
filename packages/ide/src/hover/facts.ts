import { divide, printDecimal } from '@quern/quantity';
import { factWord, type FactLine, type Line } from '@quern/syntax';
import { gramsText, shareText } from '../figures.js';
import type { Snapshot } from '../snapshot.js';
import type { Hover } from './hover.js';

/** Facts whose figures the ledger can be held against: what they come to. */
export function hoverFact(snapshot: Snapshot, line: Line, at: number): Hover | undefined {
  const { content } = line.parsed;
  if (content.kind !== 'gives' && content.kind !== 'serves' && content.kind !== 'times') return undefined;
  const word = factWord(content);
  const from = content.indent + word.length;
  if (at <= from) return undefined;
  const lines = figuresOf(snapshot, line, content);
  if (lines.length === 0) return undefined;
  return { span: { start: from + 1, end: line.text.trimEnd().length }, contents: lines.join('\n\n') };
}

function figuresOf(snapshot: Snapshot, line: Line, content: FactLine): string[] {
  const formula = snapshot.formulaAt(line.number);
  if (formula === undefined) return [];
  const { dishGrams, pieces, servings } = formula;
  if (dishGrams === undefined) return ['The weight of the dish is not known.'];
  if (content.kind === 'times')
    return [`${printDecimal(content.factor, 3)} times the recipe: the dish weighs ${gramsText(dishGrams)}.`];
  const whole = `The ledger ends with **${gramsText(dishGrams)}**`;
  const count = content.kind === 'gives' ? pieces : servings;
  const each = count && count.n > 0n ? `, ${gramsText(divide(dishGrams, count))} each` : '';
  const raw = formula.flour
    ? [`Hydration ${shareText(formula.flour.hydration)} of ${gramsText(formula.flour.grams)} flour.`]
    : [];
  return [`${whole}${each}.`, ...(content.kind === 'gives' ? raw : [])];
}
