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
