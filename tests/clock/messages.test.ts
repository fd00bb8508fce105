import { describe, expect, test } from 'vitest';
import { sentence, wayOut } from '@quern/text';
import { awakeHours } from '@quern/views';
import { planDated, readMoment } from '@quern/publish';
import { planAt, request } from './recipes.js';

/*
 * What is said when there is no plan: the lines, and a way out. There is never half a timetable.
 */
const at = (hour: number, minute = 0): number => hour * 60 + minute;

interface Said {
  readonly codes: readonly string[];
  readonly text: string;
  readonly way: string;
}

/** The messages of a text that has no plan. */
function refused(text: string, ready: number): Said {
  const { plan, diagnostics } = planAt(text, ready);
  expect(plan).toBeUndefined();
  return {
    codes: diagnostics.map(({ code }) => code),
    text: diagnostics.map(sentence).join(' / '),
    way: diagnostics.map(wayOut).join(' / '),
  };
}

const two = (first: string, second: string, kitchen = ''): string =>
  [
    'recipe First',
    'serves 2',
    '',
    'make first',
    first,
    '',
    'recipe Second',
    'serves 2',
    '',
    'make second',
    second,
    kitchen,
  ].join('\n');

describe('no plan', () => {
  test('when two dishes need the oven at once names both and the least change', () => {
    // Both end at 18:00 and may stand two hours; the first done by 16:00 at the earliest that stands, the second three
    // hours long: 15:00. So one has to be done 3 h before, plus 60 min of cooling or heating: from 220 to 150 the oven
    // falls 70 degrees at 5 a minute, 14 min, in fives 15; from 150 to 220 it climbs them in 7, in fives 10.
    const said = refused(
      two('  1 kg leeks\n  oven 3 h at 150 C: Braise.', '  300 g leeks\n  oven 3 h at 220 C: Crisp.'),
      at(18),
    );
    expect(said.codes).toEqual(['T03']);
    expect(said.text).toContain('“Braise” and “Crisp” both need the oven at 15:00');
    expect(said.way).toContain('let First keep 3 h 10 min before it is served');
  });

  test('when one cook cannot do both says so', () => {
    const said = refused(two('  1 kg leeks\n  hands 150 min: Slice.', '  300 g leeks\n  hands 150 min: Wash.'), at(18));
    expect(said.codes).toEqual(['T07']);
    expect(said.text).toContain('“Slice” and “Wash” need the same cook at 15:30');
  });

  test('when limits contradict each other at any hour names the limits', () => {
    const said = refused(
      [
        'recipe Slab',
        '',
        'make slab',
        '  500 g sugar',
        '  hob 10 min: Boil.',
        '  save 100 g as glaze',
        '  wait 8-9 h: Set.',
        '  all glaze',
        '  hands 5 min: Brush.',
        '  keeps 4 h at 20 C',
      ].join('\n'),
      at(20),
    );
    expect(said.codes).toEqual(['T11']);
    expect(said.text).toContain('“Set” (8-9 h)');
    expect(said.text).toContain('glaze standing up to 4 h');
    expect(said.way).toBe('allow 4 h where “Set” has 8-9 h, or let glaze stand 8 h before “Brush” (it may up to 4 h)');
  });

  test('when it would have to begin in the past says when', () => {
    const zone = 'Europe/London';
    const now = readMoment('2027-05-08 12:00', zone);
    const wanted = readMoment('2027-05-08 18:00', zone);
    if (now.kind !== 'moment' || wanted.kind !== 'moment') throw new Error('unreadable');
    const asked = request(
      ['recipe Slow', '', 'make slow', '  1 kg leeks', '  hands 10 min: Cut.', '  wait 8-10 h: Leave.'].join('\n'),
    );
    const { plan, diagnostics } = planDated(
      asked,
      { kind: 'ready', at: wanted.at, now: now.at },
      awakeHours(undefined),
    );
    expect(plan).toBeUndefined();
    // Best is 9 h before 18:00 and ten minutes: 08:50, more than three hours past; from 12:00 it takes 8 h 10 min.
    expect(diagnostics.map(sentence)).toEqual(['no plan for 18:00: “Cut” would have to begin at 08:50, which is past']);
    expect(diagnostics.map(wayOut)[0]).toContain('be ready by 20:10');
  });

  test('for an oven too cool, or none', () => {
    const hot = refused(
      two('  1 kg leeks\n  oven 10 min at 400 C: Blister.', '  300 g leeks\n  hands 5 min: Cut.'),
      at(18),
    );
    expect(hot.codes).toEqual(['T13']);
    expect(hot.text).toContain('400 C');
    const none = refused(
      two(
        '  1 kg leeks\n  oven 10 min at 200 C: Bake.',
        '  300 g leeks\n  hands 5 min: Cut.',
        '\nkitchen Boat\n  has 0 ovens, 2 rings, 1 cook',
      ),
      at(18),
    );
    expect(none.codes).toEqual(['T12']);
    expect(none.text).toContain('Boat has none');
  });

  test.each([
    ['0 d, 1 min', 'no end of'],
    ['2 min, 5 min', '11087'],
    ['1 min, 1 min', '22175'],
    ['5 min, 1 min', '4435'],
  ])('for care every %s', (every, count) => {
    const text = [
      'recipe Jar',
      '',
      'make jar',
      '  500 g white cabbage',
      '  wait 14 d: Leave.',
      `  every ${every}: Press.`,
    ].join('\n');
    const { plan, diagnostics } = planAt(text, at(18));
    expect(plan).toBeUndefined();
    const said = diagnostics.find(({ code }) => code === 'T14');
    expect(said?.args).toMatchObject({ count, most: '400' });
    // The line itself is named.
    expect(said && text.slice(said.place.start, said.place.end)).toBe(`every ${every}: Press.`);
  });

  test('of more steps than a kitchen can follow', () => {
    const said = refused(
      'recipe Tins\n\nmake tins\n  1 kg leeks\n  oven 10 min at 200 C using 3000 shelves: Bake.',
      at(18),
    );
    expect(said.codes).toContain('T15');
  });

  test('from a recipe of which a line cannot be read, though the others can', () => {
    const said = refused(
      'recipe Buns\n\nmake buns\n  300 g strong wheat flour\n  hands 5 min: Mix.\n  wobble it about\n  oven 20 min at 190 C: Bake.',
      at(18),
    );
    expect(said.codes).toContain('T17');
  });

  test('and no error, only a word, where there is nothing to plan', () => {
    const { plan, diagnostics } = planAt('recipe Mix\n\nmake mix\n  100 g fine salt', at(18));
    expect(plan).toBeUndefined();
    expect(diagnostics.map(({ code, severity }) => [code, severity])).toEqual([['T18', 'hint']]);
  });
});

describe('a thing that stands longer than where nothing is written', () => {
  test('is planned with a warning that says by how much', () => {
    // The glaze is ready after the boiling, 3 h before it is used: an hour longer than the two that a finished thing may.
    const { plan, diagnostics } = planAt(
      [
        'recipe Slab',
        '',
        'make slab',
        '  500 g sugar',
        '  hob 10 min: Boil.',
        '  save 100 g as glaze',
        '  wait 3-4 h: Set.',
        '  all glaze',
        '  hands 5 min: Brush.',
      ].join('\n'),
      at(18),
    );
    expect(plan).toBeDefined();
    expect(diagnostics.map(({ code, args }) => [code, args])).toEqual([
      ['T04', { product: 'glaze', stands: '3 h', over: '1 h', limit: '2 h' }],
    ]);
  });

  test('is not stretched without end', () => {
    // Five hours would be three over: too far for a warning.
    expect(
      refused(
        [
          'recipe Slab',
          '',
          'make slab',
          '  500 g sugar',
          '  hob 10 min: Boil.',
          '  save 100 g as glaze',
          '  wait 5-6 h: Set.',
          '  all glaze',
          '  hands 5 min: Brush.',
        ].join('\n'),
        at(18),
      ).codes,
    ).toEqual(['T11']);
  });
});

describe('moments that cannot be read', () => {
  test.each([
    ['tomorrow', 'is not a date and a time'],
    ['2027-02-30 10:00', 'is not in the calendar'],
    ['2027-03-28 01:30', 'the clocks go forward then'],
    ['2027-05-08 25:00', 'is not in the calendar'],
  ])('%s', (text, why) => {
    const read = readMoment(text, 'Europe/London');
    expect(read.kind === 'unreadable' && read.why).toContain(why);
  });

  test('a zone that is none', () => {
    const read = readMoment('2027-05-08 10:00', 'Pennymoss/Quay');
    expect(read.kind === 'unreadable' && read.why).toContain('is not a time zone');
  });
});
