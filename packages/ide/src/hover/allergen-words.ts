import type { AllergenId } from '@quern/compiler';

/** An allergen class in words. */
export function describeAllergen(id: AllergenId): string {
  if (id === 'other-gluten') return 'gluten (cereal not stated)';
  if (id === 'other-nut') return 'nuts (not stated which)';
  return id.replace(/-/g, ' ');
}
