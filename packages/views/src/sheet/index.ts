export * from './sheet-data.js';
export { sheet } from './sheet.js';
export type { SheetOptions } from './setting.js';
export { findScale, UNSCALED, type Scale } from './scale.js';
export { readScale, type ScaleKind, type ScaleRequest } from './scale-request.js';
