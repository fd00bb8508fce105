/*
 * A recipe in the part of an address after `#`, which browsers send to nobody. The texts are packed by the browser's own
 * deflate where it has one, and written in the letters of base64url (RFC 4648, section 5).
 *
 *   #quern=1.LETTERS   deflate (RFC 1951) of the JSON
 *   #quern=0.LETTERS   the JSON as it is
 *
 * The JSON is a list of files, each a path and a text; the first is the one that is shown.
 */

export interface SharedFile {
  readonly path: string;
  readonly text: string;
}

/** Letters of a link after `#`; longer ones are cut by some programs that carry links. */
export const MOST_LETTERS = 32_000;
/** Bytes that a link may unpack to: a small link can be made to swell without end. */
const MOST_BYTES = 512 * 1024;
const MOST_FILES = 32;

const NAME = 'quern=';

/** The part after `#` that holds these files; undefined when they do not fit into a link. */
export async function packFiles(files: readonly SharedFile[]): Promise<string | undefined> {
  const bytes = new TextEncoder().encode(JSON.stringify(files.map(({ path, text }) => [path, text])));
  if (bytes.length > MOST_BYTES || files.length > MOST_FILES) return undefined;
  const packed = typeof CompressionStream === 'undefined' ? undefined : await deflate(bytes);
  const letters = packed ? `1.${toLetters(packed)}` : `0.${toLetters(bytes)}`;
  return letters.length + NAME.length > MOST_LETTERS ? undefined : NAME + letters;
}

export type Unpacked =
  | { readonly kind: 'files'; readonly files: readonly SharedFile[] }
  /** The address holds nothing of ours. */
  | { readonly kind: 'none' }
  | { readonly kind: 'broken'; readonly why: string };

/** The files that the part of an address after `#` holds. */
export async function unpackFiles(fragment: string): Promise<Unpacked> {
  const words = fragment.replace(/^#/, '');
  if (!words.startsWith(NAME)) return { kind: 'none' };
  const letters = words.slice(NAME.length);
  if (letters.length + NAME.length > MOST_LETTERS) return broken('it is longer than a link of the desk can be');
  const found = /^([01])\.([A-Za-z0-9_-]*)$/.exec(letters);
  if (!found) return broken('it was cut or changed on its way');
  try {
    const bytes = fromLetters(found[2] ?? '');
    if (found[1] === '0') return readFiles(bytes);
    if (typeof DecompressionStream === 'undefined') return broken('this browser cannot unpack it; a newer one can');
    return readFiles(await inflate(bytes));
  } catch {
    // Whatever is wrong with the letters, the bytes or the JSON, the reader can do one thing: ask for the link again.
    return broken('it was cut or changed on its way');
  }
}

const broken = (why: string): Unpacked => ({ kind: 'broken', why });

function readFiles(bytes: Uint8Array): Unpacked {
  const value: unknown = JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  if (!Array.isArray(value) || value.length === 0 || value.length > MOST_FILES)
    return broken('it holds no recipe of the desk');
  const files = value.flatMap((entry: unknown) => {
    if (!Array.isArray(entry)) return [];
    const [path, text] = entry as readonly unknown[];
    return typeof path === 'string' && typeof text === 'string' && isPlainPath(path) ? [{ path, text }] : [];
  });
  return files.length === value.length ? { kind: 'files', files } : broken('it holds no recipe of the desk');
}

/** A path as the desk writes it: relative, with `/`, leading nowhere else. */
export function isPlainPath(path: string): boolean {
  if (path.length > 200 || !/\.quern$/i.test(path)) return false;
  return path.split('/').every((part) => /^[^\\:*?"<>|\u0000-\u001F\u007F]+$/.test(part) && !/^\.+$/.test(part));
}

async function deflate(bytes: Uint8Array<ArrayBuffer>): Promise<Uint8Array> {
  const stream = new Blob([bytes]).stream().pipeThrough(new CompressionStream('deflate-raw'));
  return new Uint8Array(await new Response(stream).arrayBuffer());
}

async function inflate(bytes: Uint8Array<ArrayBuffer>): Promise<Uint8Array> {
  const reader = new Blob([bytes]).stream().pipeThrough(new DecompressionStream('deflate-raw')).getReader();
  const parts: Uint8Array[] = [];
  let size = 0;
  for (let part = await reader.read(); !part.done; part = await reader.read()) {
    size += part.value.length;
    if (size > MOST_BYTES) {
      await reader.cancel();
      throw new RangeError('more than a link may hold');
    }
    parts.push(part.value);
  }
  const whole = new Uint8Array(size);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

/** Characters are made from so many bytes at a time: a call takes a limited number of arguments. */
const CHUNK = 8192;

function toLetters(bytes: Uint8Array): string {
  let binary = '';
  for (let at = 0; at < bytes.length; at += CHUNK) binary += String.fromCharCode(...bytes.subarray(at, at + CHUNK));
  return btoa(binary).replace(/\+/g, '-').replace(/\//g, '_').replace(/=+$/, '');
}

function fromLetters(letters: string): Uint8Array<ArrayBuffer> {
  const binary = atob(letters.replace(/-/g, '+').replace(/_/g, '/'));
  return Uint8Array.from(binary, (character) => character.charCodeAt(0));
}
