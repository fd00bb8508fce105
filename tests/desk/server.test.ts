/** `quern desk` as a process: who may ask it, what it gives, what it writes, and the page on it in a real browser. */
import { spawn, type ChildProcess } from 'node:child_process';
import {
  chmodSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { request, type IncomingHttpHeaders } from 'node:http';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import type { Browser } from 'playwright-core';
import { beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { buildSite } from '../../packages/desk/scripts/build-site.mjs';
import { launchBrowser } from '../browser/launch.js';
import { useCommand } from '../cli/command.js';
import { openDesk, type Opened } from './desk.js';

const LOAF = 'recipe Tide Loaf\n\nmake loaf\n  500 g strong wheat flour\n  hands 5 min: Mix.\n';

const command = useCommand('desk');
let home: string;
let recipes: string;

// The page stands beside the command, as in the package.
beforeAll(() => buildSite(join(dirname(command.entry), 'desk')), 180_000);

beforeEach(() => {
  home = mkdtempSync(join(tmpdir(), 'quern-desk-'));
  recipes = join(home, 'recipes');
  mkdirSync(join(recipes, 'fen'), { recursive: true });
  writeFileSync(join(recipes, 'tide.quern'), LOAF);
  writeFileSync(join(recipes, 'fen', 'bake.quern'), 'use Tide Loaf from ../tide.quern as loaf\nrecipe Fen Bake\n');
  writeFileSync(join(recipes, 'notes.txt'), 'private');
  writeFileSync(join(home, 'outside.quern'), 'recipe Outside\n');
  return () => rmSync(home, { recursive: true, force: true });
});

interface Running {
  readonly address: string;
  readonly port: number;
  readonly token: string;
  readonly child: ChildProcess;
  /** What has been said on both streams so far. */
  said(): string;
  ended: Promise<number | null>;
}

/** Starts a desk and waits for its address. */
async function start(...args: string[]): Promise<Running> {
  const child = spawn(process.execPath, [command.entry, 'desk', ...args], {
    cwd: home,
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let said = '';
  const ended = new Promise<number | null>((resolve) => child.on('close', resolve));
  const address = await new Promise<string>((resolve, reject) => {
    const take = (part: string): void => {
      said += part;
      const found = /http:\/\/127\.0\.0\.1:\d+\/[\w-]+\//.exec(said);
      if (found) resolve(found[0]);
    };
    child.stdout.setEncoding('utf8').on('data', take);
    child.stderr.setEncoding('utf8').on('data', take);
    void ended.then(() => reject(new Error(`the desk ended: ${said}`)));
  });
  const { port, pathname } = new URL(address);
  return { address, port: Number(port), token: pathname.split('/')[1] ?? '', child, said: () => said, ended };
}

async function stop({ child, ended }: Running): Promise<void> {
  child.kill('SIGTERM');
  await ended;
}

interface Answer {
  readonly status: number;
  readonly headers: IncomingHttpHeaders;
  readonly body: string;
}

/** A request with exactly this path and these headers, as a browser or an attacker may send it. */
function send(
  { port }: Running,
  path: string,
  options: { method?: string; headers?: Record<string, string>; body?: string } = {},
): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const { method = 'GET', headers = {}, body } = options;
    const asked = request({ host: '127.0.0.1', port, path, method, headers }, (response) => {
      let text = '';
      response.setEncoding('utf8').on('data', (part: string) => (text += part));
      response.on('end', () => resolve({ status: response.statusCode ?? 0, headers: response.headers, body: text }));
    });
    asked.on('error', reject);
    asked.end(body);
  });
}

const fileAt = ({ token }: Running, path: string): string => `/${token}/api/file?path=${encodeURIComponent(path)}`;

describe('who may ask', () => {
  let desk: Running;
  beforeEach(async () => {
    desk = await start('recipes');
    return () => stop(desk);
  });

  test('only whoever has the secret, which is long and another each time', async () => {
    expect(desk.token).toMatch(/^[\w-]{24}$/);
    const other = await start('recipes');
    expect(other.token).not.toBe(desk.token);
    await stop(other);
    for (const path of [
      '/',
      '/index.html',
      '/api/files',
      `/${desk.token}`,
      `/${desk.token.slice(1)}x/`,
      `//${desk.token}/`,
    ])
      expect(`${path} ${(await send(desk, path)).status}`).toBe(`${path} 404`);
    expect((await send(desk, `/${desk.token}/`)).status).toBe(200);
  });

  test('only by its own host, so that no name elsewhere can be turned onto it', async () => {
    const status = async (host: string): Promise<number> =>
      (await send(desk, `/${desk.token}/api/files`, { headers: { host } })).status;
    expect(await status(`127.0.0.1:${desk.port}`)).toBe(200);
    expect(await status(`localhost:${desk.port}`)).toBe(200);
    for (const host of [
      'quay.example',
      `quay.example:${desk.port}`,
      '127.0.0.1',
      `127.0.0.1.quay.example:${desk.port}`,
    ])
      expect(`${host} ${await status(host)}`).toBe(`${host} 403`);
  });

  test('no page but its own, even if it knows the secret', async () => {
    const status = async (headers: Record<string, string>): Promise<number> =>
      (await send(desk, `/${desk.token}/api/files`, { headers })).status;
    expect(await status({ origin: `http://127.0.0.1:${desk.port}`, 'sec-fetch-site': 'same-origin' })).toBe(200);
    expect(await status({ origin: 'https://quay.example' })).toBe(403);
    expect(await status({ origin: 'null' })).toBe(403);
    expect(await status({ 'sec-fetch-site': 'cross-site', 'sec-fetch-mode': 'no-cors' })).toBe(403);
    expect(await status({ 'sec-fetch-site': 'same-site', 'sec-fetch-mode': 'cors' })).toBe(403);
  });

  test('nothing but the page and the recipes of the folder is given, with a strict policy', async () => {
    const page = await send(desk, `/${desk.token}/`);
    expect(page.body).toContain('data-desk="folder"');
    const policy = String(page.headers['content-security-policy']);
    expect(policy).toContain("default-src 'none'");
    expect(policy).toContain("frame-ancestors 'none'");
    expect(policy).not.toContain('unsafe');
    expect(page.headers).toMatchObject({
      'x-content-type-options': 'nosniff',
      'referrer-policy': 'no-referrer',
      'cache-control': 'no-store',
    });
    for (const name of ['../package.json', '..%2fquern.mjs', 'quern.mjs', 'api', 'desk.js/../../x', '%00'])
      expect(`${name} ${(await send(desk, `/${desk.token}/${name}`)).status}`).toBe(`${name} 404`);
    expect((await send(desk, `/${desk.token}/desk.js`, { method: 'POST' })).status).toBe(405);
  });
});

describe('the files', () => {
  let desk: Running;
  beforeEach(async () => {
    symlinkSync(join(home, 'outside.quern'), join(recipes, 'way-out.quern'));
    symlinkSync(home, join(recipes, 'up'));
    symlinkSync(join(recipes, 'tide.quern'), join(recipes, 'same.quern'));
    desk = await start('recipes');
    return () => stop(desk);
  });
  const save = (path: string, body: string, headers: Record<string, string>): Promise<Answer> =>
    send(desk, fileAt(desk, path), { method: 'PUT', headers, body });

  test('of the folder are listed by name, and none that a link leads out to', async () => {
    const list = JSON.parse((await send(desk, `/${desk.token}/api/files`)).body) as { files: string[]; open: null };
    // A link beside the file it leads to is that file.
    expect(list.files.filter((path) => path !== 'same.quern' && path !== 'tide.quern')).toEqual(['fen/bake.quern']);
    expect(list.files).toHaveLength(2);
    expect(list.open).toBeNull();
  });

  test('outside, hidden or of another kind are neither read nor written', async () => {
    const paths = [
      '../outside.quern',
      'fen/../../outside.quern',
      join(home, 'outside.quern'),
      'way-out.quern',
      'up/outside.quern',
      'notes.txt',
      '.hidden.quern',
      'fen\\bake.quern',
      'tide.quern\u0000.txt',
      'C:tide.quern',
      '',
    ];
    for (const path of paths) {
      expect(`${path} ${(await send(desk, fileAt(desk, path))).status}`).toBe(`${path} 404`);
      expect(`${path} ${(await save(path, 'gone', { 'if-match': '*' })).status}`).toBe(`${path} 403`);
    }
    expect(readFileSync(join(home, 'outside.quern'), 'utf8')).toBe('recipe Outside\n');
    expect(readFileSync(join(recipes, 'notes.txt'), 'utf8')).toBe('private');
    expect((await save('nowhere/new.quern', 'x', { 'if-none-match': '*' })).status).toBe(403);
  });

  test('are written whole, when they are still what was read', async () => {
    const read = await send(desk, fileAt(desk, 'tide.quern'));
    expect(read.body).toBe(LOAF);
    const version = String(read.headers.etag);
    const saved = await save('tide.quern', 'recipe Ebb Loaf\n', { 'if-match': version });
    expect(saved.status).toBe(200);
    expect(readFileSync(join(recipes, 'tide.quern'), 'utf8')).toBe('recipe Ebb Loaf\n');
    expect((await save('tide.quern', 'again', { 'if-match': version })).status).toBe(412);
    expect((await save('tide.quern', 'new', { 'if-none-match': '*' })).status).toBe(412);
    expect((await save('tide.quern', 'x', {})).status).toBe(428);
    expect((await save('tide.quern', 'over it', { 'if-match': '*' })).status).toBe(200);
    expect((await save('flow.quern', 'recipe Flow\n', { 'if-none-match': '*' })).status).toBe(200);
    expect(readFileSync(join(recipes, 'flow.quern'), 'utf8')).toBe('recipe Flow\n');
    // Nothing half written is left behind.
    expect(readdirSync(recipes).filter((name) => name.includes('.draft'))).toEqual([]);
  });

  test('that are too large or no text are refused', async () => {
    expect((await save('big.quern', 'a'.repeat(4 * 1024 * 1024 + 1), { 'if-none-match': '*' })).status).toBe(413);
    writeFileSync(join(recipes, 'picture.quern'), Buffer.from([0xff, 0xfe, 0x00]));
    expect((await send(desk, fileAt(desk, 'picture.quern'))).status).toBe(404);
    expect(readdirSync(recipes)).not.toContain('big.quern');
  });
});

describe('the command', () => {
  test('says where the desk is, and ends when it is told to', async () => {
    const desk = await start('recipes');
    expect(desk.said()).toMatch(/^The desk is open, with 2 recipe files of .*recipes:\n\n {2}http:/);
    desk.child.kill('SIGINT');
    expect(await desk.ended).toBe(0);
    expect(desk.said()).toContain('The desk is closed.');
  });

  test('ends by Ctrl-C after a save too', async () => {
    const desk = await start('recipes');
    const headers = { 'if-match': '*' };
    expect((await send(desk, fileAt(desk, 'tide.quern'), { method: 'PUT', headers, body: LOAF })).status).toBe(200);
    desk.child.kill('SIGINT');
    expect(await desk.ended).toBe(0);
  });

  test('tells what stands in its way', async () => {
    const desk = await start('recipes');
    const told = (...args: string[]): string => {
      const { code, err } = command.run(['desk', ...args], { in: home });
      return `${code} ${err}`;
    };
    expect(told('recipes', '--port', String(desk.port))).toBe(
      `2 quern: port ${desk.port} cannot be used: another program has it\nway out: leave --port out to take any that is free\n`,
    );
    await stop(desk);
    expect(told('recipes/notes.txt')).toContain('is no recipe file: its name does not end in .quern');
    expect(told('nowhere')).toContain('there is no such file or folder');
    expect(told('outside.quern', '--root', 'recipes')).toContain('is not inside the root recipes');
    expect(told('recipes', '--port', 'eighty')).toContain('--port: “eighty” is not a port');
  });
});

describe('the page', () => {
  let browser: Browser;
  let desk: Running;
  let opened: Opened;
  beforeAll(async () => {
    browser = await launchBrowser();
    return () => browser.close();
  });
  beforeEach(async () => {
    desk = await start(join('recipes', 'tide.quern'));
    opened = await openDesk(browser, desk.address);
    await opened.result.locator('body', { hasText: 'Tide Loaf' }).waitFor();
    return async () => {
      await opened.close();
      await stop(desk);
    };
  });

  test('shows the file that was named, and writes it when it is saved, not before', async () => {
    const { page } = opened;
    expect(await page.title()).toBe('tide.quern – Quern desk');
    expect(await page.locator('#hint').isVisible()).toBe(false);
    await opened.change('500 g', '600 g');
    await opened.result.locator('td.quern-weight', { hasText: '600' }).first().waitFor();
    expect(readFileSync(join(recipes, 'tide.quern'), 'utf8')).toBe(LOAF);
    await page.keyboard.press('ControlOrMeta+s');
    await page.getByText('Saved tide.quern.').waitFor();
    expect(readFileSync(join(recipes, 'tide.quern'), 'utf8')).toBe(LOAF.replace('500', '600'));
    expect(opened.requests.every((address) => address.startsWith(desk.address))).toBe(true);
    expect(opened.complaints).toEqual([]);
  });

  test('asks before it writes over somebody else’s change, and can take it instead', async () => {
    const { page } = opened;
    await opened.change('500 g', '600 g');
    const theirs = LOAF.replace('500', '700');
    writeFileSync(join(recipes, 'tide.quern'), theirs);
    await page.getByRole('button', { name: 'Save' }).click();
    await page.getByRole('dialog', { name: 'Changed elsewhere' }).waitFor();
    await page.getByRole('button', { name: 'Leave it' }).click();
    expect(readFileSync(join(recipes, 'tide.quern'), 'utf8')).toBe(theirs);
    await page.getByRole('button', { name: 'Save' }).click();
    await page.getByRole('button', { name: 'Take what is there' }).click();
    await opened.result.locator('td.quern-weight', { hasText: '700' }).first().waitFor();
    // What was written here is one step back.
    await page.locator('.cm-content').focus();
    await page.keyboard.press('ControlOrMeta+z');
    await opened.result.locator('td.quern-weight', { hasText: '600' }).first().waitFor();
    await page.getByRole('button', { name: 'Save' }).click();
    await page.getByText('Saved tide.quern.').waitFor();
    expect(readFileSync(join(recipes, 'tide.quern'), 'utf8')).toBe(LOAF.replace('500', '600'));
  });

  test('opens another file with what it uses, and a new one only where it may', async () => {
    const { page } = opened;
    await page.getByRole('combobox', { name: 'File' }).selectOption('fen/bake.quern');
    await expect.poll(() => page.title()).toBe('fen/bake.quern – Quern desk');
    // The file that it uses was fetched: nothing is said of it.
    await expect.poll(() => page.locator('#messages-toggle').textContent()).not.toBe('Reading…');
    expect(await page.locator('#messages-list').textContent()).not.toContain('tide.quern');
    await page.getByRole('button', { name: 'New' }).click();
    await page.getByLabel('Name of the file').fill('ebb');
    await page.keyboard.press('Enter');
    await expect.poll(() => page.title()).toBe('ebb.quern – Quern desk');
    expect(readdirSync(recipes)).not.toContain('ebb.quern');
    await page.getByRole('button', { name: 'Save' }).click();
    await page.getByLabel('Name of the file').waitFor();
    await page.keyboard.press('Enter');
    await page.getByText('Saved ebb.quern.').waitFor();
    expect(readFileSync(join(recipes, 'ebb.quern'), 'utf8')).toMatch(/^recipe /);
    await page.getByRole('button', { name: 'Share' }).click();
    expect(await page.getByRole('textbox', { name: 'Link' }).inputValue()).toMatch(/^#quern=1\./);
  });

  test('says so when a file cannot be written, and when the desk is gone', async () => {
    const { page } = opened;
    await opened.change('500 g', '600 g');
    rmSync(recipes, { recursive: true });
    writeFileSync(recipes, 'a file where the folder was');
    chmodSync(recipes, 0o400);
    await page.getByRole('button', { name: 'Save' }).click();
    const gone = page.getByRole('button', { name: 'Save over it' });
    const refused = page.getByText('tide.quern was not saved');
    await gone.or(refused).waitFor();
    if (await gone.isVisible()) await gone.click();
    await refused.waitFor();
    await stop(desk);
    await page.getByRole('button', { name: 'Save' }).click();
    await page.getByText('is “quern desk” still running?').waitFor();
    expect(await page.locator('.cm-content').textContent()).toContain('600 g');
  });
});
