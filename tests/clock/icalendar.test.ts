import { describe, expect, test } from 'vitest';
import ICAL from 'ical.js';
import nodeIcal from 'node-ical';
import rrule from 'rrule';
import { clockICalendar, type DatedPlan } from '@quern/publish';
import { planIn } from './recipes.js';

/*
 * The calendar as two parsers read it that know nothing of us or of each other: ical.js and node-ical; and the rules of
 * repetition as rrule unrolls them.
 */
const STAMP = Date.UTC(2027, 1, 1, 9, 30);

const jar = [
  'recipe Quay Jar with ümlauts 漬物',
  '',
  'make jar',
  '  500 g white cabbage',
  '  hands 20 min: Shred it finely, salt it well, and rub it until it weeps; then press it down hard under its own juice (a\\b — 漬物石) in the crock.',
  '  wait 20-22 d at 18 C: Leave to sour.',
  '  every 2 d, 3 min: Press down, and skim if need be.',
  '  hands 10 min: Move to clean jars.',
  '  best after 1 week',
  '  keeps 3 months at 4 C, under its juice',
].join('\n');

const broth = [
  'recipe Broth',
  '',
  'make broth',
  '  1 kg beef cheek',
  '  hands 10 min: Cover with water.',
  '  wait 28-30 h at 4 C: Leave.',
  '  every 8 h, 2 min: Skim.',
  '  hands 5 min: Strain.',
  '',
  'kitchen Watch House',
  '  has 1 oven of 2 shelves, 1 cook',
  '  awake 06:00-23:00',
].join('\n');

function written(planned: DatedPlan, previous?: string, stamp = STAMP): string {
  const { plan, dates } = planned;
  if (!plan || !dates) throw new Error(`no plan: ${JSON.stringify(planned.diagnostics)}`);
  return clockICalendar(plan, { calendar: dates, stamp, ...(previous !== undefined && { previous }) });
}

const events = (text: string): ICAL.Event[] =>
  new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vevent').map((component) => new ICAL.Event(component));

const single = planIn('Europe/London', jar, '2027-05-08 16:00');
const text = written(single);

describe('the text of a calendar', () => {
  test('has lines of at most 75 octets, ended by CR LF, cut inside no character', () => {
    const lines = text.split('\r\n');
    expect(lines.at(-1)).toBe('');
    expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
    const octets = lines.map((line) => new TextEncoder().encode(line).length);
    expect(Math.max(...octets)).toBeLessThanOrEqual(75);
    expect(Math.max(...octets)).toBeGreaterThan(70);
    for (const line of lines)
      expect(line).toBe(new TextDecoder('utf-8', { fatal: true }).decode(new TextEncoder().encode(line)));
  });

  test('gives marks and other scripts back as they were', () => {
    const name = new ICAL.Component(ICAL.parse(text)).getFirstPropertyValue('name');
    expect(name).toBe('Quay Jar with ümlauts 漬物');
    const shred = events(text).find((event) => event.description?.startsWith('Shred'));
    expect(shred?.description).toContain(
      'salt it well, and rub it until it weeps; then press it down hard under its own juice (a\\b — 漬物石) in',
    );
  });
});

describe('events', () => {
  test('are where the plan has them, by ical.js', () => {
    const zone = new ICAL.Timezone(
      new ICAL.Component(ICAL.parse(text)).getFirstSubcomponent('vtimezone') ?? new ICAL.Component('vtimezone'),
    );
    const found = new Set(
      events(text).map(({ startDate, endDate }) => {
        for (const time of [startDate, endDate])
          if (!time.isDate && time.zone !== ICAL.Timezone.utcTimezone) time.zone = zone;
        return `${startDate.toUnixTime()} ${endDate.toUnixTime()}`;
      }),
    );
    const expected = (single.plan?.activities ?? []).map(({ start, end }) => {
      const unix = (minute: number): number => (single.dates?.at(minute).epochMilliseconds ?? 0) / 1000;
      return `${unix(start)} ${unix(end)}`;
    });
    for (const one of expected) expect([...found]).toContain(one);
  });

  test('are where the plan has them, by node-ical', () => {
    const parsed = Object.values(nodeIcal.sync.parseICS(text)).filter((one) => one?.type === 'VEVENT');
    const starts = parsed.map((one) => (one as { start: Date }).start.getTime());
    for (const { start } of single.plan?.activities ?? [])
      expect(starts).toContain(single.dates?.at(start).epochMilliseconds);
  });

  test('remind of hands-on moments alone', () => {
    for (const component of new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vevent')) {
      const category = component.getFirstPropertyValue('categories');
      expect(component.getAllSubcomponents('valarm').length, String(category)).toBe(
        category === 'hands' || category === 'care' ? 1 : 0,
      );
    }
    const [alarm] = new ICAL.Component(ICAL.parse(text))
      .getAllSubcomponents('vevent')
      .flatMap((one) => one.getAllSubcomponents('valarm'));
    expect(String(alarm?.getFirstPropertyValue('trigger'))).toBe('-PT10M');
    expect(alarm?.getFirstPropertyValue('action')).toBe('DISPLAY');
  });

  test('say from when a dish is at its best and until when it keeps', () => {
    const windows = new ICAL.Component(ICAL.parse(text))
      .getAllSubcomponents('vevent')
      .filter((one) => one.getFirstPropertyValue('categories') === 'keeping');
    // Wanted on 8 May, when it has aged the week that it must; done on 1 May, and three months of 30 days from then end
    // on 30 July. Whole days end with the day after, as the standard has it.
    const days = windows.map((one) => [
      String(one.getFirstPropertyValue('dtstart')),
      String(one.getFirstPropertyValue('dtend')),
    ]);
    expect(days).toEqual([
      ['2027-05-08', '2027-07-31'],
      ['2027-07-30', '2027-07-31'],
    ]);
  });

  test('have a zone that says when the clocks change', () => {
    const [zone] = new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vtimezone');
    expect(zone?.getFirstPropertyValue('tzid')).toBe('Europe/London');
    const changes = zone
      ?.getAllSubcomponents()
      .map((one) => [
        one.name,
        String(one.getFirstPropertyValue('dtstart')),
        String(one.getFirstPropertyValue('tzoffsetto')),
      ]);
    // The plan runs in April and May: summer time began on 28 March 2027 at 01:00.
    expect(changes).toEqual([['daylight', '2027-03-28T01:00:00', '+01:00']]);
  });
});

describe('repeated care', () => {
  test('is one rule by days that keeps the wall clock, as rrule unrolls it', () => {
    const crossing = planIn('Europe/London', jar, '2027-04-20 16:00');
    const calendar = written(crossing);
    const care = new ICAL.Component(ICAL.parse(calendar))
      .getAllSubcomponents('vevent')
      .filter((one) => one.getFirstPropertyValue('categories') === 'care');
    const [series] = care;
    const rule = String(series?.getFirstPropertyValue('rrule'));
    const visits = crossing.plan?.visits ?? [];
    expect(rule).toBe(`FREQ=DAILY;COUNT=${visits.length};INTERVAL=2`);
    // Unrolled as wall clock, by a library that has no zones: every second day at the same hour, over the change of
    // 28 March.
    const local = (minute: number): string =>
      crossing.dates?.at(minute).toPlainDateTime().toString({ smallestUnit: 'second' }) ?? '';
    const first = String(series?.getFirstPropertyValue('dtstart'));
    const unrolled = rrule.rrulestr(rule, { dtstart: new Date(`${first}Z`) }).all();
    expect(unrolled.map((date) => date.toISOString().slice(0, 19))).toEqual(visits.map(({ start }) => local(start)));
    expect(new Set(visits.map(({ start }) => local(start).slice(11))).size).toBe(1);
    const offsets = visits.map(({ start }) => crossing.dates?.at(start).offset);
    expect(new Set(offsets)).toEqual(new Set(['+00:00', '+01:00']));
  });

  test('that was moved out of the night is an instance of its own', () => {
    // Wanted at 20:25: strained from 20:20, left at 15:20 the day before, skimmed at 23:20 unless moved.
    const planned = planIn('Europe/London', broth, '2027-05-08 20:25');
    const calendar = written(planned);
    const visits = planned.plan?.visits ?? [];
    expect(visits.some(({ moved }) => moved !== 0)).toBe(true);
    const care = new ICAL.Component(ICAL.parse(calendar))
      .getAllSubcomponents('vevent')
      .filter((one) => one.getFirstPropertyValue('categories') === 'care');
    const [master, ...moved] = care.map((component) => new ICAL.Event(component));
    if (!master) throw new Error('no care');
    for (const one of moved) master.relateException(one);
    const found: number[] = [];
    const iterator = master.iterator();
    for (let next = iterator.next(); next; next = iterator.next())
      found.push(master.getOccurrenceDetails(next).startDate.toUnixTime());
    expect(found.sort()).toEqual(visits.map(({ start }) => (planned.dates?.at(start).epochMilliseconds ?? 0) / 1000));
    expect(String(master.component.getFirstPropertyValue('rrule'))).toContain('FREQ=HOURLY');
  });

  test('of a culture goes on after the bake', () => {
    const rye = [
      'recipe Rye',
      '',
      'culture rye starter',
      '  parts 1 whole rye flour, 1 water',
      '  every 7 d, 3 min: Feed it.',
      '',
      'make leaven',
      '  150 g whole rye flour',
      '  150 g water',
      '  20 g rye starter',
      '  hands 3 min: Stir.',
      '  wait 10-14 h: Leave.',
      '  save 20 g as rye starter, for the next bake',
      '',
      'make loaf',
      '  all leaven',
      '  hands 10 min: Mix.',
    ].join('\n');
    const planned = planIn('Europe/London', rye, '2027-05-08 09:00');
    const upkeep = events(written(planned)).find((event) => event.summary.startsWith('Feed it'));
    // The leaven is ripe when the loaf is mixed, from 08:50; some of it went back into the jar.
    const ripe = planned.plan?.activities.find(({ make }) => make === 'loaf')?.start ?? 0;
    expect(String(upkeep?.component.getFirstPropertyValue('rrule'))).toMatch(/FREQ=DAILY;COUNT=26;INTERVAL=7/);
    expect(upkeep?.startDate.toString()).toBe(
      planned.dates
        ?.at(ripe + 7 * 1440)
        .toPlainDateTime()
        .toString({ smallestUnit: 'second' }),
    );
  });
});

describe('a calendar written again', () => {
  const uids = (calendar: string): string[] => events(calendar).map(({ uid }) => uid);
  const sequences = (calendar: string): number[] => events(calendar).map(({ sequence }) => sequence);

  test('is the same to the letter when nothing changed', () => {
    const later = written(single, text, STAMP + 86_400_000);
    const undated = (calendar: string): string => calendar.replace(/LAST-MODIFIED:.*\r\n/, '');
    expect(undated(later)).toBe(undated(text));
    expect(new Set(uids(text)).size).toBe(uids(text).length);
  });

  test('keeps its identities and counts its changes when the time moves', () => {
    const moved = planIn('Europe/London', jar, '2027-05-08 17:00');
    const again = written(moved, text);
    expect(uids(again)).toEqual(uids(text));
    const changed = sequences(again);
    // The steps moved by an hour; the whole-day windows did not.
    expect(changed.filter((sequence) => sequence === 1).length).toBe(uids(text).length - 2);
    expect(changed.filter((sequence) => sequence === 0).length).toBe(2);
    expect(sequences(written(single, again))).toContain(2);
  });

  test('has other identities for another day', () => {
    const week = planIn('Europe/London', jar, '2027-05-15 16:00');
    expect(uids(written(week)).filter((uid) => uids(text).includes(uid))).toEqual([]);
  });

  test('cancels what is no longer there, once', () => {
    const shorter = planIn(
      'Europe/London',
      jar.replace('  hands 10 min: Move to clean jars.\n', ''),
      '2027-05-08 16:00',
    );
    const again = written(shorter, text);
    const gone = events(again).filter((event) => event.component.getFirstPropertyValue('status') === 'CANCELLED');
    expect(gone.map(({ summary, sequence }) => [summary.slice(0, 18), sequence])).toEqual([['Move to clean jars', 1]]);
    expect(written(shorter, again, STAMP + 1000).replace(/LAST-MODIFIED:.*\r\n/, '')).toBe(
      again.replace(/LAST-MODIFIED:.*\r\n/, ''),
    );
  });
});
