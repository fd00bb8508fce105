import { byId, make } from './dom.js';

export interface ListedFile {
  readonly path: string;
  readonly dirty: boolean;
}

/** The list of files above the editor: those that are open, and those that could be. */
export class FileList {
  readonly #select = byId<HTMLSelectElement>('files');
  #state = '';

  constructor(choose: (path: string) => void) {
    this.#select.addEventListener('change', () => choose(this.#select.value));
  }

  show(shown: string, open: readonly ListedFile[], others: readonly string[], othersTitle: string): void {
    const state = JSON.stringify([shown, open, others]);
    if (state === this.#state) return;
    this.#state = state;
    const group = (label: string, options: readonly HTMLOptionElement[]): HTMLOptGroupElement[] =>
      options.length === 0 ? [] : [make('optgroup', { label }, ...options)];
    this.#select.replaceChildren(
      ...group(
        'Open',
        open.map(({ path, dirty }) => make('option', { value: path }, dirty ? `${path} (not saved)` : path)),
      ),
      ...group(
        othersTitle,
        others.map((path) => make('option', { value: path }, path)),
      ),
    );
    this.#select.value = shown;
  }
}
