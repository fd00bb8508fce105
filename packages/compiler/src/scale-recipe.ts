import { multiply, type Rational } from '@quern/quantity';
import type {
  Amount,
  BodyItem,
  Bracket,
  Count,
  Equal,
  FactLine,
  MakeBlock,
  Measure,
  NumberRange,
  Prose,
  RecipeBlock,
} from '@quern/syntax';

/*
 * A recipe times a number (NOTATION 0.22): every amount, `gives`, `serves`, the number of vessels, asserted weights and
 * the figures in square brackets; never shares, percents, lengths, times or temperatures. `check` lines keep their
 * figures: the ledger compares them with what is found divided by the factor, so that the digits written stay the test.
 */

export function scaleRecipe(recipe: RecipeBlock, factor: Rational): RecipeBlock {
  return {
    ...recipe,
    facts: recipe.facts.map((fact) => ({ ...fact, content: scaleFact(fact.content, factor) })),
    makes: recipe.makes.map((make) => scaleMake(make, factor)),
  };
}

function scaleRange(range: NumberRange, factor: Rational): NumberRange {
  return { ...range, low: multiply(range.low, factor), high: multiply(range.high, factor), decimals: null };
}

function scaleMeasure(measure: Measure, factor: Rational): Measure {
  const and = measure.and ? { and: { ...measure.and, value: multiply(measure.and.value, factor) } } : {};
  return { ...measure, range: scaleRange(measure.range, factor), ...and };
}

export function scaleAmount<A extends Amount | Measure | Count>(amount: A, factor: Rational): A {
  switch (amount.kind) {
    case 'measure':
      return scaleMeasure(amount, factor) as A;
    case 'count':
    case 'pack':
    case 'portion':
      return { ...amount, range: scaleRange(amount.range, factor) };
    default:
      return amount;
  }
}

/** `= 50 g each` stays: it is the weight of one. */
function scaleEqual(equal: Equal, factor: Rational): Equal {
  return equal.each ? equal : { ...equal, amount: scaleAmount(equal.amount, factor) };
}

function scaleMake(make: MakeBlock, factor: Rational): MakeBlock {
  const heading = make.heading;
  const asserted = heading?.content.equal;
  return {
    ...make,
    ...(heading && asserted
      ? { heading: { ...heading, content: { ...heading.content, equal: scaleMeasure(asserted, factor) } } }
      : {}),
    items: make.items.map((item) => scaleItem(item, factor)),
  };
}

function scaleItem(item: BodyItem, factor: Rational): BodyItem {
  switch (item.kind) {
    case 'in': {
      const scaleIn = (line: (typeof item)['main']): (typeof item)['main'] => ({
        ...line,
        content: {
          ...line.content,
          amount: scaleAmount(line.content.amount, factor),
          equals: line.content.equals.map((equal) => scaleEqual(equal, factor)),
        },
      });
      return { ...item, main: scaleIn(item.main), alternatives: item.alternatives.map(scaleIn) };
    }
    case 'out': {
      const { content } = item.main;
      return {
        ...item,
        main: {
          ...item.main,
          content: {
            ...content,
            amount: scaleAmount(content.amount, factor),
            equals: content.equals.map((equal) => scaleEqual(equal, factor)),
          },
        },
      };
    }
    case 'step':
      return {
        ...item,
        main: { ...item.main, content: { ...item.main.content, prose: scaleProse(item.main.content.prose, factor) } },
        more: item.more.map((more) => ({
          ...more,
          content: { ...more.content, prose: scaleProse(more.content.prose, factor) },
        })),
      };
    default:
      return item;
  }
}

function scaleProse(prose: Prose, factor: Rational): Prose {
  const scaleBracket = (bracket: Bracket): Bracket =>
    bracket.amount && bracket.amount.kind !== 'share'
      ? { ...bracket, amount: scaleAmount(bracket.amount, factor) }
      : bracket;
  return { ...prose, brackets: prose.brackets.map(scaleBracket) };
}

function scaleFact(content: FactLine, factor: Rational): FactLine {
  switch (content.kind) {
    case 'gives':
      if (content.count) return { ...content, count: scaleRange(content.count, factor) };
      return content.total ? { ...content, total: scaleMeasure(content.total, factor) } : content;
    case 'serves':
      return { ...content, range: scaleRange(content.range, factor) };
    case 'vessel':
      return { ...content, count: multiply(content.count, factor) };
    default:
      return content;
  }
}
