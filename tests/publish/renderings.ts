import { compile, type Compiled, type FoodBook, type Formula } from '@quern/compiler';
import {
  basketCsv,
  basketHtml,
  basketMarkdown,
  basketText,
  cardHtml,
  cardJsonLd,
  cardMarkdown,
  cardText,
  clockICalendar,
  clockJson,
  clockMarkdown,
  clockPage,
  clockSvg,
  clockText,
  compareInputs,
  comparisonJson,
  comparisonMarkdown,
  comparisonPage,
  comparisonText,
  historyCsv,
  historyPage,
  historySvg,
  historyText,
  jsonDocument,
  jsonText,
  labelJson,
  labelPage,
  labelText,
  planDated,
  readMoment,
  recipeCard,
  reportGithub,
  reportJson,
  checkReport,
  reportSarif,
  reportText,
  sheetCsv,
  sheetHtml,
  sheetMarkdown,
  sheetText,
  site,
  tagPage,
  tagText,
  tellDiagnostics,
} from '@quern/publish';
import { memoryHost } from '@quern/testkit';
import {
  awakeHours,
  basket,
  compareFiles,
  figuresOf,
  fileReport,
  formulasRequest,
  historyOf,
  label,
  sheet,
} from '@quern/views';

/*
 * Everything that Quern makes of a recipe, by what kind of thing it is: for tests that hold for all of it.
 */

export interface Rendering {
  readonly name: string;
  readonly kind: 'html' | 'svg' | 'xml' | 'markdown' | 'text' | 'csv' | 'json' | 'calendar' | 'annotations';
  readonly text: string;
}

const path = 'main.quern';
const ZONE = 'Europe/London';
const MADE = '2027-05-01T12:00:00Z';

/** What is made of the first recipe of a text; nothing when it holds none. */
export function renderingsOf(text: string, foods: FoodBook): readonly Rendering[] {
  const compiled = compile(path, text, memoryHost([{ path, text }], foods));
  const [formula] = compiled.formulas;
  return [...reports(compiled, text), ...(formula ? ofFormula(compiled, formula, foods) : [])];
}

function reports({ diagnostics }: Compiled, text: string): readonly Rendering[] {
  const found = tellDiagnostics(diagnostics, () => text);
  return [
    { name: 'report', kind: 'text', text: found.map((one) => reportText(one)).join('\n') },
    { name: 'annotations', kind: 'annotations', text: found.map((one) => reportGithub(one)).join('') },
    { name: 'sarif', kind: 'json', text: reportSarif(found, '0') },
    { name: 'report as json', kind: 'json', text: reportJson(checkReport(found, 1)) },
  ];
}

function ofFormula(compiled: Compiled, formula: Formula, foods: FoodBook): readonly Rendering[] {
  const data = sheet(formula, { percentages: true });
  const shopping = basket([{ formula, factor: { n: 1n, d: 1n } }]);
  const { value: statement } = label(formula, { market: 'eu', kitchens: compiled.kitchens });
  const { value: card } = recipeCard(compiled, formula, { revision: 'of today' });
  return [
    { name: 'sheet', kind: 'html', text: sheetHtml(data) },
    { name: 'sheet', kind: 'markdown', text: sheetMarkdown(data) },
    { name: 'sheet', kind: 'text', text: sheetText(data) },
    { name: 'sheet', kind: 'csv', text: sheetCsv(data) },
    { name: 'sheet', kind: 'json', text: jsonText(data) },
    { name: 'basket', kind: 'html', text: basketHtml(shopping) },
    { name: 'basket', kind: 'markdown', text: basketMarkdown(shopping) },
    { name: 'basket', kind: 'text', text: basketText(shopping) },
    { name: 'basket', kind: 'csv', text: basketCsv(shopping) },
    { name: 'label', kind: 'html', text: labelPage(statement, { explain: true }) },
    { name: 'label', kind: 'text', text: labelText(statement, { explain: true }) },
    { name: 'label', kind: 'json', text: jsonText(labelJson(statement)) },
    { name: 'tag', kind: 'html', text: tagPage(statement.tag, { language: statement.language }) },
    { name: 'tag', kind: 'text', text: tagText(statement.tag) },
    { name: 'card', kind: 'html', text: cardHtml(card) },
    { name: 'card', kind: 'markdown', text: cardMarkdown(card) },
    { name: 'card', kind: 'text', text: cardText(card) },
    { name: 'linked data', kind: 'json', text: jsonDocument(cardJsonLd(card)) },
    ...ofSite(card),
    ...ofClock(compiled, formula),
    ...ofComparison(compiled, formula, foods),
  ];
}

function ofSite(card: Parameters<typeof cardHtml>[0]): readonly Rendering[] {
  const options = { title: card.title, author: card.by[0] ?? 'Idony Farrow', address: 'https://quay.example/' };
  const files = site([{ card, source: path, changed: MADE }], { ...options, language: card.language, made: MADE });
  return files.flatMap(({ path: name, render }): Rendering[] => {
    const text = render();
    if (typeof text !== 'string' || !/\.(?:html|xml)$/.test(name)) return [];
    return [{ name: `site ${name.replace(/^.*(?=\.)/, '')}`, kind: name.endsWith('.xml') ? 'xml' : 'html', text }];
  });
}

function ofClock(compiled: Compiled, formula: Formula): readonly Rendering[] {
  const request = formulasRequest([formula], compiled.kitchens[0]);
  const [now, at] = ['2027-05-01 06:00', '2027-06-08 16:00'].map((moment) => readMoment(moment, ZONE));
  if (!request || now?.kind !== 'moment' || at?.kind !== 'moment') return [];
  const when = { kind: 'ready', at: at.at, now: now.at } as const;
  const { plan, moments, dates } = planDated(request, when, awakeHours(compiled.kitchens[0]));
  if (!plan || !dates) return [];
  return [
    { name: 'clock', kind: 'html', text: clockPage(plan, { moments, why: true }) },
    { name: 'clock', kind: 'svg', text: clockSvg(plan, { moments }) },
    { name: 'clock', kind: 'markdown', text: clockMarkdown(plan, { moments, why: true }) },
    { name: 'clock', kind: 'text', text: clockText(plan, { moments, why: true }) },
    { name: 'clock', kind: 'json', text: clockJson(plan, dates) },
    { name: 'clock', kind: 'calendar', text: clockICalendar(plan, { calendar: dates, stamp: 0 }) },
  ];
}

/** Against a recipe without anything in it, and as a history of one revision. */
function ofComparison(compiled: Compiled, formula: Formula, foods: FoodBook): readonly Rendering[] {
  const text = `recipe ${formula.title}\n  100 g wheat flour\n  hands 1 min: Stir the wheat flour.\n`;
  const other = compile(path, text, memoryHost([{ path, text }], foods));
  const both = compareFiles(other, compiled, (one, file) => compareInputs(one, file, { market: 'eu' }));
  const told = [fileReport({ ...both, before: path, after: path })];
  return [
    { name: 'comparison', kind: 'html', text: comparisonPage(told) },
    { name: 'comparison', kind: 'markdown', text: comparisonMarkdown(told) },
    { name: 'comparison', kind: 'text', text: comparisonText(told) },
    { name: 'comparison', kind: 'json', text: jsonText(comparisonJson([{ ...both, before: path, after: path }])) },
    ...ofHistory(formula),
  ];
}

/** Two revisions; whoever commits writes the subject, so the title stands there too. */
function ofHistory(formula: Formula): readonly Rendering[] {
  const figures = figuresOf(formula);
  const revisions = ['2027-04-01', '2027-05-01'].map((day) => ({
    name: 'abcdef12',
    day,
    subject: formula.title,
    formula: figures,
  }));
  const history = historyOf(revisions, []);
  if (!history.ok) return [];
  return [
    { name: 'history', kind: 'html', text: historyPage(history.value) },
    { name: 'history', kind: 'svg', text: historySvg(history.value) },
    { name: 'history', kind: 'text', text: historyText(history.value) },
    { name: 'history', kind: 'csv', text: historyCsv(history.value) },
  ];
}
