import { button, byId, make } from './dom.js';

/*
 * What a newcomer sees first: a real recipe, and one number to change. The strip goes when it is told to, and is not
 * shown over a file of one's own.
 */

/** The recipe that stands on the first screen, and the number in it that everything follows. */
export const FIRST = { path: 'harbour-white.quern', line: 'gives 3 loaves', number: '3', better: '5' };

export interface HintHost {
  /** The text of the file that is shown. */
  text(): string;
  select(from: number, to: number): void;
  look(): void;
}

export class Hint {
  readonly #strip = byId('hint');
  #stage: 'gone' | 'ask' | 'done' = 'gone';

  constructor(readonly host: HintHost) {}

  /** Asks for the change. */
  start(): void {
    this.#stage = 'ask';
    this.#show(
      make(
        'p',
        {},
        make('strong', {}, 'One number, and everything follows. '),
        'In ',
        make('code', {}, 'gives 3 loaves of 800 g'),
        ` make the ${FIRST.number} a ${FIRST.better} and watch the sheet.`,
      ),
      button(`Show me the ${FIRST.number}`, () => this.#point()),
    );
  }

  #point(): void {
    const at = this.host.text().indexOf(FIRST.line);
    if (at < 0) return;
    const from = at + FIRST.line.indexOf(FIRST.number);
    this.host.select(from, from + FIRST.number.length);
  }

  /** The text has changed: says what came of it. */
  changed(): void {
    if (this.#stage !== 'ask') return;
    this.#stage = 'done';
    this.#show(
      make(
        'p',
        {},
        make('strong', {}, 'Everything was reckoned anew. '),
        'What changed is marked, with what it was. Other recipes are in the list above.',
      ),
      button('See the results', () => this.host.look(), { class: 'narrow' }),
    );
  }

  end(): void {
    this.#stage = 'gone';
    this.#strip.hidden = true;
    this.#strip.replaceChildren();
  }

  #show(...content: readonly Node[]): void {
    this.#strip.replaceChildren(
      ...content,
      button('×', () => this.end(), { class: 'dismiss', 'aria-label': 'Take this away' }),
    );
    this.#strip.hidden = false;
  }
}
