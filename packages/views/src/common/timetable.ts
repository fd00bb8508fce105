import type { Place } from '@quern/text';

/** What a view that does not plan has to know of a plan: when each step runs. A plan of the clock is one. */
export interface Timetable {
  readonly activities: readonly {
    /** The step's line; missing for what no line says. */
    readonly place: Place | undefined;
    /** Minutes from any one moment. */
    readonly start: number;
    readonly end: number;
  }[];
}
