import { createHash } from 'node:crypto';
import { basename, resolve } from 'node:path';
import { recipeCard, site, type SiteCard } from '@quern/publish';
import type { Diagnostic } from '@quern/text';
import type { Market } from '@quern/views';
import { UsageError, type ExitCode } from '../command.js';
import { findFiles } from '../files/walk.js';
import { loadFile, tellErrors, type Loaded } from '../recipe/load.js';
import { plain } from '../system/plain.js';
import { Progress } from '../system/progress.js';
import type { System } from '../system/system.js';
import { relative } from 'node:path';
import { readPhoto, type Photo } from './photo.js';
import { SiteFolder, type FolderFile } from './site-folder.js';

export interface SiteRequest {
  /** The folder of recipes, and the folder of the site, as the reader gave them. */
  readonly from: string;
  readonly to: string;
  readonly root: string | undefined;
  readonly measures: 'both' | 'metric' | 'us' | undefined;
  readonly market: Market | undefined;
  readonly title: string | undefined;
  readonly author: string | undefined;
  readonly address: string | undefined;
  readonly theme: string | undefined;
  readonly revision: string | undefined;
  readonly date: string | undefined;
  /** ISO 8601. */
  readonly now: string;
}

/** Renders a folder of recipes to a folder of pages; says on the error stream what was done. */
export function writeSite(request: SiteRequest, system: System): ExitCode {
  const files = findFiles([request.from], system.folder);
  if (files.length === 0) throw new UsageError(`there is no .quern file in ${request.from}`);
  const folder = new SiteFolder(resolve(system.folder, request.to), request.to, `quern ${system.version}`);
  const photos = new Photos();
  const { cards, failed } = makeCards(files, request, folder, photos, system);
  if (cards.length === 0)
    throw new UsageError(`the files in ${request.from} hold no recipe`, 'begin one with a line “recipe NAME”');
  const pages = site(cards, {
    title: request.title ?? titleOf(request.from, system),
    author: request.author ?? cards.find(({ card }) => card.by.length > 0)?.card.by[0] ?? titleOf(request.from, system),
    language: cards[0]?.card.language ?? 'en',
    made: request.now,
    photo: (path) => (path.startsWith(PHOTOS) ? path : undefined),
    ...(request.measures ? { measures: request.measures } : {}),
    ...(request.address === undefined ? {} : { address: request.address }),
    ...(request.theme === undefined ? {} : { theme: request.theme }),
  });
  const all: FolderFile[] = [...pages, ...photos.files()];
  const progress = new Progress(system.err, 'pages', all.length);
  const { written, kept, removed } = folder.write(all, (done) => progress.update(done));
  progress.end();
  const took = [`${written} written`, `${kept} as they were`, ...(removed > 0 ? [`${removed} taken away`] : [])];
  system.err.write(`${cards.length} cards in ${plain(request.to)}: ${took.join(', ')}\n`);
  if (request.address === undefined) system.err.write('without --address there is no feed and no site map\n');
  return failed ? 1 : 0;
}

const titleOf = (path: string, system: System): string => basename(resolve(system.folder, path));

/** The cards of all files: each recipe, then its variants. What is wrong with a file is told as it is read. */
function makeCards(
  files: readonly string[],
  request: SiteRequest,
  folder: SiteFolder,
  photos: Photos,
  system: System,
): { readonly cards: readonly SiteCard[]; readonly failed: boolean } {
  const cards: SiteCard[] = [];
  let failed = false;
  const progress = new Progress(system.err, 'recipes', files.length);
  for (const [index, file] of files.entries()) {
    const shown = relative(system.folder, file);
    const loaded = loadFile(shown, system, request.root);
    const found: Diagnostic[] = [];
    for (const formula of loaded.compiled.formulas) {
      const { value, diagnostics } = recipeCard(loaded.compiled, formula, {
        ...(request.market ? { market: request.market } : {}),
        ...(request.revision === undefined ? {} : { revision: request.revision }),
        ...(request.date === undefined ? {} : { date: request.date }),
      });
      found.push(...diagnostics.filter(({ severity }) => severity === 'error'));
      const { problem, card } = photos.place(value, loaded);
      if (problem !== undefined) system.err.write(`quern: ${plain(problem)}\n`);
      const changed = folder.changedAt(formula.id, JSON.stringify(card), request.now);
      cards.push({ card, source: shown, changed });
    }
    const own = loaded.compiled.diagnostics.filter(({ severity }) => severity === 'error');
    if (own.length + found.length > 0) {
      progress.end();
      failed = true;
      tellErrors(loaded, system, newTo(loaded, found));
    }
    progress.update(index + 1);
  }
  progress.end();
  return { cards, failed };
}

/** Each message once: a recipe and its variants are often wrong in the same line. */
export function newTo({ compiled }: Loaded, diagnostics: readonly Diagnostic[]): readonly Diagnostic[] {
  const keyOf = ({ code, place }: Diagnostic): string => `${code} ${place.file} ${place.start}`;
  const told = new Set(compiled.diagnostics.map(keyOf));
  return diagnostics.filter((diagnostic) => !told.has(keyOf(diagnostic)) && told.add(keyOf(diagnostic)) !== undefined);
}

const PHOTOS = 'photos/';

/** The photographs of a site, each once, named by what they show, so that a page and its picture belong together. */
class Photos {
  readonly #files = new Map<string, Photo>();

  /** The card with the address of its photograph on the site, or without it and why. */
  place(card: SiteCard['card'], loaded: Loaded): { readonly card: SiteCard['card']; readonly problem?: string } {
    if (!card.photo) return { card };
    const { photo: shown, ...without } = card;
    const answer = readPhoto(shown.path, loaded);
    if ('problem' in answer) return { card: without, problem: answer.problem };
    const hash = createHash('sha256').update(answer.photo.bytes).digest('hex').slice(0, 16);
    const path = `${PHOTOS}${hash}${answer.photo.ending}`;
    this.#files.set(path, answer.photo);
    return { card: { ...card, photo: { ...shown, path } } };
  }

  files(): FolderFile[] {
    return [...this.#files].map(([path, { bytes }]) => ({ path, inputs: path, render: () => bytes }));
  }
}
