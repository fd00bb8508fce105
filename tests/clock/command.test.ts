import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { run, type System } from 'quern';

const folder = mkdtempSync(join(tmpdir(), 'clock-'));
afterAll(() => rmSync(folder, { recursive: true }));
writeFileSync(
  join(folder, 'loaf.quern'),
  [
    'recipe Loaf',
    '',
    'make loaf',
    '  500 g strong wheat flour',
    '  300 g water',
    '  hands 10 min: Mix.',
    '  wait 2-3 h: Leave to rise.',
    '  oven 45 min at 220 C: Bake.',
    '  keeps 3 d at 20 C',
    '',
  ].join('\n'),
);

async function quern(...parts: string[]): Promise<{ code: number; out: string; err: string }> {
  const told = { out: '', err: '' };
  const sink = (name: 'out' | 'err'): System['out'] => ({
    write: (text) => {
      told[name] += text;
    },
    isTerminal: false,
    columns: undefined,
  });
  const system: System = {
    out: sink('out'),
    err: sink('err'),
    folder,
    // 1 May 2027, 09:00 in UTC.
    environment: { SOURCE_DATE_EPOCH: String(Date.UTC(2027, 4, 1, 9) / 1000) },
    colour: false,
    version: '0',
    entry: undefined,
    readStdin: () => Promise.resolve(''),
  };
  const code = await run(['clock', ...parts], system);
  return { code, ...told };
}

const zone = ['--zone', 'Europe/London'];
const saturday = ['--ready', '2027-05-08 16:00', ...zone];

describe('quern clock', () => {
  test('says when to begin', async () => {
    // Ready at 16:00: in the oven from 15:15, risen 2 h 30 min from 12:45, mixed from 12:35.
    const { code, out } = await quern('loaf.quern', ...saturday);
    expect(code).toBe(0);
    expect(out.split('\n')[1]).toBe('Next: Sat 8 May 12:35  Mix. (10 min)');
    expect(out).toContain('Optimal');
  });

  test.each(['text', 'html', 'svg', 'ics', 'json', 'markdown'])('writes %s', async (format) => {
    const { code, out, err } = await quern('loaf.quern', ...saturday, '--format', format);
    expect([code, err]).toEqual([0, '']);
    expect(out).toContain('Mix');
  });

  test('goes on from a calendar that it wrote before', async () => {
    const to = ['--format', 'ics', '-o', 'plan.ics'];
    await quern('loaf.quern', ...saturday, ...to);
    const first = readFileSync(join(folder, 'plan.ics'), 'utf8');
    await quern('loaf.quern', '--ready', '2027-05-08 17:00', ...zone, ...to);
    const second = readFileSync(join(folder, 'plan.ics'), 'utf8');
    const uids = (text: string): string[] => text.match(/^UID:.*$/gm) ?? [];
    expect(uids(second)).toEqual(uids(first));
    expect(first).not.toContain('SEQUENCE:1');
    expect(second).toContain('SEQUENCE:1');
  });

  test('without a moment has no dates', async () => {
    const { out } = await quern('loaf.quern');
    expect(out).toMatch(/^Day 1$/m);
  });

  test('says why on request', async () => {
    expect((await quern('loaf.quern', ...saturday, '--why')).out).toContain('may move: may last 2-3 h');
  });

  test.each([
    [['--ready', '2027-04-30 16:00'], 'is past'],
    [['--start', '2027-04-30 16:00'], 'is past'],
    [['--ready', 'noon'], 'is not a date and a time'],
    [['--ready', '2027-05-08 16:00', '--start', '2027-05-08 10:00'], 'cannot be asked for together'],
    [['--ready', '2027-05-08 16:00', '--awake', '7-22'], 'is not a stretch of a day'],
    [['--ready', '2027-05-08 16:00', '--zone', 'Moon/Base'], 'is not a time zone'],
    [['--format', 'ics'], 'a calendar needs a date'],
  ])('refuses %j', async (options, words) => {
    const { code, out, err } = await quern('loaf.quern', ...options, ...(options.includes('--zone') ? [] : zone));
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err).toContain(words);
  });

  test('writes nothing when nothing fits, and says why', async () => {
    const { code, out, err } = await quern(
      'loaf.quern',
      '--ready',
      '2027-05-08 16:00',
      '--now',
      '2027-05-08 15:00',
      ...zone,
    );
    expect([code, out]).toEqual([1, '']);
    expect(err).toContain('T02');
    expect(err).toContain('which is past');
  });
});
