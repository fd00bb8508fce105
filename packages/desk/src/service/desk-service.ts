import { Session, type FoodBook } from '@quern/compiler';
import {
  codeActions,
  completion,
  diagnostics,
  editorDiagnostic,
  fixesFor,
  formatDocument,
  hover,
  semanticTokens,
  snapshotOf,
  TOKEN_TYPES,
  type EditorDiagnostic,
  type FileEdits,
  type Snapshot,
} from '@quern/ide';
import { slowDiagnostics } from '@quern/ide/slow';
import { LineCache } from '@quern/syntax';
import { sentence, wayOut, type TextEdit } from '@quern/text';
import type { Edit, Kind, Offer, Questions, Rendered, Said, Settings, View } from '../protocol.js';
import { choicesOf } from './choices.js';
import { render, renderComparison } from './render.js';

type Body<K extends Kind> = Questions[K]['body'];
type Answers = { readonly [K in Kind]: (body: Body<K>) => Questions[K]['answer'] };

/** Fixes are worked out for so many messages of a file; the others still have their way out in words. */
const MOST_FIXED = 40;

/** Results of the text as opened that are kept, so that they are not made again at each letter typed. */
const MOST_KEPT = 16;

/** Answers the page's questions about the files that it was given. It reads nothing else and knows no clock. */
export class DeskService {
  readonly #texts = new Map<string, string>();
  readonly #opened = new Map<string, string>();
  readonly #lines = new LineCache();
  readonly #session: Session;
  #openedSession: Session;
  readonly #kept = new Map<string, Rendered>();
  /** Files that were asked for since this was last emptied, and are not here. */
  readonly #missing = new Set<string>();

  constructor(readonly foods: FoodBook) {
    this.#session = new Session(
      {
        read: (path) => {
          const text = this.#texts.get(path);
          if (text === undefined) this.#missing.add(path);
          return text;
        },
        foods,
      },
      { lines: this.#lines },
    );
    this.#openedSession = this.#sessionOfOpened();
  }

  #sessionOfOpened(): Session {
    // A file that was never given as opened is as it is now.
    const read = (path: string): string | undefined => this.#opened.get(path) ?? this.#texts.get(path);
    return new Session({ read, foods: this.foods }, { lines: this.#lines });
  }

  /** Answers a question. What was asked for is checked by its kind alone: the page is ours. */
  answer<K extends Kind>(kind: K, body: Body<K>): Questions[K]['answer'] {
    const answer: Answers[K] = this.#answers[kind];
    return answer(body);
  }

  readonly #answers: Answers = {
    put: ({ files, opened }) => {
      for (const { path, text } of files) {
        for (const texts of opened ? [this.#texts, this.#opened] : [this.#texts]) {
          if (text === undefined) texts.delete(path);
          else texts.set(path, text);
        }
        if (text === undefined) this.#session.forget(path);
      }
      if (opened) {
        this.#openedSession = this.#sessionOfOpened();
        this.#kept.clear();
      }
      return null;
    },
    look: ({ path }) => {
      this.#missing.clear();
      const snapshot = this.#snapshot(path);
      return {
        said: diagnostics(snapshot).filter(standsIn(path)).map(said),
        tokens: semanticTokens(snapshot).flatMap(({ span, type }) => [span.start, span.end, TOKEN_TYPES.indexOf(type)]),
        choices: choicesOf(snapshot.compiled),
        missing: [...this.#missing],
      };
    },
    fixes: ({ path }) => {
      const snapshot = this.#snapshot(path);
      const slow = [...slowDiagnostics(snapshot)].flat().map(editorDiagnostic);
      const all = [...diagnostics(snapshot), ...slow].filter(standsIn(path));
      return {
        said: all.map(said),
        fixes: all.map(({ source }, index) => (index < MOST_FIXED ? fixesFor(snapshot, source).map(offer) : [])),
      };
    },
    offers: ({ path, from, to }) => codeActions(this.#snapshot(path), { start: from, end: to }).map(offer),
    hover: ({ path, at }) => {
      const found = hover(this.#snapshot(path), at);
      return found ? { from: found.span.start, to: found.span.end, markdown: found.contents } : null;
    },
    complete: ({ path, at }) => {
      const { items, incomplete } = completion(this.#snapshot(path), at);
      return {
        from: items[0]?.span.start ?? at,
        incomplete,
        items: items.map(({ label, kind, insert, snippet, detail, documentation }) => ({
          label,
          kind,
          insert,
          snippet,
          detail: detail ?? '',
          documentation: documentation ?? '',
        })),
      };
    },
    uses: ({ path }) => {
      const found = new Set<string>([path]);
      for (const one of found) for (const used of this.#session.compile(one)?.uses ?? []) found.add(used);
      found.delete(path);
      return [...found].flatMap((one) => {
        const text = this.#texts.get(one);
        return text === undefined ? [] : [{ path: one, text }];
      });
    },
    tidy: ({ path }) => formatDocument(this.#snapshot(path)).map(plain),
    view: ({ path, view, settings }) => {
      if (view === 'compare') return { now: this.#comparison(path, settings) };
      const now = render(this.#session, path, view, settings, 'shown');
      if (this.#isAsOpened()) return { now };
      return { now, before: this.#before(path, view, settings) };
    },
    page: ({ path, view, settings }) =>
      view === 'compare' ? this.#comparison(path, settings) : render(this.#session, path, view, settings, 'page'),
  };

  #isAsOpened(): boolean {
    for (const [path, text] of this.#opened) if (this.#texts.get(path) !== text) return false;
    return true;
  }

  #comparison(path: string, settings: Settings): Rendered {
    return renderComparison(this.#openedSession, this.#session, path, settings);
  }

  #before(path: string, view: Exclude<View, 'compare'>, settings: Settings): Rendered {
    // The present moves on from question to question; for what was, it stands still within a minute.
    const key = JSON.stringify([path, view, { ...settings, now: Math.floor(settings.now / 60_000) }]);
    const kept = this.#kept.get(key);
    if (kept) return kept;
    if (this.#kept.size >= MOST_KEPT) this.#kept.clear();
    const made = render(this.#openedSession, path, view, settings, 'shown');
    this.#kept.set(key, made);
    return made;
  }

  #snapshot(path: string): Snapshot {
    const snapshot = snapshotOf(this.#session, path, [...this.#texts.keys()]);
    if (!snapshot) throw new Error(`the desk was asked about a file that it does not hold: ${path}`);
    return snapshot;
  }
}

const standsIn =
  (path: string) =>
  ({ source }: EditorDiagnostic): boolean =>
    source.place.file === path;

const said = ({ code, severity, span, related, quiet, source }: EditorDiagnostic): Said => ({
  code,
  severity,
  from: span.start,
  to: span.end,
  sentence: sentence(source),
  wayOut: wayOut(source),
  quiet,
  related: related.map(({ place, message }) => ({ file: place.file, from: place.start, text: message })),
});

const plain = ({ span, text }: TextEdit): Edit => ({ from: span.start, to: span.end, text });

const offer = ({ title, edits }: { readonly title: string; readonly edits: readonly FileEdits[] }): Offer => ({
  title,
  changes: edits.map(({ file, edits: own }) => ({ file, edits: own.map(plain) })),
});
