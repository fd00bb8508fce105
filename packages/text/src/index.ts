/** Files, spans, edits and the registry of diagnostics. Knows nothing of recipes beyond the wording of the messages. */
export * from './span.js';
export * from './source-file.js';
export * from './edits.js';
export { ownValue } from './own.js';
export * from './english.js';
export * from './suggest.js';
export * from './diagnostic.js';
export { messages, type Message, type MessageCode, type MessageArguments } from './messages/index.js';
