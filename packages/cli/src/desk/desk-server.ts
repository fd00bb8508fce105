import { randomBytes, timingSafeEqual } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import { extname, join } from 'node:path';
import { UsageError } from '../command.js';
import { MOST_BYTES } from '../files/read-text.js';
import type { DeskFolder, Expected } from './desk-folder.js';

/*
 * Serves the page of the desk and the recipe files of one folder, to this computer alone. Whoever asks must know the
 * secret in the address, must have asked for this very host (a page elsewhere can give its own name our number), and
 * from a browser must be the desk's own page.
 */

export interface DeskServer {
  readonly address: string;
  close(): void;
}

export interface DeskServerOptions {
  /** Folder of the built page. */
  readonly site: string;
  readonly folder: DeskFolder;
  /** Path of the file that is shown first. */
  readonly open: string | undefined;
  /** 0 for any that is free. */
  readonly port: number;
}

const LOOPBACK = '127.0.0.1';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
};

interface Asset {
  readonly type: string;
  readonly content: Buffer;
}

/** @throws UsageError when the port is taken or may not be used. */
export async function startDesk(options: DeskServerOptions): Promise<DeskServer> {
  const token = randomBytes(18).toString('base64url');
  const assets = readAssets(options.site);
  const policy = policyOf(assets);
  const server = createServer((request, response) => {
    new Visit({ ...options, token, assets, policy, port: portOf(server) }, request, response).answer();
  });
  await listen(server, options.port);
  return {
    address: `http://${LOOPBACK}:${portOf(server)}/${token}/`,
    close: () => {
      server.close();
      server.closeAllConnections();
    },
  };
}

function portOf(server: Server): number {
  const bound = server.address();
  return bound !== null && typeof bound === 'object' ? bound.port : 0;
}

function listen(server: Server, port: number): Promise<void> {
  return new Promise((resolve, reject) => {
    server.once('error', (error: NodeJS.ErrnoException) => {
      const why = error.code === 'EADDRINUSE' ? 'another program has it' : error.message;
      reject(new UsageError(`port ${port} cannot be used: ${why}`, 'leave --port out to take any that is free'));
    });
    server.listen(port, LOOPBACK, resolve);
  });
}

/** The files of the page, read once: nothing else of the disk can be asked for under their names. */
function readAssets(site: string): ReadonlyMap<string, Asset> {
  const assets = new Map<string, Asset>();
  for (const name of readdirSync(site)) {
    const type = TYPES[extname(name)];
    if (type !== undefined) assets.set(name, { type, content: readFileSync(join(site, name)) });
  }
  const index = assets.get('index.html');
  if (!index) throw new UsageError(`the page of the desk is not in ${site}`, 'build it: npm run build');
  // The page asks for files only when it is told that there is a folder behind it.
  const told = index.content.toString('utf8').replace('data-desk="alone"', 'data-desk="folder"');
  return assets.set('index.html', { ...index, content: Buffer.from(told, 'utf8') });
}

/** The policy that the page states for itself, to be sent with everything, the worker included. */
function policyOf(assets: ReadonlyMap<string, Asset>): string {
  const index = assets.get('index.html')?.content.toString('utf8') ?? '';
  const stated = /http-equiv="Content-Security-Policy"\s+content="([^"]+)"/.exec(index)?.[1];
  if (stated === undefined)
    throw new UsageError('the page of the desk states no policy', 'build it again: npm run build');
  return `${stated}; frame-ancestors 'none'`;
}

interface Surroundings extends DeskServerOptions {
  readonly token: string;
  readonly assets: ReadonlyMap<string, Asset>;
  readonly policy: string;
}

/** One request and its answer. */
class Visit {
  constructor(
    readonly desk: Surroundings,
    readonly request: IncomingMessage,
    readonly response: ServerResponse,
  ) {}

  answer(): void {
    const { host } = this.request.headers;
    if (!this.#hosts.includes(host ?? '')) return this.#say(403, 'The desk answers only at its own address.');
    const path = this.#pathBelowToken();
    if (path === undefined) return this.#say(404, 'There is nothing here. Use the address that “quern desk” printed.');
    if (!this.#isOwnPage()) return this.#say(403, 'The desk answers only its own page.');
    if (path === 'api/files') return this.#files();
    if (path === 'api/file') return this.#file();
    return this.#asset(path === '' ? 'index.html' : path);
  }

  get #hosts(): readonly string[] {
    return [`${LOOPBACK}:${this.desk.port}`, `localhost:${this.desk.port}`];
  }

  get #url(): URL {
    return new URL(this.request.url ?? '/', `http://${LOOPBACK}`);
  }

  /** The path after the secret; undefined when the secret is not there. */
  #pathBelowToken(): string | undefined {
    const [, given = '', ...rest] = this.#url.pathname.split('/');
    const [known, asked] = [this.desk.token, given].map((text) => Buffer.from(text, 'utf8'));
    if (!known || !asked || known.length !== asked.length || !timingSafeEqual(known, asked)) return undefined;
    // Without the stroke at its end the page's own addresses would not lie below the secret.
    return rest.length === 0 ? undefined : rest.join('/');
  }

  /** What a browser says of who asks (Fetch Metadata, Origin); other programs say nothing. */
  #isOwnPage(): boolean {
    const { origin, 'sec-fetch-site': site, 'sec-fetch-mode': mode } = this.request.headers;
    if (origin !== undefined && !this.#hosts.some((host) => origin === `http://${host}`)) return false;
    if (site === undefined || site === 'same-origin' || site === 'none') return true;
    // Somebody followed a link to the page itself.
    return mode === 'navigate' && this.request.method === 'GET';
  }

  #asset(name: string): void {
    const asset = this.desk.assets.get(name);
    if (!asset) return this.#say(404, 'There is nothing here.');
    if (!this.#allows('GET', 'HEAD')) return;
    this.#send(200, asset.type, this.request.method === 'HEAD' ? '' : asset.content);
  }

  #files(): void {
    if (!this.#allows('GET')) return;
    const { folder, open } = this.desk;
    const list = { name: folder.name, files: folder.list(), open: open ?? null };
    this.#send(200, 'application/json; charset=utf-8', JSON.stringify(list));
  }

  #file(): void {
    if (!this.#allows('GET', 'PUT')) return;
    const path = this.#url.searchParams.get('path') ?? '';
    if (this.request.method === 'PUT') return this.#save(path);
    const text = this.desk.folder.read(path);
    if (!text) return this.#say(404, `${path} is not here or cannot be read.`);
    this.#send(200, 'text/plain; charset=utf-8', text.bytes, { etag: `"${text.version}"` });
  }

  #save(path: string): void {
    const expected = this.#expected();
    if (expected === undefined) return this.#say(428, 'A save must say which version it was made from.');
    const parts: Buffer[] = [];
    let size = 0;
    this.request.on('data', (part: Buffer) => {
      size += part.length;
      if (size <= MOST_BYTES) parts.push(part);
    });
    this.request.on('end', () => {
      if (size > MOST_BYTES) this.#say(413, 'the text is too large to be a file of recipes');
      else this.#write(path, Buffer.concat(parts), expected);
    });
  }

  #write(path: string, bytes: Uint8Array, expected: Expected): void {
    try {
      const saving = this.desk.folder.save(path, bytes, expected);
      if (saving.kind === 'changed') this.#say(412, `${path} has been changed by another program.`);
      else if (saving.kind === 'refused') this.#say(403, saving.why);
      else this.#send(200, 'text/plain; charset=utf-8', '', { etag: `"${saving.version}"` });
    } catch (error) {
      // A full disk, or a folder that may not be written to: the page tells it, and the text is still there.
      this.#say(500, error instanceof Error ? error.message : String(error));
    }
  }

  #expected(): Expected | undefined {
    const { 'if-match': match, 'if-none-match': none } = this.request.headers;
    if (none === '*') return 'nothing';
    if (match === '*') return 'anything';
    const version = /^"([0-9a-f]+)"$/.exec(match ?? '')?.[1];
    return version === undefined ? undefined : { version };
  }

  #allows(...methods: readonly string[]): boolean {
    if (methods.includes(this.request.method ?? '')) return true;
    this.response.setHeader('allow', methods.join(', '));
    this.#say(405, 'This is not how it is asked for.');
    return false;
  }

  #say(status: number, words: string): void {
    this.#send(status, 'text/plain; charset=utf-8', words);
  }

  #send(status: number, type: string, content: string | Uint8Array, more: Readonly<Record<string, string>> = {}): void {
    this.response.writeHead(status, {
      'content-type': type,
      'content-security-policy': this.desk.policy,
      'x-content-type-options': 'nosniff',
      'referrer-policy': 'no-referrer',
      'cross-origin-resource-policy': 'same-origin',
      'cross-origin-opener-policy': 'same-origin',
      'cache-control': 'no-store',
      ...more,
    });
    this.response.end(content);
  }
}
