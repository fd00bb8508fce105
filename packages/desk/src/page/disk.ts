import { make } from './dom.js';
import type { FileHandle } from './shelf.js';

/*
 * Files of the person's own computer. Where the browser can, a file is saved in its place; elsewhere it comes in by
 * a file field or by being dropped, and goes out as a download. Nothing is read or written that was not chosen.
 */

interface Pickers {
  showOpenFilePicker?(options: {
    readonly multiple: boolean;
    readonly types: readonly PickedType[];
  }): Promise<readonly FileHandle[]>;
  showSaveFilePicker?(options: {
    readonly suggestedName: string;
    readonly types: readonly PickedType[];
  }): Promise<FileHandle>;
}

interface PickedType {
  readonly description: string;
  readonly accept: Readonly<Record<string, readonly string[]>>;
}

const TYPES: readonly PickedType[] = [{ description: 'Quern recipes', accept: { 'text/plain': ['.quern'] } }];

/** The same limit as the commands have. */
const MOST_BYTES = 4 * 1024 * 1024;

export interface Read {
  readonly name: string;
  /** As it is in the file; undefined when it is not text in UTF-8 or too large, and why. */
  readonly text: string | undefined;
  readonly why: string;
  readonly handle: FileHandle | undefined;
}

const pickers = (): Pickers => window as Window & Pickers;

/** Asks for files; none when the person thinks better of it. */
export async function pickFiles(): Promise<readonly Read[]> {
  const { showOpenFilePicker } = pickers();
  if (!showOpenFilePicker) return readAll(await chooseByField());
  try {
    const handles = await showOpenFilePicker.call(window, { multiple: true, types: TYPES });
    return await Promise.all(handles.map(async (handle) => readFile(await handle.getFile(), handle)));
  } catch (error) {
    if (isAbort(error)) return [];
    throw error;
  }
}

function chooseByField(): Promise<readonly File[]> {
  return new Promise((resolve) => {
    const field = make('input', { type: 'file', accept: '.quern,text/plain', multiple: true });
    field.addEventListener('change', () => resolve([...(field.files ?? [])]));
    field.addEventListener('cancel', () => resolve([]));
    field.click();
  });
}

export const readAll = (files: readonly File[]): Promise<readonly Read[]> =>
  Promise.all(files.map((file) => readFile(file, undefined)));

async function readFile(file: File, handle: FileHandle | undefined): Promise<Read> {
  const answer = (text: string | undefined, why = ''): Read => ({ name: file.name, text, why, handle });
  if (file.size > MOST_BYTES) return answer(undefined, 'it is too large to be a file of recipes');
  try {
    const decoder = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true });
    return answer(decoder.decode(await file.arrayBuffer()));
  } catch (error) {
    return answer(undefined, error instanceof TypeError ? 'it is not text in UTF-8' : 'it could not be read');
  }
}

/** What became of a text that was to be saved. */
export type SavedTo =
  | { readonly kind: 'handle'; readonly handle: FileHandle }
  | { readonly kind: 'download' }
  | { readonly kind: 'cancelled' };

/** Writes to a file that was chosen before or is chosen now; without the API the text is downloaded. */
export async function saveText(name: string, text: string, handle: FileHandle | undefined): Promise<SavedTo> {
  const { showSaveFilePicker } = pickers();
  try {
    const target = handle ?? (await showSaveFilePicker?.call(window, { suggestedName: name, types: TYPES }));
    if (target) {
      const stream = await target.createWritable();
      await stream.write(text);
      await stream.close();
      return { kind: 'handle', handle: target };
    }
  } catch (error) {
    if (isAbort(error)) return { kind: 'cancelled' };
    throw error;
  }
  download(name, text, 'text/plain');
  return { kind: 'download' };
}

/** Gives a text to the browser to keep as a file. */
export function download(name: string, text: string, type: string): void {
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = make('a', { href: address, download: name });
  link.click();
  // The browser has begun to read by the time the next task runs; until then the address must stand.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

const isAbort = (error: unknown): boolean => error instanceof DOMException && error.name === 'AbortError';
