import type { Session } from '@quern/compiler';
import { cardHtml, compareInputs, comparisonPage, labelPage, recipeCard, sheetHtml } from '@quern/publish';
import { compareFiles, fileReport, label, sheet } from '@quern/views';
import type { Rendered, Settings, View } from '../protocol.js';
import { BUDGET } from './budget.js';
import { formulaOf } from './choices.js';
import { renderClock } from './clock-page.js';
import { readSize } from './size.js';

const NOTHING: Rendered = {
  ok: false,
  reasons: ['There is no recipe here yet.', 'Begin one with a line “recipe NAME”.'],
};

/** Whether a page stands by itself, with the script of its own, or is shown in the desk without any. */
export type Manner = 'shown' | 'page';

/** A view of a file as a page: the same view and the same page as the command of that name makes. */
export function render(
  session: Session,
  path: string,
  view: Exclude<View, 'compare'>,
  settings: Settings,
  manner: Manner,
): Rendered {
  const shown = session.compile(path);
  if (!shown) return NOTHING;
  if (view === 'clock') return renderClock(shown, settings);
  const formula = formulaOf(shown, settings.choice);
  // A dish of a menu may stand in another file.
  const compiled = formula && session.compile(formula.file);
  if (!compiled) return NOTHING;
  const { measures, market } = settings;
  if (view === 'label') {
    const { value } = label(formula, { market, kitchens: compiled.kitchens });
    return { ok: true, html: labelPage(value), note: '' };
  }
  const sized = readSize(settings.size, formula);
  if (!sized.ok) return sized;
  if (view === 'sheet') {
    const data = sheet(formula, { scale: sized.scale, percentages: true, measures });
    return { ok: true, html: sheetHtml(data), note: '' };
  }
  const { value } = recipeCard(compiled, formula, { factor: sized.scale.factor, market });
  const html = cardHtml(value, { measures, scalable: manner === 'page', photo: () => undefined });
  return { ok: true, html, note: value.photo ? 'The photograph is not shown here.' : '' };
}

/** What changed in a file between two states of the desk, as a page. */
export function renderComparison(before: Session, now: Session, path: string, { market }: Settings): Rendered {
  const [old, own] = [before.compile(path), now.compile(path)];
  if (!old || !own) return NOTHING;
  const compared = compareFiles(old, own, (formula, compiled) =>
    compareInputs(formula, compiled, { market, budget: BUDGET }),
  );
  return { ok: true, html: comparisonPage([fileReport(compared)]), note: '' };
}
