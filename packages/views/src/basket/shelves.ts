import type { FoodRole } from '@quern/compiler';
import { isWater, type LedgerFood } from '@quern/compiler';
import type { ShelfId } from './basket-data.js';

/** Where a food stands in a shop, in the order one walks it. The first shelf that has one of the food's roles. */
const SHELVES: readonly { readonly id: ShelfId; readonly name: string; readonly roles: readonly FoodRole[] }[] = [
  { id: 'meat', name: 'meat', roles: ['meat'] },
  { id: 'fish', name: 'fish', roles: ['fish'] },
  { id: 'dairy', name: 'dairy and eggs', roles: ['dairy', 'egg'] },
  { id: 'baking', name: 'salt and raising agents', roles: ['salt', 'leaven'] },
  { id: 'spices', name: 'herbs and spices', roles: ['spice'] },
  { id: 'nuts', name: 'nuts and seeds', roles: ['nut', 'seed'] },
  { id: 'flour', name: 'flour and grains', roles: ['flour', 'cereal', 'starch'] },
  { id: 'pulses', name: 'pulses', roles: ['pulse'] },
  { id: 'drinks', name: 'wine and spirits', roles: ['spirit'] },
  { id: 'sugar', name: 'sugars and syrups', roles: ['sugar'] },
  { id: 'fats', name: 'fats and oils', roles: ['fat'] },
  { id: 'vegetables', name: 'vegetables and fruit', roles: ['vegetable', 'fruit'] },
];

const ORDER: readonly ShelfId[] = [
  'vegetables', 'meat', 'fish', 'dairy', 'flour', 'sugar', 'baking', 'fats', 'nuts', 'pulses', 'spices', 'drinks', 'other', 'tap',
]; // prettier-ignore

export function shelfOf(food: LedgerFood | undefined): ShelfId {
  if (isWater(food)) return 'tap';
  const roles = food?.food?.roles ?? [];
  const found = SHELVES.find((shelf) => shelf.roles.some((role) => roles.includes(role)));
  return found?.id ?? (food?.food?.flags.includes('alcohol') ? 'drinks' : 'other');
}

export function shelfName(id: ShelfId): string {
  if (id === 'tap') return 'from the tap';
  return SHELVES.find((shelf) => shelf.id === id)?.name ?? 'everything else';
}

export const shelfOrder = (a: ShelfId, b: ShelfId): number => ORDER.indexOf(a) - ORDER.indexOf(b);
