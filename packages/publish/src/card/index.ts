export { cardTree, type CardOptions } from './card-tree.js';
export { cardHtml, type CardPageOptions } from './card-page.js';
export { cardStyle } from './card-style.js';
export { englishWords, type CardWords } from './words.js';
export { cardScript, cardScriptHash } from '../generated/card-script.js';
export { cardMarkdown, type CardMarkdownOptions } from './card-markdown.js';
export { cardText, type CardTextOptions } from './card-text.js';
export {
  cardScale,
  chooseFormulas,
  recipeCard,
  type Asked,
  type RecipeCardOptions,
  type RecipeChoice,
} from './recipe-card.js';
