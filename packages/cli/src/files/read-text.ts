import { isUtf8 } from 'node:buffer';
import { closeSync, fstatSync, openSync, readFileSync, readSync } from 'node:fs';
import { UsageError } from '../command.js';
import { fileProblem } from './problems.js';

/** A file of recipes is text that somebody wrote. More than this is something else. */
export const MOST_BYTES = 4 * 1024 * 1024;

/** Bytes as UTF-8 text, a byte-order mark kept; undefined when they are not UTF-8. */
export function decode(bytes: Uint8Array): string | undefined {
  if (!isUtf8(bytes)) return undefined;
  return Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString('utf8');
}

/**
 * The bytes of a file, or its size alone when it is too large. One look at the file, so that it cannot change between.
 * @param room memory to read into when the file fits, so that a walk over many files does not ask for new memory each
 * time; what is given back is then good until the next call.
 */
export function readBytes(path: string, room?: Buffer): Buffer | { readonly tooLarge: number } {
  const file = openSync(path, 'r');
  try {
    const { size } = fstatSync(file);
    if (size > MOST_BYTES) return { tooLarge: size };
    // A pipe or a device says that it has no size.
    if (size === 0) return readFileSync(file);
    const bytes = room && room.length >= size ? room : Buffer.allocUnsafe(size);
    let end = 0;
    for (let got = -1; end < size && got !== 0; end += got) got = readSync(file, bytes, end, size - end, null);
    return bytes.subarray(0, end);
  } finally {
    closeSync(file);
  }
}

/**
 * The text of a file.
 * @throws UsageError when it cannot be read, is too large, or is not UTF-8.
 */
export function readText(path: string, shown: string): string {
  let bytes: ReturnType<typeof readBytes>;
  try {
    bytes = readBytes(path);
  } catch (error) {
    throw fileProblem('read', shown, error);
  }
  if ('tooLarge' in bytes) throw tooLarge(shown, bytes.tooLarge);
  const text = decode(bytes);
  if (text === undefined) throw notText(shown);
  return text;
}

const megabytes = (bytes: number): string => `${Math.ceil(bytes / 1024 / 1024)} MB`;

function tooLarge(shown: string, size: number): UsageError {
  return new UsageError(
    `${shown} is too large to be a file of recipes: ${megabytes(size)}, the most is ${megabytes(MOST_BYTES)}`,
    'divide it into several files',
  );
}

function notText(shown: string): UsageError {
  return new UsageError(`${shown} is not text in UTF-8`, 'save it in that encoding and run the command again');
}
