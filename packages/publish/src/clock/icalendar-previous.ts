import { unfold } from './icalendar-text.js';

/** An event of an earlier calendar of ours. */
export interface PreviousEvent {
  readonly uid: string;
  readonly sequence: number;
  readonly digest: string;
  readonly stamp: string;
  readonly cancelled: boolean;
  /** The whole line, when it is an instance of a series. */
  readonly recurrence: string | undefined;
  /** Its DTSTART and DTEND lines, and its SUMMARY line. */
  readonly when: readonly string[];
  readonly summary: string;
}

/** The events of a calendar by UID; instances of a series by UID and their RECURRENCE-ID line. */
export function previousEvents(text: string): Map<string, PreviousEvent> {
  const events = new Map<string, PreviousEvent>();
  let lines: string[] | undefined;
  let inside = 0;
  for (const line of unfold(text)) {
    if (line === 'BEGIN:VEVENT') {
      lines = [];
      inside = 0;
    } else if (line === 'END:VEVENT' && lines) {
      const event = read(lines);
      if (event) events.set(event.recurrence === undefined ? event.uid : `${event.uid} ${event.recurrence}`, event);
      lines = undefined;
    } else if (line.startsWith('BEGIN:')) inside++;
    else if (line.startsWith('END:')) inside--;
    else if (inside === 0) lines?.push(line);
  }
  return events;
}

function read(lines: readonly string[]): PreviousEvent | undefined {
  const line = (name: string): string | undefined =>
    lines.find((one) => one.startsWith(`${name}:`) || one.startsWith(`${name};`));
  const value = (name: string): string => line(name)?.replace(/^[^:]*:/, '') ?? '';
  const uid = value('UID');
  if (uid === '') return undefined;
  const sequence = Number.parseInt(value('SEQUENCE'), 10);
  return {
    uid,
    sequence: Number.isSafeInteger(sequence) && sequence >= 0 ? sequence : 0,
    digest: value('X-QUERN-DIGEST'),
    stamp: value('DTSTAMP'),
    cancelled: value('STATUS') === 'CANCELLED',
    recurrence: line('RECURRENCE-ID'),
    when: lines.filter((one) => /^DT(?:START|END)[:;]/.test(one)),
    summary: line('SUMMARY') ?? '',
  };
}
