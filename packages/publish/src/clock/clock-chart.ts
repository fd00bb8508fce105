import { hourText, lasting, ovenName, type ClockPlan, type Minute, type PlannedActivity } from '@quern/views';
import { svgText } from '../escape.js';
import { qualityText } from './clock-words.js';
import type { Moments } from './moments.js';
import { foldedAxis, type TimeAxis } from './time-axis.js';

/*
 * The chart. Time runs from left to right on a folded axis; three bands at the top show when hands, oven and hob are
 * busy, by number; below, every product has its lane with one row an activity: the words first, the bar under them, so
 * that no words are cut off on a narrow screen. Lanes differ by pattern, not by colour, so that it reads in black and
 * white. Places across are percentages: the drawing is as wide as what it stands in, and the letters keep their size.
 */

export interface ClockChartOptions {
  readonly moments: Moments;
  /** Makes the ids in the drawing its own when several stand in one page. */
  readonly id?: string;
}

const ROW = 34;
const BAND = 26;
const HEAD = 30;
const LEFT = 0;

/** The chart as a drawing of its own, with its text alternative inside. */
export function clockSvg(plan: ClockPlan, options: ClockChartOptions): string {
  const chart = new Chart(plan, options);
  return chart.draw();
}

interface Row {
  readonly title: string;
  readonly kind: 'hands' | 'oven' | 'hob' | 'wait' | 'heat' | 'keep' | 'stand';
  readonly from: Minute;
  readonly to: Minute;
  /** Part of the bar that may be left out, for a doubtful time. */
  readonly doubtFrom?: Minute;
  readonly marks: readonly Minute[];
}

class Chart {
  readonly #axis: TimeAxis;
  readonly #id: string;
  #y = 0;
  #day: number | undefined;
  readonly #out: string[] = [];

  constructor(
    readonly plan: ClockPlan,
    readonly options: ClockChartOptions,
  ) {
    this.#id = options.id ?? 'clock';
    const windows = plan.dishes.flatMap((dish) => [
      dish.done,
      dish.ready,
      dish.bestFrom,
      ...dish.keeps.slice(0, 1).map(({ until }) => until),
    ]);
    this.#axis = foldedAxis([
      ...plan.activities.flatMap(({ start, end }) => [start, end]),
      ...plan.visits.map(({ start }) => start),
      ...plan.heating.map(({ start }) => start),
      ...windows,
    ]);
  }

  draw(): string {
    this.#y = HEAD;
    this.#bands();
    const dishes = new Map(this.plan.dishes.map(({ id, title }) => [id, title]));
    for (const { dish, make, activities } of lanes(this.plan)) {
      const title = dishes.get(dish) ?? '';
      this.#heading(this.plan.dishes.length > 1 && make !== title ? `${title}: ${make}` : make);
      for (const row of this.#rowsOf(activities)) this.#row(row);
    }
    this.#windows();
    const height = this.#y + 6;
    const body = this.#out.join('\n');
    return (
      [
        `<svg xmlns="http://www.w3.org/2000/svg" class="quern-clock-chart" width="100%" height="${height}" role="img" aria-labelledby="${this.#id}-title ${this.#id}-desc">`,
        `<title id="${this.#id}-title">${svgText(`${this.plan.title}: the plan as a chart`)}</title>`,
        `<desc id="${this.#id}-desc">${svgText(chartWords(this.plan, this.options.moments))}</desc>`,
        `<style>${style}</style>`,
        this.#patterns(),
        `<rect class="paper" x="0" y="0" width="100%" height="${height}"/>`,
        this.#night(height),
        this.#ticks(height),
        body,
        '</svg>',
      ].join('\n') + '\n'
    );
  }

  #patterns(): string {
    return [
      '<defs>',
      `<pattern id="${this.#id}-oven" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect class="ground" width="6" height="6"/><rect class="ink" width="2.5" height="6"/></pattern>`,
      `<pattern id="${this.#id}-hob" width="6" height="6" patternUnits="userSpaceOnUse"><rect class="ground" width="6" height="6"/><circle class="ink" cx="3" cy="3" r="1.6"/></pattern>`,
      '</defs>',
    ].join('');
  }

  /** Hours asleep, where the axis leaves them room. */
  #night(height: number): string {
    const stretches = this.plan.calendar.sleep(this.#axis.from, this.plan.totals.ready);
    if (stretches.length > 40) return '';
    return stretches
      .map(({ from, to }) => ({ x: this.#axis.at(from), width: this.#axis.at(to) - this.#axis.at(from) }))
      .filter(({ width }) => width > 0.5)
      .map(
        ({ x, width }) =>
          `<rect x="${percent(x)}" y="${HEAD}" width="${percent(width)}" height="${height - HEAD}" class="dusk"/>`,
      )
      .join('');
  }

  /** Times along the top: the beginning, the moment all is ready, and what there is room for between. */
  #ticks(height: number): string {
    const wanted = [
      this.plan.totals.begin,
      this.plan.totals.ready,
      ...this.plan.activities.filter(({ hands }) => hands).map(({ start }) => start),
    ];
    const taken: number[] = [];
    const out: string[] = [];
    for (const minute of wanted) {
      const x = this.#axis.at(minute);
      if (taken.some((other) => Math.abs(other - x) < 31)) continue;
      taken.push(x);
      const anchor = x < 14 ? 'start' : x > 86 ? 'end' : 'middle';
      out.push(
        `<line class="tick" x1="${percent(x)}" x2="${percent(x)}" y1="18" y2="${height}"/>`,
        `<text class="quiet" x="${percent(x)}" y="13" text-anchor="${anchor}">${svgText(this.options.moments.at(minute))}</text>`,
      );
    }
    return out.join('');
  }

  #bands(): void {
    const bands: [string, Row['kind'], (activity: PlannedActivity) => boolean][] = [
      ['hands', 'hands', ({ hands }) => hands],
      ['oven', 'oven', ({ oven }) => oven !== undefined],
      ['hob', 'hob', ({ rings }) => rings > 0],
    ];
    for (const [name, kind, belongs] of bands) {
      const busy = this.plan.activities
        .map((activity, index) => ({ activity, number: index + 1 }))
        .filter(({ activity }) => belongs(activity));
      if (busy.length === 0) continue;
      this.#out.push(`<text class="lane" x="${LEFT}" y="${this.#y + 12}">${name}</text>`);
      this.#y += 16;
      let last = -10;
      let low = false;
      for (const { activity, number } of busy) {
        const { x, width } = this.#span(activity.start, activity.end);
        this.#out.push(this.#bar(kind, x, width, this.#y, 9));
        // Numbers that would run into each other stand in two lines.
        low = x - last < 3 ? !low : false;
        last = x;
        this.#out.push(`<text class="number" x="${percent(x)}" y="${this.#y + (low ? 29 : 19)}">${number}</text>`);
      }
      this.#y += BAND + 8;
    }
  }

  #heading(text: string): void {
    this.#day = undefined;
    this.#y += 8;
    this.#out.push(`<line class="rule" x1="0" x2="100%" y1="${this.#y}" y2="${this.#y}"/>`);
    this.#out.push(`<text class="lane" x="${LEFT}" y="${this.#y + 15}">${svgText(text)}</text>`);
    this.#y += 20;
  }

  /** When a row begins: its day as well when that is another than the row's above. */
  #when(at: Minute): string {
    const { day, clock } = this.plan.calendar.local(at);
    const other = day !== this.#day;
    this.#day = day;
    return other ? this.options.moments.at(at) : hourText(clock);
  }

  #rowsOf(activities: readonly { activity: PlannedActivity; number: number }[]): Row[] {
    return activities.flatMap(({ activity, number }): Row[] => {
      const heating = this.plan.heating.filter(({ before }) => before === activity.id);
      const marks = this.plan.visits.filter(({ during }) => during === activity.id).map(({ start }) => start);
      const care = marks.length > 0 ? `, care ${marks.length === 1 ? 'once' : `${marks.length} times`}` : '';
      const heat = activity.oven?.heat ? ` at ${activity.oven.heat}` : '';
      return [
        ...heating.map((one): Row => ({
          title: `${this.#when(one.start)}  heat ${ovenName(one.oven)} to ${one.heat}`,
          kind: 'heat',
          from: one.start,
          to: one.end,
          marks: [],
        })),
        {
          title: `${number}  ${this.#when(activity.start)}  ${activity.lane} ${lasting(activity.end - activity.start)}${heat}${care}: ${activity.short}`,
          kind: activity.lane,
          from: activity.start,
          to: activity.end,
          marks,
          ...(activity.soonestEnd < activity.end && { doubtFrom: activity.soonestEnd }),
        },
      ];
    });
  }

  /** What stands, is at its best and keeps. */
  #windows(): void {
    const { moments } = this.options;
    const rows: Row[] = [
      ...this.plan.standing.map((one): Row => ({
        title: `${one.product} stands ${lasting(one.to - one.from)}`,
        kind: 'stand',
        from: one.from,
        to: one.to,
        marks: [],
      })),
      ...this.plan.dishes.flatMap((dish): Row[] => {
        const [keeps] = dish.keeps;
        const best =
          dish.bestFrom > dish.done
            ? [
                {
                  title: `${dish.title}: best from ${moments.date(dish.bestFrom)}`,
                  kind: 'stand' as const,
                  from: dish.done,
                  to: dish.bestFrom,
                  marks: [],
                },
              ]
            : [];
        if (!keeps) return best;
        return [
          ...best,
          {
            title: `${dish.title}: keeps ${keeps.written}, until ${moments.date(keeps.until)}`,
            kind: 'keep',
            from: dish.bestFrom,
            to: keeps.until,
            marks: [dish.ready],
          },
        ];
      }),
    ];
    if (rows.length === 0) return;
    this.#heading('what stands and what keeps');
    for (const row of rows) this.#row(row);
  }

  #row(row: Row): void {
    const { x, width } = this.#span(row.from, row.to);
    this.#out.push(`<text x="${LEFT}" y="${this.#y + 12}">${svgText(shortened(row.title))}</text>`);
    this.#out.push(`<line class="track" x1="0" x2="100%" y1="${this.#y + 23}" y2="${this.#y + 23}"/>`);
    this.#out.push(this.#bar(row.kind, x, width, this.#y + 17, 11));
    if (row.doubtFrom !== undefined) {
      const from = this.#axis.at(row.doubtFrom);
      this.#out.push(
        `<rect class="doubt" x="${percent(from)}" y="${this.#y + 17}" width="${percent(Math.max(0, x + width - from))}" height="11"/>`,
      );
    }
    for (const mark of row.marks)
      this.#out.push(`<circle class="mark" cx="${percent(this.#axis.at(mark))}" cy="${this.#y + 22.5}" r="3.2"/>`);
    this.#y += ROW;
  }

  #span(from: Minute, to: Minute): { x: number; width: number } {
    const x = this.#axis.at(from);
    return { x, width: Math.max(0.6, this.#axis.at(to) - x) };
  }

  #bar(kind: Row['kind'], x: number, width: number, y: number, height: number): string {
    const fill = kind === 'oven' || kind === 'hob' ? ` fill="url(#${this.#id}-${kind})"` : '';
    return `<rect class="bar ${kind}" x="${percent(x)}" y="${y}" width="${percent(width)}" height="${height}"${fill}/>`;
  }
}

/** As many letters as a narrow screen has room for; the timetable has the whole sentence. */
const LETTERS = 45;
const shortened = (text: string): string =>
  text.length <= LETTERS ? text : `${text.slice(0, LETTERS - 1).trimEnd()}…`;

const percent = (value: number): string => `${Math.round(value * 100) / 100}%`;

/** The makes in the order in which they begin, each with its activities and their numbers. */
function lanes(
  plan: ClockPlan,
): { dish: string; make: string; activities: { activity: PlannedActivity; number: number }[] }[] {
  const found = new Map<
    string,
    { dish: string; make: string; activities: { activity: PlannedActivity; number: number }[] }
  >();
  plan.activities.forEach((activity, index) => {
    const key = `${activity.dish}\n${activity.make}`;
    const lane = found.get(key) ?? { dish: activity.dish, make: activity.make, activities: [] };
    lane.activities.push({ activity, number: index + 1 });
    found.set(key, lane);
  });
  return [...found.values()];
}

/** The chart in words, for those who do not see it. */
export function chartWords(plan: ClockPlan, moments: Moments): string {
  const said = plan.activities.map(
    (activity, index) =>
      `${index + 1}. ${moments.at(activity.start)}, ${activity.lane} for ${lasting(activity.end - activity.start)}: ${activity.short} (${activity.make}).`,
  );
  const care =
    plan.visits.length > 0
      ? [`Care ${plan.visits.length} times, first at ${moments.at(plan.visits[0]?.start ?? 0)}.`]
      : [];
  const ready = plan.dishes.map(
    (dish) =>
      `${dish.title} is ready at ${moments.at(dish.ready)}${dish.keeps[0] ? ` and keeps ${dish.keeps[0].written}` : ''}.`,
  );
  return [...said, ...care, ...ready, qualityText(plan)].join(' ');
}

const style = [
  '.quern-clock-chart{--ink:#1d2b2a;--quiet:#52605e;--paper:#fffefb;--ground:#fffefb;--line:#c9cfca;--dusk:#eef0ea;font:12px/1.2 system-ui,"Segoe UI",Roboto,"Liberation Sans",sans-serif}',
  '@media (prefers-color-scheme:dark){.quern-clock-chart{--ink:#e6ebe6;--quiet:#a9b4af;--paper:#151b1b;--ground:#151b1b;--line:#3a4543;--dusk:#1f2827}}',
  '@media print{.quern-clock-chart{--ink:#000;--quiet:#333;--paper:#fff;--ground:#fff;--line:#bbb;--dusk:#eee}}',
  '.quern-clock-chart .paper{fill:var(--paper)}.quern-clock-chart text{fill:var(--ink)}.quern-clock-chart .quiet{fill:var(--quiet);font-size:11px}',
  '.quern-clock-chart .lane{font-weight:600;font-size:13px}.quern-clock-chart .number{font-size:10px}',
  '.quern-clock-chart .bar{stroke:var(--ink);stroke-width:1}.quern-clock-chart .hands{fill:var(--ink)}.quern-clock-chart .wait{fill:var(--ground)}',
  '.quern-clock-chart .heat{fill:var(--ground);stroke-dasharray:2 2}.quern-clock-chart .keep{fill:none;stroke-dasharray:6 3;stroke-width:1.5}',
  '.quern-clock-chart .stand{fill:none;stroke-dasharray:1 3;stroke-width:1.5}.quern-clock-chart .doubt{fill:var(--ground);opacity:.72}',
  '.quern-clock-chart .mark{fill:var(--ink);stroke:var(--ground);stroke-width:1}.quern-clock-chart .ink{fill:var(--ink)}.quern-clock-chart .ground{fill:var(--ground)}',
  '.quern-clock-chart .dusk{fill:var(--dusk)}.quern-clock-chart .tick,.quern-clock-chart .track{stroke:var(--line)}.quern-clock-chart .rule{stroke:var(--quiet)}',
].join('');
