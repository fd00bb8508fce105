/** Recipes in Markdown become cards: a remark plugin that compiles, and rehype plugins that put the cards in place. */
export { remarkQuern, remarkQuern as default } from './remark-quern.js';
export { rehypeQuern, rehypeQuernAssets, type RehypeQuernAssetsOptions } from './rehype-quern.js';
export { allowCards, quernSchema } from './sanitize.js';
export type { RemarkQuernOptions } from './options.js';
export { cardScript, cardStyle, englishWords, type CardWords } from '@quern/publish';
