/** The notation: lines, syntax tree, outline, printer and formatter. */
export * from './ast.js';
export * from './outline-types.js';
export { entryOf, factWord, lineWords, type LineWord, type Standing, type WordKind } from './classify.js';
export { cutLines, hasByteOrderMark, usualEnding, type CutLine } from './lines.js';
export { MOST_CHARACTERS, parseLine } from './parse-line.js';
export { LineCache, parseDocument, reparseDocument } from './document.js';
export { outline } from './outline.js';
export { passageAt, passageOfLine, type Passage, type PlacedPassage } from './passages.js';
export { printAmount, printClock, printLine, printNumeral, printRange, printTemperature, printTime } from './print.js';
export { tidy, type Tidied } from './format.js';
export { timeIn } from './suggested-step.js';
export {
  scanProse,
  type AcidityMention,
  type LengthMention,
  type MeasureMention,
  type Mention,
  type PercentMention,
  type TemperatureMention,
  type TimeMention,
} from './scan-prose.js';
