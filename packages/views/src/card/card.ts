import {
  divide,
  equal,
  isZero,
  multiply,
  ONE,
  PLAIN,
  styleFor,
  toExactText,
  type CupSystem,
  type Interval,
  type Rational,
} from '@quern/quantity';
import type { Ageing, Formula, InItem, Keeping, Make, OutItem, RemarkItem } from '@quern/compiler';
import type { VesselFact } from '@quern/syntax';
import { exactRange } from '../common/exact-range.js';
import { bothScales } from '../common/heat-text.js';
import { bothNumbers } from '../common/plural.js';
import { measuredAmount } from '../common/item-amount.js';
import type { ScalableAmount } from '../common/scalable-amount.js';
import { sizeText } from '../common/vessel-size.js';
import {
  fixedAmount,
  ingredientAmount,
  madeIn,
  percentWords,
  savedAmount,
  scaledAmount,
  type CardSetting,
} from './amounts.js';
import { cardStep, cardTime } from './card-step.js';
import { variantWords } from './variant-words.js';
import type {
  CardAllergens,
  CardCaution,
  CardData,
  CardDiet,
  CardIngredient,
  CardKeeping,
  CardMake,
  CardNutrition,
  CardProblem,
  CardRemark,
  CardSaved,
  CardStep,
  CardTimes,
  CardYield,
} from './card-data.js';

/** What a card says beyond the ledger; each part comes from the view or the person that knows it. */
export interface CardViewOptions {
  /** Times the recipe; 1 by default. */
  readonly factor?: Rational;
  /** The cups and spoons of the second measure; those of the file by default. */
  readonly cups?: CupSystem;
  /** Totals of the clock. */
  readonly times?: CardTimes;
  readonly allergens?: CardAllergens;
  readonly nutrition?: CardNutrition;
  readonly diets?: readonly CardDiet[];
  readonly cautions?: readonly CardCaution[];
  /** The variants of the recipe, compiled, to be told in words. */
  readonly variants?: readonly Formula[];
  readonly revision?: string;
  /** ISO 8601. */
  readonly date?: string;
  readonly problems?: readonly CardProblem[];
}

/** The card of a recipe or a variant, as plain data. What is not known is left out. */
export function card(formula: Formula, options: CardViewOptions = {}): CardData {
  const { facts } = formula;
  const setting: CardSetting = {
    formula,
    factor: options.factor ?? ONE,
    cups: options.cups ?? facts.cups,
    style: styleFor(facts.language, PLAIN),
  };
  const dish = formula.makes.at(-1);
  const photo = photoOf(facts.photo.at(-1));
  return {
    format: 'quern-card',
    version: 1,
    title: formula.title,
    ...(formula.variant === undefined ? {} : { variant: formula.variant }),
    language: facts.language,
    by: facts.by,
    source: facts.source,
    keywords: facts.keywords,
    introduction: facts.notes,
    ...(photo ? { photo } : {}),
    yield: yieldOf(setting),
    times: options.times ?? {},
    makes: formula.makes.map((make) => cardMake(make, make === dish, setting)),
    remarks: [
      ...remarksOf('tip', facts.tips),
      ...remarksOf('warning', facts.warnings),
      ...remarksOf('serve with', facts.serveWith),
    ],
    variants: (options.variants ?? []).map(variantWords),
    ...(options.allergens ? { allergens: options.allergens } : {}),
    ...(options.nutrition ? { nutrition: options.nutrition } : {}),
    diets: options.diets ?? [],
    keeping: dish?.keeps.map((keep) => keepingOf(keep, setting)) ?? [],
    bestAfter: dish?.bestAfter.map((age) => keepingOf(age, setting)) ?? [],
    cautions: options.cautions ?? [],
    fixed: fixedOf(formula),
    ...(options.revision === undefined ? {} : { revision: options.revision }),
    ...(options.date === undefined ? {} : { date: options.date }),
    problems: options.problems ?? [],
  };
}

/** `cheeks.jpg, The cheeks in their black pot`: the path, and the words for those who do not see the picture. */
function photoOf(written: string | undefined): CardData['photo'] {
  if (written === undefined) return undefined;
  const comma = written.indexOf(',');
  const path = (comma < 0 ? written : written.slice(0, comma)).trim();
  const alternative = comma < 0 ? '' : written.slice(comma + 1).trim();
  if (path === '') return undefined;
  return alternative === '' ? { path } : { path, alternative };
}

function remarksOf(kind: CardRemark['kind'], texts: readonly string[]): CardRemark[] {
  return texts.map((text) => ({ kind, text }));
}

// ---------------------------------------------------------------- makes

function cardMake(make: Make, isDish: boolean, setting: CardSetting): CardMake {
  const inside = walkItems(make, setting);
  const asserted = make.ref.line.parsed.content;
  const weighed = asserted.kind === 'block' && asserted.equal !== undefined && make.pot.grams;
  return {
    id: make.id.replace(/[^\p{L}\p{N}]+/gu, '-'),
    name: make.name,
    implicit: make.implicit,
    ...(weighed ? { weight: scaledAmount(weightAmount(weighed), setting) } : {}),
    ...inside,
    // The dish's own keeping stands at the end of the card.
    keeping: isDish ? [] : make.keeps.map((keep) => keepingOf(keep, setting)),
  };
}

/** What stands in a make, in its order: each in line with the step below it, each saved thing and remark with the step above. */
function walkItems(make: Make, setting: CardSetting): Pick<CardMake, 'ingredients' | 'steps' | 'remarks'> {
  const ingredients: CardIngredient[] = [];
  const steps: CardStep[] = [];
  const remarks: CardRemark[] = [];
  const addToStep = (more: Partial<Pick<CardStep, 'saved' | 'remarks'>>): boolean => {
    const last = steps.at(-1);
    if (!last) return false;
    steps[steps.length - 1] = {
      ...last,
      saved: [...last.saved, ...(more.saved ?? [])],
      remarks: [...last.remarks, ...(more.remarks ?? [])],
    };
    return true;
  };
  for (const item of make.items) {
    switch (item.kind) {
      case 'in':
        ingredients.push(ingredientOf(item, steps.length, setting));
        break;
      case 'step':
        steps.push(cardStep(item, make, setting));
        break;
      case 'out':
        if (item.content.verb === 'save') addToStep({ saved: [savedOf(item, setting)] });
        break;
      case 'remark': {
        const remark = remarkOf(item);
        if (remark && !addToStep({ remarks: [remark] })) remarks.push(remark);
        break;
      }
      case 'check':
        break;
    }
  }
  return { ingredients, steps, remarks };
}

function ingredientOf(item: InItem, step: number, setting: CardSetting): CardIngredient {
  const { content } = item;
  const make = madeIn(item, setting.formula);
  const percent = percentWords(item);
  return {
    amount: ingredientAmount(item, setting),
    name: content.any ? `any ${content.name.text}` : content.name.text,
    ...(content.note ? { note: content.note.text } : {}),
    optional: item.optional,
    ...(make === undefined ? {} : { make }),
    ...(percent === undefined ? {} : { percent }),
    alternatives: item.alternatives.map((other) => ingredientOf(other, step, setting)),
    step,
  };
}

function savedOf(item: OutItem, setting: CardSetting): CardSaved {
  const { content } = item;
  return {
    amount: savedAmount(item, setting),
    name: content.as?.text ?? item.saved ?? content.of?.text ?? '',
    ...(content.note ? { note: content.note.text } : {}),
  };
}

function remarkOf({ content }: RemarkItem): CardRemark | undefined {
  const { word, words } = content;
  const isRemark = word === 'note' || word === 'tip' || word === 'warning' || word === 'serve with';
  return isRemark ? { kind: word, text: words.text } : undefined;
}

function keepingOf({ content }: Keeping | Ageing, setting: CardSetting): CardKeeping {
  const at = content.kind === 'keeps' ? content.at : undefined;
  return {
    time: cardTime(content.time, setting),
    ...(at ? { at: bothScales(at, 'food', setting.style) } : {}),
    ...(content.note ? { note: content.note.text } : {}),
  };
}

// ---------------------------------------------------------------- yield

function weightAmount(grams: Rational): ScalableAmount {
  const text = toExactText(grams);
  return { kind: 'weight', about: false, grams: { low: text, high: text }, dose: false };
}

/** The figure by which the page is scaled: what the recipe gives, else serves, else weighs, else one batch. */
function yieldOf(setting: CardSetting): CardYield {
  const { formula, factor } = setting;
  const { gives, serves, vessel } = formula.facts;
  const servesAmount = serves && countAmount(serves.content.range, serves.content.thing?.text ?? 'servings');
  const vesselAmount = vessel && vesselAmountOf(vessel.content);
  const common = vesselAmount ? { vessel: scaledAmount(vesselAmount, setting) } : {};
  const counted = gives?.content.count;
  const { pieces, servings, dishGrams } = formula;
  if (counted && pieces && !isZero(pieces)) {
    const thing = gives.content.thing?.text ?? 'pieces';
    const same =
      serves !== undefined && (serves.content.thing?.text ?? 'servings') === thing && equal(servings ?? ONE, pieces);
    return {
      thing,
      count: toExactText(multiply(pieces, factor)),
      ...eachOf(setting),
      ...(servesAmount && !same ? { serves: scaledAmount(servesAmount, setting) } : {}),
      ...common,
    };
  }
  const total = dishGrams ? { total: scaledAmount(weightAmount(dishGrams), setting) } : {};
  if (servings && !isZero(servings)) {
    return {
      thing: serves?.content.thing?.text ?? 'servings',
      count: toExactText(multiply(servings, factor)),
      ...total,
      ...common,
    };
  }
  if (gives?.content.total && dishGrams) {
    return { thing: 'g', count: toExactText(multiply(dishGrams, factor)), ...common };
  }
  return { thing: 'batches', count: toExactText(factor), ...total, ...common };
}

/** The weight of each piece: as the writer states it, else as the ledger has it. */
function eachOf(setting: CardSetting): Pick<CardYield, 'each'> {
  const { formula } = setting;
  const { pieces, dishGrams } = formula;
  const stated = formula.facts.gives?.content.each;
  if (stated) return { each: fixedAmount(measuredAmount(stated, setting.cups), setting) };
  return pieces && dishGrams ? { each: fixedAmount(weightAmount(divide(dishGrams, pieces)), setting) } : {};
}

function countAmount(range: Interval, thing: string): ScalableAmount {
  return { kind: 'count', about: false, count: exactRange(range), ...bothNumbers(thing) };
}

function vesselAmountOf(fact: VesselFact): ScalableAmount {
  const { one, many } = bothNumbers(fact.thing.text);
  const size = sizeText(fact);
  const count = toExactText(fact.count);
  return {
    kind: 'count',
    about: false,
    count: { low: count, high: count },
    one: `${one} of ${size}`,
    many: `${many} of ${size}`,
  };
}

// ---------------------------------------------------------------- what stays

/** What does not follow when the page is scaled: a sentence each, for a reader who asks for another size. */
function fixedOf(formula: Formula): string[] {
  const steps = formula.makes.flatMap((make) => make.items.filter((item) => item.kind === 'step'));
  const heated = steps.some(({ content }) => content.lane === 'oven' || content.lane === 'hob');
  const open = formula.makes.some((make) =>
    make.items.some((item) => item.kind === 'in' && item.content.amount.kind === 'open'),
  );
  return [
    'Times and temperatures stand as written.',
    ...(heated
      ? ['A larger or smaller piece or pot takes longer or shorter over the heat: go by the signs in the steps.']
      : []),
    ...(formula.facts.vessel ? ['The size of the vessel stays; only their number follows.'] : []),
    ...(open ? ['What is put in by eye or to taste is still by eye and to taste.'] : []),
  ];
}
