export { basketText, type BasketTextOptions } from './basket-text.js';
export { basketMarkdown } from './basket-markdown.js';
export { basketHtml, basketTree } from './basket-html.js';
export { basketCsv } from './basket-csv.js';
