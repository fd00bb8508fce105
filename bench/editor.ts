/**
 * Typing in the editor: the server as it is shipped, over its real input and output, beside a JSON service on a file of
 * equal length. The JSON service is measured in its favour: in its own process, without a pipe, on a file already parsed.
 */
import { spawn, type ChildProcessByStdio } from 'node:child_process';
import { createRequire } from 'node:module';
import type { Readable, Writable } from 'node:stream';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import type * as json from 'vscode-json-languageservice';
import * as lsp from 'vscode-languageserver-protocol/node';
import { recipeText } from './corpus.js';
import { median, type Measured } from './measure.js';

// Loaded as it was published: its modules cannot be put into one file.
const load = createRequire(import.meta.url);
const { getLanguageService, TextDocument } = load('vscode-json-languageservice') as typeof json;

setFlagsFromString('--expose-gc');
const collect = runInNewContext('gc') as () => void;

const URI = 'file:///bench/recipes.quern';
/** What is typed, key by key, and taken back again. */
const LINE = '  25 g honey = 1 1/4 tbsp, warm';

/** A file of about so many lines. */
function textOf(lines: number): string {
  let text = '';
  for (let index = 0, count = 0; count < lines; index++) {
    const recipe = `${recipeText(index)}\n`;
    text += recipe;
    count += recipe.split('\n').length - 1;
  }
  return text;
}

class Editor {
  readonly connection: lsp.ProtocolConnection;
  readonly #process: ChildProcessByStdio<Writable, Readable, null>;
  #version = 0;
  #told: (version: number) => void = () => undefined;

  constructor(server: string) {
    this.#process = spawn(process.execPath, [server, '--stdio'], { stdio: ['pipe', 'pipe', 'inherit'] });
    this.connection = lsp.createProtocolConnection(
      new lsp.StreamMessageReader(this.#process.stdout),
      new lsp.StreamMessageWriter(this.#process.stdin),
    );
    this.connection.onNotification(lsp.PublishDiagnosticsNotification.type, ({ version }) => this.#told(version ?? 0));
    this.connection.listen();
  }

  async start(): Promise<void> {
    await this.connection.sendRequest(lsp.InitializeRequest.type, {
      processId: process.pid,
      rootUri: null,
      capabilities: { textDocument: { publishDiagnostics: { versionSupport: true } } },
      initializationOptions: { settings: { slowChecks: false } },
    });
    await this.connection.sendNotification(lsp.InitializedNotification.type, {});
  }

  /** Sends something and waits for the messages of the text that it makes; gives the milliseconds. */
  async #until(send: (version: number) => Promise<void>): Promise<number> {
    const version = ++this.#version;
    const started = performance.now();
    const told = new Promise<void>((done) => {
      this.#told = (one) => {
        if (one >= version) done();
      };
    });
    await send(version);
    await told;
    return performance.now() - started;
  }

  open(text: string): Promise<number> {
    const document = { uri: URI, languageId: 'quern', text };
    return this.#until((version) =>
      this.connection.sendNotification(lsp.DidOpenTextDocumentNotification.type, {
        textDocument: { ...document, version },
      }),
    );
  }

  type(line: number, character: number, text: string, remove = 0): Promise<number> {
    const range = { start: { line, character }, end: { line, character: character + remove } };
    return this.#until((version) =>
      this.connection.sendNotification(lsp.DidChangeTextDocumentNotification.type, {
        textDocument: { uri: URI, version },
        contentChanges: [{ range, text }],
      }),
    );
  }

  async ask(what: 'hover' | 'completion', line: number, character: number): Promise<number> {
    // This process reads hundreds of messages with each key and has to clear them away; that is no time of the server's.
    collect();
    const started = performance.now();
    const params = { textDocument: { uri: URI }, position: { line, character } };
    await (what === 'hover'
      ? this.connection.sendRequest(lsp.HoverRequest.type, params)
      : this.connection.sendRequest(lsp.CompletionRequest.type, params));
    return performance.now() - started;
  }

  stop(): void {
    this.#process.kill();
    this.connection.dispose();
  }
}

/** The smallest value that so large a share of the values does not exceed (the nearest rank). */
const percentile = (values: readonly number[], share: number): number =>
  values.toSorted((a, b) => a - b)[Math.max(0, Math.ceil(values.length * share) - 1)] ?? Infinity;

interface Typed {
  readonly keys: number[];
  readonly hovers: number[];
  readonly completions: number[];
}

/** Types a line into recipes all over the file, a key at a time, asks there, and takes the line back. */
async function typing(editor: Editor, text: string, places: number): Promise<Typed> {
  const lines = text.split('\n');
  const typed: Typed = { keys: [], hovers: [], completions: [] };
  for (let place = 0; place < places; place++) {
    const from = Math.floor((lines.length * (place + 0.5)) / places);
    const line = lines.findIndex((one, index) => index >= from && /^ {2}\d/.test(one));
    const above = lines[line]?.length ?? 0;
    typed.keys.push(await editor.type(line, above, '\n'));
    for (const [index, key] of [...LINE].entries()) {
      typed.keys.push(await editor.type(line + 1, index, key));
      const letter = index - LINE.indexOf('honey');
      if (letter >= 0 && letter < 'honey'.length)
        typed.completions.push(await editor.ask('completion', line + 1, index + 1));
    }
    typed.hovers.push(await editor.ask('hover', line + 1, 3), await editor.ask('hover', line + 1, 8));
    for (let index = LINE.length - 1; index >= 0; index--) typed.keys.push(await editor.type(line + 1, index, '', 1));
    await editor.connection.sendNotification(lsp.DidChangeTextDocumentNotification.type, {
      textDocument: { uri: URI, version: 0 },
      contentChanges: [
        { range: { start: { line, character: above }, end: { line: line + 1, character: 0 } }, text: '' },
      ],
    });
  }
  return typed;
}

/** A JSON file of so many lines, and the milliseconds of its service from a key to its messages. */
async function jsonKeys(lines: number, keys: number): Promise<number[]> {
  const service = getLanguageService({});
  const entry = (index: number): string => `    { "name": "flour ${index}", "grams": ${100 + (index % 400)} }`;
  const text = `{\n  "lines": [\n${Array.from({ length: lines }, (_, index) => entry(index)).join(',\n')}\n  ]\n}\n`;
  let document = TextDocument.create('file:///bench/lines.json', 'json', 1, text);
  const times: number[] = [];
  for (let key = 0; key < keys; key++) {
    const position = { line: 2 + Math.floor((lines * (key % 10)) / 10), character: 16 };
    const started = performance.now();
    document = TextDocument.update(document, [{ range: { start: position, end: position }, text: 'x' }], key + 2);
    await service.doValidation(document, service.parseJSONDocument(document));
    times.push(performance.now() - started);
  }
  return times;
}

/** From the start of the process to the first messages of a small file. */
async function firstMessages(server: string, rounds: number): Promise<number> {
  const times: number[] = [];
  for (let round = 0; round < rounds; round++) {
    const started = performance.now();
    const editor = new Editor(server);
    await editor.start();
    await editor.open(recipeText(0));
    times.push(performance.now() - started);
    editor.stop();
  }
  return median(times);
}

/** @param server the bundled server. */
export async function editorSpeed(server: string, gate: boolean): Promise<Measured[]> {
  const measured: Measured[] = [];
  for (const { lines, goal } of [
    { lines: 2_000, goal: 16 },
    { lines: 20_000, goal: 100 },
  ]) {
    const text = textOf(lines);
    const editor = new Editor(server);
    await editor.start();
    await editor.open(text);
    // Whoever has a long file open has typed in it for a while; the first keys are slower, for the engine still learns.
    await typing(editor, text, gate ? 4 : 12);
    const { keys, hovers, completions } = await typing(editor, text, gate ? 4 : 60);
    editor.stop();
    const json = await jsonKeys(lines, gate ? 60 : 300);
    const [typical, worst, peer] = [percentile(keys, 0.5), percentile(keys, 0.99), percentile(json, 0.99)];
    const size = `${lines.toLocaleString('en')} lines`;
    measured.push({
      what: `from a key to messages in ${size}, 99th percentile of ${keys.length} (half of them: ${typical.toFixed(1)} ms; a JSON service: ${peer.toFixed(1)} ms)`,
      value: `${worst.toFixed(1)} ms`,
      goal: `under ${goal} ms`,
      reached: worst < goal,
      ratio: { id: `editor-key-${lines}`, value: typical / percentile(json, 0.5), better: 'less' },
    });
    for (const [what, times] of [
      ['hover', hovers],
      ['completion', completions],
    ] as const) {
      const slowest = percentile(times, 0.99);
      measured.push({
        what: `${what} in ${size}, 99th percentile of ${times.length}`,
        value: `${slowest.toFixed(1)} ms`,
        goal: 'under 10 ms',
        reached: slowest < 10,
      });
    }
  }
  const start = await firstMessages(server, gate ? 3 : 9);
  measured.push({
    what: 'from the start of the server to its first messages',
    value: `${start.toFixed(0)} ms`,
    goal: 'under 400 ms',
    reached: start < 400,
  });
  return measured;
}
