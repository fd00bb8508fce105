import { diagnose, nearest, type Diagnostic } from '@quern/text';
import type { FactLine, Typed } from '@quern/syntax';
import type { FoodScope } from '../foods-in-file.js';
import type { Formula } from '../model.js';
import { normaliseName, quoted } from '../names.js';
import { placeOf, refOf } from '../places.js';

/** N20: `count X as flour`, and `basis X`, of a thing that the recipe does not have. */
export function checkCountNames(
  facts: readonly Typed<FactLine>[],
  formula: Formula,
  foods: FoodScope,
  file: string,
  report: (d: Diagnostic) => void,
): void {
  // A variant may have swapped or dropped the food that its base counts.
  if (formula.variant) return;
  const keys = new Set<string>();
  const names = new Set<string>(['flour', 'all', ...formula.products.keys()]);
  for (const make of formula.makes) {
    for (const item of make.items) {
      if (item.kind !== 'in') continue;
      for (const one of [item, ...item.alternatives]) {
        names.add(normaliseName(one.content.name.text));
        if (one.source.kind === 'food') keys.add(one.source.food.key);
      }
    }
    for (const part of make.pot.parts) keys.add(part.food.key);
  }
  for (const { content, line } of facts) {
    if (content.kind !== 'count-as' && content.kind !== 'basis') continue;
    const { text, span } = content.name;
    if (names.has(normaliseName(text)) || keys.has(foods.resolve(text).key)) continue;
    const near = nearest(normaliseName(text), names)[0];
    report(
      diagnose('N20', placeOf(refOf(file, line), span), {
        name: text,
        near: near ? `did you mean ${quoted(near)}? If not, ` : '',
      }),
    );
  }
}
