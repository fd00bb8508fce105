export { sheetText, type SheetTextOptions } from './sheet-text.js';
export { sheetMarkdown } from './sheet-markdown.js';
export { sheetCsv } from './sheet-csv.js';
export { sheetHtml, sheetTree } from './sheet-html.js';
