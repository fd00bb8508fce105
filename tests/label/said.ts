/** The words of the label, as its renderers write them. */
export { labelText } from '@quern/publish';
export { allergenWords as allergenSentences } from '../../packages/publish/src/label/words.js';
