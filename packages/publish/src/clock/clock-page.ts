import { hourText, timetable, type ClockPlan, type Minute, type TimetableDay, type TimetableEntry } from '@quern/views';
import { element, toHtml, type ElementNode } from '../html/tree.js';
import { clockSvg } from './clock-chart.js';
import { entryNote, entryReasons } from './entry-words.js';
import { qualityText, totalsText } from './clock-words.js';
import type { Moments } from './moments.js';

export interface ClockPageOptions {
  readonly moments: Moments;
  readonly now?: Minute;
  readonly why?: boolean;
  /** Language of the texts, for the page; `en` when not given. */
  readonly language?: string;
}

/** A whole page: what is next, the totals, the chart, and the timetable that says the same in words. */
export function clockPage(plan: ClockPlan, options: ClockPageOptions): string {
  const title = `${plan.title}: when to do what`;
  const head = element(
    'head',
    {},
    element('meta', { charSet: 'utf-8' }),
    element('meta', { name: 'viewport', content: 'width=device-width, initial-scale=1' }),
    element('title', {}, title),
    element('style', {}, style),
  );
  const days = timetable(plan);
  const next = days.next(options.now ?? plan.totals.begin);
  const before = element(
    'header',
    {},
    element('h1', {}, plan.title),
    next !== undefined &&
      element(
        'p',
        { className: ['next'] },
        element('strong', {}, 'Next: '),
        `${options.moments.at(next.at)} – ${next.text}`,
      ),
    totals(plan, options.moments),
  );
  const after = element(
    'section',
    { ariaLabel: 'Timetable' },
    ...days.days.map((day) => daySection(day, options, plan.dishes.length > 1)),
    element('p', { className: ['quality'] }, qualityText(plan)),
  );
  const language = options.language ?? 'en';
  // The drawing is text of its own that has been escaped; it stands between two trees, not in one.
  return [
    '<!doctype html>',
    `<html lang="${language.replace(/[^A-Za-z0-9-]/g, '')}">`,
    toHtml(head),
    '<body class="quern-clock">',
    '<main>',
    toHtml(before),
    `<figure>${clockSvg(plan, options)}</figure>`,
    toHtml(after),
    '</main>',
    '</body>',
    '</html>',
    '',
  ].join('\n');
}

function totals(plan: ClockPlan, moments: Moments): ElementNode {
  return element(
    'dl',
    { className: ['totals'] },
    ...totalsText(plan, moments).map(([name, value]) =>
      element('div', {}, element('dt', {}, name), element('dd', {}, value)),
    ),
  );
}

function daySection(day: TimetableDay, options: ClockPageOptions, several: boolean): ElementNode {
  return element(
    'section',
    { className: ['day'] },
    element('h2', {}, options.moments.day(day)),
    day.atBest.length > 0 && element('p', { className: ['best'] }, `At its best: ${day.atBest.join(', ')}`),
    element('ol', {}, ...day.entries.map((entry) => entryItem(entry, options, several))),
  );
}

function entryItem(entry: TimetableEntry, options: ClockPageOptions, several: boolean): ElementNode {
  const note = entryNote(entry, options.moments, several);
  const reasons = entryReasons(entry, options.why);
  return element(
    'li',
    { className: ['entry', entry.kind] },
    element('span', { className: ['clock'] }, hourText(entry.clock)),
    element('span', { className: ['lane'] }, entry.kind),
    element(
      'span',
      { className: ['words'] },
      entry.text,
      note !== '' && element('span', { className: ['note'] }, note),
      reasons.length > 0 && element('ul', { className: ['why'] }, ...reasons.map((why) => element('li', {}, why))),
    ),
  );
}

const style = [
  ':root{color-scheme:light dark;--ink:#1d2b2a;--quiet:#52605e;--paper:#fffefb;--line:#c9cfca}',
  '@media (prefers-color-scheme:dark){:root{--ink:#e6ebe6;--quiet:#a9b4af;--paper:#151b1b;--line:#3a4543}}',
  'body{margin:0;background:var(--paper);color:var(--ink);font:1rem/1.45 system-ui,"Segoe UI",Roboto,"Liberation Sans",sans-serif;overflow-wrap:break-word}',
  'main{max-width:58rem;margin:0 auto;padding:clamp(.8rem,4vw,2rem)}h1{font-size:clamp(1.4rem,1rem + 2.4vw,2.1rem);line-height:1.15;margin:0 0 .5rem}',
  '.next{border-inline-start:.4rem solid var(--ink);padding-inline-start:.8rem;margin:.8rem 0}',
  '.totals{display:flex;flex-wrap:wrap;gap:.5rem 1.8rem;margin:1rem 0;padding:.7rem 0;border-block:1px solid var(--line)}.totals dt{font-size:.82rem;color:var(--quiet)}.totals dd{margin:0;font-variant-numeric:tabular-nums}',
  'figure{margin:1.2rem 0}h2{font-size:1.15rem;margin:1.6rem 0 .3rem;border-bottom:1px solid var(--line)}ol,ul{list-style:none;margin:0;padding:0}',
  '.entry{display:grid;grid-template-columns:3.4rem 3.6rem 1fr;gap:.2rem .5rem;padding:.28rem 0;break-inside:avoid}.clock{font-variant-numeric:tabular-nums;font-weight:600}.lane,.note,.best,.quality,.why{color:var(--quiet);font-size:.9rem}.note{display:block}',
  '.entry.wait .words{color:var(--quiet)}.entry.ready .words{font-weight:600}@media print{body{background:#fff;color:#000}.quality{display:none}}',
].join('');
