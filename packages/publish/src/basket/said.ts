import type { BasketAmount, BasketData, BasketItem } from '@quern/views';

/* What stands on a shopping list, the same in every output. Texts are not yet escaped for where they go. */

/** A line of the list. */
export interface ListLine {
  readonly amount: string;
  readonly us: string;
  readonly name: string;
  /** Packages, what may be bought instead, what is only used if one likes. */
  readonly more: readonly string[];
}

export function listLine(item: BasketItem, data: BasketData): ListLine {
  const all = [...item.amounts, ...item.ifUsed];
  const isOptional = item.amounts.length === 0;
  const amounts = isOptional ? item.ifUsed : item.amounts;
  const us =
    data.measures === 'metric'
      ? ''
      : amounts
          .map((amount) => amount.us ?? '')
          .filter(Boolean)
          .join(' + ');
  const metric = amounts.map(amountText).join(' + ');
  return {
    amount: data.measures === 'us' && us !== '' && all.every((amount) => amount.us) ? us : metric,
    us: data.measures === 'both' ? us : '',
    name: item.name,
    more: [
      ...(item.packages ? [`${item.packages.text}, ${item.packages.left.text} left over`] : []),
      ...(isOptional ? ['if used'] : item.ifUsed.map((amount) => `and ${amountText(amount)} if used`)),
      ...(item.instead.length > 0 ? [`or ${item.instead.join(', or ')}`] : []),
    ],
  };
}

/** '2 tins of 400 g', '7 (350 g)', '2 (about 160 g)'. */
function amountText({ kind, text, about, weight }: BasketAmount): string {
  const loosely = about || kind === 'open' ? 'about ' : '';
  if (kind === 'weight') return loosely + text;
  return weight ? `${text} (${loosely}${weight.text})` : text;
}

/** The recipes of the list, each with its factor when it is not one. */
export function recipeLines(data: BasketData): readonly string[] {
  return data.recipes.map(({ title, variant, factor }) => {
    const name = variant === undefined ? title : `${title} (${variant})`;
    return factor === '1' ? name : `${name}, times ${factor}`;
  });
}

export const ownedLines = (data: BasketData): readonly string[] =>
  data.owned.map(({ name, weight }) => (weight ? `${weight.text} ${name}` : name));
