import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { SaxesParser } from 'saxes';
import { describe, expect, test } from 'vitest';
import { createFoodBook } from '@quern/foods';
import { historyOfFile } from '../../packages/cli/src/compare/history.js';
import { repositoryOf } from '../../packages/cli/src/git/git.js';
import { useCommand } from '../cli/command.js';
import { TestRepository } from './git-world.js';
import { edited } from './states.js';

const LOAF = `recipe Quay Bread
gives 1 loaf

make dough
  500 g strong wheat flour
  350 g water
  10 g fine salt
  hands 10 min: Mix and knead.
  wait 2 h at 24 C: Leave to rise.
  oven 40 min at 230 C: Bake until brown.
  lose 60 g as water
`;

const command = useCommand('history');
const repository = (): TestRepository => new TestRepository(() => command.entry);

interface HistoryJson {
  readonly format: string;
  readonly revisions: readonly {
    readonly name: string;
    readonly day: string;
    readonly subject: string;
    readonly baked: readonly { readonly day: string }[];
  }[];
  readonly series: readonly { readonly name: string; readonly points: readonly ({ readonly text: string } | null)[] }[];
}

function historyOf(repo: TestRepository, ...args: readonly string[]): HistoryJson {
  const { out, err, code } = repo.quern('compare', '--history', '--format', 'json', ...args);
  if (code !== 0) throw new Error(err);
  return JSON.parse(out) as HistoryJson;
}

const points = ({ series }: HistoryJson, name: string): readonly (string | undefined)[] | undefined =>
  series.find((one) => one.name === name)?.points.map((point) => point?.text);

/** Five states: first, wetter, renamed, saltier on a branch that was merged, and one that cannot be read. */
function told(): TestRepository {
  const repo = repository();
  repo.commit('first', 'loaf.quern', LOAF);
  repo.commit('wetter', 'loaf.quern', edited(LOAF, ['350 g', '375 g']));
  repo.must('mv', 'loaf.quern', 'quay.quern');
  repo.commit('another name');
  repo.must('checkout', '--quiet', '-b', 'side');
  repo.commit('saltier', 'quay.quern', edited(LOAF, ['350 g', '375 g'], ['10 g fine', '11 g fine']));
  repo.must('checkout', '--quiet', 'main');
  repo.commit('beside it', 'tea.quern', 'recipe Tea\n\nmake tea\n  1 kg water\n  hands 1 min: Steep.\n');
  repo.must('merge', '--quiet', '--no-edit', '-m', 'merged', 'side');
  return repo;
}

/** Texts of a drawing by the element they stand in; a drawing that is not well-formed is an error. */
function textsOf(svg: string): ReadonlyMap<string, readonly string[]> {
  const texts = new Map<string, string[]>();
  const open: string[] = [];
  const parser = new SaxesParser({ xmlns: true });
  parser.on('error', (error) => {
    throw error;
  });
  parser.on('opentag', ({ name }) => void open.push(name));
  parser.on('closetag', () => void open.pop());
  parser.on('text', (text) => {
    const name = open.at(-1) ?? '';
    if (text.trim() !== '') texts.set(name, [...(texts.get(name) ?? []), text]);
  });
  parser.write(svg).close();
  return texts;
}

describe('the history of a formula', () => {
  test('follows figures through renames and merges', () => {
    const history = historyOf(told(), 'quay.quern');
    expect(history.format).toBe('quern-history');
    expect(history.revisions.map(({ subject }) => subject)).toEqual(['first', 'wetter', 'another name', 'merged']);
    // 350 and 375 g of water, 10 and 11 g of salt, on 500 g of flour.
    expect(points(history, 'hydration')).toEqual(['70 %', '75 %', '75 %', '75 %']);
    expect(points(history, 'salt')).toEqual(['2 %', '2 %', '2 %', '2.2 %']);
    expect(points(history, 'hands-on time')).toEqual(['10 min', '10 min', '10 min', '10 min']);
    // 500 + 350 + 10 - 60, and so on.
    expect(points(history, 'yield')).toEqual(['800 g', '825 g', '825 g', '826 g']);
  });

  test('shows any food, under whatever name', () => {
    const repo = repository();
    repo.commit('a', 'loaf.quern', LOAF);
    repo.commit('b', 'loaf.quern', edited(LOAF, ['10 g fine salt', '9 g table salt']));
    const history = historyOf(repo, 'loaf.quern', '--figure', 'table salt', '--figure', 'water');
    expect(history.series.map(({ name }) => name)).toEqual(['table salt on flour', 'water on flour']);
    expect(history.series[0]?.points.at(-1)?.text).toBe('1.8 %');
  });

  test('shows what is not committed yet, and states that cannot be read', () => {
    const repo = told();
    repo.commit('broken', 'quay.quern', 'recipe\n');
    repo.write('quay.quern', edited(LOAF, ['350 g', '380 g']));
    const history = historyOf(repo, 'quay.quern');
    expect(history.revisions.at(-1)?.name).toBe('not committed');
    expect(points(history, 'hydration')?.slice(-2)).toEqual([undefined, '76 %']);
  });

  test('what a file uses is taken from the same commit', () => {
    const repo = repository();
    const paste = 'recipe Paste\n\nmake paste\n  100 g sugar\n  100 g water\n  hands 1 min: Stir.\n';
    repo.write('paste.quern', paste);
    repo.commit(
      'both',
      'cake.quern',
      'use Paste from paste.quern\n\nrecipe Cake\n\nmake cake\n  all Paste\n  300 g water\n  hands 1 min: Stir.\n',
    );
    repo.commit('sweeter', 'paste.quern', edited(paste, ['100 g sugar', '200 g sugar']));
    repo.commit('thinner', 'cake.quern', edited(repo.read('cake.quern'), ['300 g water', '310 g water']));
    expect(points(historyOf(repo, 'cake.quern', '--figure', 'yield'), 'yield')).toEqual(['500 g', '610 g']);
  });

  test('batches stand beside the revision they were baked by', () => {
    const repo = repository();
    // A commit a day from the first of February on.
    repo.commit('first', 'loaf.quern', LOAF);
    repo.commit('wetter', 'loaf.quern', edited(LOAF, ['350 g', '375 g']));
    const noted = edited(
      LOAF,
      ['350 g', '375 g'],
      ['gives 1 loaf\n', 'gives 1 loaf\nbaked 2041-02-01, 1 loaf: dry\nbaked 2041-02-02, lost 7.3 %: better\n'],
    );
    repo.commit('notes', 'loaf.quern', noted);
    repo.commit('saltier', 'loaf.quern', edited(noted, ['10 g fine', '11 g fine']));
    expect(
      historyOf(repo, 'loaf.quern').revisions.map(({ subject, baked }) => [subject, baked.map(({ day }) => day)]),
    ).toEqual([
      ['first', ['2041-02-01']],
      ['wetter', ['2041-02-02']],
      ['notes', []],
      ['saltier', []],
    ]);
    expect(repo.quern('compare', '--history', 'loaf.quern').out).toContain('baked 2041-02-02, lost 7.3 %: better');
  });

  test('as a drawing that can be read without seeing it', () => {
    const svg = told().quern('compare', '--history', 'quay.quern', '--format', 'svg').out;
    const texts = textsOf(svg);
    expect(texts.get('title')).toEqual(['Quay Bread: how its figures moved']);
    expect(texts.get('desc')?.[0]).toContain('hydration: 70 % at first, moved once, 75 % at last.');
    // Every value that moved stands beside its point.
    for (const value of ['70 %', '75 %', '2 %', '2.2 %', '800 g', '826 g']) expect(texts.get('text')).toContain(value);
  });

  test('as values for a spreadsheet', () => {
    const rows = parse(
      told().quern('compare', '--history', 'quay.quern', '--format', 'csv').out,
    ) as readonly string[][];
    expect(rows[0]).toEqual([
      'revision',
      'day',
      'yield (g)',
      'hydration (%)',
      'salt (%)',
      'hands-on time (min)',
      'baked',
      'change',
    ]);
    expect(rows.slice(1).map((row) => row.slice(2, 5))).toEqual([
      ['800', '70', '2'],
      ['825', '75', '2'],
      ['825', '75', '2'],
      ['826', '75', '2.2'],
    ]);
  });

  test('what cannot be told is told with a way out', () => {
    const repo = told();
    expect(repo.quern('compare', '--history', 'new.quern').err).toContain('git has no history of new.quern');
    expect(repo.quern('compare', '--history', 'quay.quern', '--figure', 'hydratoin').err).toContain(
      'did you mean hydration?',
    );
    expect(repo.quern('compare', '--history', 'quay.quern', '--variant', 'none').err).toContain(
      'holds a variant “none”',
    );
  });
});

describe('since a commit', () => {
  test('every recipe that is other than it was, also under another name', () => {
    const repo = told();
    repo.write('quay.quern', edited(LOAF, ['350 g', '360 g']));
    const { out } = repo.quern('compare', '--since', 'HEAD~3', '--format', 'markdown');
    expect(out).toContain('# loaf.quern -\\> quay.quern'.replace('\\>', '&gt;'));
    expect(out).toContain('tea.quern (new)');
    expect(out).toContain('75 % to 72 % on flour');
    expect(repo.quern('compare', '--since', 'HEAD', 'tea.quern').out).toContain('Nothing has changed.');
  });

  test('a name of a commit is never taken for an option of git', () => {
    const { code, err } = told().quern('compare', '--since=--output=x', 'quay.quern');
    expect(code).toBe(2);
    expect(err).toContain('git knows no commit');
  });
});

describe('a long history', () => {
  test('of a thousand revisions takes less than ten seconds of work', async () => {
    const repo = repository();
    const states = Array.from({ length: 1000 }, (_, index) => {
      const text = edited(LOAF, ['350 g', `${350 + index}.5 g`], ['10 g fine', `${10 + (index % 7)} g fine`]);
      const size = Buffer.byteLength(text);
      const note = `state ${index}`;
      return `commit refs/heads/main\ncommitter Wenna <w@example.invalid> ${2_243_000_000 + index * 86_400} +0000\ndata ${note.length}\n${note}\nM 100644 inline loaf.quern\ndata ${size}\n${text}\n`;
    });
    repo.feed(states.join(''), 'fast-import', '--quiet');
    repo.must('reset', '--quiet', '--hard', 'main');
    const told: number[] = [];
    const before = process.cpuUsage();
    const revisions = await historyOfFile(repositoryOf(repo.folder, 'it'), createFoodBook(), {
      file: join(repo.folder, 'loaf.quern'),
      shown: 'loaf.quern',
      recipe: undefined,
      variant: undefined,
      today: '2041-02-01',
      progress: (done) => void told.push(done),
    });
    const { user, system } = process.cpuUsage(before);
    expect(revisions).toHaveLength(1000);
    expect(told.at(-1)).toBe(1000);
    // Every state is another text. 350.5 + 999 g of water on 500 g of flour: 1349.5 g are 269.9 %.
    expect(revisions.at(-1)?.formula?.figures.get('hydration')).toEqual({ n: 2699n, d: 10n });
    // Time of the processor, so that what else runs on the machine does not count.
    expect((user + system) / 1e6).toBeLessThan(10);
  }, 120_000);
});
