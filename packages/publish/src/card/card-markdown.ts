import type { CardData, CardIngredient, CardMake, CardRemark, CardStep } from '@quern/views';
import { markdownText, pictureAddress } from '../escape.js';
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
import { englishWords, type CardWords } from './words.js';
import { typesetFigure } from './typeset.js';

export interface CardMarkdownOptions {
  readonly measures?: Measures;
  readonly words?: CardWords;
  /** Level of the title, 1 by default. */
  readonly headingLevel?: 1 | 2 | 3 | 4;
}

interface Frame {
  readonly measures: Measures;
  readonly words: CardWords;
  readonly level: number;
}

/** The card as Markdown with tables (GitHub's kind): read as well by people as by programs. */
export function cardMarkdown(card: CardData, options: CardMarkdownOptions = {}): string {
  const frame: Frame = {
    measures: options.measures ?? 'both',
    words: options.words ?? englishWords,
    level: options.headingLevel ?? 1,
  };
  const blocks = [...head(card, frame), ...card.makes.flatMap((make) => makeBlocks(make, frame)), ...end(card, frame)];
  return blocks.filter((block) => block !== '').join('\n\n') + '\n';
}

const heading = (frame: Frame, below: number, text: string): string =>
  `${'#'.repeat(Math.min(6, frame.level + below))} ${markdownText(text)}`;

const bullets = (lines: readonly string[]): string => lines.map((line) => `- ${line}`).join('\n');

const fact = ({ name, value }: { name: string; value: string }): string =>
  `**${markdownText(name)}:** ${markdownText(value)}`;

function head(card: CardData, frame: Frame): string[] {
  const { words, measures } = frame;
  const title = card.variant === undefined ? card.title : `${card.title} (${card.variant})`;
  const picture = card.photo && pictureAddress(card.photo.path);
  const errors = saidErrors(card, words);
  return [
    heading(frame, 0, title),
    card.by.length === 0 ? '' : `*${markdownText(`${words.by} ${card.by.join(', ')}`)}*`,
    picture === undefined
      ? ''
      : `![${markdownText(card.photo?.alternative ?? `${words.photo} ${card.title}`)}](<${picture.replace(/[<>]/g, encodeURIComponent)}>)`,
    errors.length === 0 ? '' : [`**${markdownText(words.problems)}**`, bullets(errors.map(markdownText))].join('\n\n'),
    ...card.introduction.map(markdownText),
    bullets(saidFacts(card, measures, words).map(fact)),
    saidAllergens(card, words).map(fact).join('\\\n'),
  ];
}

function makeBlocks(make: CardMake, frame: Frame): string[] {
  const weight = make.weight ? ` (${saidAmount(make.weight, frame.measures)})` : '';
  return [
    make.implicit ? '' : heading(frame, 1, make.name + weight),
    make.ingredients.length === 0 ? '' : ingredientTable(make.ingredients, frame),
    ...remarkLines(make.remarks, frame),
    make.steps.map((step, index) => stepText(step, index + 1, frame)).join('\n\n'),
    bullets(make.keeping.map((keep) => markdownText(`${frame.words.keeps} ${saidKeeping(keep, frame.measures)}`))),
  ];
}

function ingredientTable(items: readonly CardIngredient[], frame: Frame): string {
  const { words, measures } = frame;
  const metric = measures === 'us' ? [] : [words.metric];
  const us = measures === 'metric' ? [] : [words.us];
  const columns = [...metric, ...us, words.ingredient];
  const row = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;
  const line = (item: CardIngredient, ahead: string): string =>
    row(
      [
        ...(measures === 'us' ? [] : [saidMeasure(item.amount, 'metric')]),
        ...(measures === 'metric' ? [] : [saidMeasure(item.amount, 'us')]),
        ahead + saidIngredient(item, words),
      ].map(markdownText),
    );
  const rows = items.flatMap((item) => [
    line(item, ''),
    ...item.alternatives.map((other) => line(other, `${words.or} `)),
  ]);
  const rule = row(columns.map((_, index) => (index === columns.length - 1 ? '---' : '---:')));
  return [row(columns.map(markdownText)), rule, ...rows].join('\n');
}

function stepText(step: CardStep, number: number, frame: Frame): string {
  const { measures, words } = frame;
  const indent = ' '.repeat(`${number}. `.length);
  const paragraphs = [
    [step.sentence, ...step.more].map((runs) => saidSentence(runs, measures)).join(' '),
    ...step.care.map(
      (care) =>
        `${words.every} ${typesetFigure(care.every.text)}${care.takes ? ` (${typesetFigure(care.takes.text)})` : ''}: ${saidSentence(care.sentence, measures)}`,
    ),
    ...step.saved.map(
      (saved) =>
        `${words.saved}: ${saidAmount(saved.amount, measures)} ${saved.name}${saved.note === undefined ? '' : `, ${saved.note}`}`,
    ),
  ].map(markdownText);
  const clock = `*${markdownText(saidClock(step.clock, measures, words))}*`;
  const [first = '', ...rest] = paragraphs;
  return `${number}. ${[`${first}\\\n${indent}${clock}`, ...rest, ...remarkLines(step.remarks, frame)].join(`\n\n${indent}`)}`;
}

function remarkLines(remarks: readonly CardRemark[], frame: Frame): string[] {
  return remarks.map(({ kind, text }) => fact({ name: frame.words.remarks[kind], value: text }));
}

function end(card: CardData, frame: Frame): string[] {
  const { words, measures } = frame;
  const section = (name: string, blocks: readonly string[]): string[] =>
    blocks.every((block) => block === '') ? [] : [heading(frame, 1, name), ...blocks];
  const cautions = card.cautions.map(({ text, reason, source }) =>
    markdownText(
      [text, reason, source === undefined ? undefined : `(${source})`].filter((part) => part !== undefined).join(' '),
    ),
  );
  const keeping = [
    ...card.bestAfter.map((keep) => `${words.bestAfter} ${saidKeeping(keep, measures)}`),
    ...card.keeping.map((keep) => `${words.keeps} ${saidKeeping(keep, measures)}`),
  ];
  const variants = card.variants.map(
    ({ name, changes }) => `**${markdownText(name)}:** ${markdownText(changes.join('; '))}`,
  );
  const origin = saidOrigin(card, words);
  return [
    ...remarkLines(card.remarks, frame),
    ...section(words.cautions, cautions.length === 0 ? [] : [bullets(cautions), markdownText(words.guidance)]),
    ...section(words.keeping, [bullets(keeping.map(markdownText))]),
    ...section(words.variants, [bullets(variants)]),
    ...section(words.nutrition, nutrition(card, words)),
    origin === '' ? '' : markdownText(origin),
  ];
}

function nutrition(card: CardData, words: CardWords): string[] {
  const found = card.nutrition;
  if (!found) return [];
  const rows = saidNutrients(found.rows, words).map(
    ({ name, value }) => `| ${markdownText(name)} | ${markdownText(value)} |`,
  );
  const top = `| ${markdownText(typesetFigure(found.column))} | |`;
  return [[top, '| --- | ---: |', ...rows].join('\n'), ...found.notes.map(markdownText)];
}
