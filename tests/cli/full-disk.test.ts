import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { GOOD, useCommand } from './command.js';

/* A disk that takes no more: the shell's limit on the size of files makes the system refuse in the middle of a write. */

describe('a write that the system breaks off', () => {
  const world = useCommand('full');
  const inLimits = (script: string) =>
    spawnSync('sh', ['-c', `ulimit -f 1; ${script}`, process.execPath, world.entry], {
      cwd: world.folder,
      encoding: 'utf8',
    });
  const drafts = (): string[] => readdirSync(world.folder).filter((name) => name.endsWith('.draft'));

  test('leaves the file as it was, leaves nothing behind, and says why', () => {
    world.write('toast.quern', GOOD);
    world.write('toast.html', 'the page of last week');
    const { status, stderr } = inLimits('"$0" "$1" sheet toast.quern --format html -o toast.html');
    expect(status).toBe(2);
    expect(stderr).toMatch(/^quern: cannot write toast\.html: the file is too large for the disk\n/);
    expect(readFileSync(join(world.folder, 'toast.html'), 'utf8')).toBe('the page of last week');
    expect(drafts()).toEqual([]);
  });

  test('is told when it is the output itself', () => {
    world.write('toast.quern', GOOD);
    const { status, stderr } = inLimits('"$0" "$1" sheet toast.quern --format html > page.html');
    expect(status).toBe(2);
    expect(stderr).toMatch(/^quern: cannot write the output: /);
    expect(existsSync(join(world.folder, 'page.html'))).toBe(true);
  });

  test('while tidying changes no file by half', () => {
    const loose = `recipe   Toast\n\n80 g   rye bread\n${'hands 2 min:   Toast the bread.\n'.repeat(60)}`;
    world.write('loose.quern', loose);
    expect(inLimits('"$0" "$1" tidy loose.quern').status).toBe(2);
    expect(readFileSync(join(world.folder, 'loose.quern'), 'utf8')).toBe(loose);
    expect(drafts()).toEqual([]);
  });
});
