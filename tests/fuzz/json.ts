/** Texts that are read as JSON: reports to be merged, caches, lists of a site, recipes in an address. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { compile } from '@quern/compiler';
import { packFiles, unpackFiles } from '@quern/desk';
import { createFoodBook } from '@quern/foods';
import {
  checkReport,
  mergeReports,
  readCheckReport,
  reportGithub,
  reportJson,
  reportSarif,
  reportText,
  tellDiagnostics,
} from '@quern/publish';
import { memoryHost } from '@quern/testkit';
import { CheckCache } from '../../packages/cli/src/check/cache.js';
import { UsageError } from '../../packages/cli/src/command.js';
import { SiteFolder } from '../../packages/cli/src/card/site-folder.js';
import { corpus } from './corpus.js';

const foods = createFoodBook();
const path = 'main.quern';

function reportOf(text: string): string {
  const { diagnostics } = compile(path, text, memoryHost([{ path, text }], foods));
  return reportJson(
    checkReport(
      tellDiagnostics(diagnostics, () => text),
      1,
    ),
  );
}

const report = corpus.map(reportOf).filter((text) => text.length > 500);
const [first = '{}'] = report;
const { diagnostics } = JSON.parse(first) as { diagnostics: unknown };

/** One of each kind of text that is read as JSON, as it is when it is well. */
export const jsonCorpus: readonly string[] = [
  ...report.slice(0, 20),
  JSON.stringify({
    format: 'quern-check-cache',
    version: 1,
    entries: { key: { uses: [['a.quern', 'none']], found: diagnostics }, other: 0 },
  }),
  JSON.stringify({
    format: 'quern-site',
    version: 1,
    made: 'quern 0',
    files: { 'index.html': 'hash', 'a/b.html': 'hash' },
    cards: { loaf: { card: 'hash', changed: '2027-05-01T12:00:00Z' } },
  }),
  JSON.stringify([['main.quern', 'recipe Loaf\n']]),
];

/** Whatever is read as JSON is taken whole or not at all, and what is taken can be told in every form. */
export async function readsJson(text: string): Promise<void> {
  const read = readCheckReport(text);
  if (read) {
    const merged = mergeReports([read, read]);
    for (const one of merged.diagnostics)
      if (!reportGithub(one).startsWith('::') || reportText(one) === '') throw new Error('told as nothing');
    JSON.parse(reportSarif(merged.diagnostics, '0'));
    if (readCheckReport(reportJson(merged)) === undefined)
      throw new Error('a report that was read cannot be read again');
  }
  const folder = mkdtempSync(join(tmpdir(), 'quern-json-'));
  try {
    readsCache(folder, text);
    readsList(folder, text);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
  await readsLink(text);
}

function readsCache(folder: string, text: string): void {
  writeFileSync(join(folder, 'check-tool.json'), text);
  const cache = new CheckCache(folder, 'tool', 1);
  for (const key of ['key', 'other', '__proto__', 'constructor']) {
    for (const found of cache.find(key, () => 'none') ?? []) reportText(found);
  }
  cache.keep('new', [], []);
  cache.save();
}

function readsList(folder: string, text: string): void {
  writeFileSync(join(folder, 'quern-site.json'), text);
  try {
    const site = new SiteFolder(folder, 'site', 'quern 0');
    site.changedAt('loaf', 'card', '2027-05-02T12:00:00Z');
    site.write([{ path: 'page.html', inputs: 'x', render: () => 'x' }], () => undefined);
  } catch (error) {
    if (!(error instanceof UsageError)) throw error;
  }
}

async function readsLink(text: string): Promise<void> {
  await unpackFiles(`#quern=0.${Buffer.from(text, 'utf8').toString('base64url')}`);
  await unpackFiles(`#quern=1.${Buffer.from(text, 'utf8').toString('base64url')}`);
  const whole = text.slice(0, 10_000);
  const packed = await packFiles([{ path: 'main.quern', text: whole }]);
  if (packed === undefined) return;
  const back = await unpackFiles(packed);
  if (back.kind !== 'files' || back.files[0]?.text !== whole) throw new Error('a link does not give back its text');
}
