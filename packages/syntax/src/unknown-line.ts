import { units, unitSpellings } from '@quern/quantity';
import { ownValue, slips, type Span } from '@quern/text';
import { lineWords } from './classify.js';
import { Fault } from './fault.js';
import { endsSentence, firstWords, wordCount } from './prose-shape.js';
import { laneOf, suggestedStep, timeIn } from './suggested-step.js';

/*
 * A line that begins with none of our words: what the writer most likely meant, and the way out.
 */

const TAKES_OUT =
  /^(?:discard|remove|reserve|keep|drain|strain|throw(?: away| out)?|take out|tip away|set aside|pour off|minus)$/i;
const AMOUNT_AHEAD = /^(?:about\s+|all\b|half\b|rest\b|[0-9¼½¾⅐-⅞])/i;
const NUMBER_WORDS: Readonly<Record<string, string>> = {
  a: '1',
  an: '1',
  one: '1',
  two: '2',
  three: '3',
  four: '4',
  five: '5',
  six: '6',
  seven: '7',
  eight: '8',
  nine: '9',
  ten: '10',
  twelve: '12',
  dozen: '12',
  quarter: '1/4',
  third: '1/3',
};
/** A verb of the kitchen at the head of a line says what is done, not what goes in. */
const VERBS = new Set(
  (
    'arrange bake baste beat blend boil braise bring bring brush chill chop combine cook cool cover cream crush cut deglaze dice dip drain ' +
    'drizzle dry dust fill flip fold fry garnish glaze grate grease grill heat knead ladle leave let lift line mash melt mix peel pinch place ' +
    'poach pour preheat press prick prove put reduce refrigerate remove repeat roast roll rub scatter season set shake shape sieve sift ' +
    'simmer skim slice soak spoon spread sprinkle squeeze stand steam steep stir strain taste tie toast top toss transfer trim turn warm ' +
    'wash whip whisk wipe work wrap'
  ).split(' '),
);

/** @param line the line without the space around it; `word` its first word at `at`; `all` the whole of it. */
export function explainUnknown(line: string, word: string, at: Span, all: Span): Fault {
  const lower = word.toLowerCase();
  const after = line.slice(word.length).trim();
  if (TAKES_OUT.test(word) && AMOUNT_AHEAD.test(after) && !endsSentence(line)) return new Fault('L05', at, { word });
  const bullet = /^[-+*•–—·▢☐]+$/u.exec(word) ?? /^[-+*•–—·▢☐](?=[0-9])/u.exec(word);
  if (bullet !== null)
    return unknown(bullet[0], `take away the “${bullet[0]}”: a line begins with its amount or its word`, {
      start: at.start,
      end: at.start + bullet[0].length,
    });
  if (endsSentence(line) && wordCount(line) > 1) return sentence(line, all);
  const amount = amountAhead(line, word, after);
  if (amount !== undefined) return amount === '' ? noAmount(line, at) : unknown(word, amount, at);
  if (VERBS.has(lower)) return verb(line, word, at);
  const near = nearWords(lower);
  if (near.length > 0) return unknown(word, `did you mean ${near.map((one) => `“${one}”`).join(' or ')}?`, at);
  const number = ownValue(NUMBER_WORDS, lower);
  if (number !== undefined && wordCount(line) > 1)
    return unknown(word, `write the number in figures: “${number} ${firstWords(after, 3)}”`, at);
  if (line.endsWith(':'))
    return unknown(
      firstWords(line),
      `to begin a product write “make” and its name; words after a colon belong to a step`,
      all,
    );
  if (wordCount(line.split(',', 1)[0] ?? '') <= 6 && !line.includes(':')) return noAmount(line, at);
  if (wordCount(line) > 6) return sentence(line, all);
  return unknown(
    word,
    'begin with an amount, or with one of lose, bin, save, hands, wait, oven, hob, every, or, or a word for a fact',
    at,
  );
}

const ABOUT = /^(?:ca|circa|approx|approximately|around|roughly|nearly|~)\.?$/i;
const PART_OF = /^(?:zest|juice|rind|peel|pulp|flesh)$/i;
const FEW = /^(?:few|couple|bit|little bit|good|generous|large|small|handful|splash|dash|knob|glug|drizzle|squeeze)\b/i;

/** A line that says how much, though not in figures first: what to write instead. Empty when no amount can be read off. */
function amountAhead(line: string, word: string, after: string): string | undefined {
  if (ABOUT.test(word) && AMOUNT_AHEAD.test(after)) return `write “about ${firstWords(after, 3)}”`;
  if (/^~\d/.test(word)) return `write “about ${firstWords(line.slice(1), 3)}”`;
  const part = PART_OF.test(word)
    ? /^of (?:an? |the |\d\S* |half an? )?(.+)$/i.exec(after.split(',', 1)[0] ?? '')
    : null;
  if (part) return `write how much of it goes in, such as “1 tbsp ${part[1] ?? ''} ${word.toLowerCase()}”`;
  if (/^an?$/i.test(word) && FEW.test(after)) return '';
  if (isMeasure(word) && (/^of\b/i.test(after) || (after !== '' && !VERBS.has(word.toLowerCase()))))
    return `write the number: “1 ${firstWords(line, 4)}”`;
  return undefined;
}

/** A spoon, a cup or a piece; not `g` or `in`, which begin other lines. */
function isMeasure(word: string): boolean {
  const id = unitSpellings.get(word.toLowerCase());
  return (
    id !== undefined &&
    word.length >= 3 &&
    (units[id].dimension === 'volume' || units[id].dimension === 'count' || id === 'pinch')
  );
}

function noAmount(line: string, at: Span): Fault {
  return new Fault('Q00', at, { name: line.split(',', 1)[0]?.trim() ?? line });
}

function unknown(word: string, way: string, span: Span): Fault {
  return new Fault('L21', span, { word, way });
}

function sentence(line: string, span: Span): Fault {
  return new Fault('L22', span, { words: firstWords(line), step: suggestedStep(line) });
}

function verb(line: string, word: string, at: Span): Fault {
  const time = timeIn(line);
  const lane = laneOf(line);
  return unknown(word, `say who or what is busy: “${lane}${time === '' ? '' : ` ${time}`}: ${word} …”`, at);
}

/** Words that open a line and are one slip away; two in a long word. */
function nearWords(written: string): string[] {
  if (written.length < 3) return [];
  const limit = written.length >= 6 ? 2 : 1;
  const scored = lineWords
    .filter((entry) => !entry.word.includes(' '))
    .map((entry) => ({ word: entry.word, distance: slips(written, entry.word, limit) }))
    .filter(({ word, distance }) => distance <= limit && word.length > 2);
  const least = Math.min(...scored.map(({ distance }) => distance));
  return scored
    .filter(({ distance }) => distance === least)
    .map(({ word }) => word)
    .slice(0, 3);
}
