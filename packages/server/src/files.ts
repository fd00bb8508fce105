/** How the server reads files that no editor has open. Files are named by their URI. */
export interface Files {
  /** Text of a file that lies in a folder, wherever links lead; undefined when there is none or it may not be read. */
  read(uri: string, folder: string): string | undefined;
  /** Every recipe file of a folder, and below when it is `deep`. */
  list(folder: string, deep: boolean): readonly string[];
}

/** Files that somebody else sends: for a server that has no disk. */
export class SentFiles implements Files {
  readonly #texts = new Map<string, string>();

  set(uri: string, text: string | undefined): void {
    if (text === undefined) this.#texts.delete(uri);
    else this.#texts.set(uri, text);
  }

  read(uri: string): string | undefined {
    return this.#texts.get(uri);
  }

  list(folder: string, deep: boolean): readonly string[] {
    const inside = [...this.#texts.keys()].filter((uri) => uri.startsWith(`${folder}/`));
    return deep ? inside : inside.filter((uri) => !uri.slice(folder.length + 1).includes('/'));
  }
}
