import type { Look, Offer, Said } from '../protocol.js';
import { packFiles, unpackFiles, type SharedFile } from '../share.js';
import type { Started } from './client.js';
import { ask, askName, chooseOf, showKeys, showLink } from './dialogs.js';
import { download, pickFiles, readAll, saveText, type Read } from './disk.js';
import { byId, button, make } from './dom.js';
import { Editor } from './editor.js';
import { examples, exampleText } from './examples.js';
import { FileList } from './file-list.js';
import { listFolder, readFromFolder, saveToFolder, type FolderList } from './folder.js';
import { FIRST, Hint } from './hint.js';
import { Messages } from './messages.js';
import { Results, TITLES } from './results.js';
import { Rounds } from './rounds.js';
import { layBack, layOpen, Shelf, type Home, type ShelfFile } from './shelf.js';

const FROM_LINK = 'This recipe came in the link itself. Nothing was sent to anybody; save it to keep it.';

const brokenLink = (why: string): string => `The link holds no recipe that can be read: ${why}.`;

const NEW_TEXT = 'recipe \n\nmake \n';

/** Keys and buttons, files and texts: the desk as a person has it before them. */
export class Desk {
  readonly #shelf = new Shelf();
  readonly #editor: Editor;
  readonly #messages: Messages;
  readonly #results: Results;
  readonly #rounds: Rounds;
  readonly #hint: Hint;
  readonly #list: FileList;
  /** Whether the page is served by `quern desk`, with a folder behind it. */
  readonly #hasFolder = document.documentElement.dataset['desk'] === 'folder';
  #folder: readonly string[] = [];
  /** Files that were fetched because another uses them, and were never opened. */
  readonly #lent = new Set<string>();
  readonly #tried = new Set<string>();
  #said: readonly Said[] = [];

  constructor(readonly started: Started) {
    const { service } = started;
    const take = (offer: Offer): void => this.#take(offer);
    this.#editor = new Editor(byId('editor'), {
      service,
      changed: () => this.#changed(),
      settled: () => this.#rounds.settled(),
      take,
      offer: () => void this.#guard(this.#offer()),
    });
    this.#messages = new Messages({
      lineOf: (offset) => this.#editor.lineOf(offset),
      select: (from, to) => this.#select(from, to),
      take,
    });
    this.#results = new Results({
      asked: () => this.#rounds.viewAsked(),
      keep: () => void this.#guard(this.#keep()),
    });
    this.#rounds = new Rounds({
      service,
      file: () => ({ path: this.#editor.path, text: this.#editor.text }),
      asked: () => ({ view: this.#results.view, settings: this.#results.settings() }),
      looked: (look) => this.#looked(look),
      fetch: (missing) => this.#fetch(missing),
      viewed: (answer) => this.#results.show(answer),
      fixed: ({ said, fixes }) => {
        this.#said = said;
        this.#editor.showSaid(said, fixes);
        this.#messages.show(said, fixes);
      },
      failed: (error) => this.#failed(error),
    });
    this.#hint = new Hint({
      text: () => this.#editor.text,
      select: (from, to) => this.#select(from, to),
      look: () => this.#toPane('look'),
    });
    this.#list = new FileList((path) => void this.#guard(this.#choose(path)));
    this.#wire();
  }

  /** Puts the first file on the desk: that of the link, of the folder, or an example. */
  async start(): Promise<void> {
    const words = await this.#openFirst();
    const slow = this.started.apart
      ? ''
      : 'A page opened as a file may start no helper, so the reckoning is done between two letters.';
    const told = [words, slow].filter((one) => one !== '').join(' ');
    if (told !== '') this.#notice(told);
  }

  /** @returns what there is to tell about it. */
  async #openFirst(): Promise<string> {
    const folder = this.#hasFolder ? await listFolder() : undefined;
    this.#folder = folder?.files ?? [];
    const shared = await unpackFiles(location.hash);
    if (shared.kind === 'files') {
      await this.#openAll(shared.files, { kind: 'link' });
      return FROM_LINK;
    }
    const broken = shared.kind === 'broken' ? brokenLink(shared.why) : '';
    if (folder) return [await this.#openFolder(folder), broken].join(' ').trim();
    await this.#openExample(FIRST.path);
    if (broken === '') this.#hint.start();
    return broken;
  }

  async #openFolder({ files, open, name }: FolderList): Promise<string> {
    const first = open ?? files[0];
    if (first !== undefined) {
      await this.#choose(first);
      return '';
    }
    await this.#openText('untitled.quern', NEW_TEXT, { kind: 'new' });
    return `There is no .quern file in ${name} yet; this one is new.`;
  }

  // ---- buttons and keys

  #wire(): void {
    const on = (id: string, act: () => Promise<void> | void): void =>
      byId(id).addEventListener('click', () => void this.#guard(Promise.resolve(act())));
    on('new', () => this.#new());
    on('open', () => this.#open());
    on('save', () => this.#save());
    on('share', () => this.#share());
    on('help', () => showKeys(/Mac|iPhone|iPad/.test(navigator.userAgent)));
    on('tidy', () => this.#tidy());
    on('to-write', () => this.#toPane('write'));
    on('to-look', () => this.#toPane('look'));
    document.addEventListener('keydown', (event) => this.#key(event));
    const frame = byId<HTMLIFrameElement>('result');
    frame.addEventListener('load', () =>
      frame.contentDocument?.addEventListener('keydown', (event) => this.#key(event)),
    );
    addEventListener('beforeunload', (event) => {
      if (this.#shelf.files.some((file) => this.#isDirty(file))) event.preventDefault();
    });
    addEventListener('dragover', (event) => {
      if (event.dataTransfer?.types.includes('Files')) event.preventDefault();
    });
    addEventListener('drop', (event) => {
      const files = [...(event.dataTransfer?.files ?? [])];
      if (files.length === 0) return;
      event.preventDefault();
      void this.#guard(readAll(files).then((read) => this.#takeIn(read)));
    });
    addEventListener('hashchange', () => void this.#guard(this.#hashChanged()));
  }

  #key(event: KeyboardEvent): void {
    if (byId<HTMLDialogElement>('dialog').open) return;
    const mod = (event.ctrlKey || event.metaKey) && !event.altKey && !event.shiftKey;
    const act =
      event.key === 'F6'
        ? () => this.#otherPane()
        : mod && event.key === 's'
          ? () => this.#save()
          : mod && event.key === 'o'
            ? () => this.#open()
            : undefined;
    if (!act) return;
    event.preventDefault();
    void this.#guard(Promise.resolve(act()));
  }

  #otherPane(): void {
    const inText = byId('write').contains(document.activeElement);
    this.#toPane(inText ? 'look' : 'write');
    if (inText) this.#results.focus();
    else this.#editor.view.focus();
  }

  /** On a phone one pane is seen at a time. */
  #toPane(pane: 'write' | 'look'): void {
    byId('panes').dataset['pane'] = pane;
    byId('to-write').setAttribute('aria-pressed', String(pane === 'write'));
    byId('to-look').setAttribute('aria-pressed', String(pane === 'look'));
  }

  #select(from: number, to: number): void {
    this.#toPane('write');
    this.#editor.select(from, to);
  }

  // ---- files

  #isDirty = (file: ShelfFile): boolean => {
    const text = this.#editor.textOf(file.path);
    return text !== undefined && text !== file.saved;
  };

  /** Puts a text on the shelf, gives it to the service as opened, and shows it. */
  async #openText(path: string, raw: string, home: Home): Promise<void> {
    const { text, ending, marked, mixed } = layOpen(raw);
    this.#editor.close(path);
    this.#shelf.put({ path, home, saved: text, ending, marked });
    this.#lent.delete(path);
    await this.started.service.ask('put', { files: [{ path, text }], opened: true });
    this.#showFile(path, text);
    if (mixed)
      this.#notice(
        `The line ends of ${path} were not all the same; saved, they will all be ${ending === '\n' ? 'those of Unix' : 'those of Windows'}.`,
      );
  }

  #showFile(path: string, text: string): void {
    this.#editor.show(path, text);
    this.#results.reset();
    this.#clearNotice();
    this.#tell();
    this.#rounds.textChanged();
  }

  async #openAll(files: readonly SharedFile[], home: Home): Promise<void> {
    for (const { path, text } of [...files].reverse()) await this.#openText(this.#freshPath(path), text, home);
  }

  /** A path for a file that comes in: its own, unless a file with unsaved changes has it. */
  #freshPath(path: string): string {
    const there = this.#shelf.get(path);
    return there && this.#isDirty(there) ? this.#shelf.freePath(path) : path;
  }

  async #openExample(path: string): Promise<void> {
    await this.#openText(path, exampleText(path) ?? NEW_TEXT, { kind: 'example' });
  }

  /** A file of the list: one that is open, else one of the folder or an example. */
  async #choose(path: string): Promise<void> {
    this.#hint.end();
    const there = this.#shelf.get(path);
    if (there) {
      this.#showFile(path, this.#editor.textOf(path) ?? there.saved);
      return;
    }
    if (!this.#hasFolder) {
      await this.#openExample(path);
      return;
    }
    const file = await readFromFolder(path);
    if (file) await this.#openText(path, file.text, { kind: 'folder', version: file.version });
    else {
      this.#notice(`${path} cannot be read.`);
      this.#tell();
    }
  }

  /** Files that the text uses and that are not here: from the folder or the examples, never from anywhere else. */
  async #fetch(missing: readonly string[]): Promise<boolean> {
    const wanted = missing.filter((path) => !this.#tried.has(path));
    const found: { path: string; text: string }[] = [];
    for (const path of wanted) {
      this.#tried.add(path);
      const raw = this.#hasFolder ? (await readFromFolder(path))?.text : exampleText(path);
      if (raw === undefined) continue;
      found.push({ path, text: layOpen(raw).text });
      this.#lent.add(path);
    }
    if (found.length > 0) await this.started.service.ask('put', { files: found, opened: true });
    return found.length > 0;
  }

  async #new(): Promise<void> {
    const path = await askName('A new recipe', '', (name) => this.#isTaken(name));
    if (path === undefined) return;
    this.#hint.end();
    await this.#openText(path, NEW_TEXT, { kind: 'new' });
    this.#select(NEW_TEXT.indexOf('\n'), NEW_TEXT.indexOf('\n'));
  }

  #isTaken(path: string): boolean {
    return this.#shelf.get(path) !== undefined || this.#folder.includes(path);
  }

  async #open(): Promise<void> {
    await this.#takeIn(await pickFiles());
  }

  async #takeIn(read: readonly Read[]): Promise<void> {
    if (read.length === 0) return;
    this.#hint.end();
    const refused: string[] = [];
    for (const { name, text, why, handle } of [...read].reverse()) {
      if (text === undefined) refused.push(`${name} was not opened: ${why}.`);
      else
        await this.#openText(this.#freshPath(/\.quern$/i.test(name) ? name : `${name}.quern`), text, {
          kind: 'disk',
          handle,
        });
    }
    // A file that was asked for in vain may be here now.
    this.#tried.clear();
    if (refused.length > 0) this.#notice(refused.join(' '));
  }

  async #save(): Promise<void> {
    const file = this.#shelf.get(this.#editor.path);
    if (!file) return;
    if (this.#hasFolder) await this.#saveInFolder(file);
    else await this.#saveOnDisk(file);
  }

  async #saveOnDisk(file: ShelfFile): Promise<void> {
    const text = this.#editor.text;
    const handle = file.home.kind === 'disk' ? file.home.handle : undefined;
    const answer = await saveText(file.path.split('/').at(-1) ?? file.path, layBack(text, file), handle);
    if (answer.kind === 'cancelled') return;
    const home: Home = { kind: 'disk', handle: answer.kind === 'handle' ? answer.handle : undefined };
    await this.#saved({ ...file, home, saved: text });
    this.#notice(
      answer.kind === 'handle'
        ? `Saved as ${answer.handle.name}.`
        : `${file.path} has been given to the browser as a download.`,
    );
  }

  async #saveInFolder(file: ShelfFile): Promise<void> {
    let named = file;
    if (file.home.kind !== 'folder') {
      const path = await askName('Save in the folder', file.path, (name) => this.#folder.includes(name));
      if (path === undefined) return;
      named = this.#renamed(file, path);
    }
    const text = this.#editor.text;
    const version = named.home.kind === 'folder' ? named.home.version : undefined;
    let answer = await saveToFolder(named.path, layBack(text, named), version);
    if (answer.kind === 'changed') {
      const wish = await ask(
        'Changed elsewhere',
        `${named.path} has been changed by another program since it was read here.`,
        { over: 'Save over it', read: 'Take what is there' },
      );
      if (wish === 'read') {
        const there = await readFromFolder(named.path);
        if (there) this.#editor.replace(named.path, [{ from: 0, to: text.length, text: layOpen(there.text).text }]);
        if (there)
          await this.#saved({ ...named, home: { kind: 'folder', version: there.version }, saved: this.#editor.text });
        return;
      }
      if (wish === undefined) return;
      answer = await saveToFolder(named.path, layBack(text, named), '*');
    }
    if (answer.kind !== 'saved') {
      const why = answer.kind === 'refused' ? answer.why : 'it changed again';
      this.#notice(`${named.path} was not saved: ${why}`);
      return;
    }
    await this.#saved({ ...named, home: { kind: 'folder', version: answer.version }, saved: text });
    if (!this.#folder.includes(named.path)) this.#folder = [...this.#folder, named.path].sort();
    this.#notice(`Saved ${named.path}.`);
  }

  #renamed(file: ShelfFile, path: string): ShelfFile {
    if (path === file.path) return file;
    this.#shelf.remove(file.path);
    this.#editor.rename(file.path, path);
    const named = { ...file, path };
    this.#shelf.put(named);
    return named;
  }

  /** What was saved is from now on what later texts are compared with. */
  async #saved(file: ShelfFile): Promise<void> {
    this.#shelf.put(file);
    // What was asked for in vain may be there now.
    this.#tried.clear();
    await this.started.service.ask('put', { files: [{ path: file.path, text: file.saved }], opened: true });
    this.#tell();
    this.#rounds.textChanged();
    this.#rounds.again();
  }

  // ---- sharing

  async #share(): Promise<void> {
    const { path, text } = this.#editor;
    await this.#rounds.settled();
    const used = await this.started.service.ask('uses', { path });
    const fragment = await packFiles([{ path, text }, ...used]);
    const base = this.#hasFolder ? '' : location.href.replace(/#.*$/, '');
    showLink(fragment && `${base}#${fragment}`, this.#hasFolder);
  }

  async #hashChanged(): Promise<void> {
    const shared = await unpackFiles(location.hash);
    if (shared.kind === 'none') return;
    if (shared.kind === 'broken') this.#notice(brokenLink(shared.why));
    else {
      this.#hint.end();
      await this.#openAll(shared.files, { kind: 'link' });
      this.#notice(FROM_LINK);
    }
  }

  // ---- the text

  #changed(): void {
    this.#hint.changed();
    this.#tell();
    this.#rounds.textChanged();
  }

  #looked(look: Look): void {
    this.#said = look.said;
    this.#editor.showTokens(look.tokens);
    this.#editor.showSaid(look.said, []);
    this.#messages.show(look.said, []);
    this.#results.setChoices(look.choices);
  }

  /** Makes the changes of an offer. A file that it makes anew is opened. */
  #take(offer: Offer): void {
    void this.#guard(this.#makeChanges(offer));
  }

  async #makeChanges({ changes }: Offer): Promise<void> {
    for (const { file, edits } of changes) {
      if (file === this.#editor.path) this.#editor.replace(file, edits);
      else await this.#changeOther(file, edits);
    }
    this.#toPane('write');
    this.#editor.view.focus();
  }

  async #changeOther(path: string, edits: Offer['changes'][number]['edits']): Promise<void> {
    const here = this.#editor.path;
    if (!this.#shelf.get(path) && (this.#folder.includes(path) || this.#lent.has(path))) await this.#choose(path);
    else if (!this.#shelf.get(path)) await this.#openText(path, '', { kind: 'new' });
    this.#editor.replace(path, edits);
    const text = this.#editor.textOf(path) ?? '';
    await this.started.service.ask('put', { files: [{ path, text }], opened: false });
    if (here !== this.#editor.path) this.#showFile(here, this.#editor.textOf(here) ?? '');
  }

  async #offer(): Promise<void> {
    await this.#rounds.settled();
    const { from, to } = this.#editor.selection;
    const offers = await this.started.service.ask('offers', { path: this.#editor.path, from, to });
    const chosen = await chooseOf(
      'What can be done here',
      offers.map(({ title }) => title),
    );
    const offer = chosen === undefined ? undefined : offers[chosen];
    if (offer) await this.#makeChanges(offer);
    else this.#editor.view.focus();
  }

  async #tidy(): Promise<void> {
    await this.#rounds.settled();
    const edits = await this.started.service.ask('tidy', { path: this.#editor.path });
    if (edits.length === 0) this.#notice('It is laid out already.');
    else this.#editor.replace(this.#editor.path, edits);
  }

  async #keep(): Promise<void> {
    await this.#rounds.settled();
    const { view } = this.#results;
    const { path } = this.#editor;
    const page = await this.started.service.ask('page', { path, view, settings: this.#results.settings() });
    const stem = (path.split('/').at(-1) ?? path).replace(/\.quern$/i, '');
    if (page.ok) download(`${stem}-${view}.html`, page.html, 'text/html');
    else this.#notice(`There is no ${TITLES[view].toLowerCase()} to keep: ${page.reasons.join(' ')}`);
  }

  // ---- what is said

  /** The list of files and the title of the window. */
  #tell(): void {
    const { path } = this.#editor;
    const open = this.#shelf.files.map((file) => ({ path: file.path, dirty: this.#isDirty(file) }));
    const all = this.#hasFolder ? this.#folder : Object.keys(examples);
    const others = all.filter((one) => !this.#shelf.get(one));
    this.#list.show(path, open, others, this.#hasFolder ? 'In this folder' : 'Examples from Pennymoss Quay');
    const dirty = open.some((file) => file.path === path && file.dirty);
    document.title = `${dirty ? '• ' : ''}${path} – Quern desk`;
  }

  #notice(words: string): void {
    byId('notice').replaceChildren(
      make('p', {}, words),
      button('×', () => this.#clearNotice(), { class: 'dismiss', 'aria-label': 'Take this away' }),
    );
  }

  #clearNotice(): void {
    byId('notice').replaceChildren();
  }

  /** Something that should not happen: it is told, and the text stays. */
  #failed(error: unknown): void {
    const why = error instanceof Error ? error.message : String(error);
    this.#notice(`This is a fault in the desk, please report it: ${why}. Your text is still here; save it.`);
    this.#results.refuse([
      'This could not be made.',
      'Look another way, or change the text; nothing that you wrote is lost.',
    ]);
  }

  async #guard(work: Promise<void>): Promise<void> {
    try {
      await work;
    } catch (error) {
      this.#failed(error);
    }
  }
}
