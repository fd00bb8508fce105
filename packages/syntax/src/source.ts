/**
 * Something of which other things are worked out that are wanted again. They are kept with it and go with it.
 *
 * A WeakMap would do the same, but its entries outlive their keys until the engine collects all of its memory, and with
 * each key in a long file some thousands of things would wait for that: the process then stops for long enough to be felt.
 */
export class Source {
  #made: Map<unknown, unknown> | undefined;

  /**
   * What `make` gives of this, worked out when it is first asked for. `make` is always the same function, not one made anew,
   * and gives a value.
   */
  once<T extends NonNullable<unknown>>(make: (source: this) => T): T {
    const known = this.#made?.get(make);
    if (known !== undefined) return known as T;
    const made = make(this);
    this.#made ??= new Map();
    this.#made.set(make, made);
    return made;
  }
}
