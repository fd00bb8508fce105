/** Real editors as clients of the bundled server. Run by `npm run test:editors`, which needs what docs/editors.md names. */
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Folder } from './server-process.js';

const FILE = `recipe Loaf

make leaven
  100 g strong wheat flour
  100 g water
  hnads 3 min: Stir.

make dough
  all leaven
  400   g strong wheat flour
  250 g water
  hands 8 min: Mix the leaven with the flour.
`;

interface Seen {
  readonly diagnostics: readonly { readonly code: string; readonly line: number; readonly column: number }[];
  readonly hover: string;
  readonly completion: readonly string[];
  readonly renamed: string;
  readonly formatted: string;
  readonly cleared: boolean;
}

export interface Outcome {
  readonly what: string;
  readonly ok: boolean;
  readonly told: string;
}

interface SeenByEmacs {
  readonly version: string;
  readonly mode: string;
  readonly face: string;
  readonly messages: readonly { readonly line: number; readonly column: number; readonly text: string }[];
  readonly hover: string;
  readonly completion: readonly string[];
  readonly completed: string;
  readonly imenu: readonly string[];
  readonly renamed: string;
  readonly formatted: string;
  readonly mended: string;
  readonly cleared: boolean;
}

/** Emacs without a window, with eglot and the mode of this project: what it sees of a file, step by step. */
export function emacs(server: string, mode: string, script: string): readonly Outcome[] {
  const folder = new Folder({ 'loaf.quern': FILE });
  try {
    const { status, stderr, error } = spawnSync('emacs', ['-q', '--batch', '--load', script], {
      env: {
        ...process.env,
        // Its own settings of a user are none of the test's.
        HOME: folder.path,
        QUERN_FOLDER: folder.path,
        QUERN_SERVER: server,
        QUERN_MODE: mode,
        QUERN_NODE: process.execPath,
      },
      encoding: 'utf8',
      timeout: 120_000,
    });
    if (status !== 0) return [{ what: 'Emacs', ok: false, told: error?.message ?? stderr }];
    const seen = JSON.parse(readFileSync(join(folder.path, 'seen.json'), 'utf8')) as SeenByEmacs;
    const renamed = FILE.replace(/leaven/g, 'levain');
    const formatted = renamed.replace('400   g', '400 g');
    const outcome = (what: string, ok: boolean, told: unknown): Outcome => ({
      what: `Emacs ${seen.version}: ${what}`,
      ok,
      told: JSON.stringify(told),
    });
    const [first, ...more] = seen.messages;
    return [
      outcome('the mode of the file', seen.mode === 'quern-mode', seen.mode),
      outcome('first colour of a block', seen.face === 'font-lock-keyword-face', seen.face),
      outcome(
        'a message at its place',
        first?.line === 5 && first.column === 2 && first.text.includes('hnads') && more.length === 0,
        seen.messages,
      ),
      outcome('hover on a make', seen.hover.includes('leaven'), seen.hover),
      outcome('completion of a food', seen.completion[0] === 'strong wheat flour', seen.completion.slice(0, 3)),
      outcome('a name of three words taken', seen.completed === '  20 g strong wheat flour, sifted', seen.completed),
      outcome('the blocks as a menu', JSON.stringify(seen.imenu).includes('Class'), seen.imenu),
      outcome('rename on lines and in the sentence', seen.renamed === renamed, seen.renamed),
      outcome('formatting', seen.formatted === formatted, seen.formatted),
      outcome('a quick fix', seen.mended === formatted.replace('hnads', 'hands'), seen.mended),
      outcome('the message goes when its cause goes', seen.cleared, seen.cleared),
    ];
  } finally {
    folder.clean();
  }
}

/** Neovim without a window: what it sees of a file, step by step. */
export function neovim(server: string, script: string): readonly Outcome[] {
  const folder = new Folder({ 'loaf.quern': FILE });
  try {
    const { status, stderr, error } = spawnSync(
      'nvim',
      ['--headless', '-u', 'NONE', '-i', 'NONE', '-n', '-c', `luafile ${script}`],
      {
        env: { ...process.env, QUERN_FOLDER: folder.path, QUERN_SERVER: server, QUERN_NODE: process.execPath },
        encoding: 'utf8',
        timeout: 120_000,
      },
    );
    if (status !== 0) return [{ what: 'Neovim', ok: false, told: error?.message ?? stderr }];
    const seen = JSON.parse(readFileSync(join(folder.path, 'seen.json'), 'utf8')) as Seen;
    const renamed = FILE.trimEnd().replace(/leaven/g, 'levain');
    const outcome = (what: string, ok: boolean, told: unknown): Outcome => ({
      what: `Neovim: ${what}`,
      ok,
      told: JSON.stringify(told),
    });
    const [first, ...more] = seen.diagnostics;
    return [
      outcome(
        'a message at its place',
        first?.code === 'L01' && first.line === 5 && first.column === 2 && more.length === 0,
        seen.diagnostics,
      ),
      outcome('hover on a make', seen.hover.includes('**leaven**'), seen.hover),
      outcome('completion of a food', seen.completion[0] === 'strong wheat flour', seen.completion.slice(0, 3)),
      outcome('rename on lines and in the sentence', seen.renamed.trimEnd() === renamed, seen.renamed),
      outcome('formatting', seen.formatted.trimEnd() === renamed.replace('400   g', '400 g'), seen.formatted),
      outcome('the message goes when its cause goes', seen.cleared, seen.cleared),
    ];
  } finally {
    folder.clean();
  }
}

/** Kate's own highlighter with the definition of this project: which style it gives the first words of lines. */
export function kate(definition: string): readonly Outcome[] {
  const folder = new Folder({
    'data/org.kde.syntax-highlighting/syntax/quern.xml': readFileSync(definition, 'utf8'),
    'loaf.quern': `// A loaf\n${FILE}`,
  });
  try {
    const { status, stdout, stderr, error } = spawnSync(
      'kate-syntax-highlighter',
      ['-f', 'ansi', '--syntax-trace', 'format', join(folder.path, 'loaf.quern')],
      { env: { ...process.env, XDG_DATA_HOME: join(folder.path, 'data') }, encoding: 'utf8', timeout: 60_000 },
    );
    if (status !== 0) return [{ what: 'Kate', ok: false, told: error?.message ?? stderr }];
    // Without the colours of a terminal.
    const lines = stdout.replace(/\u001b\[[\d;]*[A-Za-z]/g, '').split('\n');
    const styleOf = (text: string): string => {
      const at = lines.findIndex((line) => line === text);
      // Below a line stand the names of its styles, until the next line of the file, which has no leader to it.
      return at < 0 ? 'no such line' : lines.slice(at + 1, at + 6).join('\n');
    };
    const expected: readonly (readonly [line: string, style: string])[] = [
      ['// A loaf', 'Remark'],
      ['recipe Loaf', 'Block'],
      ['  all leaven', 'In and out'],
      ['  hands 8 min: Mix the leaven with the flour.', 'Step'],
    ];
    return expected.map(([line, style]) => ({
      what: `Kate’s highlighter: ${line.trim()}`,
      ok: styleOf(line).includes(style),
      told: styleOf(line),
    }));
  } finally {
    folder.clean();
  }
}
