import { resolve } from 'node:path';
import {
  checkReport,
  mergeReports,
  readCheckReport,
  reportGithub,
  reportJson,
  reportSarif,
  reportText,
  tallyText,
  type CheckReport,
  type Found,
} from '@quern/publish/report';
import { checkFiles } from '../check/check-files.js';
import { isInShard, readShard } from '../check/shard.js';
import { defineCommand, UsageError, type ExitCode } from '../command.js';
import { readText, type Kind } from '../files/read-text.js';
import { findFiles } from '../files/walk.js';
import { seenFrom } from '../files/workspace.js';
import { paintFor, widthOf } from '../system/paint.js';
import { plain } from '../system/plain.js';
import type { System } from '../system/system.js';

const FORMATS = ['text', 'json', 'github', 'sarif'] as const;

export const check = defineCommand({
  usage: ['[PATH …] [OPTION …]', '--merge REPORT … [--format FORMAT]'],
  about: [
    'Reads recipes and says what is wrong: the file, line and column, a code that has a page in the manual, the place underlined, and the way out. A folder means every .quern file in it; without a path, the folder you are in. Nothing is ever written, except a cache where you ask for one.',
    'Ends with 1 when there is an error; warnings and hints end with 0.',
  ],
  options: {
    format: {
      type: 'string',
      value: 'FORMAT',
      choices: FORMATS,
      says: 'text (default), json, github (annotations) or sarif (2.1.0)',
    },
    quiet: { type: 'boolean', short: 'q', says: 'errors only, and no summary' },
    shard: { type: 'string', value: 'N/M', says: 'only the Nth of M parts of the files, for several machines' },
    merge: { type: 'boolean', says: 'the files named are JSON reports of shards; give them as one' },
    cache: {
      type: 'string',
      value: 'FOLDER',
      says: 'keep results by content in this folder, and use those that are there',
    },
    jobs: { type: 'string', value: 'N', says: 'threads to work in; as many as there are cores unless given' },
    root: {
      type: 'string',
      value: 'FOLDER',
      says: 'the folder that recipes may use files of; else the repository, else where you are',
    },
  },
  examples: [
    { line: '', says: 'every recipe below this folder' },
    { line: 'recipes --format sarif > recipes.sarif', says: 'for the code scanning of a forge' },
    {
      line: '--shard 3/16 --format json > part-3.json',
      says: 'one part of a large archive; merge the parts with --merge part-*.json',
    },
  ],
  async run({ files, options, system }) {
    if (options.merge) return give(mergeReports(files.map((file) => readReport(file, system))), [], options, system);
    const paths = files.length === 0 ? ['.'] : files;
    const all = findFiles(paths, system.folder);
    if (all.length === 0) throw new UsageError(`there is no .quern file in ${files.join(', ') || 'this folder'}`);
    const shard = options.shard === undefined ? undefined : readShard(options.shard);
    const chosen = shard ? all.filter((file) => isInShard(seenFrom(system.folder, file), shard)) : all;
    const reports = await checkFiles(
      chosen,
      {
        root: options.root,
        jobs: jobs(options.jobs),
        ...(options.cache === undefined ? {} : { cache: resolve(system.folder, options.cache) }),
      },
      system,
    );
    const problems = reports.flatMap(({ problem, refused }) => [
      ...(problem === undefined ? [] : [problem]),
      ...refused,
    ]);
    const isUnread = reports.some(({ problem }) => problem !== undefined);
    const code = give(
      checkReport(
        reports.flatMap(({ found }) => found),
        chosen.length,
      ),
      problems,
      options,
      system,
    );
    return isUnread ? 2 : code;
  },
});

function jobs(text: string | undefined): number | undefined {
  if (text === undefined) return undefined;
  if (!/^[1-9]\d{0,2}$/.test(text))
    throw new UsageError(`--jobs: “${text}” is not a number of threads`, 'write a number from 1 to 999');
  return Number(text);
}

/** A report has as many lines as an archive has mistakes. */
const REPORT: Kind = {
  most: 256 * 1024 * 1024,
  is: 'a report of quern check',
  help: 'check the archive in more parts',
};

function readReport(file: string, system: System): CheckReport {
  const report = readCheckReport(readText(resolve(system.folder, file), file, REPORT));
  if (!report)
    throw new UsageError(
      `${file} is not a report of this version of quern check`,
      'make it with --format json, by the same version',
    );
  return report;
}

/** Writes the report in the format asked for; problems with files go to the error stream. */
function give(
  report: CheckReport,
  problems: readonly string[],
  options: { readonly format: string | undefined; readonly quiet: boolean },
  system: System,
): ExitCode {
  const { out, err } = system;
  const found = options.quiet ? report.diagnostics.filter(({ severity }) => severity === 'error') : report.diagnostics;
  const shown: CheckReport = options.quiet ? checkReport(found, report.files) : report;
  switch (options.format) {
    case 'json':
      out.write(reportJson(shown));
      break;
    case 'sarif':
      out.write(reportSarif(found, system.version));
      break;
    case 'github':
      if (found.length > 0) out.write(found.map(reportGithub).join(''));
      break;
    default:
      writeText(found, system);
  }
  for (const problem of problems) err.write(`quern: ${plain(problem)}\n`);
  if (!options.quiet)
    err.write(`${report.files} ${report.files === 1 ? 'file' : 'files'}: ${tallyText(report.summary)}\n`);
  return report.summary.errors > 0 ? 1 : 0;
}

function writeText(found: readonly Found[], system: System): void {
  const settings = { paint: paintFor(system), width: widthOf(system) };
  if (found.length > 0) system.out.write(found.map((one) => reportText(one, settings)).join('\n'));
}
