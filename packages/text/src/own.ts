/**
 * What a table holds under a word that somebody wrote; undefined when it holds nothing of its own there. Every object also
 * answers to words such as `constructor`, which a recipe may hold like any other.
 */
export function ownValue<Value>(table: Readonly<Record<string, Value>>, word: string): Value | undefined {
  return Object.hasOwn(table, word) ? table[word] : undefined;
}
