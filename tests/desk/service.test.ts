/** The desk says what the commands say: each view is held against the page that the command of its name makes. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { DeskService, VIEWS, type Settings, type View } from '@quern/desk';
import { createFoodBook } from '@quern/foods';
import { nodeSystem, run } from 'quern';

const root = join(import.meta.dirname, '..', '..');
const foods = createFoodBook();
const example = (name: string): string => readFileSync(join(root, 'examples', name), 'utf8');
const names = readdirSync(join(root, 'examples')).filter((name) => name.endsWith('.quern'));

const usual: Settings = {
  choice: '',
  size: '',
  measures: 'both',
  market: 'none',
  ready: '',
  zone: 'Europe/London',
  now: Date.UTC(2041, 1, 14),
};

/** A desk with all examples on it. */
function desk(): DeskService {
  const service = new DeskService(foods);
  service.answer('put', { files: names.map((path) => ({ path, text: example(path) })), opened: true });
  return service;
}

async function command(...args: string[]): Promise<string> {
  let said = '';
  const sink = { write: (text: string) => void (said += text), isTerminal: false, columns: 100 };
  await run(args, {
    ...nodeSystem('test'),
    out: sink,
    err: { ...sink, write: () => undefined },
    folder: join(root, 'examples'),
  });
  return said;
}

function page(service: DeskService, path: string, view: View, more: Partial<Settings> = {}): string {
  const answer = service.answer('page', { path, view, settings: { ...usual, ...more } });
  return answer.ok ? answer.html : `refused: ${answer.reasons.join(' ')}`;
}

describe('a view is the page of its command', () => {
  const file = 'harbour-white.quern';

  test('sheet, as written and scaled', async () => {
    const html = ['--percentages', '--format', 'html'];
    expect(page(desk(), file, 'sheet')).toBe(await command('sheet', file, ...html));
    expect(page(desk(), file, 'sheet', { size: '5 kg', measures: 'us' })).toBe(
      await command('sheet', file, '--weight', '5kg', '--measures', 'us', ...html),
    );
    expect(page(desk(), file, 'sheet', { size: '6 loaves', choice: 'recipe 1' })).toBe(
      await command('sheet', file, '--makes', '6 loaves', '--variant', 'one loaf', ...html),
    );
  });

  test('label, for a market', async () => {
    expect(page(desk(), file, 'label', { market: 'eu' })).toBe(
      await command('label', file, '--market', 'eu', '--format', 'html'),
    );
  });

  test('card, that can be scaled once it is kept', async () => {
    expect(page(desk(), file, 'card', { size: '2' })).toBe(await command('card', file, '--times', '2'));
    const shown = desk().answer('view', { path: file, view: 'card', settings: usual });
    expect(shown.now.ok && shown.now.html).not.toContain('<script>');
  });

  test('clock, with a date and without', async () => {
    expect(page(desk(), file, 'clock')).toBe(await command('clock', file, '--format', 'html'));
    expect(page(desk(), file, 'clock', { ready: '2041-02-16T18:00' })).toBe(
      await command(
        ...['clock', file, '--ready', '2041-02-16 18:00', '--now', '2041-02-14 00:00'],
        ...['--zone', 'Europe/London', '--format', 'html'],
      ),
    );
  });

  test('clock of a menu, on its own day', async () => {
    const service = desk();
    const menu = 'lantern-supper.quern';
    expect(service.answer('look', { path: menu }).choices[0]).toMatchObject({ kind: 'menu', title: 'Lantern Supper' });
    expect(page(service, menu, 'clock')).toBe(
      await command('clock', menu, '--now', '2041-02-14 00:00', '--zone', 'Europe/London', '--format', 'html'),
    );
  });
});

describe('every example', () => {
  test.each(names)('%s has every view and nothing to mend', (path) => {
    const service = desk();
    const look = service.answer('look', { path });
    expect(look.said.filter(({ severity }) => severity === 'error')).toEqual([]);
    expect(look.missing).toEqual([]);
    for (const view of VIEWS) {
      const { now, before } = service.answer('view', { path, view, settings: usual });
      expect(now.ok ? 'made' : now.reasons).toBe('made');
      expect(before).toBeUndefined();
    }
  });
});

describe('what changed', () => {
  const path = 'harbour-white.quern';
  const changed = example(path).replace('gives 3 loaves', 'gives 5 loaves');

  test('is told against the text as opened, until it is saved', () => {
    const service = desk();
    const opened = page(service, path, 'sheet');
    service.answer('put', { files: [{ path, text: changed }], opened: false });
    const { now, before } = service.answer('view', { path, view: 'sheet', settings: usual });
    expect(before).toEqual({ ok: true, html: opened, note: '' });
    expect(now.ok && now.html).toContain('5 loaves');
    expect(page(service, path, 'compare')).toContain('pieces');
    service.answer('put', { files: [{ path, text: changed }], opened: true });
    expect(service.answer('view', { path, view: 'sheet', settings: usual }).before).toBeUndefined();
    expect(page(service, path, 'compare')).toContain('Nothing has changed.');
  });
});

describe('the editor’s questions', () => {
  const path = 'try.quern';
  const text = 'recipe Quay Loaf\n\nmake loaf\n  500 g strong wheat flour\n  300 g watr\n  hands 5 min: Mix.\n';
  const wrong = text.indexOf('watr');
  const service = new DeskService(foods);
  service.answer('put', { files: [{ path, text }], opened: true });

  test('in a quiet moment messages of the label join those of the check', () => {
    const path = 'toast.quern';
    const text =
      'recipe Toast\nkeywords vegan\n\n  80 g rye bread\n  20 g unsalted butter\n  hands 2 min: Toast the bread and butter it.\n';
    service.answer('put', { files: [{ path, text }], opened: false });
    expect(service.answer('look', { path }).said.map(({ code }) => code)).not.toContain('A08');
    const { said, fixes } = service.answer('fixes', { path });
    const index = said.findIndex(({ code }) => code === 'A08');
    expect(said[index]).toMatchObject({ from: text.indexOf('vegan'), to: text.indexOf('vegan') + 5 });
    expect(fixes[index]?.map(({ title }) => title)).toEqual(['Take the keyword “vegan” away']);
  });

  test('messages with the way out, and fixes in their order', () => {
    const { said } = service.answer('look', { path });
    const index = said.findIndex(({ code }) => code === 'N01');
    expect(text.slice(said[index]?.from, said[index]?.to)).toBe('watr');
    const offer = service.answer('fixes', { path }).fixes[index]?.[0];
    expect(offer?.title).toBe('Write “water”');
    expect(offer?.changes).toEqual([{ file: path, edits: [{ from: wrong, to: wrong + 4, text: 'water' }] }]);
  });

  test('tokens cover the words in order and none overlap', () => {
    const { tokens } = service.answer('look', { path });
    let at = 0;
    for (let index = 0; index < tokens.length; index += 3) {
      const [from = 0, to = 0] = tokens.slice(index, index + 2);
      expect(from).toBeGreaterThanOrEqual(at);
      expect(to).toBeGreaterThan(from);
      at = to;
    }
    expect(text.slice(tokens[0], tokens[1])).toBe('recipe');
  });

  test('a hover, completions, changes at a place, and the layout', () => {
    const at = text.indexOf('strong') + 2;
    expect(service.answer('hover', { path, at })?.markdown).toContain('Contains **wheat**');
    const { from, items } = service.answer('complete', { path, at: text.indexOf('wheat flour') + 5 });
    expect(from).toBe(text.indexOf('strong'));
    expect(items.map(({ label }) => label)).toContain('strong wheat flour');
    expect(service.answer('offers', { path, from: wrong + 2, to: wrong + 2 }).map(({ title }) => title)).toContain(
      'Write “water”',
    );
    expect(service.answer('tidy', { path })).toEqual([]);
  });

  test('files that are used and not here are named, and taken when they come', () => {
    const user = 'supper.quern';
    const using =
      'use Quay Loaf from loaf.quern\nrecipe Supper\nmake plate\n  1 loaf of Quay Loaf\n  hands 1 min: Cut.\n';
    service.answer('put', { files: [{ path: user, text: using }], opened: true });
    expect(service.answer('look', { path: user }).missing).toEqual(['loaf.quern']);
    service.answer('put', { files: [{ path: 'loaf.quern', text }], opened: true });
    expect(service.answer('look', { path: user }).missing).toEqual([]);
    expect(service.answer('uses', { path: user })).toEqual([{ path: 'loaf.quern', text }]);
  });
});

test('a size that cannot be had says why and what to write', () => {
  const service = desk();
  const ask = (size: string): string => page(service, 'harbour-white.quern', 'sheet', { size });
  expect(ask('many')).toBe(
    'refused: “many” is not a size Write a number such as 2 or 1/2, or “6 loaves”, “5 kg”, “40 slices”.',
  );
  expect(ask('6 buckets')).toMatch(/^refused: .*buckets/);
});

test('a text without a recipe has no views, and says how to begin', () => {
  const service = new DeskService(foods);
  service.answer('put', { files: [{ path: 'a.quern', text: '' }], opened: true });
  for (const view of VIEWS.filter((one) => one !== 'compare'))
    expect(page(service, 'a.quern', view)).toBe(
      'refused: There is no recipe here yet. Begin one with a line “recipe NAME”.',
    );
});
