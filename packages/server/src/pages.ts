import { normaliseName, type Compiled, type Formula, type Kitchen } from '@quern/compiler';
import {
  cardHtml,
  clockPage,
  compareInputs,
  comparisonPage,
  labelPage,
  planDated,
  recipeCard,
  sheetHtml,
} from '@quern/publish';
import {
  awakeHours,
  compareFiles,
  fileReport,
  formulasRequest,
  label,
  MARKETS,
  menuRequest,
  sheet,
  UNSCALED,
} from '@quern/views';
import type { Settings } from './settings.js';

/** What can be shown beside a file. */
export type PageKind = 'card' | 'sheet' | 'label' | 'clock';

export interface CompareRequest {
  readonly uri: string;
  /** The text that the file had. */
  readonly before: string;
  /** What that was: 'last commit'. */
  readonly beforeName?: string;
}

export interface PageRequest {
  readonly uri: string;
  /** Title of the recipe; the first of the file unless given. */
  readonly recipe?: string;
  readonly variant?: string;
}

export type PageAnswer =
  | { readonly kind: 'page'; readonly title: string; readonly html: string }
  /** Why there is no page, as a sentence. */
  | { readonly kind: 'none'; readonly why: string };

const none = (why: string): PageAnswer => ({ kind: 'none', why });

/** A whole page of a recipe: one file that asks nobody for anything. */
export function page(kind: PageKind, compiled: Compiled, asked: PageRequest, settings: Settings): PageAnswer {
  if (kind === 'clock') return clock(compiled, asked);
  const formula = chosen(compiled, asked);
  if (formula === undefined) return none(missing(compiled, asked));
  const market = MARKETS.find((one) => one === settings.market) ?? 'none';
  const title = formula.variant === undefined ? formula.title : `${formula.title}, ${formula.variant}`;
  switch (kind) {
    case 'card': {
      const { value } = recipeCard(compiled, formula, { market });
      return { kind: 'page', title, html: cardHtml(value, { measures: settings.measures }) };
    }
    case 'sheet':
      return {
        kind: 'page',
        title: `${title}: sheet`,
        html: sheetHtml(sheet(formula, { scale: UNSCALED, percentages: formula.flour !== undefined })),
      };
    case 'label': {
      const { value } = label(formula, { market, kitchens: compiled.kitchens });
      return { kind: 'page', title: `${title}: label`, html: labelPage(value, { explain: true }) };
    }
  }
}

function chosen(compiled: Compiled, { recipe, variant }: PageRequest): Formula | undefined {
  return compiled.formulas.find(
    (formula) =>
      (recipe === undefined || normaliseName(formula.title) === normaliseName(recipe)) &&
      normaliseName(formula.variant ?? '') === normaliseName(variant ?? ''),
  );
}

function missing(compiled: Compiled, { recipe, variant }: PageRequest): string {
  if (compiled.formulas.length === 0) return 'This file holds no recipe.';
  return `This file holds no recipe “${recipe ?? ''}”${variant === undefined ? '' : ` with a variant “${variant}”`}.`;
}

/** The timetable by days alone; of a menu when the file has one and no recipe is named. */
function clock(compiled: Compiled, asked: PageRequest): PageAnswer {
  const kitchen: Kitchen | undefined = compiled.kitchens[0];
  const [menu] = compiled.menus;
  const formula = chosen(compiled, asked);
  if (formula === undefined && menu === undefined) return none(missing(compiled, asked));
  const wholeMenu = asked.recipe === undefined && menu !== undefined;
  const request = wholeMenu ? menuRequest(menu, kitchen) : formula && formulasRequest([formula], kitchen);
  if (request === undefined || request.dishes.length === 0) return none('There are no steps to plan.');
  const courses = request.dishes.some(({ ready }) => (ready ?? 0) !== 0);
  const { plan, moments, diagnostics } = planDated(request, { kind: 'undated', courses }, awakeHours(kitchen));
  if (plan === undefined)
    return none(`There is no plan (${diagnostics.map(({ code }) => code).join(', ')}): see the messages of the file.`);
  return { kind: 'page', title: plan.title, html: clockPage(plan, { moments, why: true }) };
}

/** What changed from an earlier text of a file to the one at hand, and what follows from it. */
export function comparePage(
  before: Compiled,
  after: Compiled,
  names: { readonly before: string; readonly after: string },
  settings: Settings,
): PageAnswer {
  const market = MARKETS.find((one) => one === settings.market) ?? 'none';
  const compared = compareFiles(before, after, (formula, compiled) => compareInputs(formula, compiled, { market }));
  const html = comparisonPage([fileReport({ ...compared, ...names })]);
  return { kind: 'page', title: `What changed in ${names.after}`, html };
}
