import type { Temporal } from 'temporal-polyfill';
import { ovenName, type ClockPlan, type Minute } from '@quern/views';
import { calendarLine, dateValue, escapeText, hashText, localValue, utcValue } from './icalendar-text.js';
import { previousEvents, type PreviousEvent } from './icalendar-previous.js';
import { timeZoneLines } from './icalendar-zone.js';
import { careSeries } from './icalendar-series.js';
import type { ZonedCalendar } from './zoned-calendar.js';

/*
 * A plan as iCalendar (RFC 5545, with NAME, UID and LAST-MODIFIED of a calendar from RFC 7986). An event keeps its UID
 * as long as it is the same step of the same recipe for the same day; SEQUENCE goes up when its text or time changes.
 */

export interface ICalendarOptions {
  readonly calendar: ZonedCalendar;
  /** Milliseconds since 1970 of the writing, for DTSTAMP. */
  readonly stamp: number;
  /** The calendar as last written, so that SEQUENCE goes on from there and what has gone is cancelled. */
  readonly previous?: string;
  /** Minutes before a hands-on moment at which to be reminded; 10 when not given. */
  readonly alarmBefore?: number;
}

/** How often a culture's upkeep is written into a calendar; it goes on for ever, a calendar need not. */
const UPKEEP_TIMES = 26;

interface Event {
  readonly key: string;
  /** Lines between BEGIN and END without UID, DTSTAMP and SEQUENCE. */
  readonly lines: readonly string[];
  readonly alarm: boolean;
  readonly summary: string;
  /** For an instance of a series that was moved: which. */
  readonly series?: string;
}

export function clockICalendar(plan: ClockPlan, options: ICalendarOptions): string {
  const { calendar } = options;
  const previous = previousEvents(options.previous ?? '');
  const occasion = calendar.at(plan.totals.ready).toPlainDate().toString();
  const events = [
    ...stepEvents(plan, options),
    ...careEvents(plan, options),
    ...upkeepEvents(plan, options),
    ...windowEvents(plan, options),
  ];
  const stamp = utcValue(options.stamp);
  const used = new Set<string>();
  const written = events.flatMap((event) => {
    const uid = uidOf(occasion, plan.title, event.series ?? event.key);
    used.add(uid);
    return eventLines(
      event,
      uid,
      stamp,
      previous.get(event.series === undefined ? uid : `${uid} ${event.key}`),
      options,
    );
  });
  const gone = [...previous.values()].filter(
    (event) => !used.has(event.uid) && event.uid.endsWith(UID_HOST) && !event.recurrence,
  );
  const [from, to] = extent(plan);
  return [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Quern//Clock 1//EN',
    'CALSCALE:GREGORIAN',
    `UID:${uidOf(occasion, plan.title, 'calendar')}`,
    `NAME:${escapeText(plan.title)}`,
    `LAST-MODIFIED:${stamp}`,
    ...timeZoneLines(calendar, from, to),
    ...written,
    ...gone.flatMap((event) => cancelled(event, stamp)),
    'END:VCALENDAR',
  ]
    .map(calendarLine)
    .join('');
}

const UID_HOST = '@clock.quern';
const uidOf = (occasion: string, title: string, key: string): string =>
  `${hashText(`${occasion}\n${title}\n${key}`)}${UID_HOST}`;

function extent(plan: ClockPlan): [Minute, Minute] {
  const ends = [
    ...plan.activities.map(({ end }) => end),
    ...plan.upkeep.map(({ first, period }) => first + period * UPKEEP_TIMES),
    plan.totals.ready,
  ];
  return [plan.totals.begin, ends.reduce((latest, end) => Math.max(latest, end), plan.totals.ready)];
}

function eventLines(
  event: Event,
  uid: string,
  stamp: string,
  before: PreviousEvent | undefined,
  options: ICalendarOptions,
): string[] {
  const alarm = event.alarm
    ? [
        'BEGIN:VALARM',
        'ACTION:DISPLAY',
        `DESCRIPTION:${escapeText(event.summary)}`,
        `TRIGGER:-PT${options.alarmBefore ?? 10}M`,
        'END:VALARM',
      ]
    : [];
  const digest = hashText([...event.lines, ...alarm].join('\n'));
  const same = before?.digest === digest && !before.cancelled;
  const sequence = before === undefined ? 0 : same ? before.sequence : before.sequence + 1;
  return [
    'BEGIN:VEVENT',
    `UID:${uid}`,
    `DTSTAMP:${same ? before.stamp : stamp}`,
    `SEQUENCE:${sequence}`,
    ...event.lines,
    `X-QUERN-DIGEST:${digest}`,
    ...alarm,
    'END:VEVENT',
  ];
}

/** What an earlier calendar had and this plan has not: told as cancelled, so that other calendars take it out. */
function cancelled(event: PreviousEvent, stamp: string): string[] {
  const lines = [
    'BEGIN:VEVENT',
    `UID:${event.uid}`,
    `DTSTAMP:${event.cancelled ? event.stamp : stamp}`,
    `SEQUENCE:${event.cancelled ? event.sequence : event.sequence + 1}`,
    ...event.when,
    ...(event.summary === '' ? [] : [event.summary]),
    'STATUS:CANCELLED',
    'END:VEVENT',
  ];
  return lines;
}

function timed({ calendar }: ICalendarOptions, from: Minute, to: Minute, utc = false): string[] {
  const until = Math.max(to, from + 1);
  return [`DTSTART${stampOf(calendar, calendar.at(from), utc)}`, `DTEND${stampOf(calendar, calendar.at(until), utc)}`];
}

/** The parameter and value of a moment: by the wall clock of the zone, or in UTC. */
function stampOf(calendar: ZonedCalendar, at: Temporal.ZonedDateTime, utc: boolean): string {
  return utc ? `:${utcValue(at.epochMilliseconds)}` : `;TZID=${calendar.zone}:${localValue(at)}`;
}

function stepEvents(plan: ClockPlan, options: ICalendarOptions): Event[] {
  const several = plan.dishes.length > 1;
  const titles = new Map(plan.dishes.map(({ id, title }) => [id, title]));
  const heating = plan.heating.map((one): Event => {
    const summary = `Heat ${ovenName(one.oven)} to ${one.heat}`;
    return {
      key: `heat/${one.before}`,
      summary,
      alarm: false,
      lines: [
        ...timed(options, one.start, one.end),
        `SUMMARY:${escapeText(summary)}`,
        'CATEGORIES:oven',
        'TRANSP:TRANSPARENT',
      ],
    };
  });
  const steps = plan.activities.map((activity): Event => {
    const dish = titles.get(activity.dish) ?? '';
    const whose = several && dish !== activity.make ? `${dish}, ${activity.make}` : activity.make;
    const summary = `${activity.short} (${whose})`;
    const heat = activity.oven?.heat ? ` at ${activity.oven.heat}` : '';
    return {
      key: activity.id,
      summary,
      alarm: activity.hands,
      lines: [
        ...timed(options, activity.start, activity.end),
        `SUMMARY:${escapeText(summary)}`,
        `DESCRIPTION:${escapeText(`${activity.label}${heat ? `\n${activity.lane}${heat}` : ''}`)}`,
        `CATEGORIES:${activity.lane}`,
        `TRANSP:${activity.hands ? 'OPAQUE' : 'TRANSPARENT'}`,
      ],
    };
  });
  return [...heating, ...steps];
}

function careEvents(plan: ClockPlan, options: ICalendarOptions): Event[] {
  return careSeries(plan, options.calendar).flatMap(({ series, rule, first, label, make, moved, utc }) => {
    const summary = `${label} (${make})`;
    const words = [`SUMMARY:${escapeText(summary)}`, 'CATEGORIES:care', 'TRANSP:OPAQUE'];
    const lasts = first.end - first.start;
    const rules = rule === undefined ? [] : [`RRULE:${rule}`];
    const whole: Event = {
      key: series,
      summary,
      alarm: true,
      lines: [...timed(options, first.start, first.start + lasts, utc), ...rules, ...words],
    };
    const instances = moved.map((visit): Event => {
      const instance = `RECURRENCE-ID${stampOf(options.calendar, visit.due, utc)}`;
      const lines = [instance, ...timed(options, visit.start, visit.start + lasts, utc), ...words];
      return { key: instance, series, summary, alarm: true, lines };
    });
    return [whole, ...instances];
  });
}

function upkeepEvents(plan: ClockPlan, options: ICalendarOptions): Event[] {
  return plan.upkeep.map((upkeep): Event => {
    const summary = `${upkeep.label} (${upkeep.culture})`;
    const days = Math.max(1, Math.round(upkeep.period / 1440));
    return {
      key: upkeep.id,
      summary,
      alarm: true,
      lines: [
        ...timed(options, upkeep.first, upkeep.first + upkeep.lasts),
        `RRULE:FREQ=DAILY;INTERVAL=${days};COUNT=${UPKEEP_TIMES}`,
        `SUMMARY:${escapeText(summary)}`,
        'CATEGORIES:care',
        'TRANSP:OPAQUE',
      ],
    };
  });
}

/** Windows: from when a dish is at its best until what it keeps, and the last day of that as 'use by'. */
function windowEvents(plan: ClockPlan, { calendar }: ICalendarOptions): Event[] {
  return plan.dishes.flatMap((dish) => {
    const [keeps] = dish.keeps;
    if (!keeps) return [];
    const from = calendar.at(dish.bestFrom).toPlainDate();
    const last = calendar.at(keeps.until).toPlainDate();
    const allDay = (key: string, summary: string, start: typeof from): Event => ({
      key: `${key}/${dish.id}`,
      summary,
      alarm: false,
      lines: [
        `DTSTART;VALUE=DATE:${dateValue(start)}`,
        `DTEND;VALUE=DATE:${dateValue(last.add({ days: 1 }))}`,
        `SUMMARY:${escapeText(summary)}`,
        'CATEGORIES:keeping',
        'TRANSP:TRANSPARENT',
      ],
    });
    return [
      allDay('window', `${dish.title}: at its best, keeps ${keeps.written}`, from),
      allDay('use-by', `Use by today: ${dish.title}`, last),
    ];
  });
}
