declare global {
  /** The recipes of Pennymoss Quay by file name, put there by examples.js. */
  var quernExamples: Readonly<Record<string, string>> | undefined;
}

export const examples: Readonly<Record<string, string>> = globalThis.quernExamples ?? {};

/** An example's text; undefined when there is none of that name. */
export const exampleText = (path: string): string | undefined =>
  Object.hasOwn(examples, path) ? examples[path] : undefined;
