import type { CardData, CardIngredient, CardMake, CardRemark, CardStep } from '@quern/views';
import { plainText } from '../escape.js';
import {
  saidAllergens,
  saidAmount,
  saidClock,
  saidErrors,
  saidFacts,
  saidIngredient,
  saidKeeping,
  saidMeasure,
  saidNutrients,
  saidOrigin,
  saidSentence,
  type Measures,
} from './said.js';
import { typesetFigure } from './typeset.js';
import { englishWords, type CardWords } from './words.js';

export interface CardTextOptions {
  readonly measures?: Measures;
  readonly words?: CardWords;
  /** Characters in a line, 80 by default. */
  readonly width?: number;
}

interface Frame {
  readonly measures: Measures;
  readonly words: CardWords;
  readonly width: number;
}

/** The card as plain text: for a terminal, a message, a printer that knows nothing else. */
export function cardText(card: CardData, options: CardTextOptions = {}): string {
  const frame: Frame = {
    measures: options.measures ?? 'both',
    words: options.words ?? englishWords,
    width: options.width ?? 80,
  };
  const blocks = [...head(card, frame), ...card.makes.flatMap((make) => makeLines(make, frame)), ...end(card, frame)];
  const text = blocks.filter((block) => block.length > 0).map((block) => block.join('\n'));
  return text.join('\n\n') + '\n';
}

/** The words of a text in lines no longer than the width, the first line after `first`, the others after as much space. */
function wrap(text: string, frame: Frame, first = ''): string[] {
  const indent = ' '.repeat(first.length);
  const lines: string[] = [];
  let line = '';
  for (const word of plainText(text.replace(/\u00A0/g, '\uE000')).split(' ')) {
    if (line !== '' && first.length + line.length + 1 + word.length > frame.width) {
      lines.push(line);
      line = word;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  lines.push(line);
  return lines.map((part, index) => ((index === 0 ? first : indent) + part).replace(/\uE000/g, '\u00A0'));
}

const underlined = (text: string, mark: string): string[] => {
  const line = plainText(text);
  return [line, mark.repeat([...line].length)];
};

function head(card: CardData, frame: Frame): string[][] {
  const { words, measures } = frame;
  const title = card.variant === undefined ? card.title : `${card.title} (${card.variant})`;
  const errors = saidErrors(card, words);
  return [
    [...underlined(title, '='), ...(card.by.length === 0 ? [] : wrap(`${words.by} ${card.by.join(', ')}`, frame))],
    errors.length === 0 ? [] : [...wrap(words.problems, frame), ...errors.flatMap((error) => wrap(error, frame, '! '))],
    ...card.introduction.map((note) => wrap(note, frame)),
    facts([...saidFacts(card, measures, words), ...saidAllergens(card, words)], frame),
  ];
}

function facts(list: readonly { readonly name: string; readonly value: string }[], frame: Frame): string[] {
  const width = list.reduce((most, { name }) => Math.max(most, name.length), 0) + 2;
  return list.flatMap(({ name, value }) => wrap(value, frame, plainText(`${name}:`).padEnd(width)));
}

function makeLines(make: CardMake, frame: Frame): string[][] {
  const weight = make.weight ? ` (${saidAmount(make.weight, frame.measures)})` : '';
  return [
    make.implicit ? [] : underlined(make.name + weight, '-'),
    ingredientLines(make.ingredients, frame),
    remarkLines(make.remarks, frame),
    ...make.steps.map((step, index) => stepLines(step, index + 1, frame)),
    make.keeping.flatMap((keep) => wrap(`${frame.words.keeps} ${saidKeeping(keep, frame.measures)}`, frame)),
  ];
}

/** Measures in columns, then the name. */
function ingredientLines(items: readonly CardIngredient[], frame: Frame): string[] {
  const { measures, words } = frame;
  const rows = items.flatMap((item) => [
    { item, ahead: '' },
    ...item.alternatives.map((other) => ({ item: other, ahead: `${words.or} ` })),
  ]);
  const cells = (item: CardIngredient): string[] => {
    const metric = plainText(saidMeasure(item.amount, 'metric'));
    const us = plainText(saidMeasure(item.amount, 'us'));
    if (measures === 'metric') return [metric];
    return measures === 'us' ? [us] : [metric, us === metric ? '' : us];
  };
  const widths = [0, 1].map((column) =>
    rows.reduce((most, { item }) => Math.max(most, [...(cells(item)[column] ?? '')].length), 0),
  );
  return rows.flatMap(({ item, ahead }) => {
    const columns = cells(item).map((cell, column) => cell + ' '.repeat((widths[column] ?? 0) - [...cell].length + 2));
    return wrap(ahead + saidIngredient(item, words), frame, columns.join(''));
  });
}

function stepLines(step: CardStep, number: number, frame: Frame): string[] {
  const { measures, words } = frame;
  const lead = `${number}. `;
  const indent = ' '.repeat(lead.length);
  const sentences = [step.sentence, ...step.more].map((runs) => saidSentence(runs, measures)).join(' ');
  return [
    ...wrap(sentences, frame, lead),
    ...wrap(saidClock(step.clock, measures, words), frame, `${indent}> `),
    ...step.care.flatMap((care) => {
      const takes = care.takes ? ` (${typesetFigure(care.takes.text)})` : '';
      return wrap(
        `${words.every} ${typesetFigure(care.every.text)}${takes}: ${saidSentence(care.sentence, measures)}`,
        frame,
        indent,
      );
    }),
    ...step.saved.flatMap((saved) => {
      const note = saved.note === undefined ? '' : `, ${saved.note}`;
      return wrap(`${words.saved}: ${saidAmount(saved.amount, measures)} ${saved.name}${note}`, frame, indent);
    }),
    ...step.remarks.flatMap(({ kind, text }) => wrap(`${words.remarks[kind]}: ${text}`, frame, indent)),
  ];
}

function remarkLines(remarks: readonly CardRemark[], frame: Frame): string[] {
  return remarks.flatMap(({ kind, text }) => wrap(`${frame.words.remarks[kind]}: ${text}`, frame));
}

function end(card: CardData, frame: Frame): string[][] {
  const { words, measures } = frame;
  const section = (name: string, lines: readonly string[]): string[] =>
    lines.length === 0 ? [] : [...underlined(name, '-'), ...lines];
  const item = (text: string): string[] => wrap(text, frame, '* ');
  const cautions = card.cautions.flatMap(({ text, reason, source }) =>
    item(
      [text, reason, source === undefined ? undefined : `(${source})`].filter((part) => part !== undefined).join(' '),
    ),
  );
  const nutrition = card.nutrition;
  const rows = saidNutrients(nutrition?.rows ?? [], words);
  return [
    remarkLines(card.remarks, frame),
    section(words.cautions, cautions.length === 0 ? [] : [...cautions, ...wrap(words.guidance, frame)]),
    section(words.keeping, [
      ...card.bestAfter.flatMap((keep) => item(`${words.bestAfter} ${saidKeeping(keep, measures)}`)),
      ...card.keeping.flatMap((keep) => item(`${words.keeps} ${saidKeeping(keep, measures)}`)),
    ]),
    section(
      words.variants,
      card.variants.flatMap(({ name, changes }) =>
        item(changes.length === 0 ? name : `${name}: ${changes.join('; ')}`),
      ),
    ),
    section(`${words.nutrition}, ${typesetFigure(nutrition?.column ?? '')}`, [
      ...facts(rows, frame),
      ...(nutrition?.notes ?? []).flatMap((note) => wrap(note, frame)),
    ]),
    wrapOrigin(saidOrigin(card, words), frame),
  ];
}

const wrapOrigin = (origin: string, frame: Frame): string[] => (origin === '' ? [] : wrap(origin, frame));
