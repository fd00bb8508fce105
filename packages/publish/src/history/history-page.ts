import type { History } from '@quern/views';
import { htmlPage } from '../card/card-page.js';
import { typesetFigure } from '../card/typeset.js';
import { element, toHtml } from '../html/tree.js';
import { historySvg } from './history-chart.js';
import { bakedText, tellingRevisions } from './history-table.js';

export interface HistoryPageOptions {
  /** Of the names, a language tag; `en` unless given. */
  readonly language?: string;
}

const PLACE = 'quern-history-drawing';

/** The history as a page of its own: the drawing, the table behind it, and the batches. No script, no request to anybody. */
export function historyPage(history: History, options: HistoryPageOptions = {}): string {
  const page = htmlPage({
    title: `${history.title}: history`,
    language: options.language ?? 'en',
    style,
    scriptHashes: [],
    body: [
      element(
        'main',
        {},
        element('h1', {}, history.title),
        element('figure', { id: PLACE }),
        element('h2', {}, 'The figures'),
        element('div', { className: 'quern-scroll' }, table(history)),
        ...batches(history),
      ),
    ],
  });
  // The drawing is markup of its own, escaped where it was made.
  const hole = toHtml(element('figure', { id: PLACE }));
  return page.replace(hole, () => `<figure>${historySvg(history)}</figure>`);
}

function table(history: History): ReturnType<typeof element> {
  const { revisions, series } = history;
  const names = new Set(series.map(({ name }) => name));
  return element(
    'table',
    {},
    element(
      'thead',
      {},
      element(
        'tr',
        {},
        ...['revision', 'day', ...series.map(({ name }) => name), 'change'].map((name) =>
          element('th', { scope: 'col', className: names.has(name) ? 'quern-figure' : undefined }, name),
        ),
      ),
    ),
    element(
      'tbody',
      {},
      ...tellingRevisions(history).map((index) =>
        element(
          'tr',
          {},
          element('th', { scope: 'row' }, revisions[index]?.name ?? ''),
          element('td', {}, revisions[index]?.day ?? ''),
          ...series.map(({ points, moved }) => {
            const text = typesetFigure(points[index]?.text ?? 'not known');
            return element(
              'td',
              { className: 'quern-figure' },
              moved.includes(index) ? element('strong', {}, text) : text,
            );
          }),
          element('td', {}, revisions[index]?.subject ?? ''),
        ),
      ),
    ),
  );
}

function batches({ revisions }: History): readonly ReturnType<typeof element>[] {
  const records = revisions.flatMap(({ name, baked }) => baked.map((record) => ({ name, record })));
  if (records.length === 0) return [];
  return [
    element('h2', {}, 'Baked'),
    element('ul', {}, ...records.map(({ name, record }) => element('li', {}, `${bakedText(record)} (${name})`))),
  ];
}

const style = `
:root{color-scheme:light dark;--ink:#22211e;--quiet:#5f5b52;--rule:#ddd7ca;--paper:#fdfcf9}
@media (prefers-color-scheme:dark){:root{--ink:#e9e5da;--quiet:#b0aa9c;--rule:#3b3d3b;--paper:#181a1a}}
body{margin:0;background:var(--paper);color:var(--ink);font:1rem/1.5 system-ui,-apple-system,"Segoe UI",Roboto,"Liberation Sans",sans-serif}
main{max-width:60rem;margin-inline:auto;padding:clamp(1rem,4vw,2.5rem)}
h1{font:600 1.75rem/1.2 "Iowan Old Style",Palatino,Charter,"Bitstream Charter",Georgia,serif;margin:0 0 .5rem}
h2{font-size:1rem;margin:2rem 0 .4rem}
figure{margin:1rem 0}
.quern-scroll{overflow-x:auto}
table{border-collapse:collapse;width:100%;font-size:.92rem;font-variant-numeric:tabular-nums}
:is(th,td){text-align:start;vertical-align:baseline;padding:.3rem 1rem .3rem 0;font-weight:400;border-top:1px solid var(--rule)}
thead th{color:var(--quiet);font-size:.82rem;border-top:0}
:is(tbody th,td:nth-child(2)){white-space:nowrap}
.quern-figure{text-align:end;white-space:nowrap}
@media print{:root{--ink:#000;--quiet:#444;--rule:#aaa;--paper:#fff}main{padding:0;max-width:none}tr{break-inside:avoid}}
`.trim();
