import type { FoodBook, Host } from '@quern/compiler';

/** A file of a world in memory. */
export interface SourceText {
  readonly path: string;
  readonly text: string;
}

/** The world in memory: these files and this food table, and nothing else. */
export function memoryHost(files: readonly SourceText[], foods: FoodBook): Host {
  const texts = new Map(files.map((file) => [file.path, file.text]));
  return { read: (path) => texts.get(path), foods };
}

/**
 * The files of an example in the registry of messages: the first is `main.quern`, and a line `=== NAME` begins another.
 */
export function splitExample(example: string): SourceText[] {
  const parts = example.split(/^=== (.+)\n/m);
  const files = [{ path: 'main.quern', text: parts[0] ?? '' }];
  for (let index = 1; index < parts.length; index += 2) {
    files.push({ path: parts[index] ?? '', text: parts[index + 1] ?? '' });
  }
  return files;
}
