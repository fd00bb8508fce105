import { createInterface } from 'node:readline/promises';
import { defineCommand, UsageError } from '../command.js';
import { repositoryOf } from '../git/git.js';
import { commandFor, setUpSteps, undoSteps, type SetupStep } from '../git/setup.js';
import type { System } from '../system/system.js';

const OPTIONS = {
  yes: { type: 'boolean', short: 'y', says: 'do not ask before writing' },
  undo: { type: 'boolean', says: 'take away what was written' },
  shared: {
    type: 'boolean',
    says: 'write .gitattributes, which everybody who clones gets, instead of keeping it to yourself',
  },
  'no-hooks': { type: 'boolean', says: 'no check before a commit' },
} as const;

export const gitSetup = defineCommand({
  usage: ['[--shared] [--no-hooks] [--yes]', '--undo [--yes]'],
  about: [
    'Lets git speak of recipes: git diff tells what changed and what follows from it, git log -p and git show compare accounts of what the lines come to, merges go by make and line, and a commit with errors is stopped. It says what it will write, asks, and can take all of it away again.',
  ],
  options: OPTIONS,
  examples: [
    { line: '', says: 'ask, then set this clone up' },
    { line: '--shared --yes', says: 'with attributes for everybody, without asking' },
    { line: '--undo', says: 'as it was before' },
  ],
  async run({ files, options, system }) {
    if (files.length > 0) throw new UsageError('this command takes no file', 'run it in a folder of the repository');
    const repository = repositoryOf(system.folder, 'this folder');
    const command = commandFor(system);
    const steps = options.undo
      ? undoSteps(repository)
      : setUpSteps(repository, { command, shared: options.shared, hooks: !options['no-hooks'] });
    if (steps.length === 0) {
      system.out.write(options.undo ? 'There is nothing to take away.\n' : 'Everything is set up already.\n');
      return 0;
    }
    system.out.write(`In ${repository.top}:\n${steps.map(({ says }) => `  ${says}\n`).join('')}`);
    if (!options.yes && !(await isWanted(system))) {
      system.out.write('Nothing was written.\n');
      return 1;
    }
    write(steps);
    system.out.write(options.undo ? 'Taken away.\n' : 'Set up. quern git-setup --undo takes it away again.\n');
    return 0;
  },
});

function write(steps: readonly SetupStep[]): void {
  for (const step of steps) step.do();
}

/** Asks on the terminal; an answer may also come through a pipe. Anything but yes is no. */
async function isWanted(system: System): Promise<boolean> {
  const question = 'Shall it be written? [yes/no] ';
  if (!process.stdin.isTTY) {
    system.err.write(question);
    const answer = await system.readStdin();
    system.err.write('\n');
    if (answer.trim() === '') throw new UsageError('nobody is there to ask', 'add --yes, or answer on the terminal');
    return isYes(answer);
  }
  const terminal = createInterface({ input: process.stdin, output: process.stderr });
  try {
    return isYes(await terminal.question(question));
  } finally {
    terminal.close();
  }
}

const isYes = (answer: string): boolean => /^y(?:es)?$/i.test(answer.trim());
