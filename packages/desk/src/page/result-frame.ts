import { markChanges, marksStyle } from './marks.js';

/*
 * Where results are shown: a frame of its own that may run no script, may ask nobody for anything, and holds nothing but
 * what is put into it here. Pages of the views go in as they are; their styles are adopted, so that the desk's policy
 * needs to allow no style inside a page.
 */

const EMPTY = '<!doctype html><html lang="en"><head><title>Result</title></head><body></body></html>';

/** What the frame adds to the page of a view. */
const OWN_STYLE = `${marksStyle}
html{scrollbar-gutter:stable}
:focus-visible{outline:3px solid #1c5a63;outline-offset:-3px}
@media (prefers-color-scheme:dark){:focus-visible{outline-color:#8fc9d0}}`;

export class ResultFrame {
  readonly #ready: Promise<void>;
  #styles = '';

  constructor(readonly frame: HTMLIFrameElement) {
    this.#ready = new Promise((resolve) => frame.addEventListener('load', () => resolve(), { once: true }));
    frame.srcdoc = EMPTY;
  }

  /**
   * Shows a page; with what it was before, what differs is marked.
   * @returns the number of marks.
   */
  async show(html: string, before: string | undefined): Promise<number> {
    await this.#ready;
    const { page, styles } = parse(html);
    const marks = before === undefined ? 0 : markChanges(page.body, parse(before).page.body);
    const { contentDocument: shown, contentWindow: view } = this.frame;
    if (!shown || !view) return 0;
    shown.documentElement.lang = page.documentElement.lang;
    shown.documentElement.dir = page.documentElement.dir;
    shown.title = page.title;
    this.#adopt(shown, styles);
    shown.body.className = page.body.className;
    const content = [...page.body.childNodes].map((node) => shown.importNode(node, true));
    shown.body.replaceChildren(...content);
    return marks;
  }

  /** Back to the top, as when another view or another recipe is chosen. */
  toTop(): void {
    this.frame.contentDocument?.documentElement?.scrollTo(0, 0);
  }

  #adopt(shown: Document, styles: string): void {
    if (this.#styles === styles) return;
    this.#styles = styles;
    const Sheet = (this.frame.contentWindow as (Window & { readonly CSSStyleSheet: typeof CSSStyleSheet }) | null)
      ?.CSSStyleSheet;
    if (!Sheet) return;
    shown.adoptedStyleSheets = [styles, OWN_STYLE].map((text) => {
      const sheet = new Sheet();
      sheet.replaceSync(text);
      return sheet;
    });
  }
}

/**
 * A page read without running or fetching anything, without what only a page of its own needs. Its styles are taken out
 * before it is read, since the desk's policy lets no page bring its own; in what `publish` writes, a text can hold no tag.
 */
function parse(html: string): { readonly page: Document; readonly styles: string } {
  const styles: string[] = [];
  const bare = html.replace(/<style>([^]*?)<\/style>/g, (_, text: string) => {
    styles.push(text);
    return '';
  });
  const page = new DOMParser().parseFromString(bare, 'text/html');
  for (const script of page.querySelectorAll('script')) script.remove();
  for (const link of page.querySelectorAll<HTMLAnchorElement>('a[href]')) {
    if (link.getAttribute('href')?.startsWith('#')) continue;
    // A link leads out of the frame, into a page that knows nothing of this one.
    link.target = '_blank';
    link.rel = 'noopener noreferrer';
  }
  return { page, styles: styles.join('\n') };
}
