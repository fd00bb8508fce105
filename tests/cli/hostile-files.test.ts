import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { GOOD, useCommand, type Ran, type World } from './command.js';

/*
 * What a recipe of somebody else's might try: to reach files that are none of its business, to keep the command waiting
 * for ever, or to speak to the terminal.
 */

const using = (path: string): string =>
  `use Toast from ${path} as toast\n\nrecipe Plate\n\n  all toast\n  hands 1 min: Put the toast on a plate.\n`;

interface Told {
  readonly code: number | null;
  readonly codes: readonly string[];
  readonly err: string;
}

function check(world: World, file: string): Told {
  const ran = world.run(['check', file, '--root', 'root', '--format', 'json']);
  const { diagnostics } = JSON.parse(ran.out || '{"diagnostics":[]}') as { diagnostics: { code: string }[] };
  return { code: ran.code, codes: diagnostics.map(({ code }) => code), err: ran.err };
}

describe('a recipe that uses another file', () => {
  const world = useCommand('hostile-use');
  const secret = 'recipe Toast\n\n  80 g secret\n  hands 2 min: Toast.\n';

  // Each of these, were it followed, would reach the secret that stands beside the root.
  test.each([
    ['up and out', '../secret.quern'],
    ['up and out behind a folder', 'lib/../../secret.quern'],
    ['up and out with a dot', './.././secret.quern'],
    ['up and out with strokes doubled', '..//secret.quern'],
    ['up and out, percent-encoded', '%2e%2e/secret.quern'],
    ['up and out, percent-encoded twice', '%252e%252e%252fsecret.quern'],
    ['up and out in full-width dots', '．．/secret.quern'],
    ['up and out with a stroke that looks like one', '..∕secret.quern'],
    ['a path of Windows', '..\\secret.quern'],
    ['a drive', 'C:\\secret.quern'],
    ['a drive with strokes', 'c:/secret.quern'],
    ['a share of a network', '\\\\server\\share\\secret.quern'],
    ['a share with strokes', '//server/share/secret.quern'],
    ['an address of a file', 'file:///secret.quern'],
    ['a web address', 'https://quay.example/secret.quern'],
    ['the home of a user', '~/secret.quern'],
    ['a variable of the shell', '$HOME/secret.quern'],
    ['a command of the shell', '`cat ../secret.quern`'],
    ['a NUL in the middle', 'toast\u0000/../../secret.quern'],
    ['a device of Windows', 'con.quern'],
    ['a very long path', `${'a/'.repeat(2000)}secret.quern`],
    ['a very long name', `${'a'.repeat(3000)}.quern`],
    ['an absolute path', '/etc/passwd'],
  ])('by %s', (_, path) => {
    world.write('secret.quern', secret);
    world.write('root/plate.quern', using(path));
    const { code, codes, err } = check(world, 'root/plate.quern');
    expect(code).toBe(1);
    // Not a path that may be, no such file, a line that cannot be read, or one that is too long.
    expect(codes.some((one) => ['N14', 'N09', 'L18', 'L27'].includes(one))).toBe(true);
    expect(codes).not.toContain('N01');
    expect(err).not.toMatch(/fault in quern/);
  });

  const linked = (make: (at: string) => void): Told => {
    world.write('secret.quern', secret);
    world.write('root/plate.quern', using('toast.quern'));
    const at = join(world.folder, 'root', 'toast.quern');
    rmSync(at, { recursive: true, force: true });
    make(at);
    return check(world, 'root/plate.quern');
  };

  test('that is a link out, straight or by way of a folder or another link', () => {
    const ways: ((at: string) => void)[] = [
      (at) => symlinkSync(join('..', 'secret.quern'), at),
      (at) => symlinkSync(join(world.folder, 'secret.quern'), at),
      (at) => {
        rmSync(join(world.folder, 'root', 'first.quern'), { force: true });
        symlinkSync(join('..', 'secret.quern'), join(world.folder, 'root', 'first.quern'));
        symlinkSync('first.quern', at);
      },
    ];
    for (const way of ways) {
      const { codes, err } = linked(way);
      expect(codes).toContain('N09');
      expect(err).toMatch(/root\/plate\.quern may not use toast\.quern: it leads outside the workspace root/);
    }
    world.write('outside/toast.quern', secret);
    symlinkSync(join('..', 'outside'), join(world.folder, 'root', 'door'));
    world.write('root/plate.quern', using('door/toast.quern'));
    expect(check(world, 'root/plate.quern').err).toMatch(/may not use door\/toast\.quern: it leads outside/);
  });

  test('that is a link to itself', () => {
    expect(linked((at) => symlinkSync('toast.quern', at)).err).toMatch(
      /may not use toast\.quern: its links lead in a circle/,
    );
  });

  test('that is a folder', () => {
    expect(linked((at) => mkdirSync(at)).err).toMatch(/may not use toast\.quern: it is a folder/);
  });

  test('that is a pipe on which nobody writes, or a device without an end', () => {
    const pipe = linked((at) => spawnSync('mkfifo', [at]));
    expect(pipe.codes).toContain('N09');
    expect(pipe.err).toMatch(/may not use toast\.quern: it is neither a file nor a folder/);
    expect(linked((at) => symlinkSync('/dev/zero', at)).codes).toContain('N09');
  });

  test('that is larger than a recipe', () => {
    expect(linked((at) => writeFileSync(at, 'x'.repeat(5 * 1024 * 1024))).err).toMatch(
      /it is too large to be a file of recipes/,
    );
  });

  test('that is no text', () => {
    expect(linked((at) => writeFileSync(at, new Uint8Array([0xff, 0xfe, 0x00]))).err).toMatch(
      /it is not text in UTF-8/,
    );
  });

  test('by another spelling of its name: what the system takes for the same file is read, inside', () => {
    world.write('root/toast.quern', GOOD);
    world.write('root/plate.quern', using('TOAST.quern'));
    // Found where the disk does not tell capitals, else not; never anything else.
    expect([[], ['N09']]).toContainEqual(check(world, 'root/plate.quern').codes.filter((code) => code !== 'M06'));
  });

  test('that is changed for a link again and again while it is read', () => {
    world.write('secret.quern', 'recipe Toast\n\n  80 g zzsecretzz\n  hands 2 min: Toast the zzsecretzz.\n');
    world.write('root/plate.quern', using('toast.quern'));
    world.write('root/good.quern', GOOD);
    const swap = `cd root; while :; do ln -sfn ../secret.quern toast.quern; cp good.quern toast.new; mv toast.new toast.quern; done`;
    const script = `(${swap}) >/dev/null 2>&1 & loop=$!; for i in 1 2 3 4 5 6 7 8; do "$0" "$1" sheet root/plate.quern --root root; done; kill $loop`;
    const { stdout } = spawnSync('sh', ['-c', script, process.execPath, world.entry], {
      cwd: world.folder,
      encoding: 'utf8',
    });
    expect(stdout).not.toContain('zzsecretzz');
  });
});

describe('a file named on the command line', () => {
  const world = useCommand('hostile-file');

  test('may be a pipe, and is read no further than a recipe can be', () => {
    world.write('toast.quern', GOOD);
    const shell = (script: string) =>
      spawnSync('bash', ['-c', script, process.execPath, world.entry], { cwd: world.folder, encoding: 'utf8' });
    const pipe = shell('"$0" "$1" sheet <(cat toast.quern)');
    expect([pipe.status, pipe.stdout]).toEqual([0, world.run(['sheet', 'toast.quern']).out]);
    const endless = shell('"$0" "$1" sheet /dev/zero');
    expect(endless.status).toBe(2);
    expect(endless.stderr).toMatch(/^quern: \/dev\/zero is too large to be a file of recipes/);
  });

  test('cannot speak to the terminal by its name', () => {
    const name = 'a\u001b]0;owned\u0007\u001b[2J\u009b31m\u202eb\nc.quern';
    world.write(name, 'recipe   Toast\n\n  80 g rye \u001b[31mbread\n  hnads 2 min: Toast.\n  use \u009b.\n');
    const silent = ({ out, err }: Ran): void =>
      expect(out + err).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f]/);
    for (const args of [
      ['check', name],
      ['check', name, '--format', 'github'],
      ['check', name, '--format', 'sarif'],
      ['check', `${name}.gone`],
      ['mend', name, '--check', '--offers'],
      ['tidy', name, '--check'],
      ['sheet', name],
      ['sheet', name, '--recipe', '\u001b[31mred'],
      ['label', name],
      ['basket', name],
      ['clock', name],
      ['compare', name, name],
      ['card', name, '--format', 'text'],
      ['card', name, '--format', 'json'],
      ['foods', '\u001b[31mred\u009b'],
      ['\u001b[31mred'],
      ['check', '--\u001b[31mred'],
    ])
      silent(world.run(args));
    const lines = world.run(['check', name, '--format', 'github']).out.trimEnd().split('\n');
    for (const line of lines) expect(line).toMatch(/^::(?:error|warning|notice) file=/);
  });

  test('is never written over by what is made from it', () => {
    world.write('toast.quern', GOOD);
    symlinkSync('toast.quern', join(world.folder, 'link.html'));
    for (const file of ['toast.quern', './toast.quern', 'TOAST.QUERN', 'link.html', 'new.quern']) {
      const ran = world.run(['sheet', 'toast.quern', '--format', 'html', '-o', file]);
      expect([ran.code, ran.out]).toEqual([2, '']);
      expect(ran.err).toMatch(/is a file of recipes, and what is made from one is never written over it\nway out: /);
    }
    expect(readFileSync(join(world.folder, 'toast.quern'), 'utf8')).toBe(GOOD);
  });

  test('that is no report is refused by merge, whatever it says it is', () => {
    const fields = { format: 'quern-check', version: 1, files: 1, summary: {} };
    for (const text of [
      '',
      '[]',
      'null',
      JSON.stringify({ ...fields, diagnostics: [1] }),
      JSON.stringify({ ...fields, diagnostics: [{ code: '__proto__' }] }),
      JSON.stringify({ ...fields, files: 'many', diagnostics: [] }),
    ]) {
      world.write('part.json', text);
      const ran = world.run(['check', '--merge', 'part.json', '--format', 'sarif']);
      expect([ran.code, ran.out]).toEqual([2, '']);
      expect(ran.err).toMatch(/part\.json is not a report of this version of quern check\nway out: /);
    }
  });

  test('a cache that holds nonsense is checked anew', () => {
    world.write('recipes/toast.quern', GOOD.replace('min:', 'min'));
    const args = ['check', 'recipes', '--cache', 'kept', '--format', 'json'];
    const first = world.run(args);
    const [cache = ''] = spawnSync('ls', ['kept'], { cwd: world.folder, encoding: 'utf8' }).stdout.split('\n');
    const kept = JSON.parse(readFileSync(join(world.folder, 'kept', cache), 'utf8')) as {
      entries: Record<string, unknown>;
    };
    for (const nonsense of [null, 1, 'x', [], { uses: 5 }, { uses: [[1]], found: [] }, { uses: [], found: [{}] }]) {
      const entries = Object.fromEntries(Object.keys(kept.entries).map((key) => [key, nonsense]));
      world.write(`kept/${cache}`, JSON.stringify({ ...kept, entries }));
      expect(world.run(args)).toEqual(first);
    }
    world.write(`kept/${cache}`, '{ "format":');
    expect(world.run(args)).toEqual(first);
  });
});
