import { diagnose, type Diagnostic } from '@quern/text';
import {
  add,
  compare,
  divide,
  HUNDRED,
  isZero,
  multiply,
  sign,
  subtract,
  sum,
  units,
  ZERO,
  ONE,
  type CupSystem,
  type Rational,
} from '@quern/quantity';
import type { Bound, BoundCheck, BoundIn, BoundMake, BoundOut, BoundStep, Target } from './bind.js';
import { alcoholKept } from './alcohol.js';
import { isDissolved, isLiquid, newPart, PotParts, timesPart, waterIn } from './ledger-parts.js';
import type {
  CheckItem,
  Culture,
  Draw,
  Entry,
  InItem,
  Item,
  LineRef,
  OutItem,
  Part,
  Pot,
  StepItem,
  Unknown,
  Weighed,
} from './model.js';
import { linePlace, placeOf } from './places.js';
import { portionsOf } from './portions.js';
import { checkHolds } from './check-lines.js';
import { showGrams, showPercent } from './show.js';
import {
  countsAsFlour,
  foodForWeighing,
  foodWater,
  isHeating,
  isWater,
  liquidDensity,
  nameOfTarget,
  NOTHING_TO_WEIGH_BY,
  shareWritten,
  tally,
  waterOf,
  type Counts,
} from './substances.js';
import { baseValue, pickOf, volumeOf, weigh, type Pick, type Taught } from './weighing.js';

/*
 * The ledger: runs the makes line by line and keeps what stands in each pot. A run is a pure function of what is
 * bound, of the flour all percentages stand on, and of the end of the ranges that is taken. Nothing leaves that is
 * not there; what cannot be weighed makes its pot inexact from that line, and sums that depend on it are withheld.
 */

export interface LedgerInput {
  readonly bound: Bound;
  readonly cultures: ReadonlyMap<string, Culture>;
  readonly cups: CupSystem;
  readonly pick: Pick;
  readonly taught: ReadonlyMap<string, readonly Taught[]>;
  /** Foods that count as flour, water or neither, by key, where the file says so. */
  readonly counts: Counts;
  /** The recipe's flour, in grams; undefined while it is being found, or when there is none. */
  readonly flour: Rational | undefined;
  /** A variant's `times`: checks keep their figures and are compared with what is found divided by it. */
  readonly checkFactor: Rational | undefined;
  /** The `swap` lines of a variant, by the number of the line whose food they changed. */
  readonly swaps: ReadonlyMap<number, LineRef>;
  report(diagnostic: Diagnostic): void;
}

export interface RunProduct {
  parts: readonly Part[];
  grams: Rational | undefined;
  draws: Draw[];
}

export interface LedgerRun {
  readonly makes: readonly { readonly items: readonly Item[]; readonly pot: Pot }[];
  readonly products: ReadonlyMap<string, RunProduct>;
  /** The fullest line of flour. */
  readonly peak:
    | {
        readonly makeIndex: number;
        readonly entryIndex: number;
        readonly grams: Rational;
        readonly parts: readonly Part[];
      }
    | undefined;
  /** A percent is reckoned on the recipe's flour. */
  readonly asksForFlour: boolean;
  /** Which make each drawable name comes from. */
  readonly makeOf: ReadonlyMap<string, number>;
  /** Grams taken from and given back to each culture. */
  readonly cultureTaken: ReadonlyMap<string, Rational>;
  readonly cultureSaved: ReadonlyMap<string, Rational>;
}

export function runLedger(input: LedgerInput): LedgerRun {
  return new Runner(input).run();
}

interface OpenPot {
  readonly make: BoundMake;
  readonly parts: PotParts;
  readonly entries: Entry[];
  readonly unknown: Unknown[];
  /** Grams of flour in it now, kept up to date. */
  flour: Rational;
}

class Runner {
  readonly #products = new Map<string, RunProduct>();
  readonly #taken = new Map<string, Rational>();
  readonly #saved = new Map<string, Rational>();
  #asksForFlour = false;
  #peak: { makeIndex: number; entryIndex: number; grams: Rational; parts: readonly Part[] } | undefined;

  constructor(readonly input: LedgerInput) {
    for (const [name, product] of input.bound.products) {
      if (product.used) this.#products.set(name, { parts: product.used.parts, grams: product.used.grams, draws: [] });
    }
  }

  run(): LedgerRun {
    const makes = this.input.bound.makes.map((make) => this.#runMake(make));
    return {
      makes,
      products: this.#products,
      peak: this.#peak,
      asksForFlour: this.#asksForFlour,
      makeOf: new Map([...this.input.bound.products].map(([name, product]) => [name, product.makeIndex])),
      cultureTaken: this.#taken,
      cultureSaved: this.#saved,
    };
  }

  #runMake(make: BoundMake): { items: Item[]; pot: Pot } {
    const pot: OpenPot = { make, parts: new PotParts(), entries: [], unknown: [], flour: ZERO };
    const items: Item[] = [];
    make.items.forEach((item, index) => {
      switch (item.kind) {
        case 'in':
          items.push(this.#putIn(item, pot, index));
          break;
        case 'out':
          items.push(this.#takeOut(item, pot, index));
          break;
        case 'step':
          items.push(this.#step(item, pot, index));
          break;
        case 'check':
          items.push(this.#check(item, pot));
          break;
        case 'remark':
          items.push({ kind: 'remark', ref: item.ref, content: item.content });
          break;
        case 'bad':
          pot.unknown.push({ ref: item.ref, why: 'bad-line', name: '' });
      }
    });
    const grams = pot.unknown.length === 0 ? pot.parts.total : undefined;
    const parts = pot.parts.list();
    if (this.#isNamed(make)) this.#products.set(make.id, { parts, grams, draws: [] });
    return { items, pot: { entries: pot.entries, parts, grams, unknown: pot.unknown } };
  }

  /** A make whose name is taken by another (N03) or reserved is not drawable. */
  #isNamed(make: BoundMake): boolean {
    const named = this.input.bound.products.get(make.id);
    return named?.kind === 'make' && named.makeIndex === make.index;
  }

  // ---------------------------------------------------------------- what goes in

  #putIn(item: BoundIn, pot: OpenPot, index: number): InItem {
    const alternatives = item.alternatives.map((alternative) => this.#alternative(alternative, pot));
    const result = this.#weighIn(item, pot);
    const { content, source, ref } = item;
    const share = this.#enter(item, result.weighed, pot, index);
    return {
      kind: 'in',
      ref,
      content,
      source,
      weighed:
        share.grams !== undefined && result.weighed.grams === undefined
          ? { ...result.weighed, grams: share.grams }
          : result.weighed,
      ...(share.share ? { share: share.share } : {}),
      ...(result.on ? { on: result.on } : {}),
      optional: content.optional,
      alternatives,
    };
  }

  #alternative(item: BoundIn, pot: OpenPot): InItem {
    const { weighed, on } = this.#weighIn(item, pot);
    return {
      kind: 'in',
      ref: item.ref,
      content: item.content,
      source: item.source,
      weighed,
      ...(on ? { on } : {}),
      optional: item.content.optional,
      alternatives: [],
    };
  }

  #weighIn(item: BoundIn, pot: OpenPot): { weighed: Weighed; on?: { name: string; grams: Rational | undefined } } {
    const { amount } = item.content;
    if (amount.kind === 'percent') {
      const target = item.on ?? this.input.bound.basis;
      if (!target) {
        this.input.report(
          diagnose('Q07', placeOf(item.ref, amount.span), {
            percent: item.ref.line.text.slice(amount.span.start, amount.span.end),
          }),
        );
        return { weighed: { grams: undefined, basis: 'unknown', sources: [] } };
      }
      const base = this.#weightOfTarget(target, pot, item);
      const percent = divide(pickOf(amount.range, this.input.pick), HUNDRED);
      const grams = base ? multiply(percent, base) : undefined;
      return {
        weighed: { grams, basis: grams ? 'reckoned' : 'unknown', sources: [] },
        on: { name: nameOfTarget(target, item.content.on?.text), grams: base },
      };
    }
    if (amount.kind === 'share' || amount.kind === 'portion')
      return { weighed: { grams: undefined, basis: 'reckoned', sources: [] } };
    const words = { name: item.content.name.text, note: item.content.note?.text ?? '' };
    const food = item.food ?? foodForWeighing(item);
    const context = { cups: this.input.cups, pick: this.input.pick, taught: this.input.taught };
    return { weighed: weigh(amount, item.content.equals, food, words, context) };
  }

  #weightOfTarget(
    target: Target,
    pot: OpenPot,
    item: { ref: LineRef; content: { on?: { span: { start: number; end: number }; text: string } } },
  ): Rational | undefined {
    switch (target.kind) {
      case 'flour':
        this.#asksForFlour = true;
        return this.input.flour;
      case 'all':
        return pot.unknown.length === 0 ? pot.parts.total : undefined;
      case 'product': {
        if (pot.parts.has((part) => part.via === target.name))
          return pot.parts.massWhere((part) => part.via === target.name);
        return this.#products.get(target.name)?.grams;
      }
      default: {
        const chosen = this.#chooser(target);
        if (!pot.parts.has(chosen)) {
          if (pot.unknown.length === 0 && item.content.on)
            this.#notInPot(item.content.on.text, placeOf(item.ref, item.content.on.span), pot);
          return undefined;
        }
        return pot.unknown.some((entry) => target.kind === 'food' && entry.name === target.food.key)
          ? undefined
          : pot.parts.massWhere(chosen);
      }
    }
  }

  #chooser(target: Target): (part: Part) => boolean {
    switch (target.kind) {
      case 'all':
        return () => true;
      case 'flour':
        return (part) => countsAsFlour(part.food, this.input.counts);
      case 'liquid':
        return isLiquid;
      case 'product':
        return (part) => part.via === target.name;
      case 'culture':
        return (part) => part.culture === target.name;
      case 'food':
        return (part) => part.food.key === target.food.key;
    }
  }

  #notInPot(name: string, place: Diagnostic['place'], pot: OpenPot): void {
    const inside = [...new Set(pot.parts.list().map((part) => part.food.name))].slice(0, 5).join(', ');
    this.input.report(diagnose('Q10', place, { name, inside: inside || 'nothing yet' }));
  }

  /** Puts the line's parts into the pot; for a draw gives back the share. */
  #enter(item: BoundIn, weighed: Weighed, pot: OpenPot, index: number): { grams?: Rational; share?: Rational } {
    const { source, content, ref } = item;
    if (source.kind === 'product') return this.#drawProduct(source.product, item, weighed, pot, index);
    const grams = weighed.grams;
    if (content.optional) return {};
    if (grams === undefined) {
      this.#unweighed(item, pot);
      return {};
    }
    const parts = this.#newParts(item, grams);
    for (const part of parts) pot.parts.put(part);
    if (source.kind === 'culture') tally(this.#taken, source.culture, grams);
    this.#entry(pot, { ref, kind: 'food', parts, grams });
    return {};
  }

  #newParts(item: BoundIn, grams: Rational): Part[] {
    const { source, ref } = item;
    if (source.kind === 'culture') {
      const culture = this.input.cultures.get(source.culture);
      return (culture?.parts ?? []).map(({ food, share }) =>
        newPart(food, ref, multiply(grams, share), source.culture),
      );
    }
    return [newPart(item.food ?? foodForWeighing(item), ref, grams)];
  }

  #unweighed(item: BoundIn, pot: OpenPot): void {
    const { content, ref, source } = item;
    const food = item.food ?? foodForWeighing(item);
    // An open amount with no estimate counts as nothing and says so; everything else makes the pot inexact.
    if (content.amount.kind === 'open') {
      this.input.report(
        diagnose('Q12', placeOf(ref, content.name.span), { amount: content.amount.word, name: content.name.text }),
      );
      return;
    }
    if (
      source.kind === 'food' &&
      food.from === 'unknown' &&
      (content.amount.kind === 'share' || content.amount.kind === 'portion')
    ) {
      pot.unknown.push({ ref, why: 'depends', name: food.key });
      return;
    }
    if (content.amount.kind !== 'percent') this.#noWeight(item);
    pot.unknown.push({ ref, why: content.amount.kind === 'percent' ? 'depends' : 'no-weight', name: food.key });
  }

  /** Q08; where a variant's `swap` put the food there, V02 at that line. */
  #noWeight(item: BoundIn): void {
    const { content, ref } = item;
    const swap = this.input.swaps.get(ref.line.number);
    if (swap) this.input.report(diagnose('V02', linePlace(swap), { name: content.name.text }));
    else this.input.report(diagnose('Q08', placeOf(ref, content.name.span), { name: content.name.text }));
  }

  #drawProduct(
    name: string,
    item: BoundIn,
    weighed: Weighed,
    pot: OpenPot,
    itemIndex: number,
  ): { grams?: Rational; share?: Rational } {
    const product = this.#products.get(name);
    const { ref, content } = item;
    if (!product) {
      pot.unknown.push({ ref, why: 'depends', name });
      return {};
    }
    const named = this.input.bound.products.get(name);
    const drawn = this.#shareOf(item, weighed, product, name);
    if (drawn.share === undefined) {
      if (drawn.noWeight)
        this.input.report(diagnose('Q08', placeOf(ref, content.name.span), { name: content.name.text }));
      pot.unknown.push({ ref, why: 'depends', name });
      return {};
    }
    const share = drawn.share;
    const grams = product.grams ? multiply(product.grams, share) : undefined;
    product.draws.push({ makeIndex: pot.make.index, itemIndex, grams, share, optional: content.optional });
    if (named?.kind !== 'used') this.#overdrawn(product, item, name);
    const result = { share, ...(grams ? { grams } : {}) };
    if (content.optional) return result;
    if (!product.grams) pot.unknown.push({ ref, why: 'depends', name });
    const parts = product.parts.map((part) => ({ ...timesPart(part, share), via: name }));
    for (const part of parts) pot.parts.put(part);
    this.#entry(pot, { ref, kind: 'draw', parts, grams });
    return result;
  }

  #shareOf(
    item: BoundIn,
    weighed: Weighed,
    product: RunProduct,
    name: string,
  ): { share?: Rational; noWeight?: boolean } {
    const { amount } = item.content;
    if (amount.kind === 'share') {
      if (amount.word === 'rest') {
        const before = sum(product.draws.filter((draw) => !draw.optional).map((draw) => draw.share ?? ZERO));
        return { share: subtract(ONE, before) };
      }
      return { share: pickOf({ low: amount.low ?? ONE, high: amount.high ?? ONE }, this.input.pick) };
    }
    if (amount.kind === 'portion') {
      const whole = this.#portionsOf(name, amount.of);
      return whole ? { share: divide(pickOf(amount.range, this.input.pick), whole) } : { noWeight: true };
    }
    if (!product.grams || isZero(product.grams)) return {};
    const grams = weighed.grams ?? this.#productVolume(item, product);
    return grams ? { share: divide(grams, product.grams) } : { noWeight: true };
  }

  /** How many of that thing a used dish gives: its servings, or its pieces. */
  #portionsOf(name: string, of: string): Rational | undefined {
    const formula = this.input.bound.products.get(name)?.used?.formula;
    return formula ? portionsOf(formula, of) : undefined;
  }

  /** A product drawn by volume weighs what its liquid weighs, if the pot is all liquid. */
  #productVolume(item: BoundIn, product: RunProduct): Rational | undefined {
    const { amount } = item.content;
    if (amount.kind !== 'measure' || units[amount.unit.id].dimension !== 'volume') return undefined;
    const density = liquidDensity(product.parts);
    return density ? multiply(baseValue(amount, this.input.cups, this.input.pick), density) : undefined;
  }

  #overdrawn(product: RunProduct, item: BoundIn, name: string): void {
    const shares = sum(product.draws.filter((draw) => !draw.optional).map((draw) => draw.share ?? ZERO));
    const over = compare(shares, ONE) > 0;
    if (!over || item.content.optional) return;
    const made = product.grams;
    this.input.report(
      diagnose('M01', linePlace(item.ref), {
        name,
        drawn: made ? showGrams(multiply(shares, made)) : `${showPercent(shares)}`,
        made: made ? showGrams(made) : '100 %',
      }),
    );
  }

  // ---------------------------------------------------------------- steps

  #step(item: BoundStep, pot: OpenPot, index: number): StepItem {
    const { content } = item;
    if (isHeating(content) && content.time) {
      const minutes = pickOf({ low: content.time.low.minutes, high: content.time.high.minutes }, this.input.pick);
      this.#boilOff(pot, minutes, this.#writtenLossFollows(pot.make, index));
    }
    const ref = item.ref;
    return {
      kind: 'step',
      ref,
      content,
      more: item.item.more.map((line) => ({ ref: { file: ref.file, line: line.line }, content: line.content })),
      every: item.item.every.map((line) => ({ ref: { file: ref.file, line: line.line }, content: line.content })),
    };
  }

  /** A loss of water written before the next step covers the alcohol that boiled off with it. */
  #writtenLossFollows(make: BoundMake, index: number): boolean {
    for (const item of make.items.slice(index + 1)) {
      if (item.kind === 'step') return false;
      if (item.kind === 'out' && item.content.verb === 'lose' && isWater(item.asFood)) return true;
    }
    return false;
  }

  #pendingAlcohol: Rational = ZERO;

  #boilOff(pot: OpenPot, minutes: Rational, written: boolean): void {
    const gone = pot.parts.heat(minutes, (part, alcohol) =>
      multiply(alcohol, subtract(ONE, alcoholKept(part.heatedMinutes, add(part.heatedMinutes, minutes)))),
    );
    if (isZero(gone)) return;
    if (written) {
      this.#pendingAlcohol = add(this.#pendingAlcohol, gone);
      return;
    }
    this.#entry(pot, { kind: 'alcohol', parts: [], alcohol: gone, grams: gone });
  }

  // ---------------------------------------------------------------- what comes out

  #takeOut(item: BoundOut, pot: OpenPot, index: number): OutItem {
    const { content, ref } = item;
    const asWater = content.verb !== 'save' && !item.of && isWater(item.asFood);
    const before = pot.unknown.length;
    const taken = asWater ? this.#loseWater(item, pot) : this.#takeParts(item, pot);
    if (!taken) {
      if (pot.unknown.length === before) pot.unknown.push({ ref, why: 'depends', name: '' });
    }
    const grams = taken?.grams;
    this.#keepSaved(item, taken?.parts ?? [], grams, index);
    return {
      kind: 'out',
      ref,
      content,
      grams,
      ...(item.saved ? { saved: item.saved } : item.culture ? { saved: item.culture } : {}),
      manner: asWater ? 'food' : (taken?.manner ?? 'evenly'),
      estimate: taken?.manner === 'liquid',
    };
  }

  #keepSaved(item: BoundOut, parts: readonly Part[], grams: Rational | undefined, index: number): void {
    if (item.culture) {
      if (grams) tally(this.#saved, item.culture, grams);
      return;
    }
    if (!item.saved) return;
    const named = this.input.bound.products.get(item.saved);
    if (
      named?.kind !== 'saved' ||
      named.itemIndex !== index ||
      (named.ref !== item.ref && named.ref.line !== item.ref.line)
    )
      return;
    // A drained liquid may be stated to be a food of the table: then that is its composition.
    const stated =
      item.asFood && item.of?.kind === 'liquid' && grams ? [newPart(item.asFood, item.ref, grams)] : undefined;
    this.#products.set(item.saved, { parts: stated ?? parts, grams, draws: [] });
  }

  #loseWater(
    item: BoundOut,
    pot: OpenPot,
  ): { grams: Rational; parts: readonly Part[]; manner: OutItem['manner'] } | undefined {
    const inPot = pot.unknown.length === 0 ? pot.parts.total : undefined;
    const grams = this.#outGrams(item, add(pot.parts.total, this.#pendingAlcohol), inPot === undefined, pot);
    const alcohol = this.#pendingAlcohol;
    this.#pendingAlcohol = ZERO;
    if (grams === undefined) return undefined;
    const water = subtract(grams, alcohol);
    const held = pot.parts.water();
    if (compare(water, held) > 0) {
      if (pot.unknown.length === 0) this.#tooMuch(item, grams, add(held, alcohol), 'water');
      return undefined;
    }
    if (sign(water) > 0) pot.parts.dry(water);
    this.#entry(pot, {
      ref: item.ref,
      kind: item.content.verb,
      parts: [],
      water: sign(water) > 0 ? water : ZERO,
      alcohol,
      grams,
    });
    return { grams, parts: [], manner: 'food' };
  }

  #takeParts(
    item: BoundOut,
    pot: OpenPot,
  ): { grams: Rational | undefined; parts: readonly Part[]; manner: OutItem['manner'] } | undefined {
    const target = this.#outTarget(item, pot);
    if (!target) return undefined;
    const { chosen, manner, name } = target;
    if (item.content.verb === 'save' && item.content.of && !item.content.as && pot.parts.has(chosen)) {
      // What is taken is in the pot, so the new thing still needs a name.
      this.input.report(diagnose('L14', placeOf(item.ref, item.content.of.span), { found: item.content.of.text }));
    }
    if (
      item.content.verb === 'lose' &&
      item.of?.kind === 'food' &&
      isWater(item.of.food) &&
      shareWritten(item.content.amount, 'middle') &&
      item.content.of
    ) {
      this.input.report(diagnose('M08', placeOf(item.ref, item.content.of.span), {}));
    }
    if (manner === 'liquid') return this.#drain(item, pot);
    const held = pot.parts.massWhere(chosen);
    const inexact =
      pot.unknown.length > 0 && (manner === 'evenly' || pot.unknown.some((entry) => entry.name === name.key));
    if (isZero(held) && manner !== 'evenly') {
      // Of a thing whose own weight is unknown nothing can be said; a thing that is not there is a mistake.
      if (pot.unknown.length === 0) this.#nothingThere(item, name.text, pot);
      return undefined;
    }
    const grams = this.#outGrams(item, held, inexact, pot);
    const { amount } = item.content;
    const share = shareWritten(amount, this.input.pick);
    if (share && inexact) {
      const parts = pot.parts.take(share, chosen);
      this.#entry(pot, { ref: item.ref, kind: item.content.verb, parts, grams: undefined });
      return { grams: undefined, parts, manner };
    }
    if (grams === undefined) return undefined;
    if (compare(grams, held) > 0) {
      if (!inexact) this.#tooMuch(item, grams, held, name.text);
      return undefined;
    }
    const parts = isZero(held) ? [] : pot.parts.take(divide(grams, held), chosen);
    this.#entry(pot, { ref: item.ref, kind: item.content.verb, parts, grams });
    return { grams, parts, manner };
  }

  #outTarget(
    item: BoundOut,
    pot: OpenPot,
  ): { chosen: (part: Part) => boolean; manner: OutItem['manner']; name: { text: string; key: string } } | undefined {
    const { of, asFood, content } = item;
    if (of) {
      if (of.kind === 'liquid') return { chosen: isLiquid, manner: 'liquid', name: { text: 'liquid', key: '' } };
      const key = of.kind === 'food' ? of.food.key : of.kind === 'product' ? of.name : '';
      return { chosen: this.#chooser(of), manner: 'of', name: { text: content.of?.text ?? '', key } };
    }
    if (asFood && !item.culture && content.verb !== 'save') {
      const chosen = (part: Part): boolean => part.food.key === asFood.key;
      // A name of the table that is not in the pot ('as peel') only labels.
      if (pot.parts.has(chosen)) return { chosen, manner: 'food', name: { text: asFood.name, key: asFood.key } };
    }
    return { chosen: () => true, manner: 'evenly', name: { text: 'the pot', key: '' } };
  }

  /**
   * Takes liquid with what is dissolved in it. When more is wanted than the liquids hold, the solids give water in
   * proportion to theirs (M11).
   */
  #drain(
    item: BoundOut,
    pot: OpenPot,
  ): { grams: Rational | undefined; parts: readonly Part[]; manner: OutItem['manner'] } | undefined {
    const inPhase = (part: Part): boolean => isLiquid(part) || isDissolved(part);
    const held = pot.parts.massWhere(inPhase);
    const grams = this.#outGrams(item, held, pot.unknown.length > 0, pot);
    if (grams === undefined) return undefined;
    if (compare(grams, held) <= 0) {
      const parts = isZero(held) ? [] : pot.parts.take(divide(grams, held), inPhase);
      this.#entry(pot, { ref: item.ref, kind: item.content.verb, parts, grams });
      return { grams, parts, manner: 'liquid' };
    }
    const missing = subtract(grams, held);
    const solids = (part: Part): boolean => !inPhase(part);
    if (compare(missing, pot.parts.water(solids)) > 0) {
      if (pot.unknown.length === 0) this.#tooMuch(item, grams, add(held, pot.parts.water(solids)), 'liquid');
      return undefined;
    }
    this.input.report(diagnose('M11', linePlace(item.ref), { grams: showGrams(missing) }));
    const juice = this.#waterFrom(pot, solids, missing);
    const parts = [...pot.parts.take(ONE, inPhase), ...juice];
    this.#entry(pot, { ref: item.ref, kind: item.content.verb, parts, grams });
    return { grams, parts, manner: 'liquid' };
  }

  /** Water drawn out of solids, as parts of plain water that remember the food they came from. */
  #waterFrom(pot: OpenPot, solids: (part: Part) => boolean, grams: Rational): Part[] {
    const held = pot.parts.water(solids);
    const share = divide(grams, held);
    const waterFood = waterOf(pot.parts.list());
    const juice = pot.parts
      .list()
      .filter(solids)
      .flatMap((part) => {
        const water = waterIn(part);
        return water && sign(water) > 0
          ? [{ ...newPart(waterFood, part.origin, multiply(water, share)), via: part.via }]
          : [];
      });
    pot.parts.dry(grams, solids);
    return juice;
  }

  /** Grams that an out line names, of `held` for a percent or a share. */
  #outGrams(item: BoundOut, held: Rational, inexact: boolean, pot: OpenPot): Rational | undefined {
    const { amount, equals } = item.content;
    // At the low end of a weight the most leaves, at the high end the least.
    const pick: Pick = this.input.pick === 'low' ? 'high' : this.input.pick === 'high' ? 'low' : 'middle';
    const share = shareWritten(amount, pick);
    if (share) return inexact ? undefined : multiply(held, share);
    if (amount.kind === 'share' && amount.word === 'rest') return inexact ? undefined : held;
    const food = item.of?.kind === 'food' ? item.of.food : item.asFood;
    const context = { cups: this.input.cups, pick, taught: this.input.taught };
    const weighed = weigh(
      amount,
      equals,
      food ?? NOTHING_TO_WEIGH_BY,
      { name: '', note: item.content.note?.text ?? '' },
      context,
    ).grams;
    if (weighed) return weighed;
    const millilitres = volumeOf(amount, context);
    if (millilitres && item.of?.kind === 'liquid') {
      const density = liquidDensity(pot.parts.list().filter((part) => isLiquid(part) || isDissolved(part)));
      if (density) return multiply(millilitres, density);
    }
    this.input.report(
      diagnose('Q08', linePlace(item.ref), { name: item.content.of?.text ?? item.content.as?.text ?? 'this' }),
    );
    return undefined;
  }

  #tooMuch(item: BoundOut, wanted: Rational, held: Rational, name: string): void {
    this.input.report(diagnose('M03', linePlace(item.ref), { wanted: showGrams(wanted), held: showGrams(held), name }));
  }

  #nothingThere(item: BoundOut, name: string, pot: OpenPot): void {
    const of = item.content.of;
    const hasOf = of ? /\bof\s+$/i.test(item.ref.line.text.slice(0, of.span.start)) : false;
    if (of && !hasOf && !item.content.as) {
      this.input.report(diagnose('M07', placeOf(item.ref, of.span), { name }));
    } else if (of) this.#notInPot(name, placeOf(item.ref, of.span), pot);
  }

  // ---------------------------------------------------------------- checks and entries

  #check(item: BoundCheck, pot: OpenPot): CheckItem {
    const found = this.#checked(item, pot);
    const holds = found ? checkHolds(item.content.amount, found, this.input.cups) : undefined;
    if (holds === false && found) {
      const { amount } = item.content;
      const shown = amount.kind === 'percent' ? showPercent(divide(found, HUNDRED)) : showGrams(found);
      const written = item.ref.line.text.slice(amount.span.start, amount.span.end);
      this.input.report(diagnose('M14', linePlace(item.ref), { written, found: shown }));
    }
    return { kind: 'check', ref: item.ref, content: item.content, holds, found };
  }

  #checked(item: BoundCheck, pot: OpenPot): Rational | undefined {
    const { content } = item;
    const chosen = this.#checkChooser(item);
    if (pot.unknown.length > 0) return undefined;
    if (content.name && item.name?.kind === 'food' && item.name.food.from === 'unknown') {
      this.#notInPot(content.name.text, placeOf(item.ref, content.name.span), pot);
      return undefined;
    }
    let grams =
      chosen === 'all-water'
        ? pot.parts.water()
        : item.name?.kind === 'water'
          ? this.#foodWater(pot)
          : pot.parts.massWhere(chosen);
    if (item.from) {
      const via = item.from;
      const inside = chosen === 'all-water' ? () => true : chosen;
      grams = pot.parts.massWhere((part) => part.via === via && inside(part));
    }
    if (content.amount.kind !== 'percent')
      return this.input.checkFactor ? divide(grams, this.input.checkFactor) : grams;
    const base = this.#checkBase(item, pot, chosen === 'all-water' ? () => true : chosen);
    return base && sign(base) > 0 ? multiply(divide(grams, base), HUNDRED) : undefined;
  }

  /** Food water: the food itself, and the water in foods that the file counts as water. */
  #foodWater(pot: OpenPot): Rational {
    return sum(pot.parts.list().map((part) => foodWater(part, this.input.counts)));
  }

  #checkChooser(item: BoundCheck): ((part: Part) => boolean) | 'all-water' {
    const { name } = item;
    if (!name) return () => true;
    switch (name.kind) {
      case 'all-water':
        return 'all-water';
      case 'water':
        return (part) => isWater(part.food);
      default:
        return this.#chooser(name);
    }
  }

  /** What a percent check is reckoned on: `on`, else for `from` the whole of the thing, else the pot. */
  #checkBase(item: BoundCheck, pot: OpenPot, chosen: (part: Part) => boolean): Rational | undefined {
    if (item.on) return this.#weightOfTarget(item.on, pot, item as never);
    if (item.from) return pot.parts.massWhere(chosen);
    return pot.parts.total;
  }

  #entry(
    pot: OpenPot,
    entry: {
      ref?: LineRef;
      kind: Entry['kind'];
      parts: readonly Part[];
      water?: Rational;
      alcohol?: Rational;
      grams: Rational | undefined;
    },
  ): void {
    const flour = sum(
      entry.parts.filter((part) => countsAsFlour(part.food, this.input.counts)).map((part) => part.grams),
    );
    const goesIn = entry.kind === 'food' || entry.kind === 'draw';
    pot.flour = goesIn ? add(pot.flour, flour) : subtract(pot.flour, flour);
    pot.entries.push({
      ...(entry.ref ? { ref: entry.ref } : {}),
      kind: entry.kind,
      parts: entry.parts,
      water: entry.water ?? ZERO,
      alcohol: entry.alcohol ?? ZERO,
      grams: entry.grams,
      totalAfter: pot.unknown.length === 0 ? pot.parts.total : undefined,
    });
    if (goesIn && sign(flour) > 0 && (!this.#peak || compare(pot.flour, this.#peak.grams) > 0)) {
      this.#peak = {
        makeIndex: pot.make.index,
        entryIndex: pot.entries.length - 1,
        grams: pot.flour,
        parts: pot.parts.list(),
      };
    }
  }
}
