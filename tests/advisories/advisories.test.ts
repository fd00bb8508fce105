/** The check for known advisories: what it makes of answers, of records, and of silence. */
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import {
  advisoriesIn,
  fromAudit,
  installed,
  publishedOf,
  readPublished,
  tell,
  type Installed,
} from '../../scripts/advisories-read.mjs';

const root = join(import.meta.dirname, '..', '..');
const folder = mkdtempSync(join(tmpdir(), 'quern-advisories-'));
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

/** GitHub Advisory Database, GHSA-v6h2-p8h4-qcjw (brace-expansion, CVE-2025-5889): its ranges; from memory. */
const BRACES = {
  id: 'GHSA-v6h2-p8h4-qcjw',
  summary: 'brace-expansion Regular Expression Denial of Service vulnerability',
  database_specific: { severity: 'LOW' },
  affected: [
    ['1.0.0', '1.1.12'],
    ['2.0.0', '2.0.2'],
    ['3.0.0', '3.0.1'],
    ['4.0.0', '4.0.1'],
  ].map(([introduced, fixed]) => ({
    package: { ecosystem: 'npm', name: 'brace-expansion' },
    ranges: [{ type: 'SEMVER', events: [{ introduced }, { fixed }] }],
  })),
};
const at = (name: string, version: string): Installed => ({ name, version, production: true });

describe('records in the OSV format', () => {
  test.each([
    ['0.9.9', false],
    ['1.0.0', true],
    ['1.1.11', true],
    ['1.1.12', false],
    ['2.0.1', true],
    ['2.0.2', false],
    ['4.0.1-beta.1', true],
    ['5.0.13', false],
  ])('of ranges: %s', (version, affected) => {
    expect(advisoriesIn([at('brace-expansion', version)], [BRACES]).length).toBe(affected ? 1 : 0);
    expect(advisoriesIn([at('braces', version)], [BRACES])).toEqual([]);
  });

  // OSV Schema 1.7, 'affected[].ranges[].events': introduced "0" is before every version; last_affected is the last one.
  test('of everything, of the last version affected, and of versions by name', () => {
    const of = (rest: object) => ({ ...BRACES, affected: [{ package: { ecosystem: 'npm', name: 'x' }, ...rest }] });
    const found = (version: string, rest: object): boolean => advisoriesIn([at('x', version)], [of(rest)]).length === 1;
    const ranges = (...events: object[]) => ({ ranges: [{ type: 'SEMVER', events }] });
    expect(found('0.0.1', ranges({ introduced: '0' }))).toBe(true);
    expect(found('1.0.0', ranges({ introduced: '0' }, { last_affected: '1.0.0' }))).toBe(true);
    expect(found('1.0.1', ranges({ last_affected: '1.0.0' }, { introduced: '0' }))).toBe(false);
    expect(found('1.2.3', { versions: ['1.2.3'] })).toBe(true);
    expect(found('1.2.4', { versions: ['1.2.3'] })).toBe(false);
  });

  test('are read from a folder by the command', () => {
    const run = (database: string) =>
      spawnSync(process.execPath, [join('scripts', 'advisories.mjs'), '--database', database], {
        cwd: root,
        encoding: 'utf8',
      });
    mkdirSync(join(folder, 'deep'), { recursive: true });
    expect(run(join(folder, 'nowhere')).status).toBe(3);
    expect(run(folder).status).toBe(3);
    writeFileSync(join(folder, 'deep', 'braces.json'), JSON.stringify(BRACES));
    expect(run(folder)).toMatchObject({
      status: 0,
      stdout: expect.stringMatching(/^No known advisory against the \d+ packages/) as string,
    });
    const chevrotain = [
      {
        package: { ecosystem: 'npm', name: 'chevrotain' },
        ranges: [{ type: 'SEMVER', events: [{ introduced: '0' }] }],
      },
    ];
    writeFileSync(
      join(folder, 'made-up.json'),
      JSON.stringify({ id: 'MADE-UP-1', summary: 'made up', affected: chevrotain }),
    );
    const told = run(folder);
    expect(told.status).toBe(1);
    expect(told.stderr).toMatch(/chevrotain \d+\.\d+\.\d+: MADE-UP-1 \(not stated, comes to users\) made up\n/);
  });
});

describe('the answer of a registry', () => {
  // npm 10 documentation, `npm audit`, report version 2.
  const report = {
    auditReportVersion: 2,
    vulnerabilities: {
      'brace-expansion': {
        name: 'brace-expansion',
        severity: 'low',
        range: '1.0.0 - 1.1.11',
        via: [{ url: 'https://github.com/advisories/GHSA-v6h2-p8h4-qcjw', title: 'ReDoS', range: '>=1.0.0 <=1.1.11' }],
      },
      minimatch: { name: 'minimatch', severity: 'low', range: '<1', via: ['brace-expansion'] },
    },
  };

  test('that there are some is code 1, that there are none is code 0', () => {
    const some = tell(fromAudit(JSON.stringify(report)), 612);
    expect(some.code).toBe(1);
    expect(some.text).toMatch(
      /brace-expansion >=1\.0\.0 <=1\.1\.11: \S+GHSA-v6h2-p8h4-qcjw \(low\) ReDoS\n {2}and 1 packages/,
    );
    const none = tell(fromAudit(JSON.stringify({ auditReportVersion: 2, vulnerabilities: {} })), 612);
    expect(none).toEqual({
      code: 0,
      text: 'No known advisory against the 612 packages of the lock (asked: the registry).',
    });
  });

  test('that is none is code 3 and no pass', () => {
    for (const silence of [
      '',
      '{}',
      '{"message":"405 Method Not Allowed","error":{"summary":""}}',
      '{"error":{"code":"ENOTFOUND","summary":"no network"}}',
    ]) {
      const { code, text } = tell(fromAudit(silence), 612);
      expect(code).toBe(3);
      expect(text).toMatch(/^No answer came: .+\.\n.+ is not told\. This is no pass/);
    }
  });
});

test('every package of the lock is asked about', () => {
  const lock = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')) as {
    packages: Record<string, unknown>;
  };
  const found = installed(lock);
  const folders = Object.keys(lock.packages).filter((path) => path.includes('node_modules/'));
  expect(found.length).toBeGreaterThan(400);
  expect(found.length).toBeLessThanOrEqual(folders.length);
  expect(found.find(({ name }) => name === 'chevrotain')?.production).toBe(true);
  expect(found.find(({ name }) => name === 'vitest')?.production).toBe(false);
});

describe('the published advisories at hand', () => {
  const published = readPublished(join(import.meta.dirname, 'published.tsv'));
  const lock = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')) as object;

  test('speak of no version in the lock', () => {
    expect(publishedOf(installed(lock), published)).toEqual([]);
  });

  test('speak of packages of the lock, each once', () => {
    const names = new Set(installed(lock).map(({ name }) => name));
    expect(published.length).toBeGreaterThan(100);
    expect(published.filter(({ name }) => !names.has(name))).toEqual([]);
    expect(new Set(published.map(({ id, name }) => `${id} ${name}`)).size).toBe(published.length);
  });

  // Each was the last version before its fix, as GHSA-q2hr-2g5m-vwhr, GHSA-3ppc-4f35-3m26 and the malicious release of
  // September 2025 were published.
  test.each([
    ['brace-expansion', '5.0.11', 'GHSA-q2hr-2g5m-vwhr'],
    ['minimatch', '10.2.0', 'GHSA-3ppc-4f35-3m26'],
    ['debug', '4.4.2', 'GHSA-8mgj-vmr8-frr6'],
  ])('would be told of %s %s', (name, version, id) => {
    expect(publishedOf([at(name, version)], published).map((one) => one.id)).toContain(id);
  });

  test('are named when no registry answers, which is no pass all the same', () => {
    const { status, stderr } = spawnSync(process.execPath, [join('scripts', 'advisories.mjs')], {
      cwd: root,
      encoding: 'utf8',
      // Nothing listens there, so that the answer is the same with and without a network.
      env: { ...process.env, npm_config_registry: 'http://127.0.0.1:9/', npm_config_fetch_retries: '0' },
    });
    expect(stderr).toContain(
      `None of the ${published.length} published advisories at hand is of a version in the lock.`,
    );
    expect(status).toBe(3);
  });
});
