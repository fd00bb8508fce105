import { movedBy, type Diagnostic } from '@quern/text';
import type { Document } from './ast.js';
import type { Outline, RecipeBlock } from './outline-types.js';
import type { Passage, PlacedPassage } from './passages.js';
import { OutlineBuilder } from './structure.js';

/*
 * The blocks of a file. A passage that is one recipe and nothing else is put into blocks by itself, once; where it has
 * only moved, its blocks are made anew when somebody looks into it.
 */

/** A recipe that is a passage by itself, where the passage was first read. */
interface Alone {
  readonly recipe: RecipeBlock;
  readonly said: readonly Diagnostic[];
}

/** The blocks of a file. Messages of single lines are not repeated here. */
export function outline(document: Document): Outline {
  const { path, passages } = document;
  const builder = new OutlineBuilder(path);
  for (const placed of passages) {
    const alone = placed.once(aloneHere);
    if (alone === 'with others') builder.take(placed.lines);
    else builder.takeRecipe(alone.recipe, alone.said);
  }
  return builder.finish();
}

function aloneHere(placed: PlacedPassage): Alone | 'with others' {
  const first = placed.passage.once(alone);
  return first === 'with others' || placed.inPlace ? first : movedTo(placed, first);
}

function alone({ file, lines }: Passage): Alone | 'with others' {
  const builder = new OutlineBuilder(file);
  builder.take(lines);
  if (!builder.alone) return 'with others';
  const { recipes, diagnostics } = builder.finish();
  const [recipe] = recipes;
  return recipe ? { recipe, said: diagnostics } : 'with others';
}

function movedTo(placed: PlacedPassage, { recipe, said }: Alone): Alone {
  let made: RecipeBlock | undefined;
  const blocks = (): RecipeBlock => {
    if (made === undefined) {
      const builder = new OutlineBuilder(placed.passage.file);
      builder.take(placed.lines);
      made = builder.finish().recipes[0] as RecipeBlock;
    }
    return made;
  };
  return {
    recipe: {
      heading: { line: placed.first, content: recipe.heading.content },
      get facts() {
        return blocks().facts;
      },
      get makes() {
        return blocks().makes;
      },
      get variants() {
        return blocks().variants;
      },
    },
    said: said.map((diagnostic) => movedBy(diagnostic, placed.moved)),
  };
}
