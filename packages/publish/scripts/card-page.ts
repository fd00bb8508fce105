/*
 * What a card does in the page that shows it: the yield becomes a field that rescales the figures, and on a narrow page
 * a button turns the column of measures to the other. All arithmetic and all rounding is the compiler's own; nothing is
 * sent, stored or remembered. Without this script the card stands as it was printed.
 *
 * Bundled by bundle-page-scripts.mjs into src/generated/card-script.ts.
 */
import { compare, decimalMark, divide, equal, exact, ONE, PLAIN, rational, type Rational } from '@quern/quantity';
import { showScaled, type BothMeasures, type ScalableAmount } from '@quern/views';
import { readFigure } from '../src/card/read-figure.js';
import { typesetFigure } from '../src/card/typeset.js';
import { isolateDirections } from '../src/escape.js';

interface Figure {
  readonly amount: ScalableAmount;
  readonly holder: Element;
  /** Where each measure stands, and the text that stood there. */
  readonly places: readonly {
    readonly element: Element;
    readonly measure: keyof BothMeasures;
    readonly printed: string;
  }[];
}

/** A page is never scaled further than this: beyond it the figures are no kitchen's. */
const MOST = rational(1000);

function figuresOf(card: Element): Figure[] {
  return [...card.querySelectorAll('[data-quern-scale]')].map((holder) => ({
    amount: JSON.parse(holder.getAttribute('data-quern-scale') ?? '') as ScalableAmount,
    holder,
    places: [...holder.querySelectorAll('.quern-figure')].flatMap((element) => {
      const owner = element.closest('.quern-u,.quern-m,.quern-same');
      if (!owner) return [];
      const measure = owner.classList.contains('quern-u') ? 'us' : 'metric';
      return [{ element, measure, printed: element.textContent ?? '' }];
    }),
  }));
}

function rescale(figures: readonly Figure[], factor: Rational, language: string): void {
  const style = { ...PLAIN, decimal: decimalMark(language) };
  for (const { amount, holder, places } of figures) {
    const both = equal(factor, ONE) ? undefined : showScaled(amount, factor, { style });
    // Two measures may come out as one text at this size; in a sentence it is said once.
    holder.classList.toggle('quern-one', both !== undefined && both.metric === both.us);
    for (const { element, measure, printed } of places) {
      element.textContent = both ? isolateDirections(typesetFigure(both[measure])) : printed;
    }
  }
}

/** The yield as a field named after what it counts, and a line that says what has been done. */
function makeField(card: HTMLElement, yieldPart: HTMLElement, index: number): void {
  const name = yieldPart.querySelector('.quern-yield-name');
  const shown = yieldPart.querySelector('.quern-yield-count');
  if (!name || !shown) return;
  const written = exact(yieldPart.dataset['quernYield'] ?? '1');
  const figures = figuresOf(card);
  const label = document.createElement('label');
  label.htmlFor = `quern-field-${index}`;
  label.append(...name.childNodes);
  name.append(label);
  const field = document.createElement('input');
  Object.assign(field, {
    id: label.htmlFor,
    className: 'quern-field',
    type: 'text',
    inputMode: 'decimal',
    autocomplete: 'off',
  });
  field.value = shown.textContent ?? '';
  field.setAttribute('aria-describedby', `quern-said-${index}`);
  shown.replaceWith(field);
  const said = document.createElement('p');
  Object.assign(said, { id: `quern-said-${index}`, className: 'quern-said' });
  said.setAttribute('role', 'status');
  yieldPart.closest('dl')?.after(said);

  field.addEventListener('input', () => {
    const asked = readFigure(field.value);
    const factor = asked && divide(asked, written);
    const wrong = !factor || factor.n <= 0n || compare(factor, MOST) > 0;
    field.setAttribute('aria-invalid', String(wrong));
    said.classList.toggle('quern-wrong', wrong);
    if (wrong) {
      said.textContent = card.dataset['quernNotNumber'] ?? '';
      return;
    }
    rescale(figures, factor, card.lang);
    said.textContent = equal(factor, ONE) ? '' : (yieldPart.dataset['quernScaled'] ?? '');
  });
}

/** On a narrow page one column of measures stands; the button shows the other. */
function makeTurn(card: HTMLElement): void {
  const { quernShowMetric, quernShowUs } = card.dataset;
  const before = card.querySelector('.quern-make');
  if (card.dataset['measures'] !== 'both' || !before || quernShowMetric === undefined || quernShowUs === undefined)
    return;
  const button = document.createElement('button');
  button.type = 'button';
  button.className = 'quern-turn';
  const show = (measures: 'metric' | 'us'): void => {
    card.dataset['shown'] = measures;
    button.textContent = measures === 'metric' ? quernShowUs : quernShowMetric;
  };
  show('metric');
  button.addEventListener('click', () => show(card.dataset['shown'] === 'metric' ? 'us' : 'metric'));
  before.before(button);
}

let count = 0;
for (const card of document.querySelectorAll<HTMLElement>('.quern-card:not(.quern-live)')) {
  card.classList.add('quern-live');
  makeTurn(card);
  const yieldPart = card.querySelector<HTMLElement>('[data-quern-yield]');
  if (yieldPart) makeField(card, yieldPart, ++count);
}
