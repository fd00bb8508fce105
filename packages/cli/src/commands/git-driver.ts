import { defineCommand, UsageError } from '../command.js';
import { checkDriver, diffDriver, mergeDriver, textDriver } from '../git/drivers.js';

const OPTIONS = {
  path: { type: 'string', value: 'PATH', says: 'of a merge: where the file stands in the working tree' },
  'marker-size': { type: 'string', value: 'N', says: 'of a merge: characters of a conflict mark, 7 unless given' },
} as const;

export const gitDriver = defineCommand({
  usage: ['text FILE', 'diff PATH OLD …', 'merge BASE OURS THEIRS', 'check'],
  about: [
    'What git calls once quern git-setup has been run: a file as an account of what its lines come to (text), the difference of two states (diff), a merge by make and line into OURS (merge), and a check of what is about to be committed (check).',
  ],
  options: OPTIONS,
  examples: [
    { line: 'text loaf.quern', says: 'the account that git log -p compares' },
    { line: 'merge base.quern ours.quern theirs.quern', says: 'merge by hand; exit code 1 when somebody has to look' },
  ],
  async run({ files, options, system }) {
    const [task, ...args] = files;
    switch (task) {
      case 'text': {
        const [file] = args;
        if (file === undefined) throw new UsageError('no file is named', 'quern git-driver text FILE');
        return textDriver(file, system);
      }
      case 'diff':
        return diffDriver(args, system);
      case 'merge': {
        const [base, ours, theirs] = args;
        if (base === undefined || ours === undefined || theirs === undefined) {
          throw new UsageError('a merge is of three files', 'quern git-driver merge BASE OURS THEIRS');
        }
        const size = Number(options['marker-size'] ?? 7);
        if (!Number.isInteger(size) || size < 1 || size > 1000)
          throw new UsageError('--marker-size is a number of characters', 'write --marker-size 7');
        return mergeDriver({ base, ours, theirs, path: options.path ?? ours, markerSize: size }, system);
      }
      case 'check':
        return checkDriver(system);
      default:
        throw new UsageError(
          task === undefined ? 'no task is named' : `there is no task “${task}”`,
          'text, diff, merge or check; quern git-setup lets git call it',
        );
    }
  },
});
