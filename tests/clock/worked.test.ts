import { describe, expect, test } from 'vitest';
import { sentence, wayOut } from '@quern/text';
import { planAt, planIn, rows, told } from './recipes.js';

/*
 * Plans worked out by hand. Each says how; the clock has to come to the same.
 */

const at = (hour: number, minute = 0): number => hour * 60 + minute;
const usual = { from: at(7), to: at(22, 30) };

describe('worked by hand', () => {
  test('a rich loaf: 90 minutes at 165 C, at least 2 hours in the tin', () => {
    // Common practice, no source: about 90 min at 165 C, and at least 2 h before it leaves the tin.
    // Wanted at 16:00: cooled from 14:00, in the oven from 12:30, mixed from 12:15. The oven has 145 degrees to climb
    // from a room of 20 C at 10 a minute, 14.5 min, in steps of five 15 min: on at 12:15.
    const { plan } = planAt(
      [
        'recipe Market Loaf',
        '',
        'make loaf',
        '  250 g strong wheat flour',
        '  200 g butter',
        '  hands 15 min: Beat and fill the tin.',
        '  oven 90 min at 165 C: Bake.',
        '  wait 2 h or more: Cool in the tin.',
      ].join('\n'),
      at(16),
      usual,
    );
    expect(rows(plan)).toEqual([
      'hands 0 12:15 to 0 12:30: Beat and fill the tin.',
      'oven 0 12:30 to 0 14:00: Bake.',
      'wait 0 14:00 to 0 16:00: Cool in the tin.',
    ]);
    expect(plan?.heating.map(({ start, end, heat }) => [told(start), told(end), heat])).toEqual([
      ['0 12:15', '0 12:30', '165 C'],
    ]);
    expect(plan?.totals).toMatchObject({ handsOn: 15, total: 225, shortest: 225 });
    expect(plan?.quality).toMatchObject({ optimal: true, visits: 1 });
  });

  const leaven = [
    'recipe Stiff Dough',
    '',
    'make leaven',
    '  100 g strong wheat flour',
    '  50 g water',
    '  hands 5 min: Knead the leaven.',
    '  wait 6-8 h at 22 C: Leave until ripe.',
    '',
    'make dough',
    '  all leaven',
    '  400 g strong wheat flour',
    '  250 g water',
    '  hands 10 min: Mix the dough.',
  ].join('\n');

  test('a stiff leaven ripens in 6 to 8 hours: its middle when nothing is in the way', () => {
    // Common practice, no source: fed 1:1:2 at room temperature, 6 to 8 h. Dough wanted at 18:00: mixed from 17:50, the
    // leaven ripe then, so left at 10:50 for the middle, 7 h, and kneaded from 10:45.
    expect(rows(planAt(leaven, at(18), usual).plan)).toEqual([
      'hands 0 10:45 to 0 10:50: Knead the leaven.',
      'wait 0 10:50 to 0 17:50: Leave until ripe.',
      'hands 0 17:50 to 0 18:00: Mix the dough.',
    ]);
  });

  test('the same for breakfast cannot be, and the nearest ways are told', () => {
    // Wanted at 07:40. Left alone it would be mixed at 07:30, so kneaded from 00:25, in the night. Kneaded at 22:30 at
    // the latest and mixed at 07:00 at the earliest, the leaven would wait 8 h 30 min: half an hour too long. Begun at
    // 07:00 it is kneaded by 07:05, ripe after 6 h at 13:05, and the dough is there at 13:15. The evening before, the
    // dough can be mixed until people go to bed at 22:30.
    const { plan, diagnostics } = planAt(leaven, at(7, 40), usual);
    expect(plan).toBeUndefined();
    expect(diagnostics.map(({ code }) => code)).toEqual(['T02']);
    const [said] = diagnostics;
    expect(said && sentence(said)).toBe(
      'no plan for 07:40: “Knead the leaven” would fall at 00:25, outside 07:00-22:30',
    );
    expect(said && wayOut(said)).toBe(
      'be ready by 22:30 the day before or by 13:15, or allow 8 h 30 min where “Leave until ripe” has 6-8 h',
    );
  });

  test('of two dishes for one oven the one that keeps goes first', () => {
    // Both wanted at 18:00, the oven can do one heat at a time. The tart keeps no longer than two hours, the bread a
    // day, so the tart is last: in the oven 17:20 to 18:00. From 220 C to 160 C the oven falls 60 degrees at 5 a
    // minute, 12 min, in fives 15: the bread is out at 17:05, in at 16:35, shaped from 16:25. The tart is filled from
    // 17:10. The cook is never needed twice.
    const { plan } = planAt(
      [
        'recipe Flat Bread',
        'serves 4',
        '',
        'make bread',
        '  300 g strong wheat flour',
        '  180 g water',
        '  hands 10 min: Shape.',
        '  oven 30 min at 220 C: Bake the bread.',
        '  keeps 1 d at 20 C',
        '',
        'recipe Leek Tart',
        'serves 4',
        '',
        'make tart',
        '  300 g leeks',
        '  hands 10 min: Fill.',
        '  oven 40 min at 160 C: Bake the tart.',
      ].join('\n'),
      at(18),
      usual,
    );
    expect(rows(plan)).toEqual([
      'hands 0 16:25 to 0 16:35: Shape.',
      'oven 0 16:35 to 0 17:05: Bake the bread.',
      'hands 0 17:10 to 0 17:20: Fill.',
      'oven 0 17:20 to 0 18:00: Bake the tart.',
    ]);
  });

  test('dishes share the oven when shelves and temperatures allow it', () => {
    // 150-160 C and 155-170 C have 155-160 in common, one shelf each: both end at 18:00.
    const dish = (name: string, heat: string, minutes: number): string =>
      [
        `recipe ${name}`,
        'serves 4',
        '',
        `make ${name.toLowerCase()}`,
        '  300 g leeks',
        `  oven ${minutes} min at ${heat} using 1 shelf: Bake.`,
      ].join('\n');
    const { plan } = planAt(
      `${dish('Gratin', '150-160 C', 60)}\n\n${dish('Crumble', '155-170 C', 40)}\n`,
      at(18),
      usual,
    );
    expect(rows(plan)).toEqual(['oven 0 17:00 to 0 18:00: Bake.', 'oven 0 17:20 to 0 18:00: Bake.']);
  });

  test('a wait overnight holds the whole night', () => {
    // Wanted at 10:00 with a step of 20 min: from 09:40. The wait must begin by 22:30 and last 8 to 16 h, best 12: from
    // 21:40 it lasts 12 h and holds 22:30 to 07:00.
    const text = [
      'recipe Oats',
      '',
      'make oats',
      '  80 g rolled oats',
      '  200 g water',
      '  hands 5 min: Stir.',
      '  wait overnight at 4 C: Leave in the cold.',
      '  hands 20 min: Beat.',
    ].join('\n');
    expect(rows(planAt(text, at(10), usual).plan)).toEqual([
      'hands -1 21:35 to -1 21:40: Stir.',
      'wait -1 21:40 to 0 09:40: Leave in the cold.',
      'hands 0 09:40 to 0 10:00: Beat.',
    ]);
    // Wanted at 18:00: 16 h before 17:40 would be 01:40, after bedtime. No night fits, whatever is tried, but earlier
    // in the day: 22:30 and 16 h is 14:30, beaten by 14:50; standing two hours makes 16:50 the latest.
    const evening = planAt(text, at(18), usual);
    expect(evening.plan).toBeUndefined();
    expect(evening.diagnostics.map(wayOut)[0]).toContain('be ready by 16:50');
  });

  test('care falls at each multiple and moves to suit those who sleep', () => {
    // Wanted at 11:10, the last step from 11:00; 18 to 30 h, best 24: from 11:00 the day before. Care every 12 h falls at
    // 23:00, when nobody is up; it may move a tenth of 12 h, 72 min. Its minute has to be over by 22:30: at 22:29. The
    // second multiple is the end of the wait and no care.
    const { plan } = planAt(
      [
        'recipe Cheeks',
        '',
        'make cheeks',
        '  1 kg beef cheek',
        '  hands 5 min: Cover.',
        '  wait 18-30 h at 4 C: Leave in the cold.',
        '  every 12 h, 1 min: Turn.',
        '  hands 10 min: Strain.',
      ].join('\n'),
      at(11, 10),
      usual,
    );
    expect(rows(plan)[1]).toBe('wait -1 11:00 to 0 11:00: Leave in the cold.');
    expect(plan?.visits.map(({ start, moved, number, of }) => [told(start), moved, number, of])).toEqual([
      ['-1 22:29', -31, 1, 1],
    ]);
  });

  test('hands-on work is drawn together when that costs the waits less than a visit', () => {
    // Mixed from 08:00. The paste waits 10 to 14 h, best 12: left at 20:00, stirred from 19:57. The soaker waits 10 to
    // 18 h, best 14: left at 18:00, poured from 17:55. From 18:00 to 19:57 nobody is there for 117 min: two visits, and a
    // third in the morning. The soaker 57 min later leaves a pause of an hour, which is one visit. That is 57 of the
    // 240 min to its limit, 23.75 points, less than the 30 of a visit; the paste 57 min earlier would cost 57 of 120,
    // 47.5 points.
    const { plan } = planAt(
      [
        'recipe Rye',
        '',
        'make paste',
        '  150 g whole rye flour',
        '  150 g water',
        '  hands 3 min: Stir the paste.',
        '  wait 10-14 h: Leave.',
        '',
        'make soaker',
        '  120 g cracked rye',
        '  200 g water',
        '  hands 5 min: Pour.',
        '  wait 10-18 h: Swell.',
        '',
        'make dough',
        '  all paste',
        '  all soaker',
        '  hands 10 min: Mix.',
      ].join('\n'),
      at(8, 10),
      usual,
    );
    expect(rows(plan).filter((row) => row.startsWith('hands'))).toEqual([
      'hands -1 18:52 to -1 18:57: Pour.',
      'hands -1 19:57 to -1 20:00: Stir the paste.',
      'hands 0 08:00 to 0 08:10: Mix.',
    ]);
    // 23.75 points and the price of a minute rounded up (100 000 / 240 = 416.67, so 417 thousandths), and two visits.
    expect(plan?.quality).toMatchObject({ visits: 2, points: 60 + (57 * 417) / 1000, optimal: true });
  });

  test('an oven too small takes batches', () => {
    // Three shelves in an oven of two: two batches, one after the other, so 30 min before 12:00 from 11:00.
    const { plan } = planAt(
      [
        'recipe Biscuits',
        '',
        'make biscuits',
        '  300 g strong wheat flour',
        '  hands 10 min: Cut.',
        '  oven 30 min at 170 C using 3 shelves: Bake.',
        '',
        'kitchen Quay',
        '  has 1 oven of 2 shelves, 1 cook',
      ].join('\n'),
      at(12),
      usual,
    );
    expect(rows(plan)).toEqual([
      'hands 0 10:50 to 0 11:00: Cut.',
      'oven 0 11:00 to 0 11:30: Bake.',
      'oven 0 11:30 to 0 12:00: Bake.',
    ]);
  });

  test('too few tins take batches from the filling on', () => {
    // Four tins wanted, two there: filled, baked, filled, baked. Each batch 5 + 20 min; the second begins when the first
    // is out.
    const { plan } = planAt(
      [
        'recipe Small Loaves',
        'vessel 4 loaf tins of 20 x 10 x 6 cm',
        '',
        'make loaves',
        '  500 g strong wheat flour',
        '  300 g water',
        '  hands 10 min: Mix.',
        '  hands 5 min: Fill the tins.',
        '  oven 20 min at 220 C: Bake.',
        '',
        'kitchen Quay',
        '  has 1 oven of 2 shelves, 2 loaf tins, 1 cook',
      ].join('\n'),
      at(12),
      usual,
    );
    expect(rows(plan)).toEqual([
      'hands 0 11:00 to 0 11:10: Mix.',
      'hands 0 11:10 to 0 11:15: Fill the tins.',
      'oven 0 11:15 to 0 11:35: Bake.',
      'hands 0 11:35 to 0 11:40: Fill the tins.',
      'oven 0 11:40 to 0 12:00: Bake.',
    ]);
  });

  test('a kitchen sets how long things stand and stretch, and how hot its oven goes', () => {
    // The soup waits 8 h from 22:30, or a tenth more: until 07:18. Nobody is up before 07:30, so only a kitchen that lets
    // a figure stretch by an eighth, to 9 h, has a plan for 07:40: from 22:30 to 07:30. (In the usual one the dish could
    // also be done the evening before; here it may not stand so long.)
    const text = (kitchen: string): string =>
      [
        'recipe Broth',
        '',
        'make broth',
        '  1 kg leeks',
        '  hands 5 min: Cover.',
        '  wait 8 h at 4 C: Leave.',
        '  hands 10 min: Strain.',
        '',
        'kitchen Quay',
        '  has 1 oven of 2 shelves at 60-230 C, 1 cook',
        '  awake 07:30-22:30',
        kitchen,
      ].join('\n');
    expect(planAt(text('  hold 30 min'), at(7, 40)).plan).toBeUndefined();
    expect(rows(planAt(text('  hold 30 min\n  stretch 12.5 %'), at(7, 40)).plan)).toEqual([
      'hands -1 22:25 to -1 22:30: Cover.',
      'wait -1 22:30 to 0 07:30: Leave.',
      'hands 0 07:30 to 0 07:40: Strain.',
    ]);
    const baked = text('').replace('  hands 10 min: Strain.', '  oven 10 min at 240 C: Brown.');
    expect(planAt(baked, at(18)).diagnostics.map(({ code, args }) => [code, args['range']])).toEqual([
      ['T13', '60 to 230 C'],
    ]);
  });

  test('a thing made in another file is planned with what draws it, as far as it is needed', () => {
    // The curd is drawn for the tart and keeps two days; it is boiled right before, at 15:45 for 10 min. What that file
    // makes after the curd is not.
    const text = [
      'use curd from curd.quern',
      'recipe Tart',
      '',
      'make tart',
      '  200 g curd',
      '  hands 5 min: Fill.',
      '=== curd.quern',
      'recipe Curd Buns',
      '',
      'make curd',
      '  300 g sugar',
      '  hob 10 min: Boil.',
      '  keeps 2 d at 4 C',
      '',
      'make buns',
      '  100 g curd',
      '  hands 30 min: Fill the buns.',
    ].join('\n');
    expect(rows(planAt(text, at(16), usual).plan)).toEqual([
      'hob 0 15:45 to 0 15:55: Boil.',
      'hands 0 15:55 to 0 16:00: Fill.',
    ]);
  });

  test('twice a recipe takes twice the shelves, and no longer', () => {
    // One shelf for four servings, two for eight: they fill the oven, so the other dish cannot share it and goes first.
    const text = (servings: number): string =>
      [
        'recipe Gratin',
        'serves 4',
        '',
        'make gratin',
        '  1 kg leeks',
        '  oven 30 min at 180 C using 1 shelf: Bake the gratin.',
        '',
        'recipe Tart',
        'serves 4',
        '',
        'make tart',
        '  500 g leeks',
        '  oven 20 min at 180 C using 1 shelf: Bake the tart.',
        '  keeps 1 d at 20 C',
        '',
        'menu Supper',
        'course 18:00',
        `  ${servings} servings of Gratin`,
        '  4 servings of Tart',
      ].join('\n');
    expect(rows(planAt(text(4), 0, usual).plan)).toEqual([
      'oven 0 17:30 to 0 18:00: Bake the gratin.',
      'oven 0 17:40 to 0 18:00: Bake the tart.',
    ]);
    expect(rows(planAt(text(8), 0, usual).plan)).toEqual([
      'oven 0 17:10 to 0 17:30: Bake the tart.',
      'oven 0 17:30 to 0 18:00: Bake the gratin.',
    ]);
  });

  test('a saved thing is ready where it is saved, not when its make is done', () => {
    // The syrup is saved after the first step; the glaze of it takes 5 min and is wanted when the cake is brushed at
    // 15:55. The cake's own wait of 60 min does not hold the glaze up.
    const { plan } = planAt(
      [
        'recipe Glazed',
        '',
        'make base',
        '  200 g sugar',
        '  200 g water',
        '  hob 10 min: Boil.',
        '  save 100 g as syrup',
        '  wait 60 min: Cool.',
        '',
        'make cake',
        '  all syrup',
        '  hands 5 min: Stir the glaze.',
        '  all base',
        '  hands 5 min: Brush.',
      ].join('\n'),
      at(16),
      usual,
    );
    expect(rows(plan)).toEqual([
      'hob 0 14:45 to 0 14:55: Boil.',
      'wait 0 14:55 to 0 15:55: Cool.',
      'hands 0 15:50 to 0 15:55: Stir the glaze.',
      'hands 0 15:55 to 0 16:00: Brush.',
    ]);
  });
});

describe('time is real', () => {
  const rest = (time: string): string =>
    [
      'recipe Rest',
      '',
      'make dough',
      '  500 g strong wheat flour',
      '  hands 10 min: Mix.',
      `  wait ${time} at 4 C: Rest.`,
    ].join('\n');

  test('a rest of 12 h is 12 h though the clocks go forward', () => {
    // In London on 28 March 2027 the clocks go from 01:00 to 02:00 (last Sunday of March, 01:00 UTC). Wanted at 09:00
    // summer time, 08:00 UTC; 12 h earlier it is 20:00 UTC and winter time.
    const { plan, dates } = planIn('Europe/London', rest('12 h'), '2027-03-28 09:00');
    const wait = plan?.activities[1];
    expect(wait && wait.end - wait.start).toBe(720);
    expect(wait && dates?.at(wait.start).toString()).toBe('2027-03-27T20:00:00+00:00[Europe/London]');
  });

  test('and though they go back', () => {
    // On 31 October 2027 they go from 02:00 to 01:00. Wanted at 09:00 winter time; 12 h earlier it is 22:00 summer time.
    const { plan, dates } = planIn('Europe/London', rest('12 h'), '2027-10-31 09:00');
    expect(dates?.at(plan?.activities[1]?.start ?? 0).toString()).toBe('2027-10-30T22:00:00+01:00[Europe/London]');
  });

  test('a week is a week by the calendar', () => {
    // From 09:00 to 09:00 a week later, an hour short of 168 h because the clocks went forward between.
    const { plan, dates } = planIn('Europe/London', rest('1 week'), '2027-03-31 09:00');
    const wait = plan?.activities[1];
    expect(wait && dates?.at(wait.start).toString()).toBe('2027-03-24T09:00:00+00:00[Europe/London]');
    expect(wait && wait.end - wait.start).toBe(7 * 1440 - 60);
  });

  test('nobody is woken an hour early by a change of the clocks', () => {
    // Waking hours are what the wall clock says: on the morning of the change 07:00 is an hour nearer to bedtime.
    const dough = ['recipe Early', '', 'make dough', '  500 g strong wheat flour', '  hands 30 min: Mix.'].join('\n');
    const { plan, dates } = planIn('Europe/London', dough, '2027-03-28 07:30');
    expect(dates?.at(plan?.activities[0]?.start ?? 0).toString()).toBe('2027-03-28T07:00:00+01:00[Europe/London]');
  });

  test('forward from a start all is ready as soon as can be', () => {
    // Begun at 10:00: 10 min of hands, then the least of 2-4 h: 12:10.
    const { plan, dates } = planIn('Europe/London', rest('2-4 h'), '2027-05-08 10:00', 'start');
    expect(dates?.at(plan?.totals.begin ?? 0).toString()).toBe('2027-05-08T10:00:00+01:00[Europe/London]');
    expect(dates?.at(plan?.totals.ready ?? 0).toString()).toBe('2027-05-08T12:10:00+01:00[Europe/London]');
  });
});
