import type {
  CardClock,
  CardData,
  CardIngredient,
  CardMake,
  CardRemark,
  CardRun,
  CardSaved,
  CardStep,
} from '@quern/views';
import { element, type Child, type ElementNode } from '../html/tree.js';
import { amountIn, headingTag, label, scaleProperties, temperature, type Setting } from './setting.js';
import { typesetFigure } from './typeset.js';

/** A make: its ingredients in both measures, and its steps with the clock beside them. */
export function makeSection(make: CardMake, card: CardData, setting: Setting): ElementNode {
  return element(
    'section',
    { className: ['quern-make'] },
    !make.implicit &&
      element(
        headingTag(setting, 1),
        { className: ['quern-make-name'], dir: 'auto' },
        make.name,
        make.weight && [' ', element('span', { className: ['quern-quiet'] }, amountIn(make.weight, setting))],
      ),
    element(
      'div',
      { className: ['quern-make-body'] },
      make.ingredients.length > 0 && ingredientTable(make, card, setting),
      element(
        'div',
        { className: ['quern-way'] },
        remarks(make.remarks, setting),
        steps(make.steps, setting),
        keeping(make, setting),
      ),
    ),
  );
}

function ingredientTable(make: CardMake, card: CardData, setting: Setting): ElementNode {
  const { words } = setting;
  const of = make.implicit ? card.title : make.name;
  const column = (className: string, name: string): ElementNode =>
    element('th', { className: [className], scope: 'col' }, label(setting, name));
  return element(
    'table',
    { className: ['quern-ingredients'] },
    element('caption', { className: ['quern-unseen'] }, label(setting, `${words.ingredients}:`), ' ', of),
    element(
      'thead',
      {},
      element(
        'tr',
        {},
        setting.measures !== 'us' && column('quern-m', words.metric),
        setting.measures !== 'metric' && column('quern-u', words.us),
        column('quern-name', words.ingredient),
      ),
    ),
    element(
      'tbody',
      {},
      make.ingredients.map((item) => ingredientRows(item, setting)),
    ),
  );
}

function ingredientRows(item: CardIngredient, setting: Setting): ElementNode[] {
  return [
    ingredientRow(item, setting, false),
    ...item.alternatives.map((other) => ingredientRow(other, setting, true)),
  ];
}

function ingredientRow(item: CardIngredient, setting: Setting, alternative: boolean): ElementNode {
  const { amount } = item;
  // Words and counts are the same in both measures: the second is left to screen readers and to a page of one column.
  const again = amount.metric === amount.us && setting.measures === 'both' && amount.scale?.kind !== 'weight';
  const cell = (className: string, text: string, repeated: boolean): ElementNode => {
    const content = element('bdi', { className: ['quern-figure'] }, typesetFigure(text));
    const { words } = amount;
    return element(
      'td',
      { className: repeated ? [className, 'quern-again'] : [className] },
      words === undefined ? content : element('bdi', {}, `${words} (`, content, ')'),
    );
  };
  return element(
    'tr',
    { ...(alternative ? { className: ['quern-or'] } : {}), ...scaleProperties(amount, setting) },
    setting.measures !== 'us' && cell('quern-m', amount.metric, false),
    setting.measures !== 'metric' && cell('quern-u', amount.us, again),
    element(
      'th',
      { className: ['quern-name'], scope: 'row', dir: 'auto' },
      alternative && [element('span', { className: ['quern-quiet'] }, label(setting, setting.words.or)), ' '],
      element(
        'span',
        { className: item.make === undefined ? ['quern-food'] : ['quern-food', 'quern-made'] },
        item.name,
      ),
      item.note !== undefined && element('span', { className: ['quern-quiet'] }, `, ${item.note}`),
      item.percent !== undefined && element('span', { className: ['quern-quiet'] }, ` (${item.percent})`),
      item.optional &&
        element('span', { className: ['quern-quiet'] }, ' (', label(setting, setting.words.optional), ')'),
    ),
  );
}

function steps(list: readonly CardStep[], setting: Setting): Child {
  if (list.length === 0) return undefined;
  return element(
    'ol',
    { className: ['quern-steps'] },
    list.map((step) => stepItem(step, setting)),
  );
}

function stepItem(step: CardStep, setting: Setting): ElementNode {
  const { words } = setting;
  return element(
    'li',
    { className: ['quern-step', `quern-${step.clock.lane}`] },
    element('p', { className: ['quern-sentence'], dir: 'auto' }, sentence(step.sentence, setting)),
    step.more.map((more) => element('p', { className: ['quern-sentence'], dir: 'auto' }, sentence(more, setting))),
    clockLine(step.clock, setting),
    step.care.map((care) =>
      element(
        'p',
        { className: ['quern-care'] },
        element(
          'span',
          { className: ['quern-quiet'] },
          label(setting, words.every),
          ` ${typesetFigure(care.every.text)}`,
          care.takes && ` (${typesetFigure(care.takes.text)})`,
          ': ',
        ),
        element('bdi', {}, sentence(care.sentence, setting)),
      ),
    ),
    step.saved.map((saved) => savedLine(saved, setting)),
    remarks(step.remarks, setting),
  );
}

function sentence(runs: readonly CardRun[], setting: Setting): Child[] {
  return runs.map((run) => {
    if (run.kind === 'text') return run.text;
    if (run.kind === 'amount') return amountIn(run.amount, setting);
    return element('span', { className: ['quern-nowrap'] }, temperature(run.temperature, setting));
  });
}

/** Who is busy, how long, how hot, until when: beside the sentence, never inside it. */
function clockLine(clock: CardClock, setting: Setting): ElementNode {
  const { words } = setting;
  const parts: Child[][] = [];
  if (clock.time) parts.push([element('span', { className: ['quern-time'] }, typesetFigure(clock.time.text))]);
  if (clock.at) {
    const { change, fan } = clock.at;
    parts.push([
      temperature(clock.at.temperature, setting),
      change && [' ', label(setting, words[change.direction]), ' ', temperature(change.to, setting)],
      fan && [' ', label(setting, words.fan)],
    ]);
  }
  if (clock.until) parts.push([label(setting, words.until), ' ', temperature(clock.until, setting)]);
  if (clock.untilAcidity !== undefined)
    parts.push([label(setting, words.until), ` ${words.acidity} ${clock.untilAcidity}`]);
  if (clock.using.length > 0) parts.push([label(setting, words.using), ' ', clock.using.join(', ')]);
  return element(
    'p',
    { className: ['quern-clock'] },
    element('span', { className: ['quern-lane'] }, label(setting, words.lanes[clock.lane])),
    parts.map((part, index) => [index === 0 ? ' ' : ' · ', element('bdi', {}, part)]),
  );
}

function savedLine(saved: CardSaved, setting: Setting): ElementNode {
  return element(
    'p',
    { className: ['quern-saved'] },
    element('span', { className: ['quern-quiet'] }, label(setting, `${setting.words.saved}:`), ' '),
    amountIn(saved.amount, setting),
    ' ',
    element(
      'bdi',
      {},
      saved.name,
      saved.note !== undefined && element('span', { className: ['quern-quiet'] }, `, ${saved.note}`),
    ),
  );
}

export function remarks(list: readonly CardRemark[], setting: Setting): Child {
  return list.map((remark) =>
    element(
      'p',
      { className: ['quern-remark', `quern-remark-${remark.kind.replace(' ', '-')}`] },
      element('b', {}, label(setting, `${setting.words.remarks[remark.kind]}:`), ' '),
      element('bdi', {}, remark.text),
    ),
  );
}

function keeping(make: CardMake, setting: Setting): Child {
  return make.keeping.map((keep) =>
    element(
      'p',
      { className: ['quern-quiet'], dir: 'auto' },
      label(setting, setting.words.keeps),
      ` ${typesetFigure(keep.time.text)}`,
      keep.at && [', ', temperature(keep.at, setting)],
      keep.note !== undefined && `, ${keep.note}`,
    ),
  );
}
