import {
  MARKETS,
  MEASURES,
  VIEWS,
  type Choice,
  type Rendered,
  type Settings,
  type View,
  type ViewAnswer,
} from '../protocol.js';
import { byId, make } from './dom.js';
import { ResultFrame } from './result-frame.js';

export const TITLES: Readonly<Record<View, string>> = {
  sheet: 'Sheet',
  clock: 'Clock',
  label: 'Label',
  card: 'Card',
  compare: 'Compare',
};

/** Mark of the browser's own clock at which the first result stood there. */
const FIRST_RESULT = 'first result';

export interface ResultsHost {
  /** Another view or other settings are asked for. */
  asked(): void;
  /** The view is to be kept as a file. */
  keep(): void;
}

/** The tabs, what is set beside them, and the frame in which the result stands. */
export class Results {
  readonly #tabs = new Map(VIEWS.map((view) => [view, byId<HTMLButtonElement>(`tab-${view}`)]));
  readonly #panel = byId('panel');
  readonly #frame = new ResultFrame(byId<HTMLIFrameElement>('result'));
  readonly #said = byId('said');
  readonly #refused = byId('refused');
  readonly #choice = byId<HTMLSelectElement>('choice');
  readonly #size = byId<HTMLInputElement>('size');
  readonly #measures = byId<HTMLSelectElement>('measures');
  readonly #market = byId<HTMLSelectElement>('market');
  readonly #ready = byId<HTMLInputElement>('ready');
  readonly #marking = byId<HTMLInputElement>('marking');
  #view: View = 'sheet';
  #last: ViewAnswer | undefined;
  #choices: readonly Choice[] = [];
  #listed = '';
  /** What was chosen by hand. */
  #wanted = '';

  constructor(readonly host: ResultsHost) {
    for (const [view, tab] of this.#tabs) {
      tab.addEventListener('click', () => this.choose(view));
      tab.addEventListener('keydown', (event) => this.#move(event, view));
    }
    this.#choice.addEventListener('change', () => {
      this.#wanted = this.#choice.value;
    });
    for (const field of [this.#choice, this.#measures, this.#market, this.#ready])
      field.addEventListener('change', () => host.asked());
    this.#size.addEventListener('input', () => host.asked());
    this.#marking.addEventListener('change', () => {
      if (this.#last) void this.show(this.#last);
    });
    const toggle = byId('settings-toggle');
    toggle.addEventListener('click', () =>
      toggle.setAttribute('aria-expanded', String(toggle.getAttribute('aria-expanded') !== 'true')),
    );
    byId('keep').addEventListener('click', () => host.keep());
    this.#fit();
  }

  get view(): View {
    return this.#view;
  }

  settings(): Settings {
    return {
      choice: this.#choice.value,
      size: this.#size.value,
      measures: MEASURES.find((one) => one === this.#measures.value) ?? 'both',
      market: MARKETS.find((one) => one === this.#market.value) ?? 'none',
      ready: this.#ready.value,
      zone: Intl.DateTimeFormat().resolvedOptions().timeZone,
      now: Date.now(),
    };
  }

  choose(view: View): void {
    if (view !== this.#view) {
      this.#view = view;
      this.#last = undefined;
      this.#frame.toTop();
      this.#fit();
      this.host.asked();
    }
  }

  /** Puts the focus on the tab that is chosen. */
  focus(): void {
    this.#tabs.get(this.#view)?.focus();
  }

  /** Arrow keys move along the tabs and choose, as the tabs pattern of the WAI-ARIA Authoring Practices has it. */
  #move(event: KeyboardEvent, view: View): void {
    const at = VIEWS.indexOf(view);
    const to =
      event.key === 'ArrowRight'
        ? (at + 1) % VIEWS.length
        : event.key === 'ArrowLeft'
          ? (at + VIEWS.length - 1) % VIEWS.length
          : event.key === 'Home'
            ? 0
            : event.key === 'End'
              ? VIEWS.length - 1
              : -1;
    const next = VIEWS[to];
    if (!next) return;
    event.preventDefault();
    this.choose(next);
    this.focus();
  }

  /** Shows which tab is chosen, and the settings that it has. */
  #fit(): void {
    for (const [view, tab] of this.#tabs) {
      const chosen = view === this.#view;
      tab.setAttribute('aria-selected', String(chosen));
      tab.tabIndex = chosen ? 0 : -1;
    }
    this.#listChoices();
    this.#panel.setAttribute('aria-labelledby', `tab-${this.#view}`);
    this.#frame.frame.title = `${TITLES[this.#view]} of the recipe`;
    for (const part of this.#panel.querySelectorAll<HTMLElement>('[data-for]'))
      part.hidden = !(part.dataset['for'] ?? '').split(' ').includes(this.#view) || this.#needless(part);
  }

  /** One recipe needs no choice. */
  #needless(part: HTMLElement): boolean {
    return part.id === 'choice-part' && this.#choice.options.length < 2;
  }

  setChoices(choices: readonly Choice[]): void {
    this.#choices = choices;
    this.#fit();
  }

  /** The list of what there is to look at: a menu has a clock alone. */
  #listChoices(): void {
    const fitting = this.#choices.filter(({ kind }) => kind !== 'menu' || this.#view === 'clock');
    const options = fitting.map(({ id, title, kind }) => {
      const words = kind === 'recipe' ? title : kind === 'variant' ? `– ${title}` : `${title} (menu)`;
      return make('option', { value: id }, words);
    });
    const state = JSON.stringify(fitting);
    if (state === this.#listed) return;
    this.#listed = state;
    this.#choice.replaceChildren(...options);
    // Until somebody chooses, each view begins with what the file is for.
    if (fitting.some(({ id }) => id === this.#wanted)) this.#choice.value = this.#wanted;
  }

  /** Back to what is usual, as when another file is opened. */
  reset(): void {
    this.#wanted = '';
    this.setChoices([]);
    this.#size.value = '';
    this.#last = undefined;
    this.#frame.toTop();
  }

  async show(answer: ViewAnswer): Promise<void> {
    this.#last = answer;
    const { now, before } = answer;
    this.#refused.hidden = now.ok;
    this.#frame.frame.classList.toggle('stale', !now.ok);
    this.#size.setAttribute('aria-invalid', String(!now.ok && this.#size.value.trim() !== ''));
    if (!now.ok) {
      this.#refused.replaceChildren(...now.reasons.map((reason) => make('p', {}, reason)));
      this.#say('');
      return;
    }
    const old = this.#marking.checked && before?.ok ? before.html : undefined;
    const marks = await this.#frame.show(now.html, old);
    if (performance.getEntriesByName(FIRST_RESULT).length === 0) performance.mark(FIRST_RESULT);
    this.#say([now.note, old === undefined ? '' : marksWords(marks)].filter(Boolean).join(' '));
  }

  #say(words: string): void {
    if (this.#said.textContent !== words) this.#said.textContent = words;
  }

  /** What stands in the way of every result. */
  refuse(reasons: readonly string[]): void {
    const now: Rendered = { ok: false, reasons };
    void this.show({ now });
  }
}

function marksWords(marks: number): string {
  if (marks === 0) return 'Nothing here has changed since it was opened.';
  return marks === 1
    ? 'One place has changed since it was opened.'
    : `${marks} places have changed since it was opened.`;
}
