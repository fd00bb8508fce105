import { diagnose, nearest, type Diagnostic } from '@quern/text';
import { divide, units, type Rational } from '@quern/quantity';
import type { InLine, MenuBlock } from '@quern/syntax';
import { factorOf, yieldText } from './portions.js';
import type { Formula, LineRef, Menu, MenuDish } from './model.js';
import { normaliseName, quoted } from './names.js';
import { linePlace, placeOf } from './places.js';
import { baseValue, isSpelledCount, pickOf } from './weighing.js';

/** The dishes that a menu can put in, by normalised name; a formula is made when it is asked for. */
export type Dishes = Pick<ReadonlyMap<string, Formula>, 'get' | 'keys'>;

/** A menu: its courses put in dishes, the same ledger one level up. */
export function compileMenu(block: MenuBlock, file: string, dishes: Dishes, report: (d: Diagnostic) => void): Menu {
  const date = block.facts.find((fact) => fact.content.kind === 'date')?.content;
  return {
    name: block.heading.content.name?.text ?? '',
    ref: { file, line: block.heading.line },
    date: date?.kind === 'date' ? date.date : undefined,
    courses: block.courses.map((course) => ({
      ref: { file, line: course.heading.line },
      clock: course.heading.content.clock,
      name: course.heading.content.name?.text ?? '',
      dishes: course.lines.map((line) => dishOf(line.main.content, { file, line: line.main.line }, dishes, report)),
    })),
  };
}

function dishOf(content: InLine, ref: LineRef, dishes: Dishes, report: (d: Diagnostic) => void): MenuDish {
  const id = normaliseName(content.name.text);
  const formula = dishes.get(id);
  if (!formula) {
    const near = nearest(id, dishes.keys())[0];
    report(
      diagnose('U02', placeOf(ref, content.name.span), {
        name: content.name.text,
        near: near ? `did you mean ${quoted(near)}? If not, ` : '',
      }),
    );
    return { ref, formula: undefined, name: content.name.text, factor: undefined };
  }
  const factor = shareDrawn(content, formula);
  if (!factor)
    report(
      diagnose('U01', linePlace(ref), {
        name: content.name.text,
        amount: ref.line.text.slice(content.amount.span.start, content.amount.span.end).replace(/\s+of\s*$/i, ''),
        said: yieldText(formula),
      }),
    );
  return { ref, formula, name: content.name.text, factor };
}

function shareDrawn(content: InLine, formula: Formula): Rational | undefined {
  const { amount } = content;
  switch (amount.kind) {
    case 'portion':
      return factorOf(formula, pickOf(amount.range, 'middle'), amount.of);
    case 'count':
      return factorOf(formula, pickOf(amount.range, 'middle'));
    case 'share':
      return amount.low && amount.high ? pickOf({ low: amount.low, high: amount.high }, 'middle') : undefined;
    case 'measure': {
      if (isSpelledCount(amount.unit.id))
        return factorOf(formula, pickOf(amount.range, 'middle'), units[amount.unit.id].many);
      if (units[amount.unit.id].dimension !== 'mass' || !formula.dishGrams || formula.dishGrams.n <= 0n)
        return undefined;
      return divide(baseValue(amount, formula.facts.cups, 'middle'), formula.dishGrams);
    }
    default:
      return undefined;
  }
}
