import {
  autocompletion,
  closeCompletion,
  completionKeymap,
  snippet,
  type Completion,
  type CompletionContext,
  type CompletionResult,
} from '@codemirror/autocomplete';
import { defaultKeymap, history, historyKeymap } from '@codemirror/commands';
import { nextDiagnostic, previousDiagnostic, setDiagnostics, type Diagnostic } from '@codemirror/lint';
import { highlightSelectionMatches, search, searchKeymap } from '@codemirror/search';
import { Annotation, EditorState, type Extension } from '@codemirror/state';
import {
  drawSelection,
  EditorView,
  highlightActiveLine,
  highlightActiveLineGutter,
  highlightSpecialChars,
  hoverTooltip,
  keymap,
  lineNumbers,
  type Tooltip,
} from '@codemirror/view';
import type { Completions, Edit, Offer, Said } from '../protocol.js';
import { make } from './dom.js';
import { editorLook } from './editor-look.js';
import { fromMarkdown, withCode } from './markdown.js';
import type { Service } from './client.js';
import { tokenColours, withTokens } from './tokens.js';

/** What the editor asks of the desk around it. */
export interface EditorHost {
  readonly service: Service;
  /** The text has changed. */
  changed(): void;
  /** Waits until the service has the text as it stands, so that places mean the same to both. */
  settled(): Promise<void>;
  /** Makes the changes of an offer, in whatever files. */
  take(offer: Offer): void;
  /** Shows what can be done with the selection. */
  offer(): void;
}

/** By this word of the page's policy the editor may bring its own style elements; no other text of the page can. */
const STYLE_NONCE = 'quern-desk-editor';

/** Put in by the desk, not typed. */
const fromDesk = Annotation.define<boolean>();

/** The editor of one file at a time. Each file keeps its own history of changes and its own cursor. */
export class Editor {
  readonly view: EditorView;
  readonly #states = new Map<string, EditorState>();
  #path = '';

  constructor(
    parent: HTMLElement,
    readonly host: EditorHost,
  ) {
    this.view = new EditorView({ parent, state: this.#fresh('') });
    // When messages or a keyboard on the screen take room, the line that is being written stays in sight.
    new ResizeObserver(() => {
      if (!this.view.hasFocus) return;
      this.view.dispatch({ effects: EditorView.scrollIntoView(this.view.state.selection.main.head, { yMargin: 24 }) });
    }).observe(parent);
  }

  get path(): string {
    return this.#path;
  }

  get text(): string {
    return this.view.state.doc.toString();
  }

  /** The text of any file that was ever shown here. */
  textOf(path: string): string | undefined {
    return path === this.#path ? this.text : this.#states.get(path)?.doc.toString();
  }

  /** Shows a file; the text is taken only if the file was not here before. */
  show(path: string, text: string): void {
    if (this.#path !== '') this.#states.set(this.#path, this.view.state);
    this.#path = path;
    this.view.setState(this.#states.get(path) ?? this.#fresh(text));
  }

  /** Puts another text in the place of a file's, as one change that can be undone. */
  replace(path: string, edits: readonly Edit[]): void {
    const changes = edits.map(({ from, to, text }) => ({ from, to, insert: text }));
    if (path === this.#path) {
      this.view.dispatch({ changes, userEvent: 'input.fix', scrollIntoView: true });
      return;
    }
    const state = this.#states.get(path);
    if (state) this.#states.set(path, state.update({ changes }).state);
  }

  /** Forgets a file. */
  close(path: string): void {
    this.#states.delete(path);
    if (path === this.#path) this.#path = '';
  }

  /** The file is called otherwise from now on. */
  rename(path: string, to: string): void {
    const state = this.#states.get(path);
    this.#states.delete(path);
    if (state) this.#states.set(to, state);
    if (path === this.#path) this.#path = to;
  }

  select(from: number, to: number): void {
    const last = this.view.state.doc.length;
    this.view.dispatch({
      selection: { anchor: Math.min(from, last), head: Math.min(to, last) },
      effects: EditorView.scrollIntoView(Math.min(from, last), { y: 'center' }),
    });
    this.view.focus();
  }

  get selection(): { readonly from: number; readonly to: number } {
    const { from, to } = this.view.state.selection.main;
    return { from, to };
  }

  lineOf(offset: number): number {
    const { doc } = this.view.state;
    return doc.lineAt(Math.min(offset, doc.length)).number;
  }

  showTokens(tokens: readonly number[]): void {
    this.view.dispatch({ effects: withTokens(tokens), annotations: fromDesk.of(true) });
  }

  /** Marks the messages; fixes come later, in the same order. */
  showSaid(said: readonly Said[], fixes: readonly (readonly Offer[])[]): void {
    const { length } = this.view.state.doc;
    const diagnostics = said.map(({ from, to, severity, sentence, wayOut, code }, index): Diagnostic => ({
      from: Math.min(from, length),
      to: Math.min(to, length),
      severity,
      message: `${sentence}. ${capital(wayOut)}.`,
      renderMessage: () =>
        make(
          'div',
          {},
          make('p', {}, ...withCode(`${sentence}.`)),
          make('p', { class: 'quiet' }, ...withCode(`${capital(wayOut)}.`)),
        ),
      source: code,
      actions: (fixes[index] ?? []).map((offer) => ({ name: offer.title, apply: () => this.host.take(offer) })),
    }));
    this.view.dispatch(setDiagnostics(this.view.state, diagnostics));
  }

  #fresh(text: string): EditorState {
    return EditorState.create({ doc: text, extensions: this.#extensions() });
  }

  #extensions(): Extension {
    return [
      EditorView.cspNonce.of(STYLE_NONCE),
      lineNumbers(),
      highlightActiveLine(),
      highlightActiveLineGutter(),
      // Signs that turn the direction of a text, or are not seen at all, are shown for what they are.
      highlightSpecialChars(),
      history(),
      drawSelection(),
      EditorView.lineWrapping,
      highlightSelectionMatches(),
      search(),
      tokenColours,
      autocompletion({ override: [(context) => this.#complete(context)], selectOnOpen: false, icons: false }),
      hoverTooltip((_, at) => this.#hover(at)),
      keymap.of([
        { key: 'Mod-.', run: () => this.#showOffers(), preventDefault: true },
        { key: 'F8', run: nextDiagnostic },
        { key: 'Shift-F8', run: previousDiagnostic },
        ...completionKeymap,
        ...searchKeymap,
        ...historyKeymap,
        ...defaultKeymap,
      ]),
      EditorView.contentAttributes.of({
        'aria-label': 'Recipe, as text',
        tabindex: '0',
        spellcheck: 'false',
        autocapitalize: 'off',
      }),
      EditorView.updateListener.of((update) => {
        if (update.docChanged) this.host.changed();
      }),
      editorLook,
    ];
  }

  #showOffers(): boolean {
    closeCompletion(this.view);
    this.host.offer();
    return true;
  }

  async #hover(at: number): Promise<Tooltip | null> {
    const { path } = this;
    await this.host.settled();
    const found = await this.host.service.ask('hover', { path, at });
    if (!found || path !== this.path) return null;
    return {
      pos: found.from,
      end: found.to,
      above: true,
      create: () => ({ dom: make('div', { class: 'quern-hover quern-said-words' }, fromMarkdown(found.markdown)) }),
    };
  }

  async #complete(context: CompletionContext): Promise<CompletionResult | null> {
    const { path } = this;
    await this.host.settled();
    if (context.aborted) return null;
    const { from, items } = await this.host.service.ask('complete', { path, at: context.pos });
    if (context.aborted || items.length === 0 || path !== this.path) return null;
    // Unasked, nothing is offered before a letter is typed: the list would cover what is being read.
    if (!context.explicit && from === context.pos) return null;
    return { from, filter: false, options: items.map(option) };
  }
}

type Item = Completions['items'][number];

function option(item: Item): Completion {
  const { label, kind, insert, detail, documentation } = item;
  return {
    label,
    type: kind,
    detail,
    apply: item.snippet ? snippet(choicesToFields(insert)) : insert,
    ...(documentation === ''
      ? {}
      : { info: () => make('div', { class: 'quern-said-words' }, fromMarkdown(documentation)) }),
  };
}

/** A choice `${1|a,b|}` as a field that holds its first word. */
const choicesToFields = (template: string): string => template.replace(/\$\{(\d+)\|([^,|}]*)[^}]*\}/g, '${$1:$2}');

export function capital(text: string): string {
  const [first = ''] = text;
  return first.toUpperCase() + text.slice(first.length);
}
