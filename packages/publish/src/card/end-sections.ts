import type { CardData, CardKeeping, CardNutrition } from '@quern/views';
import { element, type Child, type ElementNode } from '../html/tree.js';
import { remarks } from './make-section.js';
import { headingTag, label, temperature, type Setting } from './setting.js';
import { saidNutrients } from './said.js';
import { typesetFigure } from './typeset.js';

/** What stands below the method: remarks, variants, keeping, cautions, nutrition, and where the card comes from. */
export function endSections(card: CardData, setting: Setting): Child {
  const { words } = setting;
  return [
    card.remarks.length > 0 && element('div', { className: ['quern-remarks'] }, remarks(card.remarks, setting)),
    element(
      'div',
      { className: ['quern-end'] },
      section(words.cautions, 'quern-cautions', cautions(card, setting), setting),
      section(words.keeping, 'quern-keeping', keepings(card, setting), setting),
      section(words.variants, 'quern-variants', variants(card), setting),
      card.nutrition && section(words.nutrition, 'quern-nutrition', nutrition(card.nutrition, setting), setting),
    ),
    origin(card, setting),
  ];
}

function section(name: string, className: string, content: readonly Child[], setting: Setting): Child {
  if (content.length === 0) return undefined;
  return element(
    'section',
    { className: [className] },
    element(headingTag(setting, 1), {}, label(setting, name)),
    ...content,
  );
}

/** The label's cautions are in English, whatever the language of the recipe. */
function cautions(card: CardData, setting: Setting): Child[] {
  if (card.cautions.length === 0) return [];
  const items = card.cautions.map((caution) =>
    element(
      'li',
      {},
      caution.text,
      caution.reason !== undefined && [' ', element('span', { className: ['quern-quiet'] }, caution.reason)],
      caution.source !== undefined && [' ', element('cite', { className: ['quern-quiet'] }, `(${caution.source})`)],
    ),
  );
  return [
    element('ul', { lang: 'en', dir: 'auto' }, items),
    element('p', { className: ['quern-quiet'] }, label(setting, setting.words.guidance)),
  ];
}

function keepings(card: CardData, setting: Setting): Child[] {
  const line = (name: string, keep: CardKeeping): ElementNode =>
    element(
      'li',
      { dir: 'auto' },
      label(setting, name),
      ` ${typesetFigure(keep.time.text)}`,
      keep.at && [', ', temperature(keep.at, setting)],
      keep.note !== undefined && `, ${keep.note}`,
    );
  const { words } = setting;
  const lines = [
    ...card.bestAfter.map((keep) => line(words.bestAfter, keep)),
    ...card.keeping.map((keep) => line(words.keeps, keep)),
  ];
  return lines.length === 0 ? [] : [element('ul', {}, lines)];
}

function variants(card: CardData): Child[] {
  if (card.variants.length === 0) return [];
  const lines = card.variants.map((variant) =>
    element(
      'li',
      { dir: 'auto' },
      element('b', {}, variant.name),
      variant.changes.length > 0 && `: ${variant.changes.join('; ')}`,
    ),
  );
  return [element('ul', {}, lines)];
}

function nutrition(found: CardNutrition, setting: Setting): Child[] {
  const rows = saidNutrients(found.rows, setting.words).map(({ name, value, part }) =>
    element(
      'tr',
      part ? { className: ['quern-part'] } : {},
      element('th', { scope: 'row' }, name),
      element('td', {}, element('bdi', {}, value)),
    ),
  );
  return [
    element(
      'table',
      { lang: 'en' },
      element('caption', {}, element('bdi', {}, typesetFigure(found.column))),
      element('tbody', {}, rows),
    ),
    ...found.notes.map((note) => element('p', { className: ['quern-quiet'], lang: 'en', dir: 'auto' }, note)),
  ];
}

function origin(card: CardData, setting: Setting): Child {
  const { words } = setting;
  const named = (name: string, value: string): Child[] => [label(setting, name), ' ', element('bdi', {}, value)];
  const parts: Child[][] = [
    ...card.source.map((source) => named(words.source, source)),
    ...card.diets.map((diet) => [label(setting, words.diets[diet])]),
    ...(card.keywords.length > 0 ? [[card.keywords.join(', ')]] : []),
    ...(card.revision === undefined ? [] : [named(words.revision, card.revision)]),
    ...(card.date === undefined ? [] : [[element('time', { dateTime: card.date }, card.date)]]),
  ];
  if (parts.length === 0) return undefined;
  return element(
    'footer',
    { className: ['quern-origin'] },
    element(
      'p',
      {},
      parts.map((part, index) => [index > 0 && ' · ', element('bdi', {}, part)]),
    ),
  );
}
