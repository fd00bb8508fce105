import type { History, HistorySeries } from '@quern/views';
import { exact, toApproximateNumber } from '@quern/quantity';
import { svgText } from '../escape.js';

/*
 * The history as a drawing: a panel a figure, one below the other over the same revisions. A figure holds until a revision
 * moves it, so lines run in steps; a dot with its value stands where it moved. Nothing is told by colour, so it reads in
 * black and white. All places are whole units of a drawing 760 wide, which grows and shrinks with the page.
 */

export interface HistoryChartOptions {
  /** Makes the ids in the drawing its own when several stand in one page. */
  readonly id?: string;
}

const WIDTH = 760;
const LEFT = 150;
const RIGHT = 26;
const PANEL = 112;
const TOP = 26;
const BOTTOM = 22;
const HEAD = 8;
const FOOT = 58;
/** Room that a value and a day take, so that none stands in another. */
const VALUE_ROOM = 58;
const DAY_ROOM = 88;
const DOT_ROOM = 7;

/** The chart as a drawing of its own, with its text alternative inside. */
export function historySvg(history: History, options: HistoryChartOptions = {}): string {
  const id = options.id ?? 'history';
  const height = HEAD + history.series.length * PANEL + FOOT;
  const x = placing(history.revisions.length);
  return (
    [
      `<svg xmlns="http://www.w3.org/2000/svg" class="quern-history-chart" viewBox="0 0 ${WIDTH} ${height}" role="img" aria-labelledby="${id}-title ${id}-desc">`,
      `<title id="${id}-title">${svgText(`${history.title}: how its figures moved`)}</title>`,
      `<desc id="${id}-desc">${svgText(historyWords(history))}</desc>`,
      `<style>${style}</style>`,
      `<rect class="paper" width="${WIDTH}" height="${height}"/>`,
      ...history.series.map((series, index) => panel(series, HEAD + index * PANEL, x)),
      foot(history, height - FOOT, x),
      '</svg>',
    ].join('\n') + '\n'
  );
}

/** Everything the drawing shows, in words. */
export function historyWords({ revisions, series }: History): string {
  const [first, last] = [revisions[0], revisions.at(-1)];
  if (!first || !last) return 'There are no revisions.';
  const span = `${revisions.length} ${revisions.length === 1 ? 'revision' : 'revisions'}, ${first.day} to ${last.day}.`;
  const moves = series.map(({ name, points, moved }) => {
    const known = points.filter((point) => point !== null);
    const [from, to] = [known[0]?.text ?? 'not known', known.at(-1)?.text ?? 'not known'];
    if (moved.length === 0) return `${name}: ${from} throughout.`;
    const times = moved.length === 1 ? 'once' : `${moved.length} times`;
    return `${name}: ${from} at first, moved ${times}, ${to} at last.`;
  });
  return [span, ...moves].join(' ');
}

type Placing = (index: number) => number;

/** Revisions stand at equal distances, the oldest on the left; one alone stands in the middle. */
function placing(count: number): Placing {
  const room = WIDTH - LEFT - RIGHT;
  return (index) => (count <= 1 ? LEFT + room / 2 : rounded(LEFT + (room * index) / (count - 1)));
}

const rounded = (value: number): number => Math.round(value * 10) / 10;

interface Spot {
  readonly index: number;
  readonly x: number;
  readonly y: number;
  readonly text: string;
}

function panel(series: HistorySeries, top: number, x: Placing): string {
  const spots = spotsOf(series, top, x);
  const known = series.points.filter((point) => point !== null);
  return [
    `<text class="name" x="0" y="${top + TOP + 8}">${svgText(series.name)}</text>`,
    `<text class="value" x="0" y="${top + TOP + 30}">${svgText(known.at(-1)?.text ?? 'not known')}</text>`,
    `<line class="rule" x1="0" x2="${WIDTH}" y1="${top + PANEL - 4}" y2="${top + PANEL - 4}"/>`,
    ...paths(spots).map((d) => `<path class="line" d="${d}"/>`),
    ...dots(series, spots),
  ].join('');
}

function spotsOf({ points }: HistorySeries, top: number, x: Placing): readonly (Spot | null)[] {
  const values = points.map((point) => (point === null ? undefined : toApproximateNumber(exact(point.exact))));
  const known = values.filter((value) => value !== undefined);
  const [low, high] = [Math.min(...known), Math.max(...known)];
  const [from, to] = [top + PANEL - BOTTOM, top + TOP];
  return values.map((value, index) => {
    if (value === undefined) return null;
    const share = high === low ? 0.5 : (value - low) / (high - low);
    return { index, x: x(index), y: rounded(from + (to - from) * share), text: points[index]?.text ?? '' };
  });
}

/** Steps; a stretch that is not known is left out. */
function paths(spots: readonly (Spot | null)[]): readonly string[] {
  const result: string[] = [];
  let path = '';
  let last: Spot | undefined;
  for (const spot of [...spots, null]) {
    if (spot === null) {
      if (path !== '') result.push(path);
      [path, last] = ['', undefined];
    } else if (last === undefined) [path, last] = [`M${spot.x} ${spot.y}`, spot];
    else {
      path += spot.y === last.y ? `H${spot.x}` : `H${spot.x}V${spot.y}`;
      last = spot;
    }
  }
  return result;
}

/** A dot where a figure moved, and at both ends; a value wherever there is room for one. */
function dots({ moved }: HistorySeries, spots: readonly (Spot | null)[]): readonly string[] {
  const known = spots.filter((spot) => spot !== null);
  const [first, last] = [known[0], known.at(-1)];
  if (!first || !last) return [];
  const between = moved.map((index) => spots[index]).filter((spot) => spot !== undefined && spot !== null);
  // Where a figure moves at every turn, its least and its most say more than whichever value has room.
  const crowded = between.length * DOT_ROOM > WIDTH - LEFT;
  const telling = crowded ? [extreme(known, 1), extreme(known, -1)] : between;
  const labelled: Spot[] = [first];
  for (const spot of [last, ...telling]) {
    if (labelled.every((other) => Math.abs(other.x - spot.x) >= VALUE_ROOM)) labelled.push(spot);
  }
  const marked = crowded ? labelled : [...new Set([first, ...between, last])];
  return marked.map((spot) => {
    const label = labelled.includes(spot)
      ? `<text class="point" x="${spot.x}" y="${spot.y - 8}" text-anchor="${anchorOf(spot.x)}">${svgText(spot.text)}</text>`
      : '';
    return `<circle class="dot" cx="${spot.x}" cy="${spot.y}" r="3.2"/>${label}`;
  });
}

/** The highest (1) or lowest (-1) on the drawing, the first of them. */
function extreme(spots: readonly Spot[], towards: 1 | -1): Spot {
  return spots.reduce((most, spot) => ((most.y - spot.y) * towards > 0 ? spot : most));
}

const anchorOf = (x: number): string => (x > WIDTH - RIGHT - 24 ? 'end' : x < LEFT + 24 ? 'start' : 'middle');

/** Days and names of revisions where there is room, and a mark for each revision that was baked by. */
function foot({ revisions, series }: History, top: number, x: Placing): string {
  const last = revisions.length - 1;
  const wanted = [0, last, ...series.flatMap(({ moved }) => moved)];
  const taken: number[] = [];
  const days = [...new Set(wanted)].flatMap((index): string[] => {
    const [revision, at] = [revisions[index], x(index)];
    const anchor = anchorOf(at);
    const middle = at + (anchor === 'start' ? DAY_ROOM / 2 : anchor === 'end' ? -DAY_ROOM / 2 : 0);
    if (!revision || taken.some((other) => Math.abs(other - middle) < DAY_ROOM)) return [];
    taken.push(middle);
    return [
      `<line class="tick" x1="${at}" x2="${at}" y1="${top}" y2="${top + 5}"/>`,
      `<text class="day" x="${at}" y="${top + 18}" text-anchor="${anchor}">${svgText(revision.day)}</text>`,
      `<text class="day" x="${at}" y="${top + 31}" text-anchor="${anchor}">${svgText(revision.name)}</text>`,
    ];
  });
  const baked = revisions.flatMap(({ baked: records }, index): string[] => {
    if (records.length === 0) return [];
    const at = x(index);
    return [
      `<path class="dot" d="M${at} ${top + 38}l5 9h-10z"/><text class="day" x="${rounded(at + 8)}" y="${top + 47}">${records.length === 1 ? 'baked' : `baked ${records.length} times`}</text>`,
    ];
  });
  return [...days, ...baked].join('');
}

const style =
  '.quern-history-chart{display:block;width:100%;height:auto;font:13px system-ui,-apple-system,"Segoe UI",Roboto,"Liberation Sans",sans-serif}' +
  '.quern-history-chart .paper{fill:#fdfcf9}.quern-history-chart text{fill:#22211e}.quern-history-chart .name{font-weight:600}' +
  '.quern-history-chart .value{font-size:19px}.quern-history-chart .point{font-size:11.5px;paint-order:stroke;stroke:#fdfcf9;stroke-width:3px}.quern-history-chart .day{font-size:11px;fill:#5f5b52}' +
  '.quern-history-chart .line{fill:none;stroke:#22211e;stroke-width:1.6}.quern-history-chart .dot{fill:#22211e}' +
  '.quern-history-chart .rule{stroke:#ddd7ca}.quern-history-chart .tick{stroke:#5f5b52}' +
  '@media (prefers-color-scheme:dark){.quern-history-chart .paper{fill:#181a1a}.quern-history-chart text{fill:#e9e5da}.quern-history-chart .point{stroke:#181a1a}.quern-history-chart .day{fill:#b0aa9c}.quern-history-chart .line{stroke:#e9e5da}.quern-history-chart .dot{fill:#e9e5da}.quern-history-chart .rule{stroke:#3b3d3b}.quern-history-chart .tick{stroke:#b0aa9c}}';
