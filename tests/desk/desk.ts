/** The built desk on a server of its own, and pages of a real browser on it. */
import { createServer, type Server } from 'node:http';
import { mkdirSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, BrowserContextOptions, FrameLocator, Page } from 'playwright-core';
import { buildSite } from '../../packages/desk/scripts/build-site.mjs';
import { launchBrowser } from '../browser/launch.js';

const cache = join(import.meta.dirname, '..', '..', '.cache');

const TYPES: Readonly<Record<string, string>> = {
  html: 'text/html; charset=utf-8',
  js: 'text/javascript; charset=utf-8',
  css: 'text/css; charset=utf-8',
};

/** The site in a folder of its own, so that test files do not disturb each other. */
export async function builtSite(): Promise<{ readonly folder: string; remove(): void }> {
  mkdirSync(cache, { recursive: true });
  const folder = mkdtempSync(join(cache, 'desk-'));
  await buildSite(folder);
  return { folder, remove: () => rmSync(folder, { recursive: true, force: true }) };
}

export interface Opened {
  readonly page: Page;
  /** What is shown in the frame of the results. */
  readonly result: FrameLocator;
  /** Every address that was asked for. */
  readonly requests: readonly string[];
  /** What the browser had to complain about: errors, refused scripts and styles. */
  readonly complaints: readonly string[];
  /** Puts a text in the place of the whole recipe, as one who pastes it. */
  write(text: string): Promise<void>;
  /** Types over the first place at which a text stands. */
  change(what: string, to: string): Promise<void>;
  close(): Promise<void>;
}

export interface DeskSite {
  readonly address: string;
  /** The page as a file. */
  readonly file: string;
  readonly browser: Browser;
  open(options?: BrowserContextOptions & { readonly at?: string; readonly before?: string }): Promise<Opened>;
  close(): Promise<void>;
}

export async function deskSite(): Promise<DeskSite> {
  const site = await builtSite();
  const server = await serveFolder(site.folder);
  const browser = await launchBrowser();
  return {
    address: server.address,
    file: pathToFileURL(join(site.folder, 'index.html')).href,
    browser,
    open: (options = {}) => openDesk(browser, options.at ?? server.address, options),
    close: async () => {
      await browser.close();
      await server.close();
      site.remove();
    },
  };
}

async function serveFolder(folder: string): Promise<{ readonly address: string; close(): Promise<void> }> {
  const server: Server = createServer((request, response) => {
    const path = new URL(request.url ?? '/', 'http://desk.test').pathname;
    const name = path === '/' ? 'index.html' : path.slice(1);
    const type = TYPES[name.split('.').at(-1) ?? ''];
    if (type === undefined || /[\\/]|\.\./.test(name)) {
      response.writeHead(404).end();
      return;
    }
    response.writeHead(200, { 'content-type': type }).end(readFileSync(join(folder, name)));
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const bound = server.address();
  if (bound === null || typeof bound === 'string') throw new Error('the server has no port');
  return {
    address: `http://127.0.0.1:${bound.port}/`,
    close: () => new Promise((resolve) => server.close(() => resolve())),
  };
}

/** A page on a desk, with everything that it asked for and complained of. */
export async function openDesk(
  browser: Browser,
  address: string,
  options: BrowserContextOptions & { readonly before?: string } = {},
): Promise<Opened> {
  const { before, ...contextOptions } = options;
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 }, ...contextOptions });
  // Without the API of files of one's own, the desk takes the ways that every browser has.
  await context.addInitScript('delete window.showOpenFilePicker; delete window.showSaveFilePicker;');
  if (before !== undefined) await context.addInitScript(before);
  const page = await context.newPage();
  const requests: string[] = [];
  const complaints: string[] = [];
  context.on('request', (request) => requests.push(request.url()));
  page.on('console', (message) => complaints.push(message.text()));
  page.on('pageerror', (error) => complaints.push(error.message));
  await page.goto(address);
  const result = page.frameLocator('#result');
  const editor = page.locator('.cm-content');
  /** The editor holds only the lines that are seen: it is scrolled until the words are among them. */
  const select = async (what: string): Promise<void> => {
    for (let top = 0; top < 20_000; top += 200) {
      await page.locator('.cm-scroller').evaluate((scroller, to) => scroller.scrollTo(0, to), top);
      await page.waitForTimeout(30);
      if (await editor.evaluate(selectWords, what)) return;
    }
    throw new Error(`the text holds no “${what}”`);
  };
  return {
    page,
    result,
    requests,
    complaints,
    write: async (text) => {
      await editor.focus();
      await page.keyboard.press('ControlOrMeta+a');
      // Put in the place of coloured words, a text would be given a style by the browser, which the page's policy refuses.
      await page.keyboard.press('Delete');
      await page.keyboard.insertText(text);
    },
    change: async (what, to) => {
      await editor.focus();
      await select(what);
      // The editor reads the selection when the browser tells it of the change.
      await page.waitForTimeout(50);
      await page.keyboard.insertText(to);
    },
    close: () => context.close(),
  };
}

/** Selects words of a line of the editor, in whatever pieces the colours have cut it. Runs in the page. */
function selectWords(content: Element, words: string): boolean {
  const page = content.ownerDocument;
  const line = [...content.querySelectorAll('.cm-line')].find((one) => one.textContent?.includes(words));
  if (!line) return false;
  const from = line.textContent?.indexOf(words) ?? 0;
  const walker = page.createTreeWalker(line, NodeFilter.SHOW_TEXT);
  const spot = (offset: number): [Node, number] => {
    let at = 0;
    walker.currentNode = line;
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const { length } = node.textContent ?? '';
      if (offset <= at + length) return [node, offset - at];
      at += length;
    }
    return [line, 0];
  };
  page.getSelection()?.setBaseAndExtent(...spot(from), ...spot(from + words.length));
  return true;
}
