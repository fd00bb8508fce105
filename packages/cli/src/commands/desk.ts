import { existsSync, statSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { defineCommand, UsageError, type ExitCode } from '../command.js';
import { DeskFolder } from '../desk/desk-folder.js';
import { startDesk, type DeskServer } from '../desk/desk-server.js';
import { openBrowser } from '../desk/open-browser.js';
import { fileProblem } from '../files/problems.js';
import { ENDING } from '../files/walk.js';
import { isInside } from '../files/workspace.js';
import type { System } from '../system/system.js';

const OPTIONS = {
  port: { type: 'string', value: 'NUMBER', says: 'the port to answer at; any that is free unless given' },
  open: { type: 'boolean', says: 'open the page in the browser' },
  root: {
    type: 'string',
    value: 'FOLDER',
    says: 'the folder whose recipes the desk may read and save; else that of the file',
  },
} as const;

export const desk = defineCommand({
  usage: ['[FILE | FOLDER] [--open] [--port NUMBER]'],
  about: [
    'Opens the desk: a page in your browser to write in, with the sheet, the clock, the label, the card and the comparison beside the text as you type. It lists the recipes of a folder, and writes a file only when you save.',
    'Only this computer can reach the page, and only by the address that is printed, which is another each time. Nothing is sent anywhere. Ctrl-C ends it.',
  ],
  options: OPTIONS,
  examples: [
    { line: 'recipes --open', says: 'the recipes of a folder' },
    { line: 'loaf.quern', says: 'one recipe, with the others of its folder at hand' },
  ],
  async run({ files, options, system }) {
    const [path = '.', ...more] = files;
    if (more.length > 0) throw new UsageError('a desk has one folder', 'name one file or one folder');
    const port = portOption(options.port);
    const { folder, open } = placeOf(resolve(system.folder, path), path, options.root, system);
    const server = await startDesk({ site: siteBeside(system), folder, open, port });
    // Before the address is told: whoever has read it may stop the desk at once.
    const stopped = untilStopped(server, system);
    system.out.write(announcement(server.address, folder));
    if (options.open)
      openBrowser(server.address, () =>
        system.err.write('quern: this system has no way to open a browser; open the address yourself\n'),
      );
    return stopped;
  },
});

function portOption(text: string | undefined): number {
  if (text === undefined) return 0;
  const port = Number(text);
  if (!/^\d{1,5}$/.test(text) || port < 1 || port > 65_535)
    throw new UsageError(`--port: “${text}” is not a port`, 'write a number from 1 to 65535');
  return port;
}

/** The folder of the desk, and the file that is shown first when one is named. */
function placeOf(
  full: string,
  shown: string,
  root: string | undefined,
  system: System,
): { readonly folder: DeskFolder; readonly open: string | undefined } {
  let stat;
  try {
    stat = statSync(full);
  } catch (error) {
    throw fileProblem('read', shown, error);
  }
  const own = stat.isDirectory() ? full : dirname(full);
  const folder = new DeskFolder(root === undefined ? own : rootFolder(root, system));
  if (!isInside(folder.root, new DeskFolder(own).root))
    throw new UsageError(`${shown} is not inside the root ${root ?? own}`, 'name a --root that holds it');
  if (stat.isDirectory()) return { folder, open: undefined };
  if (!full.endsWith(ENDING))
    throw new UsageError(
      `${shown} is no recipe file: its name does not end in ${ENDING}`,
      'rename it, or name another',
    );
  const path = folder.pathOf(join(new DeskFolder(own).root, full.slice(own.length + 1)));
  if (!folder.read(path))
    throw new UsageError(`${shown} cannot be read as a recipe file`, 'it must be text in UTF-8, inside the folder');
  return { folder, open: path };
}

function rootFolder(root: string, system: System): string {
  const full = resolve(system.folder, root);
  if (!statSync(full, { throwIfNoEntry: false })?.isDirectory())
    throw new UsageError(`--root: ${root} is not a folder`, 'name a folder');
  return full;
}

/** The page is built beside the command. */
function siteBeside({ entry }: System): string {
  const site = entry === undefined ? undefined : join(dirname(entry), 'desk');
  if (site === undefined || !existsSync(site))
    throw new UsageError('the page of the desk is not beside the command', 'build it: npm run build');
  return site;
}

function announcement(address: string, folder: DeskFolder): string {
  const { length } = folder.list();
  const holds = length === 1 ? 'one recipe file' : `${length} recipe files`;
  return `The desk is open, with ${holds} of ${folder.root}:\n\n  ${address}\n\nOnly this computer can reach it, and only by this address. Ctrl-C ends it.\n`;
}

/** Serves until somebody says to stop. */
function untilStopped(server: DeskServer, system: System): Promise<ExitCode> {
  return new Promise(() => {
    const stop = (): void => {
      server.close();
      system.err.write('\nThe desk is closed.\n');
      // At once: being told to stop is how a desk ends, and a save is never under way between two requests.
      process.exit(0);
    };
    process.once('SIGINT', stop);
    process.once('SIGTERM', stop);
  });
}
