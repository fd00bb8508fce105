import type { Compiled, Formula, Menu } from '@quern/compiler';
import type { Choice } from '../protocol.js';

/** What a person looks at: a recipe or variant, or a menu. */
export type Chosen =
  { readonly kind: 'formula'; readonly formula: Formula } | { readonly kind: 'menu'; readonly menu: Menu };

interface Entry extends Choice {
  readonly chosen: Chosen;
}

/**
 * The entries of a file: a menu first, since it is what the file is for, then each recipe with its variants, then the
 * dishes of the menu that stand in other files. An entry is called by its place among its kind, so that it stays the
 * same while its title is being typed.
 */
function entries({ menus, formulas }: Compiled): readonly Entry[] {
  const own = new Set(formulas);
  const dishes = menus.flatMap(({ courses }) => courses.flatMap((course) => course.dishes));
  const others = new Set(dishes.flatMap(({ formula }) => (formula && !own.has(formula) ? [formula] : [])));
  return [
    ...menus.map((menu, index): Entry => ({
      id: `menu ${index}`,
      title: menu.name,
      kind: 'menu',
      chosen: { kind: 'menu', menu },
    })),
    ...formulas.map((formula, index) => entryOf(`recipe ${index}`, formula)),
    ...[...others].map((formula, index) => entryOf(`dish ${index}`, formula)),
  ];
}

function entryOf(id: string, formula: Formula): Entry {
  const { title, variant } = formula;
  const kind = variant === undefined ? 'recipe' : 'variant';
  return { id, title: variant ?? title, kind, chosen: { kind: 'formula', formula } };
}

export function choicesOf(compiled: Compiled): readonly Choice[] {
  return entries(compiled).map(({ id, title, kind }) => ({ id, title, kind }));
}

/** The entry that is asked for, else the first; undefined when the file holds none. */
export function choose(compiled: Compiled, id: string): Chosen | undefined {
  const all = entries(compiled);
  return (all.find((entry) => entry.id === id) ?? all[0])?.chosen;
}

/** A recipe for the views of one recipe: that of the choice, else the first. */
export function formulaOf(compiled: Compiled, id: string): Formula | undefined {
  const all = entries(compiled).filter(({ kind }) => kind !== 'menu');
  const chosen = (all.find((entry) => entry.id === id) ?? all[0])?.chosen;
  return chosen?.kind === 'formula' ? chosen.formula : undefined;
}
