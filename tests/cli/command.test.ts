import {
  chmodSync,
  lstatSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  readlinkSync,
  statSync,
  symlinkSync,
} from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { registry } from '../../packages/cli/src/commands/registry.js';
import { VERSION } from '../../packages/cli/src/version.js';
import { root } from '../sheet/recipes.js';
import { GOOD, useCommand } from './command.js';

describe('quern', () => {
  const world = useCommand('quern');

  test('says its version, which is that of its package', () => {
    const { version } = JSON.parse(readFileSync(join(root, 'packages', 'cli', 'package.json'), 'utf8')) as {
      version: string;
    };
    expect(VERSION).toBe(version);
    expect(world.run(['--version'])).toEqual({ code: 0, out: `quern ${version}\n`, err: '' });
  });

  test('help is on the output when asked for, and on the error stream with code 2 when nothing was', () => {
    const asked = world.run(['--help']);
    expect(asked.code).toBe(0);
    expect(world.run([])).toEqual({ code: 2, out: '', err: asked.out });
    for (const { name } of registry) expect(asked.out).toContain(`  ${name} `);
    for (const { summary } of registry) expect(asked.out).toContain(summary);
  });

  test.each(registry.map(({ name }) => name))('quern %s --help has the same parts as the others', (name) => {
    const { code, out } = world.run([name, '--help']);
    expect(code).toBe(0);
    expect(out).toMatch(new RegExp(`^quern ${name}: `));
    expect(out).toMatch(/\nuse:\n {2}quern .*\n[\s\S]*\noptions:\n[\s\S]*-h, --help/);
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(100);
    expect(world.run(['help', name]).out).toBe(out);
  });

  test('a slip in a command is met with a suggestion', () => {
    expect(world.run(['shete', 'a.quern'])).toMatchObject({
      code: 2,
      out: '',
      err: expect.stringMatching(/no command “shete”\nway out: did you mean sheet/) as string,
    });
  });

  test('colour only for terminals, or when asked', () => {
    world.write('toast.quern', GOOD);
    const coloured = /\u001b\[1m/;
    expect(world.run(['sheet', 'toast.quern']).out).not.toMatch(coloured);
    expect(world.run(['sheet', 'toast.quern', '--color', 'always']).out).toMatch(coloured);
    expect(world.run(['sheet', 'toast.quern'], { environment: { FORCE_COLOR: '1' } }).out).toMatch(coloured);
    expect(world.run(['sheet', 'toast.quern'], { environment: { FORCE_COLOR: '1', NO_COLOR: '1' } }).out).not.toMatch(
      coloured,
    );
  });

  test('a reader that goes away is no error', async () => {
    for (let index = 0; index < 400; index++)
      world.write(`many/${index}.quern`, `${GOOD}${'  hnads 2 min: Toast.\n'.repeat(20)}`);
    const child = world.start(['check', 'many', '--jobs', '1']);
    let err = '';
    child.stderr?.on('data', (part: Buffer) => (err += part.toString()));
    child.stdout?.once('data', () => child.stdout?.destroy());
    const code = await new Promise((resolve) => child.on('close', resolve));
    expect(code).toBe(0);
    expect(err).toBe('');
  });
});

describe('quern tidy', () => {
  const world = useCommand('tidy');
  const LOOSE = 'recipe   Toast\r\n\r\n80 g   rye bread\r\nhands 2–3 min:   Toast  the bread.\r\n';
  const TIDY = 'recipe Toast\r\n\r\n  80 g rye bread\r\n  hands 2-3 min: Toast  the bread.\r\n';

  test('lays a file out in place, keeps its line ends and its permissions, and says so once', () => {
    const path = world.write('loose.quern', LOOSE);
    chmodSync(path, 0o640);
    expect(world.run(['tidy', 'loose.quern'])).toMatchObject({ code: 0, out: 'tidied loose.quern\n' });
    expect(readFileSync(path, 'utf8')).toBe(TIDY);
    expect(statSync(path).mode & 0o777).toBe(0o640);
    const { mtimeMs, ino } = statSync(path);
    expect(world.run(['tidy', 'loose.quern'])).toMatchObject({ code: 0, out: '' });
    expect([statSync(path).mtimeMs, statSync(path).ino]).toEqual([mtimeMs, ino]);
    expect(readdirSync(world.folder).filter((name) => name.includes('draft'))).toEqual([]);
  });

  test('--check changes nothing and ends with 1', () => {
    const path = world.write('check/loose.quern', LOOSE);
    expect(world.run(['tidy', 'check', '--check'])).toMatchObject({ code: 1, out: 'would tidy check/loose.quern\n' });
    expect(readFileSync(path, 'utf8')).toBe(LOOSE);
    world.write('check/loose.quern', TIDY);
    expect(world.run(['tidy', 'check', '--check'])).toMatchObject({ code: 0, out: '' });
  });

  test('--stdout and “-” write to the screen alone', () => {
    const path = world.write('loose.quern', LOOSE);
    expect(world.run(['tidy', 'loose.quern', '--stdout'])).toEqual({ code: 0, out: TIDY, err: '' });
    expect(world.run(['tidy', '-'], { input: LOOSE })).toEqual({ code: 0, out: TIDY, err: '' });
    expect(readFileSync(path, 'utf8')).toBe(LOOSE);
  });

  test('a link stays a link, and what it leads to is tidied', () => {
    world.write('real/loose.quern', LOOSE);
    const link = join(world.folder, 'link.quern');
    symlinkSync(join('real', 'loose.quern'), link);
    expect(world.run(['tidy', 'link.quern']).code).toBe(0);
    expect(lstatSync(link).isSymbolicLink()).toBe(true);
    expect(readlinkSync(link)).toBe(join('real', 'loose.quern'));
    expect(readFileSync(join(world.folder, 'real', 'loose.quern'), 'utf8')).toBe(TIDY);
  });

  test('what cannot be written is told with a way out, and stays as it is', () => {
    // A file where a folder should be cannot be written into by anybody, the owner of all files included.
    world.write('blocked', 'a file');
    world.write('toast.quern', GOOD);
    const ran = world.run(['sheet', 'toast.quern', '-o', 'blocked/sheet.txt']);
    expect(ran).toMatchObject({ code: 2, out: '' });
    expect(ran.err).toMatch(/cannot write blocked\/sheet\.txt: a part of the path is not a folder/);
    mkdirSync(join(world.folder, 'taken.txt'));
    expect(world.run(['sheet', 'toast.quern', '-o', 'taken.txt']).err).toMatch(
      /cannot write taken\.txt: it is a folder/,
    );
    expect(readdirSync(world.folder).filter((name) => name.includes('draft'))).toEqual([]);
  });

  test('killed at any moment it leaves every file whole: as it was, or tidied', async () => {
    const COUNT = 200;
    for (let index = 0; index < COUNT; index++) world.write(`kill/${index}.quern`, LOOSE);
    const ends: string[] = [];
    for (const [round, signal] of (['SIGKILL', 'SIGTERM', 'SIGINT', 'SIGKILL'] as const).entries()) {
      const child = world.start(['tidy', 'kill']);
      const done = new Promise((resolve) => child.on('close', resolve));
      // Each round lets it get a little further.
      let told = 0;
      child.stdout?.on('data', (part: Buffer) => {
        told += part.toString().split('\n').length - 1;
        if (told > 5 * round) child.kill(signal);
      });
      await done;
      ends.push(String(child.signalCode ?? child.exitCode));
      for (let index = 0; index < COUNT; index++)
        expect([LOOSE, TIDY]).toContain(readFileSync(join(world.folder, 'kill', `${index}.quern`), 'utf8'));
    }
    expect(ends.some((end) => end !== '0')).toBe(true);
    // A draft that a kill leaves behind has a name of its own and no recipe's ending: it is never read.
    for (const name of readdirSync(join(world.folder, 'kill')))
      expect(name.endsWith('.quern') || /^\.\d+\.quern\.[0-9a-f]{12}\.draft$/.test(name)).toBe(true);
    expect(world.run(['tidy', 'kill']).code).toBe(0);
    for (let index = 0; index < COUNT; index++)
      expect(readFileSync(join(world.folder, 'kill', `${index}.quern`), 'utf8')).toBe(TIDY);
  });

  test('two at once on one folder do no harm', async () => {
    for (let index = 0; index < 60; index++) world.write(`both/${index}.quern`, LOOSE);
    const ends = await Promise.all(
      [1, 2].map(() => new Promise((resolve) => world.start(['tidy', 'both']).on('close', resolve))),
    );
    expect(ends).toEqual([0, 0]);
    for (let index = 0; index < 60; index++)
      expect(readFileSync(join(world.folder, 'both', `${index}.quern`), 'utf8')).toBe(TIDY);
  });
});

describe('quern sheet and quern basket', () => {
  const world = useCommand('sheet');
  const PANTRY =
    'recipe Loaf\ngives 2 loaves of 788 g\n\n  1 kg strong wheat flour\n  600 g water\n  20 g fine salt\n  hands 5 min: Mix the flour, the water and the salt.\n  lose 44 g as water\n\nvariant small\n  times 1/2\n';

  test('a sheet in every form, scaled, of a variant, to a file', () => {
    world.write('loaf.quern', PANTRY);
    expect(world.run(['sheet', 'loaf.quern', '--makes', '4 loaves', '--measures', 'metric']).out).toMatch(
      /2000 g {2}strong wheat flour/,
    );
    expect(world.run(['sheet', 'loaf.quern', '--variant', 'small', '--measures', 'metric']).out).toMatch(
      / 500 g {2}strong wheat flour/,
    );
    const data = JSON.parse(world.run(['sheet', 'loaf.quern', '--times', '1.5', '--format', 'json']).out) as {
      format: string;
      scale: { factor: string };
    };
    expect([data.format, data.scale.factor]).toEqual(['quern-sheet', '1.5']);
    expect(world.run(['sheet', 'loaf.quern', '--format', 'html', '-o', 'loaf.html'])).toEqual({
      code: 0,
      out: '',
      err: '',
    });
    expect(readFileSync(join(world.folder, 'loaf.html'), 'utf8')).toMatch(/^<!doctype html>[\s\S]*<\/html>\n$/);
    expect(world.run(['sheet', 'loaf.quern', '--format', 'csv']).out.split('\r\n')[0]).toMatch(/^make,line,kind,name/);
  });

  test('what is asked wrongly is wrong use; what the recipe does not say is the recipe’s', () => {
    world.write('loaf.quern', PANTRY);
    const code = (...args: string[]): number | null => world.run(['sheet', ...args]).code;
    expect(code()).toBe(2);
    expect(code('loaf.quern', '--times', '2', '--weight', '5kg')).toBe(2);
    expect(code('loaf.quern', '--times', 'many')).toBe(2);
    expect(code('loaf.quern', '--tin', '3 of 25x10x8 cm')).toBe(1);
    expect(code('loaf.quern', '--variant', 'large')).toBe(1);
    expect(code('loaf.quern', '--recipe', 'Buns')).toBe(1);
  });

  test('a sheet of a file with errors is made with gaps, and ends with 1', () => {
    world.write('broken.quern', PANTRY.replace('  600 g water', '  600 g'));
    const { code, out, err } = world.run(['sheet', 'broken.quern']);
    expect(code).toBe(1);
    expect(err).toMatch(/broken\.quern:5:\d+: error/);
    expect(out).toMatch(/weighs not known/);
  });

  test('a file with several recipes asks which', () => {
    world.write(
      'two.quern',
      `${PANTRY}\nrecipe Flatbread\n\n  100 g strong wheat flour\n  hands 1 min: Roll the flour out.\n`,
    );
    expect(world.run(['sheet', 'two.quern'])).toMatchObject({
      code: 1,
      err: expect.stringMatching(/say which with --recipe: Loaf or Flatbread/) as string,
    });
    expect(world.run(['sheet', 'two.quern', '--recipe', 'flat']).code).toBe(0);
  });

  test('a basket of several files, each so many times, with package sizes', () => {
    world.write('loaf.quern', PANTRY);
    const { code, out } = world.run([
      'basket',
      'loaf.quern*3',
      'loaf.quern@small',
      '--measures',
      'metric',
      '--package',
      '1.5 kg strong wheat flour',
    ]);
    expect(code).toBe(0);
    // 3 x 1 kg and 0.5 kg.
    expect(out).toMatch(/3\.5 kg {2}strong wheat flour; 3 packages of 1\.5 kg, 1 kg left over/);
    expect(world.run(['basket', 'loaf.quern*none']).code).toBe(2);
    expect(world.run(['basket']).code).toBe(2);
  });
});

describe('quern foods', () => {
  const world = useCommand('foods');

  test('shows a food with its sources', () => {
    const { code, out } = world.run(['foods', 'whole', 'rye', 'flour']);
    expect(code).toBe(0);
    expect(out).toMatch(/^whole rye flour\n/);
    expect(out).toMatch(/allergens: rye\n/);
    expect(out).toMatch(/from United States Department of Agriculture/);
    const data = JSON.parse(world.run(['foods', 'butter', '--format', 'json']).out) as { format: string; name: string };
    expect([data.format, data.name]).toEqual(['quern-food', 'butter']);
  });

  test('what may be several, and what is not there, is told with candidates', () => {
    expect(world.run(['foods', 'flour'])).toMatchObject({
      code: 1,
      out: '',
      err: expect.stringMatching(/may be several foods\nway out: say which: /) as string,
    });
    expect(world.run(['foods', 'wlanuts'])).toMatchObject({
      code: 1,
      out: '',
      err: expect.stringMatching(/not in the food table\nway out: did you mean walnut/) as string,
    });
    expect(world.run(['foods', '--list', 'rye']).out.split('\n')).toContain('whole rye flour');
  });
});
