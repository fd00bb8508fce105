/** The server over its real standard input and output, with a client that knows nothing but the protocol. */
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import * as lsp from 'vscode-languageserver-protocol/node';
import { ABLE, bundledServer, Client, Folder, offsetAt, positionAt, withEdits } from './server-process.js';

let server: Awaited<ReturnType<typeof bundledServer>>;
let client: Client;
let folder: Folder;

beforeAll(async () => {
  server = await bundledServer();
}, 60_000);
afterAll(() => server.clean());
beforeEach(() => {
  client = new Client(server.file);
});
afterEach(() => {
  client.kill();
  folder.clean();
});

const LOAF = `recipe Loaf
gives 1 loaf of 850 g

make leaven
  100 g strong wheat flour
  100 g water
  hands 3 min: Stir.
  wait 10-14 h at 24 C: Leave.

make dough
  all leaven
  400 g strong wheat flour
  250 g water
  hands 8 min: Mix the leaven with the flour.
`;

async function openLoaf(text = LOAF, capabilities = ABLE): Promise<string> {
  folder = new Folder({ 'loaf.quern': text });
  await client.initialize(folder, capabilities);
  const uri = folder.uriOf('loaf.quern');
  await client.open(uri, text);
  return uri;
}

/** A place in the text of an open file. */
const at = (uri: string, words: string, plus = 0): { textDocument: { uri: string }; position: lsp.Position } => {
  const offset = client.text(uri).indexOf(words);
  expect(offset).toBeGreaterThanOrEqual(0);
  return { textDocument: { uri }, position: positionAt(client.text(uri), offset + plus) };
};

const codes = (found: readonly lsp.Diagnostic[]): string[] => found.map(({ code }) => String(code)).sort();

describe('starting and stopping', () => {
  test('says what it can do and ends with 0 when it is asked to', async () => {
    folder = new Folder();
    const { capabilities, serverInfo } = await client.initialize(folder);
    expect(serverInfo?.name).toBe('quern');
    expect(capabilities.textDocumentSync).toMatchObject({ change: lsp.TextDocumentSyncKind.Incremental });
    expect(capabilities.diagnosticProvider).toBeUndefined();
    expect(await client.stop()).toBe(0);
  });

  test('offers messages to those who come for them', async () => {
    folder = new Folder();
    const able = { ...ABLE, textDocument: { ...ABLE.textDocument, diagnostic: {} } };
    const { capabilities } = await client.initialize(folder, able);
    expect(capabilities.diagnosticProvider).toMatchObject({ interFileDependencies: true });
  });

  test('ends with 1 when it is told to go without having been asked to shut down', async () => {
    folder = new Folder();
    await client.initialize(folder);
    await client.connection.sendNotification(lsp.ExitNotification.type);
    expect(await client.exited).toBe(1);
  });
});

describe('messages', () => {
  test('are pushed for the version that was typed, with a page for each code and the places that take part', async () => {
    folder = new Folder();
    await client.initialize(folder, ABLE, { docs: 'https://docs.example/diagnostics' });
    const uri = folder.uriOf('a.quern');
    await client.open(
      uri,
      'recipe Toast\n\nmake toast\n  80 g rye bread\n  hands 2 min: Toast.\n\nmake toast\n  10 g honey\n  hnads 1 min: Spread.\n',
    );
    const found = await client.diagnostics(uri);
    expect(codes(found)).toEqual(['L01', 'M06', 'N03']);
    const twice = found.find(({ code }) => code === 'N03');
    expect(twice).toMatchObject({
      severity: lsp.DiagnosticSeverity.Error,
      range: { start: { line: 6, character: 5 }, end: { line: 6, character: 10 } },
      codeDescription: { href: 'https://docs.example/diagnostics/N03.md' },
      relatedInformation: [{ location: { uri, range: { start: { line: 2 } } }, message: 'first made here' }],
    });
    expect(found.find(({ code }) => code === 'M06')?.tags).toEqual([lsp.DiagnosticTag.Unnecessary]);
    const wrong = client.text(uri).indexOf('hnads');
    await client.change(uri, wrong, wrong + 5, 'hands');
    expect(codes(await client.diagnostics(uri))).toEqual(['M06', 'N03']);
  });

  test('can be fetched, and are not sent twice when nothing has changed', async () => {
    const uri = await openLoaf(LOAF.replace('hands 8', 'hnads 8'), {
      ...ABLE,
      textDocument: { ...ABLE.textDocument, diagnostic: {} },
    });
    const first = await client.connection.sendRequest(lsp.DocumentDiagnosticRequest.type, { textDocument: { uri } });
    expect(first.kind === 'full' && codes(first.items)).toEqual(['L01']);
    const previousResultId = first.resultId;
    const second = await client.connection.sendRequest(lsp.DocumentDiagnosticRequest.type, {
      textDocument: { uri },
      ...(previousResultId === undefined ? {} : { previousResultId }),
    });
    expect(second).toEqual({ kind: 'unchanged', resultId: previousResultId });
    expect(client.published.size).toBe(0);
  });

  test('of the label come when nobody types, and go when their cause goes', async () => {
    folder = new Folder();
    await client.initialize(folder);
    const uri = folder.uriOf('a.quern');
    await client.open(
      uri,
      'recipe Toast\nkeywords vegan\n\n  80 g rye bread\n  20 g unsalted butter\n  hands 2 min: Toast the bread and butter it.\n',
    );
    const found = await client.diagnostics(uri, ({ diagnostics }) => codes(diagnostics).includes('A08'));
    expect(found.find(({ code }) => code === 'A08')?.message).toContain('vegan');
    const tag = client.text(uri).indexOf('vegan');
    await client.change(uri, tag, tag + 5, 'toast');
    expect(codes(await client.diagnostics(uri))).not.toContain('A08');
  });

  test('of the label come to those who fetch them: when nobody types, or at once where nobody can be told', async () => {
    const text =
      'recipe Toast\nkeywords vegan\n\n  80 g rye bread\n  20 g unsalted butter\n  hands 2 min: Toast the bread and butter it.\n';
    const fetches = { ...ABLE, textDocument: { ...ABLE.textDocument, diagnostic: {} } };
    const fetched = async (one: Client, uri: string): Promise<string[]> => {
      const report = await one.connection.sendRequest(lsp.DocumentDiagnosticRequest.type, { textDocument: { uri } });
      return report.kind === 'full' ? codes(report.items) : [];
    };
    folder = new Folder();
    await client.initialize(folder, fetches);
    const uri = folder.uriOf('a.quern');
    await client.open(uri, text);
    expect(await fetched(client, uri)).toContain('A08');

    const told = new Client(server.file);
    try {
      const asked = new Promise<void>((done) => {
        told.connection.onRequest(lsp.DiagnosticRefreshRequest.type, () => done());
      });
      await told.initialize(folder, {
        ...fetches,
        workspace: { ...ABLE.workspace, diagnostics: { refreshSupport: true } },
      });
      await told.open(uri, text);
      await asked;
      let now = await fetched(told, uri);
      for (let waited = 0; !now.includes('A08') && waited < 50; waited++) {
        await new Promise((go) => setTimeout(go, 100));
        now = await fetched(told, uri);
      }
      expect(now).toContain('A08');
    } finally {
      told.kill();
    }
  });

  test('of the label have their fixes too', async () => {
    folder = new Folder();
    await client.initialize(folder);
    const uri = folder.uriOf('a.quern');
    const text =
      'recipe Toast\nkeywords vegan\n\n  80 g rye bread\n  20 g unsalted butter\n  hands 2 min: Toast the bread and butter it.\n';
    await client.open(uri, text);
    const diagnostics = [...(await client.diagnostics(uri, ({ diagnostics: found }) => codes(found).includes('A08')))];
    const { position } = at(uri, 'vegan', 1);
    const actions = (await client.connection.sendRequest(lsp.CodeActionRequest.type, {
      textDocument: { uri },
      range: { start: position, end: position },
      context: { diagnostics, only: ['quickfix'] },
    })) as lsp.CodeAction[];
    expect(actions.map(({ title }) => title)).toEqual(['Take the keyword “vegan” away']);
    expect(actions[0]?.diagnostics?.map(({ code }) => code)).toEqual(['A08']);
  });

  test('follow a file that is used, as it is typed and as it lies on the disk', async () => {
    folder = new Folder({ 'glaze.quern': 'recipe Glaze\n  50 g sugar\n  50 g water\n  hands 1 min: Stir.\n' });
    await client.initialize(folder);
    const uri = folder.uriOf('buns.quern');
    await client.open(
      uri,
      'use Glaze from glaze.quern\n\nrecipe Buns\ngives 400 g\n  300 g strong wheat flour\n  all Glaze\n  hands 5 min: Mix the flour with the glaze.\n',
    );
    expect(codes(await client.diagnostics(uri))).toEqual([]);

    const glaze = folder.uriOf('glaze.quern');
    await client.open(glaze, 'recipe Glaze\n  50 g sugar\n  150 g water\n  hands 1 min: Stir.\n');
    expect(codes(await client.diagnostics(uri, ({ diagnostics }) => diagnostics.length > 0))).toEqual(['M04']);

    await client.connection.sendNotification(lsp.DidCloseTextDocumentNotification.type, {
      textDocument: { uri: glaze },
    });
    folder.remove('glaze.quern');
    await client.connection.sendNotification(lsp.DidChangeWatchedFilesNotification.type, {
      changes: [{ uri: glaze, type: lsp.FileChangeType.Deleted }],
    });
    expect(codes(await client.diagnostics(uri, ({ diagnostics }) => codes(diagnostics).includes('N09')))).toEqual([
      'M10',
      'N09',
    ]);

    folder.write('glaze.quern', 'recipe Glaze\n  50 g sugar\n  50 g water\n  hands 1 min: Stir.\n');
    await client.connection.sendNotification(lsp.DidChangeWatchedFilesNotification.type, {
      changes: [{ uri: glaze, type: lsp.FileChangeType.Created }],
    });
    expect(codes(await client.diagnostics(uri, ({ diagnostics }) => diagnostics.length === 0))).toEqual([]);
    expect(client.registered).toContain('workspace/didChangeWatchedFiles');
  });

  test('of a closed file are taken away', async () => {
    const uri = await openLoaf(LOAF.replace('hands 8', 'hnads 8'));
    expect(codes(await client.diagnostics(uri))).toEqual(['L01']);
    await client.connection.sendNotification(lsp.DidCloseTextDocumentNotification.type, { textDocument: { uri } });
    expect(await client.diagnostics(uri, ({ diagnostics }) => diagnostics.length === 0)).toEqual([]);
  });

  test('come from outside the folder for no file', async () => {
    folder = new Folder({ 'in/a.quern': '' });
    const outside = new Folder({ 'secret.quern': 'recipe Secret\n  50 g sugar\n  hands 1 min: Stir.\n' });
    await client.initialize(folder);
    const uri = folder.uriOf('in/a.quern');
    await client.open(
      uri,
      `use Secret from ../../${outside.path.split('/').at(-1)}/secret.quern\n\nrecipe Buns\n  300 g strong wheat flour\n  hands 1 min: Sift.\n`,
    );
    expect(codes(await client.diagnostics(uri))).toEqual(['N14']);
    outside.clean();
  });
});

describe('answers', () => {
  test('hover, completion, signature', async () => {
    const uri = await openLoaf();
    const hover = await client.connection.sendRequest(lsp.HoverRequest.type, at(uri, 'all leaven', 5));
    expect(hover?.contents).toMatchObject({ kind: 'markdown' });
    expect(JSON.stringify(hover?.contents)).toContain('**leaven** (made, 200 g)');
    expect(hover?.range).toEqual({ start: { line: 10, character: 6 }, end: { line: 10, character: 12 } });

    const end = client.text(uri).indexOf('  250 g water');
    await client.change(uri, end, end, '  20 g strong wh\n');
    const completion = await client.connection.sendRequest(lsp.CompletionRequest.type, at(uri, '20 g strong wh', 14));
    const items = Array.isArray(completion) ? completion : (completion?.items ?? []);
    expect(items[0]).toMatchObject({
      label: 'strong wheat flour',
      textEdit: {
        newText: 'strong wheat flour',
        range: { start: { line: 12, character: 7 }, end: { line: 12, character: 16 } },
      },
    });

    const help = await client.connection.sendRequest(lsp.SignatureHelpRequest.type, at(uri, '20 g strong wh', 14));
    expect(help?.signatures[0]?.parameters?.[help.activeParameter ?? 0]?.label).toEqual([7, 11]);
  });

  test('definition, references, highlights, symbols, folding, selection, links', async () => {
    folder = new Folder({ 'glaze.quern': 'recipe Glaze\n  50 g sugar\n  hands 1 min: Stir.\n' });
    await client.initialize(folder);
    const uri = folder.uriOf('buns.quern');
    await client.open(
      uri,
      'use Glaze from glaze.quern\n\nrecipe Buns\n  300 g rye flour\n  half of Glaze\n  hands 5 min: Mix.\n',
    );
    const send = client.connection;
    expect(await send.sendRequest(lsp.DefinitionRequest.type, at(uri, 'of Glaze', 4))).toEqual([
      {
        uri: folder.uriOf('glaze.quern'),
        range: { start: { line: 0, character: 7 }, end: { line: 0, character: 12 } },
      },
    ]);
    const references = await send.sendRequest(lsp.ReferencesRequest.type, {
      ...at(uri, 'of Glaze', 4),
      context: { includeDeclaration: true },
    });
    expect(references?.map((one) => `${one.uri.split('/').at(-1)}:${one.range.start.line}`)).toEqual([
      'buns.quern:0',
      'buns.quern:4',
      'glaze.quern:0',
    ]);
    const fewer = await send.sendRequest(lsp.ReferencesRequest.type, {
      ...at(uri, 'of Glaze', 4),
      context: { includeDeclaration: false },
    });
    expect(fewer).toHaveLength(2);
    expect(await send.sendRequest(lsp.DocumentHighlightRequest.type, at(uri, 'of Glaze', 4))).toHaveLength(2);
    expect(await send.sendRequest(lsp.DocumentSymbolRequest.type, { textDocument: { uri } })).toMatchObject([
      { name: 'Buns', kind: lsp.SymbolKind.Class },
    ]);
    expect(await send.sendRequest(lsp.WorkspaceSymbolRequest.type, { query: 'gla' })).toMatchObject([
      { name: 'Glaze', location: { uri: folder.uriOf('glaze.quern') } },
    ]);
    expect(await send.sendRequest(lsp.FoldingRangeRequest.type, { textDocument: { uri } })).toEqual([
      { startLine: 2, endLine: 5 },
    ]);
    const [range] =
      (await send.sendRequest(lsp.SelectionRangeRequest.type, {
        textDocument: { uri },
        positions: [at(uri, 'rye').position],
      })) ?? [];
    expect(range?.range).toEqual({ start: { line: 3, character: 8 }, end: { line: 3, character: 11 } });
    expect(range?.parent?.range).toEqual({ start: { line: 3, character: 8 }, end: { line: 3, character: 17 } });
    expect(await send.sendRequest(lsp.DocumentLinkRequest.type, { textDocument: { uri } })).toMatchObject([
      { target: folder.uriOf('glaze.quern') },
    ]);
  });

  test('calls between makes', async () => {
    const uri = await openLoaf();
    const [item] =
      (await client.connection.sendRequest(lsp.CallHierarchyPrepareRequest.type, at(uri, 'make leaven', 6))) ?? [];
    expect(item?.name).toBe('leaven');
    if (item === undefined) return;
    const incoming = await client.connection.sendRequest(lsp.CallHierarchyIncomingCallsRequest.type, { item });
    expect(incoming?.map(({ from, fromRanges }) => [from.name, fromRanges[0]?.start.line])).toEqual([['dough', 10]]);
    const [dough] =
      (await client.connection.sendRequest(lsp.CallHierarchyPrepareRequest.type, at(uri, 'make dough', 6))) ?? [];
    if (dough === undefined) throw new Error('no dough');
    const outgoing = await client.connection.sendRequest(lsp.CallHierarchyOutgoingCallsRequest.type, { item: dough });
    expect(outgoing?.map((call) => call.to.name)).toEqual(['leaven']);
  });

  test('a rename changes every file, with the versions it was worked out for', async () => {
    folder = new Folder({ 'glaze.quern': 'recipe Glaze\n  50 g sugar\n  hands 1 min: Stir.\n' });
    await client.initialize(folder);
    const uri = folder.uriOf('buns.quern');
    const text =
      'use Glaze from glaze.quern\n\nrecipe Buns\n  300 g rye flour\n  half of Glaze\n  hands 5 min: Brush with the glaze.\n';
    await client.open(uri, text);
    const place = at(uri, 'of Glaze', 4);
    expect(await client.connection.sendRequest(lsp.PrepareRenameRequest.type, place)).toMatchObject({
      placeholder: 'Glaze',
    });
    const edit = await client.connection.sendRequest(lsp.RenameRequest.type, { ...place, newName: 'Egg shine' });
    const changes = (edit?.documentChanges ?? []) as lsp.TextDocumentEdit[];
    const changed = changes.map(({ textDocument, edits }) => [
      textDocument.uri.split('/').at(-1),
      textDocument.version,
      edits.length,
    ]);
    expect(changed).toEqual([
      ['buns.quern', 1, 3],
      ['glaze.quern', null, 1],
    ]);
    expect(withEdits(text, changes[0]?.edits ?? [])).toBe(
      'use Egg shine from glaze.quern\n\nrecipe Buns\n  300 g rye flour\n  half of Egg shine\n  hands 5 min: Brush with the egg shine.\n',
    );
    await expect(client.connection.sendRequest(lsp.RenameRequest.type, { ...place, newName: 'flour' })).rejects.toThrow(
      '“flour” has a meaning of its own.',
    );
  });

  test('fixes, refactorings and all safe fixes at once', async () => {
    const uri = await openLoaf(LOAF.replace('hands 8', 'hnads 8'));
    const diagnostics = [...(await client.diagnostics(uri))];
    const { position } = at(uri, 'hnads', 2);
    const range = { start: position, end: position };
    const actions = (await client.connection.sendRequest(lsp.CodeActionRequest.type, {
      textDocument: { uri },
      range,
      context: { diagnostics },
    })) as lsp.CodeAction[];
    expect(actions[0]).toMatchObject({
      title: 'Write “hands”',
      kind: 'quickfix',
      isPreferred: true,
      diagnostics: [{ code: 'L01' }],
    });
    const all = (await client.connection.sendRequest(lsp.CodeActionRequest.type, {
      textDocument: { uri },
      range,
      context: { diagnostics: [], only: ['source.fixAll'] },
    })) as lsp.CodeAction[];
    expect(all.map(({ kind }) => kind)).toEqual(['source.fixAll.quern']);
    const change = all[0]?.edit?.documentChanges?.[0] as lsp.TextDocumentEdit;
    expect(withEdits(client.text(uri), change.edits)).toBe(LOAF);
  });

  test('formatting of a file, a range, and while typing', async () => {
    const uri = await openLoaf(LOAF.replace('  250 g water', '250   g water'));
    const options = { tabSize: 2, insertSpaces: true };
    const send = client.connection;
    const whole = await send.sendRequest(lsp.DocumentFormattingRequest.type, { textDocument: { uri }, options });
    expect(withEdits(client.text(uri), whole ?? [])).toBe(LOAF);
    const line = at(uri, '250   g').position.line;
    const range = { start: { line, character: 0 }, end: { line, character: 3 } };
    expect(
      await send.sendRequest(lsp.DocumentRangeFormattingRequest.type, { textDocument: { uri }, range, options }),
    ).toEqual(whole);
    const end = client.text(uri).indexOf('250   g water') + '250   g water'.length;
    await client.change(uri, end, end, '\n');
    const typed = await send.sendRequest(lsp.DocumentOnTypeFormattingRequest.type, {
      textDocument: { uri },
      position: { line: line + 1, character: 0 },
      ch: '\n',
      options,
    });
    expect(withEdits(client.text(uri), typed ?? [])).toBe(LOAF.replace('  250 g water', '  250 g water\n  '));
  });

  test('hints, lenses and colours', async () => {
    folder = new Folder({ 'loaf.quern': LOAF });
    await client.initialize(folder, ABLE, {
      commands: ['quern.sheet'],
      settings: { hints: { potWeight: true, otherMeasure: false } },
    });
    const uri = folder.uriOf('loaf.quern');
    await client.open(uri, LOAF);
    const send = client.connection;
    const range = { start: { line: 4, character: 0 }, end: { line: 5, character: 0 } };
    const hints = await send.sendRequest(lsp.InlayHintRequest.type, { textDocument: { uri }, range });
    expect(hints?.map(({ label }) => label)).toEqual(['20 %', 'pot 100 g', '20 %', 'pot 200 g']);

    const lenses = (await send.sendRequest(lsp.CodeLensRequest.type, { textDocument: { uri } })) ?? [];
    const told = await Promise.all(lenses.map((lens) => send.sendRequest(lsp.CodeLensResolveRequest.type, lens)));
    expect(told.map(({ command }) => [command?.title, command?.command])).toEqual([
      ['850 g · 1 loaf of 850 g · hydration 70 % · 10 h 11 min to 14 h 11 min', ''],
      ['Scale', 'quern.sheet'],
    ]);

    const full = await send.sendRequest(lsp.SemanticTokensRequest.type, { textDocument: { uri } });
    const part = await send.sendRequest(lsp.SemanticTokensRangeRequest.type, { textDocument: { uri }, range });
    expect((full?.data.length ?? 0) % 5).toBe(0);
    expect(part?.data.length).toBeLessThan(full?.data.length ?? 0);
    const end = LOAF.indexOf('  250 g water');
    await client.change(uri, end, end, '  20 g honey\n');
    const delta = await send.sendRequest(lsp.SemanticTokensDeltaRequest.type, {
      textDocument: { uri },
      previousResultId: full?.resultId ?? '',
    });
    const fresh = await send.sendRequest(lsp.SemanticTokensRequest.type, { textDocument: { uri } });
    expect(delta && 'edits' in delta).toBe(true);
    if (delta === null || !('edits' in delta)) return;
    const data = [...(full?.data ?? [])];
    for (const edit of delta.edits.toReversed()) data.splice(edit.start, edit.deleteCount, ...(edit.data ?? []));
    expect(data).toEqual(fresh?.data);
  });

  test('pages of the card, the sheet, the label and the clock', async () => {
    const uri = await openLoaf();
    for (const kind of ['card', 'sheet', 'label', 'clock']) {
      const answer: { kind: string; html: string } = await client.connection.sendRequest(`quern/${kind}`, {
        uri,
        recipe: 'Loaf',
      });
      expect(answer.kind).toBe('page');
      expect(answer.html).toMatch(/^<!doctype html>/i);
      expect(answer.html).toContain('Loaf');
    }
    expect(await client.connection.sendRequest('quern/card', { uri, recipe: 'Cake' })).toEqual({
      kind: 'none',
      why: 'This file holds no recipe “Cake”.',
    });
    expect(await client.connection.sendRequest('quern/card', { uri: folder.uriOf('gone.quern') })).toEqual({
      kind: 'none',
      why: 'The file cannot be read.',
    });
  });

  test('a food moves into a new file only for an editor that can make one', async () => {
    const text = 'recipe Drink\n  40 g frob syrup\n  hands 1 min: Pour.\n\nfood frob syrup\n  contains nothing\n';
    folder = new Folder();
    await client.initialize(folder, {
      ...ABLE,
      workspace: { ...ABLE.workspace, workspaceEdit: { documentChanges: true } },
    });
    const uri = folder.uriOf('a.quern');
    await client.open(uri, text);
    const { position } = at(uri, 'food frob', 6);
    const ask = { textDocument: { uri }, range: { start: position, end: position }, context: { diagnostics: [] } };
    const titles = ((await client.connection.sendRequest(lsp.CodeActionRequest.type, ask)) as lsp.CodeAction[]).map(
      ({ title }) => title,
    );
    expect(titles.filter((title) => title.startsWith('Move'))).toEqual([]);
  });
});

describe('what goes wrong outside', () => {
  test('requests that cannot be understood are refused, and the next is answered', async () => {
    const uri = await openLoaf();
    const send = client.connection;
    await expect(send.sendRequest('quern/nonsense', {})).rejects.toMatchObject({ code: lsp.ErrorCodes.MethodNotFound });
    await expect(send.sendRequest('textDocument/hover', { nothing: true })).rejects.toBeDefined();
    await expect(send.sendRequest('textDocument/rename', null)).rejects.toBeDefined();
    await expect(send.sendRequest('quern/card', null)).resolves.toMatchObject({ kind: 'none' });
    expect(
      await send.sendRequest(lsp.HoverRequest.type, {
        textDocument: { uri },
        position: { line: 99_999, character: 5 },
      }),
    ).toBeNull();
    // Before the file is its first place: the word “recipe”.
    expect(
      await send.sendRequest(lsp.HoverRequest.type, { textDocument: { uri }, position: { line: -3, character: -1 } }),
    ).toMatchObject({ range: { start: { line: 0, character: 0 } } });
    expect(
      await send.sendRequest(lsp.HoverRequest.type, {
        textDocument: { uri: 'file:///gone.quern' },
        position: { line: 0, character: 0 },
      }),
    ).toBeNull();
    expect(
      await send.sendRequest(lsp.DocumentSymbolRequest.type, { textDocument: { uri: 'no uri at all' } }),
    ).toBeNull();
    expect(await send.sendRequest(lsp.HoverRequest.type, at(uri, 'all leaven', 5))).not.toBeNull();
  });

  test('a body that is no JSON is logged and passed over', async () => {
    const uri = await openLoaf();
    await client.diagnostics(uri);
    client.process.stdin.write('Content-Length: 9\r\n\r\n{"broken ');
    client.process.stdin.write('Content-Length: 24\r\n\r\n{"jsonrpc":"2.0","id":7}');
    expect(await client.connection.sendRequest(lsp.HoverRequest.type, at(uri, 'all leaven', 5))).not.toBeNull();
  });

  test('a request that is taken back is not worked out', async () => {
    const uri = await openLoaf();
    await client.diagnostics(uri);
    const sources = Array.from({ length: 40 }, () => new lsp.CancellationTokenSource());
    const asked = sources.map((source) =>
      client.connection.sendRequest(lsp.SemanticTokensRequest.type, { textDocument: { uri } }, source.token),
    );
    for (const source of sources) source.cancel();
    const settled = await Promise.allSettled(asked);
    const refused = settled.filter((one) => one.status === 'rejected');
    expect(refused.length).toBeGreaterThan(0);
    for (const one of refused) expect(one.reason).toMatchObject({ code: lsp.LSPErrorCodes.RequestCancelled });
    expect(await client.connection.sendRequest(lsp.HoverRequest.type, at(uri, 'all leaven', 5))).not.toBeNull();
  });

  test('work over many files is given up midway, and lets others come in between', async () => {
    const one = (number: number): string =>
      Array.from(
        { length: 40 },
        (_, index) =>
          `recipe Loaf ${number} ${index}\n\n  500 g strong wheat flour\n  350 g water\n  2 % fine salt on flour\n  hands 8 min: Mix the flour with the water and the salt.\n`,
      ).join('\n');
    const many = Object.fromEntries(Array.from({ length: 250 }, (_, number) => [`f${number}.quern`, one(number)]));
    folder = new Folder({ ...many, 'loaf.quern': LOAF });
    await client.initialize(folder);
    const uri = folder.uriOf('loaf.quern');
    await client.open(uri, LOAF);
    await client.diagnostics(uri);
    const place = at(uri, '400 g strong', 8);
    const ask = {
      references: (token: lsp.CancellationToken) =>
        client.connection.sendRequest(
          lsp.ReferencesRequest.type,
          { ...place, context: { includeDeclaration: true } },
          token,
        ),
      rename: (token: lsp.CancellationToken) =>
        client.connection.sendRequest(
          lsp.RenameRequest.type,
          { ...at(uri, 'recipe Loaf', 8), newName: 'Bread' },
          token,
        ),
      symbols: (token: lsp.CancellationToken) =>
        client.connection.sendRequest(lsp.WorkspaceSymbolRequest.type, { query: 'zzzz' }, token),
    };
    for (const [what, send] of Object.entries(ask)) {
      const order: string[] = [];
      const source = new lsp.CancellationTokenSource();
      const began = performance.now();
      const asked = send(source.token).then(
        () => order.push('done'),
        (error: unknown) => {
          order.push(`refused ${(error as lsp.ResponseError).code}`);
        },
      );
      // The server has begun when it answers a question that came after.
      await client.connection.sendRequest(lsp.FoldingRangeRequest.type, { textDocument: { uri } });
      order.push('folded');
      source.cancel();
      await asked;
      expect([what, ...order]).toEqual([what, 'folded', `refused ${lsp.LSPErrorCodes.RequestCancelled}`]);
      expect(performance.now() - began).toBeLessThan(2_000);
      // The files are read by now for the next kind of work: a fresh server for each.
      client.kill();
      client = new Client(server.file);
      await client.initialize(folder);
      await client.open(uri, LOAF);
      await client.diagnostics(uri);
    }
    // Left alone it comes to its end.
    const found = await ask.references(new lsp.CancellationTokenSource().token);
    expect(found?.length).toBeGreaterThan(10_000);
  }, 120_000);

  test('a change outside the file is taken at its nearest place', async () => {
    const uri = await openLoaf();
    const far = { line: 9_999, character: 9_999 };
    await client.connection.sendNotification(lsp.DidChangeTextDocumentNotification.type, {
      textDocument: { uri, version: 2 },
      contentChanges: [{ range: { start: far, end: far }, text: '  hnads 1 min: More.\n' }],
    });
    const found = await client.diagnostics(uri, ({ version }) => version === 2);
    expect(codes(found)).toEqual(['L01']);
  });

  test('line ends of every kind and characters of two units keep their places', async () => {
    folder = new Folder();
    await client.initialize(folder);
    const uri = folder.uriOf('a.quern');
    await client.open(uri, 'recipe 🥖 Loaf\r\n\r\n  300 g rye flour\r  hnads 1 min: 🥖 Sift.\n');
    const [found] = await client.diagnostics(uri);
    expect(found?.range).toEqual({ start: { line: 3, character: 2 }, end: { line: 3, character: 7 } });
    const text = client.text(uri);
    const start = offsetAt(text, found?.range.start ?? { line: 0, character: 0 });
    await client.change(uri, start, start + 5, 'hands');
    expect(await client.diagnostics(uri)).toEqual([]);
  });
});

describe('size', () => {
  test('fifty thousand lines', async () => {
    folder = new Folder();
    await client.initialize(folder);
    const uri = folder.uriOf('long.quern');
    const make = (number: number): string =>
      `make dough ${number}\n${number === 0 ? '' : `  all dough ${number - 1}\n`}  500 g strong wheat flour\n  350 g water\n  10 g fine salt\n  hands 8 min: Mix the flour with the water and the salt.\n  wait 1 h: Leave.\n\n`;
    const one = (number: number): string =>
      `recipe Loaf ${number}\n\n${Array.from({ length: 16 }, (_, index) => make(index)).join('')}`;
    const text = Array.from({ length: 390 }, (_, number) => one(number)).join('');
    expect(text.split('\n').length).toBeGreaterThan(50_000);
    await client.open(uri, text);
    expect(await client.diagnostics(uri, undefined, 120_000)).toEqual([]);
    const offset = client.text(uri).lastIndexOf('hands 8 min');
    await client.change(uri, offset, offset + 5, 'hnads');
    expect(codes(await client.diagnostics(uri, undefined, 60_000))).toEqual(['L01']);
    const hover = await client.connection.sendRequest(lsp.HoverRequest.type, at(uri, 'recipe Loaf 380', 9));
    expect(hover).not.toBeNull();
  }, 200_000);

  test('a line of five megabytes', async () => {
    folder = new Folder();
    await client.initialize(folder);
    const uri = folder.uriOf('wide.quern');
    await client.open(
      uri,
      `recipe Loaf\n\n  500 g strong wheat flour\n  hands 8 min: ${'Mix the flour. '.repeat(350_000)}\n`,
    );
    expect(codes(await client.diagnostics(uri, undefined, 60_000))).toEqual(['L27']);
    const send = client.connection;
    const { position } = at(uri, 'hands 8', 2);
    for (const ask of [
      send.sendRequest(lsp.HoverRequest.type, { textDocument: { uri }, position }),
      send.sendRequest(lsp.SemanticTokensRequest.type, { textDocument: { uri } }),
      send.sendRequest(lsp.CompletionRequest.type, {
        textDocument: { uri },
        position: { line: 3, character: 5_000_000 },
      }),
      send.sendRequest(lsp.FoldingRangeRequest.type, { textDocument: { uri } }),
    ])
      await ask;
    const offset = client.text(uri).indexOf('500 g');
    await client.change(uri, offset, offset + 3, '400');
    expect(codes(await client.diagnostics(uri, undefined, 60_000))).toEqual(['L27']);
  }, 120_000);
});
