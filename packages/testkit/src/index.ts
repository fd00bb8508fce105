/** Markers, case files, drawn diagnostics and a world in memory. For tests only. */
export { readMarkers, type Marked } from './markers.js';
export { memoryHost, splitExample, type SourceText } from './world.js';
export { draw } from './draw.js';
export { runCases, type SectionRenderer } from './run-cases.js';
