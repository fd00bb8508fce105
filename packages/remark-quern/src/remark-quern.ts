import { resolvePath, Session, type Compiled, type Host } from '@quern/compiler';
import { createFoodBook } from '@quern/foods';
import { cardScale, cardTree, chooseFormulas, recipeCard, type ElementNode } from '@quern/publish';
import type { Diagnostic } from '@quern/text';
import type { Code, Image, Nodes, Paragraph, Root } from 'mdast';
import { visit } from 'unist-util-visit';
import type { VFile } from 'vfile';
import { readBlockOptions, type BlockOptions, type RemarkQuernOptions } from './options.js';
import { BlockPlace, report, reportBlock, reportFile, type Where } from './report.js';

declare module 'vfile' {
  interface DataMap {
    /** The cards of the file, by the number that the marks in the tree bear. */
    quern: readonly (readonly ElementNode[])[];
  }
}

/** The start of a file, for a tree that was made without positions. */
const NOWHERE: Where = {
  position: { start: { line: 1, column: 1, offset: 0 }, end: { line: 1, column: 1, offset: 0 } },
};

const whereOf = (node: Nodes): Where => (node.position ? { position: node.position } : NOWHERE);

/**
 * A remark plugin: each fenced block `quern`, and each picture of a file ending in `.quern` that has a paragraph to
 * itself, is compiled, and what is wrong is said at its line of the Markdown file. The tree stays as it is, but for
 * marks that `rehypeQuern` finds to put the cards in their places.
 */
export function remarkQuern(options: RemarkQuernOptions = {}): (tree: Root, file: VFile) => void {
  const foods = options.foods ?? createFoodBook();
  return (tree, file) => {
    const cards: ElementNode[][] = [];
    const place = placeOf(file);
    const host: Host = { foods, read: (path) => readWith(options, place.folder + path) };
    const maker = new CardMaker(options, host, file, place.path, cards);
    visit(tree, (node) => {
      if (node.type === 'code' && /^quern$/i.test(node.lang ?? '')) maker.block(node);
      else if (node.type === 'paragraph') maker.picture(node);
    });
    file.data.quern = cards;
  };
}

/**
 * The Markdown file as a path below a folder that no recipe leaves: the folder in which the work is done (`cwd`), or the
 * file's own where it lies elsewhere. A path that is written relative stays as it is.
 */
function placeOf(file: VFile): { readonly folder: string; readonly path: string } {
  const plain = (path: string): string => path.replaceAll('\\', '/');
  const path = plain(file.path ?? 'page.md').replace(/^\.\//, '');
  if (!/^(?:\/|[a-z]:)/i.test(path)) return { folder: '', path };
  const work = `${plain(file.cwd).replace(/\/+$/, '')}/`;
  const folder = path.startsWith(work) ? work : path.slice(0, path.lastIndexOf('/') + 1);
  return { folder, path: path.slice(folder.length) };
}

/** Undefined too when the function throws, as those that open files do when there is none. */
function readWith({ read }: RemarkQuernOptions, path: string): string | undefined {
  try {
    return read?.(path);
  } catch {
    return undefined;
  }
}

/** A compiled text, and how to say where in it something is wrong. */
interface Source {
  readonly compiled: Compiled;
  readonly tell: (diagnostics: readonly Diagnostic[]) => void;
}

/** The path in a Markdown address, where spaces and other letters may be written with `%`. */
function decodedPath(address: string): string {
  try {
    return decodeURI(address);
  } catch {
    // Not encoded after all: a path with a bare `%` in it.
    return address;
  }
}

class CardMaker {
  constructor(
    readonly options: RemarkQuernOptions,
    readonly host: Host,
    readonly file: VFile,
    /** Path of the Markdown file, as the host reads paths. */
    readonly path: string,
    readonly cards: ElementNode[][],
  ) {}

  block(node: Code): void {
    const where = whereOf(node);
    const options = this.#options(node.meta ?? '', where);
    const source = options.file === undefined ? this.#ofBlock(node, where) : this.#ofFile(options.file, where);
    if (source) this.#show(node, where, source, options);
  }

  /** `![Tin loaf](bread.quern "variant=seedless")` alone in a paragraph. */
  picture(paragraph: Paragraph): void {
    const [only, ...others] = paragraph.children;
    if (only?.type !== 'image' || others.length > 0 || !/\.quern$/i.test(only.url)) return;
    const where = whereOf(only);
    const options = this.#options(only.title ?? '', where);
    const source = this.#ofFile(decodedPath(only.url), where);
    if (source) this.#show(only, where, source, options);
  }

  #options(meta: string, where: Where): BlockOptions {
    const { options, problems } = readBlockOptions(meta);
    const help = 'correct it or leave it out';
    for (const reason of problems) report(this.file, where, { reason, help, code: 'option', severity: 'warning' });
    return options;
  }

  #ofBlock(node: Code, where: Where): Source | undefined {
    const path = `${this.path}#${where.position.start.line}.quern`;
    const compiled = this.#compile(path, node.value);
    // The fence has a line of its own above the first line of the block.
    const place = new BlockPlace(node.value, String(this.file), where.position.start.line);
    return compiled && { compiled, tell: (diagnostics) => reportBlock(this.file, diagnostics, path, place, where) };
  }

  #ofFile(name: string, where: Where): Source | undefined {
    const path = resolvePath(this.path, name);
    const text = path === undefined ? undefined : this.host.read(path);
    if (path === undefined || text === undefined) {
      const help = this.options.read
        ? 'correct the path; it counts from this file'
        : 'give remark-quern a function `read`, so that it can open files';
      const reason = `the recipe file “${name}” cannot be read`;
      report(this.file, where, { reason, help, code: 'file', severity: 'error' });
      return undefined;
    }
    const compiled = this.#compile(path, text);
    return compiled && { compiled, tell: (diagnostics) => reportFile(this.file, diagnostics, path, text, where) };
  }

  #compile(path: string, text: string): Compiled | undefined {
    const session = new Session(this.host);
    session.set(path, text);
    return session.compile(path);
  }

  /** Makes the cards that are asked for and marks the node; without any the node prints as it stands. */
  #show(node: Code | Image, where: Where, { compiled, tell }: Source, block: BlockOptions): void {
    tell(compiled.diagnostics);
    const asked = { ...this.options, ...block };
    const chosen = chooseFormulas(compiled, { recipe: block.recipe, variant: asked.variant });
    if (!chosen.ok) return this.#refuse(where, chosen);
    const trees: ElementNode[] = [];
    for (const formula of chosen.value) {
      const scale = asked.scale === undefined ? undefined : cardScale(asked.scale, formula);
      if (scale?.ok === false) return this.#refuse(where, scale);
      const { value, diagnostics } = recipeCard(compiled, formula, {
        ...(scale ? { factor: scale.value } : {}),
        ...(asked.market ? { market: asked.market } : {}),
      });
      tell(diagnostics);
      trees.push(
        cardTree(value, {
          ...this.#treeOptions(asked),
          idPrefix: `quern-${this.cards.length + 1}-${trees.length + 1}`,
        }),
      );
    }
    // `hProperties` are the attributes that remark-rehype gives the element of this node.
    const data = node.data ?? {};
    const properties = 'hProperties' in data ? (data.hProperties as object | undefined) : {};
    node.data = { ...data, hProperties: { ...properties, dataQuern: String(this.cards.length) } } as NonNullable<
      typeof node.data
    >;
    this.cards.push(trees);
  }

  #treeOptions(asked: RemarkQuernOptions): Parameters<typeof cardTree>[1] {
    const { measures, words, headingLevel, photo, scalable } = asked;
    return {
      ...(measures ? { measures } : {}),
      ...(words ? { words } : {}),
      ...(headingLevel ? { headingLevel } : {}),
      ...(photo ? { photo } : {}),
      ...(scalable === undefined ? {} : { scalable }),
    };
  }

  #refuse(where: Where, { problem, help }: { readonly problem: string; readonly help: string }): void {
    report(this.file, where, { reason: problem, help, code: 'option', severity: 'error' });
  }
}
