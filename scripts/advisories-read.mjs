// What is known against an installed package: the answer of `npm audit --json`, or records in the OSV format.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import semver from 'semver';

/** Every package that the lock names, each version once; `production` when users get it too. */
export function installed(lock) {
  const found = new Map();
  for (const [path, { version, dev, link }] of Object.entries(lock.packages)) {
    const name = /.*(?:^|\/)node_modules\/((?:@[^/]+\/)?[^/]+)$/.exec(path)?.[1];
    if (name === undefined || version === undefined || link) continue;
    const key = `${name} ${version}`;
    const before = found.get(key);
    found.set(key, { name, version, production: (before?.production ?? false) || dev !== true });
  }
  return [...found.values()];
}

/** The answer of the registry, as npm tells it (report version 2), or why there is none. */
export function fromAudit(stdout) {
  let report;
  try {
    report = JSON.parse(stdout);
  } catch {
    return { kind: 'silence', why: 'npm gave no report' };
  }
  if (report.error || report.message || report.auditReportVersion !== 2)
    return { kind: 'silence', why: String(report.message ?? report.error?.summary ?? 'npm gave no report') };
  const found = Object.values(report.vulnerabilities ?? {}).flatMap(({ name, severity, via, range }) =>
    via
      .filter((one) => typeof one === 'object')
      .map(({ url, title, range: of }) => ({ name, version: of ?? range, id: url, severity, summary: title })),
  );
  const others = Object.values(report.vulnerabilities ?? {}).length - new Set(found.map(({ name }) => name)).size;
  return { kind: 'answer', found, of: 'the registry', through: others };
}

/** Every OSV record of the npm ecosystem in a folder, however deep. */
export function readDatabase(folder) {
  const records = [];
  let read = 0;
  for (const name of readdirSync(folder, { recursive: true, encoding: 'utf8' })) {
    if (!name.endsWith('.json')) continue;
    const record = JSON.parse(readFileSync(join(folder, name), 'utf8'));
    if (typeof record.id !== 'string' || !Array.isArray(record.affected)) continue;
    read++;
    if (record.withdrawn === undefined) records.push(record);
  }
  return { records, read };
}

/** The records that speak of an installed version. */
export function advisoriesIn(packages, records) {
  return records.flatMap((record) =>
    packages
      .filter(({ name, version }) =>
        record.affected.some(
          (one) => one.package?.ecosystem === 'npm' && one.package.name === name && isAffected(version, one),
        ),
      )
      .map((one) => ({ ...one, id: record.id, summary: record.summary ?? '', severity: severityOf(record) })),
  );
}

/**
 * The table of published advisories at hand: what is known where no registry answers, up to the day it was read.
 * Ranges are written as semver writes them.
 */
export function readPublished(path) {
  const [heading, ...rows] = readFileSync(path, 'utf8')
    .split('\n')
    .filter((line) => line !== '' && !line.startsWith('#'));
  if (heading !== 'id\talso\tpackage\taffected\tseverity\tnote') throw new Error(`${path}: another heading`);
  return rows.map((row) => {
    const [id, , name, affected, severity] = row.split('\t');
    if (!id || !name || !semver.validRange(affected)) throw new Error(`${path}: no advisory in “${row}”`);
    return { id, name, affected, severity };
  });
}

/** The published advisories that speak of an installed version. */
export function publishedOf(packages, published) {
  return published.flatMap(({ id, name, affected, severity }) =>
    packages
      .filter((one) => one.name === name && semver.satisfies(one.version, affected, { includePrerelease: true }))
      .map((one) => ({ ...one, id, severity, summary: '' })),
  );
}

const severityOf = ({ database_specific: own, severity = [] }) =>
  String(own?.severity ?? severity[0]?.score ?? 'not stated').toLowerCase();

/** Whether a version is named, or lies in a range: events in order, from what introduced it to what fixed it. */
function isAffected(version, { versions = [], ranges = [] }) {
  if (versions.includes(version)) return true;
  return ranges
    .filter(({ type }) => type === 'SEMVER' || type === 'ECOSYSTEM')
    .some(({ events }) => isIn(version, events));
}

function isIn(version, events) {
  let affected = false;
  for (const event of [...events].sort((a, b) => compareEvents(a, b))) {
    const { introduced, fixed, last_affected: last } = event;
    if (introduced !== undefined && (introduced === '0' || semver.gte(version, introduced))) affected = true;
    if (fixed !== undefined && semver.gte(version, fixed)) affected = false;
    if (last !== undefined && semver.gt(version, last)) affected = false;
  }
  return affected;
}

const at = ({ introduced, fixed, last_affected: last }) => {
  const version = introduced ?? fixed ?? last ?? '0';
  return version === '0' ? '0.0.0-0' : version;
};
const compareEvents = (a, b) => semver.compare(at(a), at(b)) || ('introduced' in a ? -1 : 1);

/** The words for an answer, and the exit code that goes with it. */
export function tell(answer, packages) {
  if (answer.kind === 'silence') {
    return {
      code: 3,
      text: `No answer came: ${answer.why}.\nWhat is known today against the ${packages} packages of the lock is not told. This is no pass: ask again where a registry answers, or give records with --database FOLDER.`,
    };
  }
  if (answer.found.length === 0)
    return { code: 0, text: `No known advisory against the ${packages} packages of the lock (asked: ${answer.of}).` };
  const lines = answer.found.map(({ name, version, id, severity, summary, production }) => {
    const whose = production === undefined ? '' : production ? ', comes to users' : ', for development only';
    return `  ${name} ${version}: ${id} (${severity}${whose}) ${summary}`;
  });
  const through = answer.through > 0 ? [`  and ${answer.through} packages that use one of these`] : [];
  return {
    code: 1,
    text: [
      `${answer.found.length} known advisories (asked: ${answer.of}):`,
      ...lines,
      ...through,
      'Way out: npm update NAME, or another package.',
    ].join('\n'),
  };
}
