/** The extension is bundled from `extension.ts` and `extension-browser.ts`; nothing imports this package. */
export { framed } from './frame.js';
