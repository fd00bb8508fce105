/** The clock for terminals, pages, calendars, blogs and programs. */
export { chartWords, clockSvg, type ClockChartOptions } from './clock-chart.js';
export { clockPage, type ClockPageOptions } from './clock-page.js';
export { clockText, type ClockTextOptions } from './clock-text.js';
export { clockMarkdown, type ClockMarkdownOptions } from './clock-markdown.js';
export { clockJson, clockJsonValue, CLOCK_JSON_VERSION } from './clock-json.js';
export { clockICalendar, type ICalendarOptions } from './icalendar.js';
export { qualityText, totalsText } from './clock-words.js';
export { datedMoments, undatedMoments, type Moments } from './moments.js';
export {
  isZone,
  midnightOf,
  momentOfEpoch,
  readMoment,
  zonedCalendar,
  type ReadMoment,
  type ZonedCalendar,
} from './zoned-calendar.js';
export { planDated, type DatedPlan, type WhenWanted } from './dated-plan.js';
