/*
 * The search of a site's index page: by words, tag, allergen and time, over the list that the page already holds. It
 * asks nobody and stores nothing, so it works without a network. Bundled by bundle-page-scripts.mjs.
 */
import type { SearchFacts } from '../src/site/index-page.js';

const form = document.querySelector('.quern-search');
const found = document.querySelector('.quern-found');
const items = [...document.querySelectorAll<HTMLElement>('.quern-list > li')].map((element) => ({
  element,
  facts: JSON.parse(element.dataset['card'] ?? '{}') as SearchFacts,
}));
const controls = [...document.querySelectorAll<HTMLInputElement | HTMLSelectElement>('[data-search]')];
const asked = (name: string): string => controls.find(({ dataset }) => dataset['search'] === name)?.value ?? '';

/** Whether a card answers all that is asked. Where the label cannot say, the card is left out with those that contain. */
function answers(facts: SearchFacts): boolean {
  const words = asked('text').toLowerCase().split(/\s+/);
  const [tag, allergen, time] = [asked('tag'), asked('allergen'), asked('time')];
  return (
    words.every((word) => facts.text.includes(word)) &&
    (tag === '' || facts.tags.includes(tag)) &&
    (allergen === '' || (facts.labelled && !facts.allergens.includes(allergen))) &&
    (time === '' || (facts.minutes !== undefined && facts.minutes <= Number(time)))
  );
}

function search(): void {
  let count = 0;
  for (const { element, facts } of items) {
    const shown = answers(facts);
    element.hidden = !shown;
    if (shown) count++;
  }
  if (!found) return;
  const care = asked('allergen') === '' ? '' : ' Read the label of each before you rely on it.';
  found.textContent = `${count} of ${items.length}.${care}`;
}

if (form) {
  form.classList.add('quern-live');
  for (const control of controls) control.addEventListener('input', search);
}
