import { dirname, extname, resolve } from 'node:path';
import type { Loaded } from '../recipe/load.js';

/** A picture larger than this makes a page that nobody waits for. */
const MOST_BYTES = 8 * 1024 * 1024;

const KINDS: Readonly<Record<string, string>> = {
  '.jpg': 'image/jpeg',
  '.jpeg': 'image/jpeg',
  '.png': 'image/png',
  '.webp': 'image/webp',
  '.avif': 'image/avif',
  '.gif': 'image/gif',
};

export interface Photo {
  readonly bytes: Uint8Array;
  /** 'image/jpeg'. */
  readonly kind: string;
  /** '.jpg'. */
  readonly ending: string;
}

/** The photograph of a recipe, or why it cannot be shown. */
export type PhotoAnswer = { readonly photo: Photo } | { readonly problem: string };

/** Reads the photograph that a recipe names, beside the recipe and inside its workspace. */
export function readPhoto(path: string, { workspace, compiled, shown }: Loaded): PhotoAnswer {
  const refuse = (why: string): PhotoAnswer => ({
    problem: `the photograph “${path}” of ${shown} is left out: ${why}`,
  });
  const ending = extname(path).toLowerCase();
  const kind = KINDS[ending];
  if (kind === undefined) return refuse(`it is none of ${Object.keys(KINDS).join(', ')}`);
  const full = resolve(workspace.root, dirname(compiled.path), path);
  const bytes = workspace.bytes(full, MOST_BYTES, `a picture of ${MOST_BYTES / 1024 / 1024} MB at most`);
  if (bytes === undefined) return refuse('there is no such file inside the workspace root');
  return 'refused' in bytes ? refuse(bytes.refused) : { photo: { bytes, kind, ending } };
}

/** The picture as an address that holds it whole. */
export const photoAddress = ({ bytes, kind }: Photo): string =>
  `data:${kind};base64,${Buffer.from(bytes).toString('base64')}`;
