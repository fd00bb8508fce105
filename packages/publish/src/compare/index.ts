export { compareInputs, type CompareInputOptions } from './compare-inputs.js';
export { comparisonText, type ComparisonTextOptions } from './comparison-text.js';
export { comparisonMarkdown } from './comparison-markdown.js';
export { comparisonJson, COMPARISON_JSON_VERSION } from './comparison-json.js';
export { comparisonPage, comparisonTree, type ComparisonPageOptions } from './comparison-html.js';
