import type { Diagnostic } from '@quern/text';
import { multiply, sizeOf, units, type CupSystem, type Rational } from '@quern/quantity';
import type { FactLine, Name, Typed, UseFact } from '@quern/syntax';
import { allergensPromised } from './allergen-names.js';
import { unknownAllergen } from './file-foods.js';
import type { LineRef, RecipeFacts } from './model.js';
import { normaliseName } from './names.js';
import { placeOf, refOf } from './places.js';
import { pickOf, type Pick } from './weighing.js';

/** The facts of a recipe: the file's head first, then the recipe's own; of each kind the last counts, repeating ones all. */
export function recipeFacts(
  head: readonly Typed<FactLine>[],
  own: readonly Typed<FactLine>[],
  file: string,
  report: (d: Diagnostic) => void,
): RecipeFacts {
  const texts: Record<string, string[]> = {
    by: [],
    source: [],
    photo: [],
    note: [],
    tip: [],
    warning: [],
    'serve with': [],
  };
  const keywords: string[] = [];
  const freeOf: { allergen: string; place: { file: string; start: number; end: number } }[] = [];
  const baked: RecipeFacts['baked'][number][] = [];
  let language = 'en';
  let cups: CupSystem = 'us';
  let gives: RecipeFacts['gives'];
  let serves: RecipeFacts['serves'];
  let vessel: RecipeFacts['vessel'];
  let basis: string | undefined;
  for (const { content, line } of [...head, ...own]) {
    const ref = refOf(file, line);
    switch (content.kind) {
      case 'text-fact':
        if (content.word === 'language') language = content.words.text;
        else texts[content.word]?.push(content.words.text);
        break;
      case 'list-fact':
        if (content.word === 'keywords') keywords.push(...content.items.map((item) => item.text));
        if (content.word === 'free of') {
          for (const item of content.items) {
            const place = placeOf(ref, item.span);
            if (allergensPromised(normaliseName(item.text))) freeOf.push({ allergen: item.text.toLowerCase(), place });
            else report(unknownAllergen(item.text, place));
          }
        }
        break;
      case 'cup':
        cups = content.system;
        break;
      case 'gives':
        gives = { ref, content };
        break;
      case 'serves':
        serves = { ref, content };
        break;
      case 'vessel':
        vessel = { ref, content };
        break;
      case 'basis':
        basis = content.name.text;
        break;
      case 'baked':
        baked.push({ ref, content });
        break;
      default:
    }
  }
  return {
    by: texts['by'] ?? [],
    source: texts['source'] ?? [],
    photo: texts['photo'] ?? [],
    keywords,
    language,
    notes: texts['note'] ?? [],
    tips: texts['tip'] ?? [],
    warnings: texts['warning'] ?? [],
    serveWith: texts['serve with'] ?? [],
    freeOf,
    cups,
    ...(gives ? { gives } : {}),
    ...(serves ? { serves } : {}),
    ...(vessel ? { vessel } : {}),
    ...(basis ? { basis } : {}),
    baked,
  };
}

/** Grams that `gives` promises; undefined when it names no weight. */
export function yieldGrams(facts: RecipeFacts, pick: Pick = 'middle'): Rational | undefined {
  const gives = facts.gives?.content;
  const measure = gives?.each ?? gives?.total;
  if (!gives || !measure || units[measure.unit.id].dimension !== 'mass') return undefined;
  const grams = multiply(pickOf(measure.range, pick), sizeOf(measure.unit.id, facts.cups));
  return gives.each && gives.count ? multiply(grams, pickOf(gives.count, pick)) : grams;
}

/** `basis` as a name to bind. */
export function basisOf(facts: readonly Typed<FactLine>[], file: string): { name: Name; ref: LineRef } | undefined {
  const found = facts.findLast((fact) => fact.content.kind === 'basis');
  return found?.content.kind === 'basis' ? { name: found.content.name, ref: refOf(file, found.line) } : undefined;
}

/** `count X as flour` by food key. */
export function countsOf(
  facts: readonly Typed<FactLine>[],
  keyOf: (name: string) => string,
): ReadonlyMap<string, 'flour' | 'water' | 'other'> {
  const counts = new Map<string, 'flour' | 'water' | 'other'>();
  for (const { content } of facts) if (content.kind === 'count-as') counts.set(keyOf(content.name.text), content.as);
  return counts;
}

export function usesOf(facts: readonly Typed<FactLine>[]): readonly Typed<UseFact>[] {
  return facts.filter((fact): fact is Typed<UseFact> => fact.content.kind === 'use');
}
