/** The element of the page with this id. */
export function byId<T extends HTMLElement = HTMLElement>(id: string): T {
  const found = document.getElementById(id);
  if (!found) throw new Error(`the page has no element “${id}”`);
  return found as T;
}

type Attributes = Readonly<Record<string, string | boolean | undefined>>;

/** An element with attributes; strings among its children are text, never markup. */
export function make<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  attributes: Attributes = {},
  ...children: readonly (Node | string)[]
): HTMLElementTagNameMap[K] {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (value === undefined || value === false) continue;
    element.setAttribute(name, value === true ? '' : value);
  }
  element.append(...children);
  return element;
}

/** A button that does something. */
export function button(words: string, act: () => void, attributes: Attributes = {}): HTMLButtonElement {
  const made = make('button', { type: 'button', ...attributes }, words);
  made.addEventListener('click', act);
  return made;
}
