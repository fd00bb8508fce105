/** The notation: lines, syntax tree, outline, printer and formatter. */
export * from './ast.js';
export * from './outline-types.js';
