/*
 * The folder that `quern desk` serves. Addresses are relative to the page's own, which holds the secret of this run; no
 * other address is ever asked.
 */

export interface FolderList {
  /** Name of the folder, for people. */
  readonly name: string;
  readonly files: readonly string[];
  /** The file that was named on the command line. */
  readonly open: string | null;
}

export interface FolderFile {
  readonly text: string;
  readonly version: string;
}

export type FolderSaved =
  | { readonly kind: 'saved'; readonly version: string }
  /** Somebody else changed the file since it was read, or made one of that name. */
  | { readonly kind: 'changed' }
  | { readonly kind: 'refused'; readonly why: string };

const address = (path: string): string => `api/file?path=${encodeURIComponent(path)}`;

export async function listFolder(): Promise<FolderList> {
  const answer = await fetch('api/files');
  if (!answer.ok) throw new Error(await reason(answer));
  return (await answer.json()) as FolderList;
}

/** A file of the folder; undefined when there is none or it may not be read. */
export async function readFromFolder(path: string): Promise<FolderFile | undefined> {
  const answer = await fetch(address(path));
  if (!answer.ok) return undefined;
  const bytes = await answer.arrayBuffer();
  const text = new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes);
  return { text, version: answer.headers.get('etag') ?? '' };
}

/** Saves a file. `version` is what was read, '*' to write over whatever is there, undefined for a file that must be new. */
export async function saveToFolder(path: string, text: string, version: string | undefined): Promise<FolderSaved> {
  let answer: Response;
  try {
    answer = await fetch(address(path), {
      method: 'PUT',
      body: text,
      headers: {
        'content-type': 'text/plain; charset=utf-8',
        ...(version === undefined ? { 'if-none-match': '*' } : { 'if-match': version }),
      },
    });
  } catch {
    return { kind: 'refused', why: 'the desk does not answer; is “quern desk” still running?' };
  }
  if (answer.status === 412) return { kind: 'changed' };
  if (!answer.ok) return { kind: 'refused', why: await reason(answer) };
  return { kind: 'saved', version: answer.headers.get('etag') ?? '' };
}

async function reason(answer: Response): Promise<string> {
  const text = await answer.text();
  return text.trim() === '' ? `the desk answered ${answer.status}` : text.trim();
}
