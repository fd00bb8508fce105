import { toExactText, type Rational } from '@quern/quantity';
import { normaliseName, type Compiled, type Formula, type Item } from '@quern/compiler';
import type { Time, Temperature } from '@quern/syntax';

/*
 * What a file means to the sums, the timetable and the label, as one text: two files with the same text mean the same.
 * Free words (titles of people, notes, sentences, remarks) are left out: a slip there is the reader's to see.
 */

const number = (value: Rational | undefined): string => (value ? toExactText(value) : '?');
const time = (value: Time | undefined): string =>
  value ? `${value.kind} ${number(value.low.minutes)}-${number(value.high.minutes)}` : '-';
const heat = (value: Temperature | undefined): string =>
  value ? `${number(value.low)}-${number(value.high)}${value.scale}` : '-';

export function meaningOf(compiled: Compiled): string {
  const parts = [
    ...compiled.formulas.map(formulaMeaning),
    ...[...compiled.foods.values()].map((food) =>
      JSON.stringify([
        food.key,
        Object.entries(food.food?.nutrients ?? {}).map(([name, value]) => [name, number(value)]),
        food.food?.allergens,
        food.food?.traces,
      ]),
    ),
    ...compiled.kitchens.map((kitchen) =>
      JSON.stringify([
        kitchen.has.map((thing) => [thing.name, number(thing.count), number(thing.shelves)]),
        kitchen.awake?.from.minutes,
        kitchen.awake?.to.minutes,
        heat(kitchen.room),
      ]),
    ),
    ...compiled.menus.map((menu) =>
      JSON.stringify([
        menu.date,
        menu.courses.map((course) => [
          course.clock?.minutes,
          course.dishes.map((dish) => [dish.formula?.id, number(dish.factor)]),
        ]),
      ]),
    ),
  ];
  return parts.join('\n');
}

function formulaMeaning(formula: Formula): string {
  const { facts } = formula;
  return JSON.stringify([
    formula.variant ?? '',
    number(formula.dishGrams),
    number(formula.servings),
    number(formula.pieces),
    facts.cups,
    facts.freeOf.map((promise) => normaliseName(promise.allergen)),
    facts.vessel && [number(facts.vessel.content.count), (facts.vessel.content.lengths ?? []).map(number)],
    number(formula.flour?.grams),
    formula.makes.map((make) => [
      make.id,
      make.items.map(itemMeaning),
      make.keeps.map((keeping) => [time(keeping.content.time), heat(keeping.content.at)]),
      make.bestAfter.map((ageing) => time(ageing.content.time)),
    ]),
    [...formula.cultures.values()].map((culture) => [
      culture.name,
      culture.parts.map((part) => [part.food.key, number(part.share)]),
      culture.upkeep.map((every) => time(every.content.period)),
    ]),
  ]);
}

function itemMeaning(item: Item): unknown {
  switch (item.kind) {
    case 'in': {
      const { source } = item;
      const what =
        source.kind === 'food'
          ? source.food.key
          : source.kind === 'product'
            ? source.product
            : source.kind === 'culture'
              ? source.culture
              : source.class;
      return ['in', what, number(item.weighed.grams), item.optional, item.alternatives.map(itemMeaning)];
    }
    case 'out':
      return ['out', item.content.verb, number(item.grams), item.saved ?? '', item.manner];
    case 'step':
      return [
        item.content.lane,
        time(item.content.time),
        item.content.clauses.map((clause) => {
          if (clause.kind === 'at')
            return ['at', heat(clause.temperature), clause.change?.direction, heat(clause.change?.to), clause.fan];
          if (clause.kind === 'until') return ['until', heat(clause.temperature), number(clause.acidity?.value)];
          return ['using', clause.things.map((thing) => [thing.name, number(thing.count)])];
        }),
        item.every.map((every) => [time(every.content.period), time(every.content.duration)]),
      ];
    case 'check':
      return ['check', number(item.found)];
    case 'remark':
      return 'remark';
  }
}
