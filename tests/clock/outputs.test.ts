import { describe, expect, test } from 'vitest';
import { SaxesParser } from 'saxes';
import { clockJson, clockMarkdown, clockPage, clockSvg, clockText, planDated } from '@quern/publish';
import { awakeHours, lasting } from '@quern/views';
import { planIn, request } from './recipes.js';

const text = [
  'recipe Rye <b>Tin</b> & Co',
  '',
  'make leaven',
  '  150 g whole rye flour',
  '  150 g water',
  '  hands 3 min: Stir to a paste <i>gently</i> & cover.',
  '  wait 10-14 h at 24 C: Leave until domed.',
  '  every 11 h, 1 min: Look at it.',
  '',
  'make loaf',
  '  all leaven',
  '  300 g whole rye flour',
  '  hands 10 min: Mix.',
  '  wait 45-60 min: Prove.',
  '  oven 50-60 min at 220 C falling to 200 C: Bake.',
  '  wait 60 min: Cool.',
  '  keeps 5 d at 20 C, wrapped',
].join('\n');

const dated = planIn('Europe/London', text, '2027-05-08 12:00');
const slow = text.replace('wait 10-14 h at 24 C', 'wait overnight at 4 C');
const undated = planDated(request(slow), { kind: 'undated', courses: false }, awakeHours(undefined));
const { plan, moments, dates } = dated;
if (!plan || !dates || !undated.plan) throw new Error('no plan');
const undatedPlan = undated.plan;

// By hand: wanted at 12:00, cooled from 11:00, in the oven from 10:00 (the hour, for a range of the oven is doubt), proved
// from 09:08 (52 min), mixed from 08:58, the leaven left 12 h from 20:58, stirred from 20:55, looked at 11 h after, at
// 07:58. The oven climbs 200 degrees in 20 min.
describe('the text', () => {
  const said = clockText(plan, { moments });
  const lines = said.split('\n');

  test('tells first what is next', () => {
    expect(lines[1]).toMatch(/^Next: Fri 7 May 20:55 {2}Stir to a paste/);
    const now = (dates.minuteOf(dates.at(0)) - 200) as number;
    // 08:40 on the day: the leaven stands, the mixing comes.
    expect(clockText(plan, { moments, now }).split('\n')[1]).toMatch(/^Next: Sat 8 May 08:58 {2}Mix\. \(10 min\)$/);
    expect(clockText(plan, { moments, now: 10_000 }).split('\n')[1]).toBe('Nothing is left to do.');
  });

  test('has the days in order and every step once', () => {
    expect(lines.filter((line) => /^[A-Z][a-z]+day /.test(line))).toEqual(['Friday 7 May 2027', 'Saturday 8 May 2027']);
    expect(lines.filter((line) => /^ {2}\d\d:\d\d/.test(line)).map((line) => line.slice(2, 14).trim())).toEqual([
      '20:55  hands',
      '20:58  wait',
      '07:58  care',
      '08:58  hands',
      '09:08  wait',
      '09:40  oven',
      '10:00  oven',
      '11:00  wait',
      '12:00  ready',
    ]);
  });

  test('says why on request', () => {
    const why = clockText(plan, { moments, why: true });
    expect(why).toContain('may move: may last 10-14 h: the range of a wait is freedom; lasts 12 h, its middle');
    expect(why).toContain('may not: is booked for 1 h, the top of 50-60 min: a range of the oven is doubt');
    expect(said).not.toContain('may move');
  });

  test('sends no control characters to a terminal', () => {
    expect(said.replaceAll('\n', '')).not.toMatch(/[\u0000-\u001f\u007f-\u009f]/);
  });
});

describe('a plan without dates', () => {
  test('is told by days before', () => {
    const said = clockText(undatedPlan, { moments: undated.moments });
    expect(said).toMatch(/^Day 1, the day before$/m);
    expect(said).toMatch(/^Day 2$/m);
    expect(said).not.toMatch(/20\d\d/);
  });

  test('is a post for a blog by parts of days', () => {
    const post = clockMarkdown(undatedPlan, { moments: undated.moments });
    expect(post).toMatch(/^### Day 1, (afternoon|evening|night)(?:: the \1 before)$/m);
    expect(post).toMatch(/^### Day 2, (?:morning|afternoon)$/m);
    expect(post).toContain('Stir to a paste &lt;i&gt;gently&lt;/i&gt; &amp; cover.');
    expect(post).not.toContain('<i>');
  });
});

describe('the JSON', () => {
  const value = JSON.parse(clockJson(plan, dates)) as Record<string, unknown> & {
    activities: { start: string; end: string; lasts: string; lane: string; mayLast: { most: string | null } }[];
    totals: Record<string, string>;
  };

  test('names its form and version', () => {
    expect(value).toMatchObject({ format: 'quern-clock', version: 1, timeZone: 'Europe/London' });
  });

  test('has moments that any reader of ISO 8601 takes, and they are apart what the lengths say', () => {
    for (const { start, end, lasts } of value.activities) {
      expect(start).toMatch(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\+01:00$/);
      const minutes = (Date.parse(end) - Date.parse(start)) / 60_000;
      expect(lasts).toBe(`PT${minutes}M`);
    }
    expect(Date.parse(value.totals['ready'] ?? '')).toBe(Date.UTC(2027, 4, 8, 11));
  });

  test('without dates has days and times', () => {
    const free = JSON.parse(clockJson(undatedPlan, undefined)) as { totals: { begin: unknown }; timeZone?: string };
    expect(free.totals.begin).toMatchObject({ day: 1 });
    expect(free.timeZone).toBeUndefined();
  });
});

describe('the chart', () => {
  const svg = clockSvg(plan, { moments });

  /** The elements of an XML text; throws when it is not well-formed. */
  function elements(xml: string): { name: string; attributes: Record<string, string>; text: string }[] {
    const found: { name: string; attributes: Record<string, string>; text: string }[] = [];
    const open: typeof found = [];
    const parser = new SaxesParser();
    parser.on('error', (error) => {
      throw error;
    });
    parser.on('opentag', ({ name, attributes }) => {
      const one = { name, attributes: attributes as Record<string, string>, text: '' };
      found.push(one);
      open.push(one);
    });
    parser.on('text', (said) => {
      const last = open.at(-1);
      if (last) last.text += said;
    });
    parser.on('closetag', () => open.pop());
    parser.write(xml).close();
    return found;
  }

  test('is well-formed and says in words what it shows', () => {
    const all = elements(svg);
    expect(all[0]?.attributes['role']).toBe('img');
    const labelled = (all[0]?.attributes['aria-labelledby'] ?? '').split(' ');
    const words = labelled.map((id) => all.find(({ attributes }) => attributes['id'] === id)?.text ?? '');
    expect(words[0]).toContain('Rye <b>Tin</b> & Co');
    for (const { short } of plan.activities) expect(words[1]).toContain(short);
  });

  test('labels every bar, in order, and leaves no bar outside', () => {
    const all = elements(svg);
    const labels = all.filter(({ name }) => name === 'text').map(({ text: said }) => said.trim());
    plan.activities.forEach(({ lane, start, end }, index) => {
      expect(
        labels.some((label) => label.startsWith(`${index + 1} `) && label.includes(`${lane} ${lasting(end - start)}`)),
        `bar ${index + 1}`,
      ).toBe(true);
    });
    const bars = all.filter(({ attributes }) => attributes['class']?.startsWith('bar'));
    // Each activity once in its lane, hands and oven once more in the bands at the top, one heating, one keeping window.
    expect(bars.length).toBe(plan.activities.length + 3 + 1 + 1);
    for (const { attributes } of bars) {
      expect(parseFloat(attributes['x'] ?? '')).toBeGreaterThanOrEqual(0);
      expect(parseFloat(attributes['x'] ?? '') + parseFloat(attributes['width'] ?? '')).toBeLessThanOrEqual(100.7);
    }
  });

  test('keeps order: what is later is never further left', () => {
    const all = elements(svg).filter(({ attributes }) => attributes['class'] === 'bar wait');
    const places = all.map(({ attributes }) => parseFloat(attributes['x'] ?? ''));
    expect(places).toEqual([...places].sort((a, b) => a - b));
  });
});

describe('the page', () => {
  const page = clockPage(plan, { moments });

  test('holds no markup that a recipe wrote', () => {
    expect(page).not.toContain('<i>gently');
    expect(page).not.toContain('<b>Tin');
    expect(page).toContain('&lt;i&gt;gently&lt;/i&gt;');
  });

  test('has the next action before the chart and the timetable after it', () => {
    const [next, chart, day] = ['Next: ', '<svg', '<h2>Friday 7 May 2027'].map((mark) => page.indexOf(mark));
    expect(next).toBeGreaterThan(0);
    expect(chart).toBeGreaterThan(next ?? 0);
    expect(day).toBeGreaterThan(chart ?? 0);
  });
});
