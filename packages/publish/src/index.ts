/** Views as pages, texts and data for others: nothing here reckons; every text is escaped for where it goes. */
export * from './escape.js';
export {
  element,
  toHtml,
  type Child,
  type ElementNode,
  type HtmlNode,
  type Properties,
  type TextNode,
} from './html/tree.js';
export * from './card/index.js';
export { cardJsonLd, type Json, type JsonLdOptions } from './json-ld/json-ld.js';
export * from './feed/index.js';
export * from './site/index.js';
export * from './label/index.js';
export * from './sheet/index.js';
export * from './basket/index.js';
export { csvTable, type CsvCell } from './csv/csv-table.js';
export { jsonText } from './json/pretty.js';
export { NO_PAINT, type Paint } from './terminal/paint.js';
export * from './report/index.js';
export * from './clock/index.js';
export * from './compare/index.js';
export * from './history/index.js';
