import type { Formula, VariantEdit } from '@quern/compiler';
import type { CardVariant } from './card-data.js';

/** What a variant changes, in a few words each. A promise (`free of`) is not repeated here: the label checks it. */
export function variantWords(variant: Formula): CardVariant {
  const changes = variant.edits.map(changeWords).filter((words) => words !== undefined);
  return { name: variant.variant ?? variant.title, changes: [...new Set(changes)] };
}

function changeWords({ ref }: VariantEdit): string | undefined {
  const { content } = ref.line.parsed;
  const part = (span: { readonly start: number; readonly end: number }): string =>
    ref.line.text.slice(span.start, span.end).trim().replace(/\s+/g, ' ');
  const inside = (make: { readonly text: string } | undefined): string => (make ? ` in ${make.text}` : '');
  switch (content.kind) {
    case 'swap': {
      const amount = content.amount ? `${part(content.amount.span)} ` : '';
      return `${amount}${content.to.text} instead of ${content.from.text}${inside(content.in)}`;
    }
    case 'drop':
      return `${content.name.text} left out${inside(content.in)}`;
    case 'add':
      return `${part(content.amount.span)} ${content.name.text} beside ${content.beside.text}`;
    case 'times':
      return `everything ${ref.line.text.trim().toLowerCase()}`;
    case 'block':
      return content.name ? `another way with ${content.name.text}` : undefined;
    case 'list-fact':
      return content.word === 'free of' ? undefined : ref.line.text.trim();
    default:
      return ref.line.text.trim();
  }
}
