/** The label as text, page, tag and JSON. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { rational } from '@quern/quantity';
import { labelJson, labelPage, labelText, TAG_SIZES, tagPage, tagText } from '@quern/publish';
import { cautionRules, GUIDANCE, type Lasting } from '@quern/views';
import { firstDay, isDate, lastDay } from '../../packages/publish/src/label/dates.js';
import { formula, labelled } from './world.js';

const LEMONS = `recipe Salt-House Lemons
by Wenna Tolley
gives 1 jar

make jar
  1 kg lemons
  150 g coarse salt
  hands 15 min: Pack the salt into the cuts.
  wait 4 weeks at 18 C: Leave in the dark.
  every 3 d, 1 min: Turn the jar over.
  best after 5 weeks
  keeps 12 months at 18 C, sealed
  keeps 6 months at 4 C, once opened
`;
const HOSTILE = `recipe <script>alert(1)</script> & "Loaf"
by <img src=x onerror=alert(1)>
free of <b>milk</b>

make loaf
  500 g <i>flour</i>
  20 g butter
  hands 5 min: Mix.
  keeps 3 d at 20 C, </style><script>alert(2)</script>
`;

describe('dates', () => {
  const months = (count: number): Lasting => ({
    minutes: rational(count * 30 * 1440),
    parts: [{ value: rational(count), unit: 'month' }],
    at: undefined,
    note: '',
  });
  const days = (count: number): Lasting => ({
    minutes: rational(count * 1440),
    parts: [{ value: rational(count), unit: 'd' }],
    at: undefined,
    note: '',
  });

  test('count whole days on', () => {
    expect(lastDay('2041-02-16', days(7))).toBe('2041-02-23');
    expect(lastDay('2040-02-27', days(3))).toBe('2040-03-01');
    expect(firstDay('2041-02-16', { minutes: rational(35 * 1440) })).toBe('2041-03-23');
    // Half a day more is ready only on the next.
    expect(firstDay('2041-02-16', { minutes: rational(36 * 1440 - 720) })).toBe('2041-03-24');
  });

  test('take the shorter of calendar months and months of thirty days', () => {
    expect(lastDay('2041-02-01', months(1))).toBe('2041-03-01');
    expect(lastDay('2041-07-01', months(2))).toBe('2041-08-30');
  });

  test('are ISO dates that exist', () => {
    expect(['2041-02-16', '2041-02-29', '2041-2-1', 'soon'].map(isDate)).toEqual([true, false, false, false]);
  });
});

describe('the tag', () => {
  const tag = labelled(LEMONS).value.tag;

  test('has the name, the ingredients, the weight, the dates, the care and the maker', () => {
    const text = tagText(tag, { madeOn: '2041-02-16' });
    expect(text.split('\n')).toEqual(
      expect.arrayContaining([
        'Salt-House Lemons',
        'Net weight: 1150 g',
        'Made on: 16 February 2041',
        'Best from: 23 March 2041',
        'Once opened: 6 months at 4 °C.',
        'Every 3 days: Turn the jar over.',
        'Made by Wenna Tolley',
      ]),
    );
    expect(text).toMatch(/Ingredients: lemons \(87 %\), coarse salt/);
    // 360 days, the shorter of twelve months and of twelve times thirty days.
    expect(text).toMatch(/Best before: 11 February 2042 \(kept at 18 °C, sealed\)/);
  });

  test('leaves a line to write on where the day is not known', () => {
    expect(tagText(tag)).toMatch(/Made on: ____\nBest from: ____/);
  });

  test('says use by for what is kept cold, best before for the rest', () => {
    const cold = labelled(LEMONS.replace('keeps 12 months at 18 C, sealed', 'keeps 2 d at 4 C')).value.tag;
    expect(tagText(cold, { madeOn: '2041-02-16' })).toMatch(/Use by: 18 February 2041/);
  });

  test('prints at each of the label sizes', () => {
    for (const size of Object.keys(TAG_SIZES) as (keyof typeof TAG_SIZES)[]) {
      const [across, down] = TAG_SIZES[size];
      expect(tagPage(tag, { size })).toContain(`@page{size:${across}mm ${down}mm`);
    }
  });

  test('carries the cautions that whoever gets the jar has to know', () => {
    const honey = labelled(
      'recipe Oat Clusters\n\nmake clusters\n  200 g rolled oats\n  60 g honey\n  oven 20 min at 160 C: Bake.\n',
    ).value.tag;
    expect(tagText(honey)).toMatch(/not for infants under one year/);
  });
});

describe('the page', () => {
  test('sets allergens apart by weight and capitals, not by colour', () => {
    const page = labelPage(
      labelled('recipe Buns\n\nmake buns\n  300 g strong wheat flour\n  hands 5 min: Mix.\n').value,
    );
    expect(page).toContain('strong <strong>WHEAT</strong> flour');
    expect(page).toMatch(/\.quern-label strong\{[^}]*text-decoration:underline/);
  });

  test('lets nothing that a recipe says become structure', () => {
    const { value } = labelled(HOSTILE);
    for (const page of [labelPage(value, { explain: true }), tagPage(value.tag, { madeOn: '2041-02-16' })]) {
      expect(page).not.toMatch(/<script|<img|<i>flour|<b>milk/);
      expect(page.match(/<\/style>/g)).toHaveLength(1);
      expect(page).toContain('&lt;');
    }
  });

  test('begins with what is not known', () => {
    const page = labelPage(labelled('recipe Buns\n\nmake buns\n  300 g frobnut\n  hands 5 min: Mix.\n').value);
    expect(page.indexOf('Not in the food table: frobnut')).toBeLessThan(page.indexOf('Ingredients'));
    expect(page).toContain('frobnut [not in the food table]');
  });
});

describe('the text', () => {
  test('keeps to its width', () => {
    const text = labelText(labelled(LEMONS).value, { width: 60 });
    const prose = text.split('\n').filter((line) => !/ {2,}/.test(line.trim()));
    expect(prose.every((line) => [...line].length <= 60)).toBe(true);
  });

  test('traces each figure to foods, entries and sources when asked', () => {
    const text = labelText(
      labelled(
        'recipe Buns\ngives 4 buns\n\nmake buns\n  300 g strong wheat flour\n  50 g unsalted butter\n  hands 5 min: Mix.\n',
      ).value,
      { explain: true },
    );
    expect(text).toMatch(/fat: [\d.]+ g in all/);
    expect(text).toMatch(/unsalted butter +50\.00 g +[\d.]+ g in 100 g +[\d.]+ g +\S+/);
    expect(text).toMatch(/wheat: from strong wheat flour/);
  });

  test('holds no control characters', () => {
    expect(
      labelText(
        labelled('recipe Bell \u0007 Buns\n\nmake buns\n  300 g strong wheat flour\n  hands 5 min: Mix.\n').value,
      ),
    ).not.toMatch(/\u0007/);
  });
});

describe('the JSON', () => {
  test('has its version and survives being written and read', () => {
    const json = labelJson(labelled(LEMONS).value);
    expect(json).toMatchObject({
      format: 'quern-label',
      version: 1,
      market: 'eu',
      title: 'Salt-House Lemons',
      complete: true,
    });
    expect(JSON.parse(JSON.stringify(json))).toEqual(json);
  });

  test('has every key that docs/label.md describes, and no other', () => {
    const [, page = ''] = readFileSync(join(import.meta.dirname, '../../docs/label.md'), 'utf8').split('## JSON');
    const described = [...page.matchAll(/^\| `([a-zA-Z]+)` +\|/gm)].map((one) => one[1]);
    expect(Object.keys(labelJson(labelled(LEMONS).value)).sort()).toEqual(described.sort());
  });
});

/** The text of docs/cautions.md: every rule, in the order of the registry. */
function cautionsPage(): string {
  const rules = cautionRules.map(({ id, title, when, reason, source }) =>
    [`## ${title}`, '', `\`${id}\``, '', `Speaks when ${when}.`, '', `Why: ${reason}`, '', `Source: ${source}.`].join(
      '\n',
    ),
  );
  const head = [
    '# Cautions',
    '',
    'What `quern label` says where work can hurt someone. Each caution is a rule of its own, held against the ledger and the timetable; it shows the lines it speaks of. A caution never stops anything and changes nothing that is written.',
    '',
    GUIDANCE,
    '',
    'A rule sees figures, flags of the food table, times and temperatures. It does not read sentences: what only the prose says, it does not know. The figures stand in `packages/views/src/label/cautions/figures.ts` and are held against their sources in `tests/published/safety.tsv`.',
    '',
    'This page is written from the rules: `UPDATE=1 npx vitest run tests/label/renderers.test.ts`.',
  ].join('\n');
  return `${[head, ...rules].join('\n\n')}\n`;
}

test('the page of cautions is that of the rules', () => {
  const path = join(import.meta.dirname, '../../docs/cautions.md');
  if (process.env['UPDATE'] === '1') writeFileSync(path, cautionsPage());
  expect(readFileSync(path, 'utf8')).toBe(cautionsPage());
});

test('a variant has a label of its own', () => {
  const text = `${LEMONS}\nvariant limes\n  swap lemons for limes\n`;
  expect(formula(text, 'limes').variant).toBe('limes');
});
