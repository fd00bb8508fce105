import { diagnose, singular, type Diagnostic } from '@quern/text';
import { findName } from '../find-name.js';
import type { Formula, InItem, Item, Make, StepItem } from '../model.js';
import { placeOf } from '../places.js';

/*
 * N11: a food that goes in and that no sentence speaks of, where the step that uses it names what stands beside it. Most
 * steps name some things and pass over others ("Mix to a smooth dough"), so this is said only where a step names all
 * but one, speaks of nothing in general, and no later sentence of the make comes back to it.
 */

/** Words by which a sentence may mean whatever stands there. */
const IN_GENERAL =
  /\b(?:everything|all|rest|remaining|remainder|ingredients?|others?|both|them|it|these|together|things?|contents|mixture|mix|dry|wet|topping|filling|seasonings?|season|aromatics?|flavourings?|spices?|herbs?|vegetables?|veg|fruits?|nuts?|seeds?|liquids?|fats?|sugars?|pulses?|meat|fish|greens|leaves|roots)\b/i;

/** Named so often only as the thing that it makes that its absence says nothing. */
const NEVER_MISSED = new Set(['water', 'ice', 'salt', 'pepper', 'oil']);

export function checkUnnamedFoods(formula: Formula, report: (diagnostic: Diagnostic) => void): void {
  for (const make of formula.makes) {
    let group: InItem[] = [];
    make.items.forEach((item, index) => {
      if (item.kind === 'in') group.push(item);
      if (item.kind !== 'step') return;
      checkGroup(group, item, make, index, report);
      group = [];
    });
  }
}

function checkGroup(
  group: readonly InItem[],
  step: StepItem,
  make: Make,
  index: number,
  report: (diagnostic: Diagnostic) => void,
): void {
  const sentences = make.items.slice(index).flatMap(sentencesOf);
  if (sentences.slice(0, 1 + step.more.length).some((text) => IN_GENERAL.test(text))) return;
  const missing = group.filter((item) => !item.optional && !sentences.some((text) => isSpokenOf(item, text)));
  const [only, second] = missing;
  if (!only || second || group.length < 3 || isNeverMissed(only)) return;
  const here = sentencesOf(step);
  if (!group.every((item) => item === only || item.optional || here.some((text) => isSpokenOf(item, text)))) return;
  report(
    diagnose('N11', placeOf(only.ref, only.content.name.span), {
      name: only.content.name.text,
      step: `the step in line ${step.ref.line.number + 1}`,
    }),
  );
}

function sentencesOf(item: Item): string[] {
  return item.kind === 'step' ? [item.content.prose.text, ...item.more.map(({ content }) => content.prose.text)] : [];
}

function isNeverMissed({ content }: InItem): boolean {
  return content.name.text
    .toLowerCase()
    .split(/\s+/)
    .some((word) => NEVER_MISSED.has(singular(word)));
}

/** Whether a sentence speaks of what a line puts in, by its own name or another of the food's. */
function isSpokenOf({ content, source, alternatives }: InItem, text: string): boolean {
  const food = source.kind === 'food' ? source.food.food : undefined;
  const names = [content.name.text, ...(food ? [food.name, ...food.synonyms, ...food.classes] : [])];
  return names.some((name) => findName(text, name) !== undefined) || alternatives.some((one) => isSpokenOf(one, text));
}
