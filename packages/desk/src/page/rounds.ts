import type { Look, Questions, Settings, View, ViewAnswer } from '../protocol.js';
import type { Service } from './client.js';

export interface RoundsHost {
  readonly service: Service;
  /** The file that is shown, as it stands now. */
  file(): { readonly path: string; readonly text: string };
  asked(): { readonly view: View; readonly settings: Settings };
  /** What the service says of the text; it is still the same text. */
  looked(look: Look): void;
  /** Fetches files that the text uses; true when one has come. */
  fetch(missing: readonly string[]): Promise<boolean>;
  viewed(answer: ViewAnswer): Promise<void>;
  /** All that is said of the text, with what mends it. */
  fixed(found: Questions['fixes']['answer']): void;
  failed(error: unknown): void;
}

/** How long the text has to stand still before fixes are worked out, in milliseconds. */
const QUIET = 250;

/**
 * Keeps what is shown in step with the text, a round at a time: give the text, take the messages and colours, then the
 * view, and when nobody has typed for a moment the fixes. What has been overtaken by the text is left.
 */
export class Rounds {
  /** Goes up with every change of the text or of the file that is shown. */
  #version = 0;
  #sent = -1;
  #looked = -1;
  #viewed = -1;
  #fixed = -1;
  /** Goes up with every change of what is to be seen. */
  #wish = 0;
  #granted = -1;
  #running: Promise<void> | undefined;
  #wake: (() => void) | undefined;

  constructor(readonly host: RoundsHost) {}

  /** The text, or the file, is another. */
  textChanged(): void {
    this.#version++;
    this.#run();
  }

  /** Another view or other settings. */
  viewAsked(): void {
    this.#wish++;
    this.#run();
  }

  /** What the text is compared with is another: everything is looked at again. */
  again(): void {
    this.#looked = -1;
    this.viewAsked();
  }

  /** Gives the service the text as it stands. Questions are answered in order, so what is asked next is about it. */
  async settled(): Promise<void> {
    if (this.#sent === this.#version) return;
    const version = this.#version;
    const { path, text } = this.host.file();
    await this.#ask('put', { files: [{ path, text }], opened: false });
    this.#sent = Math.max(this.#sent, version);
  }

  #ask: Service['ask'] = (kind, body) => this.host.service.ask(kind, body);

  #run(): void {
    this.#wake?.();
    this.#running ??= this.#rounds()
      .catch((error: unknown) => {
        // Said once; the next change of the text tries again.
        this.#looked = this.#viewed = this.#fixed = this.#version;
        this.#granted = this.#wish;
        this.host.failed(error);
      })
      .finally(() => {
        this.#running = undefined;
      });
  }

  async #rounds(): Promise<void> {
    for (;;) {
      if (this.#looked !== this.#version) await this.#look();
      else if (this.#viewed !== this.#version || this.#granted !== this.#wish) await this.#view();
      else if (this.#fixed !== this.#version) await this.#fixes();
      else return;
    }
  }

  async #look(): Promise<void> {
    const version = this.#version;
    await this.settled();
    const { path } = this.host.file();
    const look = await this.#ask('look', { path });
    if (version !== this.#version) return;
    if (await this.host.fetch(look.missing)) return;
    if (version !== this.#version) return;
    this.#looked = version;
    this.#fixed = -1;
    this.host.looked(look);
  }

  async #view(): Promise<void> {
    const version = this.#version;
    const wish = this.#wish;
    const { path } = this.host.file();
    const body: Questions['view']['body'] = { path, ...this.host.asked() };
    const answer = await this.#ask('view', body);
    this.#viewed = version;
    this.#granted = wish;
    // While somebody types on, what was asked a moment ago is still worth showing, unless it is of another file or view.
    if (path === this.host.file().path && wish === this.#wish) await this.host.viewed(answer);
  }

  async #fixes(): Promise<void> {
    const version = this.#version;
    await this.#still();
    if (version !== this.#version || this.#granted !== this.#wish) return;
    const found = await this.#ask('fixes', { path: this.host.file().path });
    if (version !== this.#version) return;
    this.#fixed = version;
    this.host.fixed(found);
  }

  /** A quiet moment, or less when something happens. */
  #still(): Promise<void> {
    return new Promise((resolve) => {
      const timer = setTimeout(resolve, QUIET);
      this.#wake = () => {
        clearTimeout(timer);
        resolve();
      };
    });
  }
}
