import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, watch } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { useCommand } from './command.js';

/*
 * Every command that writes, killed at moments spread over its work and in the middle of its writes: what was there
 * before is there still, or the whole of what should be there; never a part. Then the command runs again and finishes.
 */

const LOAF = [
  'recipe Loaf',
  'gives 2 loaves of 788 g',
  '',
  'make loaves',
  '  1 kg strong wheat flour',
  '  600 g water',
  '  20 g fine salt',
  '  hands 5 min: Mix the flour, the water and the salt.',
  '  wait 10-12 h at 24 C: Leave to prove.',
  '  oven 40 min at 220 C: Bake.',
  '  lose 44 g as water',
  '',
].join('\n');
const LOOSE = 'recipe   Toast\n\n80 g   rye bread\nhnads 2–3 min:   Toast  the bread.\n';

type Files = ReadonlyMap<string, string>;

const commands: readonly { readonly name: string; readonly args: readonly string[]; readonly writes: number }[] = [
  { name: 'tidy', args: ['tidy', 'recipes'], writes: 6 },
  { name: 'mend', args: ['mend', 'recipes'], writes: 6 },
  { name: 'sheet', args: ['sheet', 'recipes/loaf.quern', '--format', 'html', '-o', 'out/sheet.html'], writes: 1 },
  { name: 'basket', args: ['basket', 'recipes/loaf.quern', '--format', 'csv', '-o', 'out/basket.csv'], writes: 1 },
  {
    name: 'clock',
    args: ['clock', 'recipes/loaf.quern', '--ready', '2040-05-08 13:00', '--format', 'ics', '-o', 'out/plan.ics'],
    writes: 1,
  },
  { name: 'label', args: ['label', 'recipes/loaf.quern', '--format', 'html', '-o', 'out/label.html'], writes: 1 },
  { name: 'card', args: ['card', 'recipes/loaf.quern', '-o', 'out/card.html'], writes: 1 },
  { name: 'site', args: ['card', 'recipes', '--out', 'site', '--address', 'https://quay.example/'], writes: 8 },
  {
    name: 'compare',
    args: ['compare', 'recipes/0.quern', 'recipes/loaf.quern', '--format', 'html', '-o', 'out/compare.html'],
    writes: 1,
  },
  { name: 'cache', args: ['check', 'recipes', '--cache', 'out'], writes: 1 },
];

describe('killed at any moment', () => {
  const world = useCommand('killed');
  const at = (...path: string[]): string => join(world.folder, ...path);
  // The same moment for every run, so that the same input gives the same output.
  const environment = { SOURCE_DATE_EPOCH: '2000000000' };
  const finish = (args: readonly string[]) => world.run(args, { environment }).code;

  function reset(): void {
    for (const name of readdirSync(world.folder)) rmSync(at(name), { recursive: true, force: true });
    for (let index = 0; index < 6; index++)
      world.write(`recipes/${index}.quern`, LOOSE.replace('Toast', `Toast ${index}`));
    world.write('recipes/loaf.quern', LOAF);
    mkdirSync(at('out'));
    for (const name of ['sheet.html', 'basket.csv', 'label.html', 'card.html', 'compare.html'])
      world.write(`out/${name}`, 'of last week');
  }

  /** Every file below, but for drafts: those have names that nothing reads. */
  function files(folder = world.folder, shown = ''): Files {
    const found = new Map<string, string>();
    for (const entry of readdirSync(folder, { withFileTypes: true })) {
      const path = join(folder, entry.name);
      if (entry.isDirectory()) for (const [name, text] of files(path, `${shown}${entry.name}/`)) found.set(name, text);
      else if (!/^\..*\.[0-9a-f]{12}\.draft$/.test(entry.name))
        found.set(shown + entry.name, readFileSync(path, 'utf8'));
    }
    return found;
  }

  /** Starts the command and kills it: after so long, or at the nth sign of a write. */
  async function killed(args: readonly string[], when: { after: number } | { write: number }): Promise<boolean> {
    const child = world.start(args, environment);
    const done = new Promise((resolve) => child.on('close', resolve));
    let seen = 0;
    const watching =
      'write' in when
        ? ['out', 'recipes', 'site']
            .filter((name) => existsSync(at(name)))
            .map((name) =>
              watch(at(name), (_, file) => {
                if (String(file).endsWith('.draft') && ++seen > 2 * when.write) child.kill('SIGKILL');
              }),
            )
        : [];
    const timer = 'after' in when ? setTimeout(() => child.kill('SIGKILL'), when.after) : undefined;
    await done;
    for (const one of watching) one.close();
    clearTimeout(timer);
    return child.signalCode === 'SIGKILL';
  }

  test.each(commands)('quern $name', { timeout: 120_000 }, async ({ args, writes, name }) => {
    reset();
    const before = files();
    const started = performance.now();
    expect(finish(args)).toBeLessThan(2);
    const length = performance.now() - started;
    const after = files();
    expect([...after].some(([file, text]) => before.get(file) !== text)).toBe(true);

    let kills = 0;
    const moments = [
      ...[0.5, 0.8, 0.95].map((share) => ({ after: length * share })),
      ...Array.from({ length: Math.min(writes, 3) }, (_, write) => ({ write })),
    ];
    for (const when of moments) {
      reset();
      if (name === 'site' && 'write' in when) mkdirSync(at('site'));
      if (await killed(args, when)) kills++;
      for (const [file, text] of files()) {
        // The list of a site grows: it is whole JSON at every moment.
        if (file === 'site/quern-site.json') JSON.parse(text);
        else expect([before.get(file), after.get(file)], file).toContain(text);
      }
      for (const [file, text] of before)
        if (!['tidy', 'mend'].includes(name) && file.startsWith('recipes/')) expect(files().get(file)).toBe(text);
      // A second run finds nothing in its way and comes to the same end.
      expect(finish(args)).toBeLessThan(2);
      expect([...files().keys()].sort()).toEqual([...after.keys()].sort());
      for (const [file, text] of files()) if (file !== 'site/quern-site.json') expect(text, file).toBe(after.get(file));
    }
    expect(kills).toBeGreaterThan(0);
  });

  test.each(commands)('two at once: quern $name', { timeout: 120_000 }, async ({ args }) => {
    reset();
    finish(args);
    const after = files();
    reset();
    const ends = await Promise.all(
      [1, 2].map(() => new Promise<number | null>((resolve) => world.start(args, environment).on('close', resolve))),
    );
    // One may see that the other was there first, and says so.
    for (const end of ends) expect([0, 1, 2]).toContain(end);
    expect(finish(args)).toBeLessThan(2);
    for (const [file, text] of files()) if (file !== 'site/quern-site.json') expect(text, file).toBe(after.get(file));
    expect([...files().keys()].sort()).toEqual([...after.keys()].sort());
  });

  test.each(commands)('on a disk that takes no more: quern $name', { timeout: 60_000 }, ({ args, name }) => {
    reset();
    for (let index = 0; index < 6; index++)
      world.write(
        `recipes/${index}.quern`,
        LOOSE.replace('Toast', `Toast ${index}`) + 'hnads 2 min:   Toast  the bread.\n'.repeat(60),
      );
    const before = files();
    // The shell's limit on the size of a file makes the system refuse in the middle of a write.
    const limit = name === 'basket' || name === 'clock' ? 0 : 1;
    const { status, stderr } = spawnSync(
      'sh',
      ['-c', `ulimit -f ${limit}; exec "$0" "$@"`, process.execPath, world.entry, ...args],
      {
        cwd: world.folder,
        encoding: 'utf8',
        env: { PATH: process.env['PATH'] ?? '', ...environment },
      },
    );
    expect(stderr).toMatch(/quern: cannot write .*: the file is too large for the disk/);
    expect(status).toBe(2);
    for (const [file, text] of before) expect(files().get(file), file).toBe(text);
  });

  // Who may do everything may write anywhere; so that right is taken away first.
  const isRoot = process.getuid?.() === 0;
  const withoutRights = (args: readonly string[]) => {
    const drop = isRoot ? ['setpriv', '--bounding-set=-dac_override,-dac_read_search'] : ['env'];
    const [program = '', ...before] = drop;
    return spawnSync(program, [...before, process.execPath, world.entry, ...args], {
      cwd: world.folder,
      encoding: 'utf8',
      env: { PATH: process.env['PATH'] ?? '', ...environment },
    });
  };

  test.each(commands)('in a folder that may only be read: quern $name', { timeout: 60_000 }, ({ args }) => {
    reset();
    const before = files();
    spawnSync('chmod', ['-R', 'a+rX,a-w', world.folder]);
    try {
      const { status, stderr } = withoutRights(args);
      expect(stderr).toMatch(
        /quern: cannot write .*: (?:permission is refused|the system does not allow it)\nway out: /,
      );
      expect(status).toBe(2);
      expect(files()).toEqual(before);
    } finally {
      spawnSync('chmod', ['-R', 'u+w', world.folder]);
    }
  });

  test('what another program wrote in the meantime is not written over', async () => {
    reset();
    // Every file is changed while the command is at work: each is then either tidied whole or as the other left it.
    const child = world.start(['tidy', 'recipes'], environment);
    const done = new Promise((resolve) => child.on('close', resolve));
    const theirs = 'recipe Theirs\n\n  80 g rye bread\n  hands 2 min: Toast the bread.\n';
    while (child.exitCode === null && child.signalCode === null) {
      world.write('recipes/5.quern', theirs);
      await new Promise((resolve) => setTimeout(resolve, 1));
    }
    await done;
    expect(readFileSync(at('recipes', '5.quern'), 'utf8')).toBe(theirs);
  });
});
