import { createHash } from 'node:crypto';
import { mkdirSync, readdirSync, readFileSync, statSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { BAD, GOOD, useCommand, type Ran } from './command.js';

interface Report {
  readonly format: string;
  readonly version: number;
  readonly files: number;
  readonly summary: { readonly errors: number };
  readonly diagnostics: readonly {
    readonly file: string;
    readonly code: string;
    readonly start: { readonly line: number; readonly column: number };
  }[];
}

const report = ({ out }: Ran): Report => JSON.parse(out) as Report;

describe('quern check', () => {
  const world = useCommand('check');

  test('ends with 0 when all is well, and writes nothing', () => {
    world.write('well/toast.quern', GOOD);
    const before = snapshot(join(world.folder, 'well'));
    const ran = world.run(['check', 'well']);
    expect(ran).toEqual({ code: 0, out: '', err: '1 file: nothing to report\n' });
    expect(snapshot(join(world.folder, 'well'))).toEqual(before);
  });

  test('ends with 1 on an error: file, line, column, code, the place underlined, and the way out', () => {
    world.write('ill/toast.quern', BAD);
    const { code, out, err } = world.run(['check', 'ill']);
    expect(code).toBe(1);
    const [head = '', source = '', mark = '', way = ''] = out.split('\n');
    expect(head).toMatch(/^ill\/toast\.quern:4:\d+: error L03: /);
    expect(source).toBe('  4 |   hands 2 min Toast the bread.');
    expect(mark).toMatch(/^ {4}\| +~+$/);
    expect(way).toMatch(/^ {4}way out: put a colon/);
    expect(err).toMatch(/^1 file: 1 error/);
  });

  test('a folder means the .quern files in it and below, but not in node_modules or hidden folders', () => {
    for (const path of [
      'walk/a.quern',
      'walk/deep/er/b.quern',
      'walk/c.txt',
      'walk/node_modules/d.quern',
      'walk/.hidden/e.quern',
    ]) {
      world.write(path, BAD);
    }
    const files = report(world.run(['check', 'walk', '--format', 'json'])).diagnostics.map(({ file }) => file);
    expect(files).toEqual(['walk/a.quern', 'walk/deep/er/b.quern']);
    // Named by itself, a file is read wherever it lies; named twice, once.
    expect(report(world.run(['check', 'walk/c.txt', './walk/c.txt', '--format', 'json'])).files).toBe(1);
  });

  test('what only the label can know is told too: a keyword that is broken, at its own place', () => {
    world.write(
      'label/mix.quern',
      'recipe Mix\nfree of nuts\nkeywords snack, vegan\n\nmake mix\n  100 g rolled oats\n  or 80 g walnuts\n  30 g honey\n  hands 1 min: Stir the honey in.\n',
    );
    const { out, code } = world.run(['check', 'label']);
    expect(out).toContain('label/mix.quern:2:9: error A01: “free of nuts”, but walnuts may go in');
    expect(out).toContain('label/mix.quern:3:17: error A08: the keyword “vegan” is broken by honey');
    expect(code).toBe(1);
  });

  test('--quiet tells errors alone', () => {
    world.write('quiet/toast.quern', GOOD.replace('2 min', '2–3 min'));
    expect(world.run(['check', 'quiet']).out).toMatch(/hint L04/);
    expect(world.run(['check', 'quiet', '--quiet'])).toEqual({ code: 0, out: '', err: '' });
  });

  test('annotations are one line each', () => {
    world.write('ill/toast.quern', BAD);
    const { code, out } = world.run(['check', 'ill', '--format', 'github']);
    expect(code).toBe(1);
    expect(out).toMatch(/^::error file=ill\/toast\.quern,line=4,endLine=4,col=\d+,endColumn=\d+,title=L03::.*\n$/);
  });

  test('SARIF has the shape of the standard', () => {
    world.write('ill/toast.quern', BAD);
    const { code, out } = world.run(['check', 'ill', '--format', 'sarif']);
    expect(code).toBe(1);
    const log = JSON.parse(out) as {
      version: string;
      runs: { tool: { driver: { rules: { id: string }[] } }; results: { ruleId: string; ruleIndex: number }[] }[];
    };
    expect(log.version).toBe('2.1.0');
    const [run] = log.runs;
    // SARIF 2.1.0, 3.27.6: the index of a result points at the rule of its identifier.
    for (const { ruleId, ruleIndex } of run?.results ?? []) expect(run?.tool.driver.rules[ruleIndex]?.id).toBe(ruleId);
    expect(run?.results.map(({ ruleId }) => ruleId)).toContain('L03');
  });

  test('what cannot be read is told, the rest is checked, and the code is 2', () => {
    world.write('mixed/a.quern', BAD);
    writeFileSync(join(world.folder, 'mixed', 'b.quern'), Buffer.from([0x72, 0xff, 0xfe, 0x00]));
    const { code, out, err } = world.run(['check', 'mixed']);
    expect(code).toBe(2);
    expect(out).toMatch(/mixed\/a\.quern:4/);
    expect(err).toMatch(/mixed\/b\.quern is not text in UTF-8/);
  });

  test('a path that is not there, an unknown option and a folder without recipes are wrong use', () => {
    mkdirSync(join(world.folder, 'empty'), { recursive: true });
    for (const [args, why] of [
      [['check', 'nowhere.quern'], /cannot read nowhere\.quern: there is no such file/],
      [['check', '--fromat', 'json'], /no option --fromat\nway out: did you mean --format\?/],
      [['check', '--format', 'xml'], /cannot be “xml”\nway out: choose text, json, github or sarif/],
      [['check', '--format'], /--format needs a value/],
      [['check', '--shard', '4/3'], /“4\/3” is not a part of a whole/],
      [['check', 'empty'], /no \.quern file in empty/],
    ] as const) {
      const ran = world.run(args);
      expect([ran.code, ran.out]).toEqual([2, '']);
      expect(ran.err).toMatch(why);
    }
  });
});

describe('files that recipes use', () => {
  const world = useCommand('uses');
  const using = (path: string): string =>
    `use Toast from ${path} as toast\n\nrecipe Plate\n\n  all toast\n  hands 1 min: Put the toast on a plate.\n`;
  const codes = (ran: Ran): string[] => report(ran).diagnostics.map(({ code }) => code);

  test('are read under the root, and nowhere else', () => {
    world.write('outside.quern', GOOD);
    world.write('root/lib/toast.quern', GOOD);
    world.write('root/a/inside.quern', using('../lib/toast.quern'));
    world.write('root/a/up.quern', using('../../outside.quern'));
    world.write('root/a/absolute.quern', using(join(world.folder, 'outside.quern')));
    const check = (file: string): Ran => world.run(['check', file, '--root', 'root', '--format', 'json']);
    expect(check('root/a/inside.quern').code).toBe(0);
    expect(codes(check('root/a/up.quern'))).toContain('N14');
    expect(codes(check('root/a/absolute.quern'))).toContain('N14');
  });

  test('a link that leads out of the root is refused with a message', () => {
    world.write('outside.quern', GOOD);
    world.write('linked/plate.quern', using('toast.quern'));
    symlinkSync(join('..', 'outside.quern'), join(world.folder, 'linked', 'toast.quern'));
    const ran = world.run(['check', 'linked/plate.quern', '--root', 'linked', '--format', 'json']);
    expect(codes(ran)).toContain('N09');
    expect(ran.err).toMatch(/plate\.quern may not use toast\.quern: it leads outside the workspace root/);
  });

  test('the root is the repository around a file, wherever the command runs', () => {
    mkdirSync(join(world.folder, 'repository', '.git'), { recursive: true });
    world.write('repository/lib/toast.quern', GOOD);
    world.write('repository/dishes/plate.quern', using('../lib/toast.quern'));
    expect(world.run(['check', 'plate.quern'], { in: join(world.folder, 'repository', 'dishes') }).code).toBe(0);
  });

  test('a file outside the root that was named is wrong use', () => {
    world.write('outside.quern', GOOD);
    mkdirSync(join(world.folder, 'root'), { recursive: true });
    expect(world.run(['check', 'outside.quern', '--root', 'root'])).toMatchObject({
      code: 2,
      err: expect.stringMatching(/not inside the root/) as string,
    });
  });

  test('circles are told, not walked', () => {
    world.write('circle/a.quern', 'use B from b.quern\n\nrecipe A\n\n  all B\n  hands 1 min: Eat B.\n');
    world.write('circle/b.quern', 'use A from a.quern\n\nrecipe B\n\n  all A\n  hands 1 min: Eat A.\n');
    expect(codes(world.run(['check', 'circle', '--format', 'json']))).toContain('N08');
  });
});

describe('large archives', () => {
  const world = useCommand('archive');
  const COUNT = 260;

  const fill = (): void => {
    for (let index = 0; index < COUNT; index++)
      world.write(`many/${index % 7}/${index}.quern`, index % 50 === 0 ? BAD : GOOD.replace('Toast', `Toast ${index}`));
  };

  test('threads find what one thread finds, in the same order', () => {
    fill();
    const one = world.run(['check', 'many', '--format', 'json', '--jobs', '1']);
    const two = world.run(['check', 'many', '--format', 'json', '--jobs', '2']);
    expect(report(one)).toMatchObject({ files: COUNT, summary: { errors: 6 } });
    expect(two.out).toBe(one.out);
    expect(two.code).toBe(1);
  });

  test('shards put together are the whole', () => {
    fill();
    const whole = world.run(['check', 'many', '--format', 'json']);
    const parts = [1, 2, 3].map((part) => {
      const ran = world.run(['check', 'many', '--format', 'json', '--shard', `${part}/3`]);
      world.write(`part-${part}.json`, ran.out);
      return report(ran).files;
    });
    expect(parts.every((files) => files > COUNT / 6)).toBe(true);
    const merged = world.run(['check', '--merge', 'part-3.json', 'part-1.json', 'part-2.json', '--format', 'json']);
    expect(merged.out).toBe(whole.out);
    expect(merged.code).toBe(1);
    expect(world.run(['check', '--merge', 'many/0/0.quern']).code).toBe(2);
  });

  test('the cache gives the same report, and notices every change: of a file and of what it uses', () => {
    world.write('kept/toast.quern', GOOD);
    world.write(
      'kept/plate.quern',
      'use Toast from toast.quern as toast\n\nrecipe Plate\n\n  all toast\n  hands 1 min: Put the toast on a plate.\n',
    );
    const check = (): Ran => world.run(['check', 'kept', '--cache', 'cache', '--format', 'json']);
    const first = check();
    const kept = hashes(join(world.folder, 'cache'));
    expect(kept.length).toBe(1);
    expect(check().out).toBe(first.out);
    expect(hashes(join(world.folder, 'cache'))).toEqual(kept);
    // The plate's own text is as it was; what it uses is gone.
    world.write('kept/toast.quern', GOOD.replace('recipe Toast', 'recipe Crumpets'));
    const changed = check();
    expect(changed.code).toBe(1);
    expect(changed.out).toBe(world.run(['check', 'kept', '--format', 'json']).out);
    // A cache that is no cache is made anew.
    const [file = ''] = readdirSync(join(world.folder, 'cache'));
    writeFileSync(join(world.folder, 'cache', file), '{"format":"quern-check-cache","version":1,"entries":');
    expect(check().out).toBe(changed.out);
  });
});

function hashes(folder: string): string[] {
  return readdirSync(folder).map((name) =>
    createHash('sha256')
      .update(readFileSync(join(folder, name)))
      .digest('hex'),
  );
}

/** Names, texts and times of change of all files of a folder. */
function snapshot(folder: string): string[] {
  return readdirSync(folder).map((name) => {
    const path = join(folder, name);
    return `${name} ${statSync(path).mtimeMs} ${readFileSync(path, 'utf8')}`;
  });
}
