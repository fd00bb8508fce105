import type { Offer, Said } from '../protocol.js';
import { button, byId, make } from './dom.js';
import { capital } from './editor.js';
import { withCode } from './markdown.js';

export interface MessagesHost {
  lineOf(offset: number): number;
  select(from: number, to: number): void;
  take(offer: Offer): void;
}

const SIGNS = { error: '✕', warning: '!', hint: 'i' } as const;

/** The list under the editor: what is wrong, the way out, and a button for each fix. */
export class Messages {
  readonly #summary = byId<HTMLButtonElement>('messages-toggle');
  readonly #list = byId('messages-list');
  #said: readonly Said[] = [];
  #shown = '';

  constructor(readonly host: MessagesHost) {
    this.#summary.addEventListener('click', () => this.#open(this.#summary.getAttribute('aria-expanded') !== 'true'));
    // Where there is room the list stands open; on a phone the count is enough until it is asked for.
    this.#open(!matchMedia('(max-width: 47.99rem)').matches);
  }

  #open(open: boolean): void {
    this.#summary.setAttribute('aria-expanded', String(open));
    this.#list.hidden = !open;
  }

  show(said: readonly Said[], fixes: readonly (readonly Offer[])[]): void {
    this.#said = said;
    const words = countWords(said);
    if (this.#summary.textContent !== words) this.#summary.textContent = words;
    this.#summary.dataset['worst'] = worst(said);
    const state = JSON.stringify([said, fixes]);
    if (state === this.#shown) return;
    this.#shown = state;
    const focused = this.#focusedPlace();
    this.#list.replaceChildren(...said.map((one, index) => this.#item(one, fixes[index] ?? [])));
    this.#refocus(focused);
  }

  #item(said: Said, fixes: readonly Offer[]): HTMLLIElement {
    const line = this.host.lineOf(said.from);
    const jump = button('', () => this.host.select(said.from, said.to), { class: 'message-jump' });
    jump.append(
      make('span', { class: `message-sign ${said.severity}`, 'aria-hidden': 'true' }, SIGNS[said.severity]),
      make('span', { class: 'message-place' }, `${capital(said.severity)}, line ${line}: `),
      ...withCode(`${said.sentence}.`),
    );
    const related = said.related.map(({ text, from }) =>
      make('p', { class: 'message-way' }, `${capital(text)}, line ${this.host.lineOf(from)}.`),
    );
    return make(
      'li',
      {},
      jump,
      make('p', { class: 'message-way' }, ...withCode(`${capital(said.wayOut)}.`)),
      ...related,
      ...(fixes.length === 0
        ? []
        : [
            make(
              'p',
              { class: 'message-fixes' },
              ...fixes.map((offer) => button(offer.title, () => this.host.take(offer))),
            ),
          ]),
    );
  }

  /** Which button of the list has the focus, so that a new list gives it back. */
  #focusedPlace(): number {
    return [...this.#list.querySelectorAll('button')].findIndex((one) => one === document.activeElement);
  }

  #refocus(place: number): void {
    if (place < 0) return;
    const buttons = [...this.#list.querySelectorAll('button')];
    (buttons[Math.min(place, buttons.length - 1)] ?? this.#summary).focus();
  }

  get said(): readonly Said[] {
    return this.#said;
  }
}

function countWords(said: readonly Said[]): string {
  const count = (severity: Said['severity'], one: string): string[] => {
    const { length } = said.filter((each) => each.severity === severity);
    return length === 0 ? [] : [`${length} ${length === 1 ? one : `${one}s`}`];
  };
  const counts = [...count('error', 'error'), ...count('warning', 'warning'), ...count('hint', 'hint')];
  return counts.length === 0 ? 'Nothing to mend' : counts.join(', ');
}

const worst = (said: readonly Said[]): string =>
  (['error', 'warning', 'hint'] as const).find((severity) => said.some((one) => one.severity === severity)) ?? 'none';
