export { labelJson, type LabelJson } from './label-json.js';
export { labelPage, labelTree, type LabelPageOptions } from './label-page.js';
export { labelText, type LabelTextOptions } from './label-text.js';
export { isDate } from './dates.js';
export { TAG_SIZES, tagPage, tagText, tagTree, type TagOptions, type TagSize } from './tag-page.js';
