// Known advisories of what package-lock.json names: `npm run advisories`, or with `-- --database FOLDER` against records
// in the OSV format (https://ossf.github.io/osv-schema/) that were brought here before. Exit code 0: an answer came, and
// none is known. 1: there are some. 2: used wrongly. 3: no answer came, and of what was published before nothing fits: that
// is no pass.
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './run-ts.mjs';
import {
  advisoriesIn,
  fromAudit,
  installed,
  publishedOf,
  readDatabase,
  readPublished,
  tell,
} from './advisories-read.mjs';

function ask() {
  const npm = process.env.npm_execpath;
  const args = ['audit', '--json'];
  const options = { cwd: root, encoding: 'utf8', timeout: 120_000, maxBuffer: 64 * 1024 * 1024 };
  const { stdout, error } =
    npm === undefined
      ? spawnSync('npm', args, { ...options, shell: process.platform === 'win32' })
      : spawnSync(process.execPath, [npm, ...args], options);
  return error ? { kind: 'silence', why: error.message } : fromAudit(stdout);
}

const args = process.argv.slice(2);
const lock = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8'));
let answer;
if (args.length === 0) answer = ask();
else if (args.length === 2 && args[0] === '--database') {
  try {
    const { records, read } = readDatabase(args[1]);
    answer =
      read === 0
        ? { kind: 'silence', why: `there is no record of an advisory in ${args[1]}` }
        : { kind: 'answer', found: advisoriesIn(installed(lock), records), of: `${read} records` };
  } catch (error) {
    answer = { kind: 'silence', why: error.message };
  }
} else {
  console.error('npm run advisories, or npm run advisories -- --database FOLDER (records in the OSV format)');
  process.exit(2);
}
const packages = installed(lock);
if (answer.kind === 'silence') {
  // What was read before is no answer of today, but what it speaks of is known.
  const published = readPublished(join(root, 'tests', 'advisories', 'published.tsv'));
  const found = publishedOf(packages, published);
  if (found.length > 0) answer = { kind: 'answer', found, of: `${published.length} published advisories at hand` };
  else answer.why += `. None of the ${published.length} published advisories at hand is of a version in the lock`;
}
const { text, code } = tell(answer, packages.length);
(code === 0 ? console.log : console.error)(text);
process.exitCode = code;
