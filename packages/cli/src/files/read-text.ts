import { isUtf8 } from 'node:buffer';
import { closeSync, fstatSync, openSync, readSync } from 'node:fs';
import { UsageError } from '../command.js';
import { fileProblem } from './problems.js';

/** A file of recipes is text that somebody wrote. More than this is something else. */
export const MOST_BYTES = 4 * 1024 * 1024;

/** Bytes as UTF-8 text, a byte-order mark kept; undefined when they are not UTF-8. */
export function decode(bytes: Uint8Array): string | undefined {
  if (!isUtf8(bytes)) return undefined;
  return Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString('utf8');
}

/** Bytes, or the size alone when there are more than may be read. */
export type BytesRead = Buffer | { readonly tooLarge: number };

/**
 * The bytes of a file, or its size alone when it is too large. One look at the file, so that it cannot change between.
 * @param room memory to read into when the file fits, so that a walk over many files does not ask for new memory each
 * time; what is given back is then good until the next call.
 */
export function readBytes(path: string, room?: Buffer, most = MOST_BYTES): BytesRead {
  const file = openSync(path, 'r');
  try {
    return readOpen(file, most, room);
  } finally {
    closeSync(file);
  }
}

/** The bytes of an open file. What says that it has no size (a pipe, a device) is read no further than the most. */
export function readOpen(file: number, most: number, room?: Buffer): BytesRead {
  const { size } = fstatSync(file);
  if (size > most) return { tooLarge: size };
  if (size === 0) return readUpTo(file, most);
  const bytes = room && room.length >= size ? room : Buffer.allocUnsafe(size);
  let end = 0;
  for (let got = -1; end < size && got !== 0; end += got) got = readSync(file, bytes, end, size - end, null);
  return bytes.subarray(0, end);
}

function readUpTo(file: number, most: number): BytesRead {
  const parts: Buffer[] = [];
  let size = 0;
  for (;;) {
    const part = Buffer.allocUnsafe(64 * 1024);
    const got = readSync(file, part, 0, part.length, null);
    if (got === 0) return Buffer.concat(parts);
    size += got;
    if (size > most) return { tooLarge: size };
    parts.push(part.subarray(0, got));
  }
}

/** What a text is, when it is no recipe: for the words that say it is too large. */
export interface Kind {
  readonly most: number;
  /** 'a file of recipes'. */
  readonly is: string;
  /** What to do about it. */
  readonly help: string;
}

const RECIPES: Kind = { most: MOST_BYTES, is: 'a file of recipes', help: 'divide it into several files' };

/**
 * The text of a file.
 * @throws UsageError when it cannot be read, is too large, or is not UTF-8.
 */
export function readText(path: string, shown: string, kind = RECIPES): string {
  let bytes: BytesRead;
  try {
    bytes = readBytes(path, undefined, kind.most);
  } catch (error) {
    throw fileProblem('read', shown, error);
  }
  if ('tooLarge' in bytes) throw tooLarge(shown, bytes.tooLarge, kind);
  const text = decode(bytes);
  if (text === undefined) throw notText(shown);
  return text;
}

const megabytes = (bytes: number): string => `${Math.ceil(bytes / 1024 / 1024)} MB`;

function tooLarge(shown: string, size: number, { most, is, help }: Kind): UsageError {
  return new UsageError(`${shown} is too large to be ${is}: ${megabytes(size)}, the most is ${megabytes(most)}`, help);
}

function notText(shown: string): UsageError {
  return new UsageError(`${shown} is not text in UTF-8`, 'save it in that encoding and run the command again');
}
