import type { BasketAmount, BasketData } from '@quern/views';
import { csvTable, type CsvCell } from '../csv/csv-table.js';
import { figure } from '../csv/figure.js';

const HEAD = ['shelf', 'name', 'kind', 'amount', 'grams', 'grams to', 'measure', 'packages', 'instead', 'recipes'];

/** The shopping list as comma-separated values: a row for each way in which a food is told. */
export function basketCsv(data: BasketData): string {
  const rows = data.shelves.flatMap(({ name: shelf, items }) =>
    items.flatMap((item) => {
      const ends: CsvCell[] = [item.packages?.text ?? '', item.instead.join('; '), item.recipes.join('; ')];
      const row = (amount: BasketAmount, kind: string): CsvCell[] => [
        shelf,
        item.name,
        kind,
        amount.text,
        ...weight(amount),
        amount.us ?? '',
        ...ends,
      ];
      return [
        ...item.amounts.map((amount) => row(amount, amount.kind)),
        ...item.ifUsed.map((amount) => row(amount, 'if used')),
      ];
    }),
  );
  return csvTable([HEAD, ...rows]);
}

function weight({ weight: of }: BasketAmount): CsvCell[] {
  return of ? [figure(of.grams.low, 3), figure(of.grams.high, 3)] : ['', ''];
}
