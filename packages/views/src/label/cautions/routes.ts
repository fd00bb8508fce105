import type { Formula, InItem, Make, StepItem } from '@quern/compiler';
import { waysToDish } from '../allergens.js';

/** Far more than a recipe has; a bound for a file that is made to have more. */
const MOST_WAYS = 500;

/** A step on the way of a food, in the make where it happens. */
export interface Step {
  readonly make: Make;
  readonly item: StepItem;
}

/** Follows a food through the steps after it, in its make and in every make that draws what it went into. */
export class Routes {
  readonly #draws: { readonly formula: Formula; readonly make: Make; readonly index: number; readonly item: InItem }[] =
    [];

  constructor(dish: Formula) {
    for (const { formula, makes } of waysToDish(dish)) {
      for (const make of formula.makes) {
        if (!makes.has(make.index)) continue;
        for (const [index, item] of make.items.entries()) {
          if (item.kind !== 'in') continue;
          for (const each of [item, ...item.alternatives]) {
            if (each.source.kind === 'product') this.#draws.push({ formula, make, index, item: each });
          }
        }
      }
    }
  }

  /** All steps after a line, each once, whichever way leads to it. */
  after(formula: Formula, make: Make, from: number): Step[] {
    const steps: Step[] = [];
    const seen = new Set<Make>();
    const walk = (one: Formula, where: Make, index: number): void => {
      if (seen.has(where)) return;
      seen.add(where);
      for (const item of where.items.slice(index + 1)) if (item.kind === 'step') steps.push({ make: where, item });
      for (const draw of this.#draws) {
        if (this.#drawnAt(draw, one, where, index) !== undefined) walk(draw.formula, draw.make, draw.index);
      }
    };
    walk(formula, make, from);
    return steps;
  }

  /**
   * The steps of each way from a line to where it ends: through its make up to where something of it is drawn, on in the
   * make that draws it. Half of a cream may be used at once and half an hour later: two ways.
   */
  ways(formula: Formula, make: Make, from: number): Step[][] {
    const ways: Step[][] = [];
    const walk = (one: Formula, where: Make, index: number, way: readonly Step[]): void => {
      if (ways.length >= MOST_WAYS) return;
      const passed = (until: number): Step[] => [
        ...way,
        ...where.items.flatMap((item, at) =>
          at > index && at < until && item.kind === 'step' ? [{ make: where, item }] : [],
        ),
      ];
      let drawn = false;
      for (const draw of this.#draws) {
        const until = this.#drawnAt(draw, one, where, index);
        if (until === undefined) continue;
        drawn = true;
        walk(draw.formula, draw.make, draw.index, passed(until));
      }
      if (!drawn) ways.push(passed(Infinity));
    };
    walk(formula, make, from, []);
    return ways;
  }

  /**
   * The item up to which a make has to be done for a draw that takes what stood in its pot after a line: the make itself,
   * or what was saved later. Undefined when the draw takes nothing of it.
   */
  #drawnAt(
    draw: { readonly formula: Formula; readonly item: InItem },
    formula: Formula,
    make: Make,
    index: number,
  ): number | undefined {
    if (draw.item.source.kind !== 'product') return undefined;
    const product = draw.formula.products.get(draw.item.source.product);
    if (!product) return undefined;
    if (product.formula) return product.formula === formula && make === formula.makes.at(-1) ? Infinity : undefined;
    if (draw.formula !== formula || product.makeIndex !== make.index) return undefined;
    if (product.kind !== 'saved') return Infinity;
    return product.itemIndex > index ? product.itemIndex : undefined;
  }
}
