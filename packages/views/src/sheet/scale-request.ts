import { parseRational, sizeOf, units, multiply, add, sign, type CupSystem, type Rational } from '@quern/quantity';
import { parseLine, type GivesFact, type InLine, type LineContent, type VesselFact } from '@quern/syntax';
import { lacksDepth } from '@quern/compiler';
import { answer, refuse, type Answer } from '../common/answer.js';

/*
 * What a reader may ask a sheet to be scaled by, read from a few words by the parser of the notation itself, so that
 * `6 loaves`, `5kg` and `3 of 25x10x8 cm` are written as they are in a file.
 */

export type ScaleRequest =
  | { readonly kind: 'times'; readonly factor: Rational }
  | { readonly kind: 'makes'; readonly count: Rational; readonly thing: string }
  | { readonly kind: 'weight'; readonly grams: Rational }
  | { readonly kind: 'serves'; readonly count: Rational; readonly thing: string }
  | { readonly kind: 'tin'; readonly tin: VesselFact }
  | { readonly kind: 'have'; readonly lines: readonly InLine[] };

export type ScaleKind = ScaleRequest['kind'];

/** Reads what stands after `--times`, `--makes`, `--weight`, `--serves`, `--tin` or `--have`. */
export function readScale(kind: ScaleKind, text: string): Answer<ScaleRequest> {
  const words = text.trim().replace(/\s+/g, ' ');
  switch (kind) {
    case 'times':
      return readTimes(words);
    case 'makes':
      return readMakes(words);
    case 'weight':
      return readWeight(words);
    case 'serves':
      return readServes(words);
    case 'tin':
      return readTin(words);
    case 'have':
      return readHave(words);
  }
}

type Content<K extends LineContent['kind']> = LineContent & { readonly kind: K };

/** The content of a line if it was read without an error. */
function read<K extends LineContent['kind']>(line: string, kind: K): Content<K> | undefined {
  const { content, messages } = parseLine(line);
  if (content.kind !== kind || messages.some((message) => message.severity === 'error')) return undefined;
  return content as Content<K>;
}

const isAbove = (value: Rational | undefined): value is Rational => value !== undefined && sign(value) > 0;

function readTimes(words: string): Answer<ScaleRequest> {
  const factor = read(`times ${words}`, 'times')?.factor ?? parseRational(words);
  if (!isAbove(factor))
    return refuse(`“${words}” is not a number to multiply by`, 'write a number above zero, such as 2.5 or 1/2');
  return answer({ kind: 'times', factor });
}

function readMakes(words: string): Answer<ScaleRequest> {
  const gives: GivesFact | undefined = read(`gives ${words}`, 'gives');
  const help = 'write how many of what, such as “6 loaves”';
  if (!gives?.count || gives.each || !isAbove(gives.count.low))
    return refuse(`“${words}” is not a number of things`, help);
  if (!gives.count.single) return refuse(`“${words}” is a range; a sheet is made for one number`, help);
  return answer({ kind: 'makes', count: gives.count.low, thing: gives.thing?.text ?? '' });
}

function readServes(words: string): Answer<ScaleRequest> {
  const serves = read(`serves ${words}`, 'serves');
  const help = 'write a number, such as 40';
  if (!serves || !isAbove(serves.range.low)) return refuse(`“${words}” is not a number of servings`, help);
  if (!serves.range.single) return refuse(`“${words}” is a range; a sheet is made for one number`, help);
  return answer({ kind: 'serves', count: serves.range.low, thing: serves.thing?.text ?? '' });
}

function readWeight(words: string): Answer<ScaleRequest> {
  const line = read(`${words} dish`, 'in');
  const grams = line && gramsIn(line, 'us');
  if (!isAbove(grams))
    return refuse(`“${words}” is not a weight`, 'write a weight with its unit, such as 5kg, 750 g or 2 lb');
  return answer({ kind: 'weight', grams });
}

/** Grams of a line whose amount is one weight. */
function gramsIn(line: InLine, cups: CupSystem): Rational | undefined {
  const { amount } = line;
  if (amount.kind !== 'measure' || !amount.range.single || units[amount.unit.id].dimension !== 'mass') return undefined;
  const grams = multiply(amount.range.low, sizeOf(amount.unit.id, cups));
  return amount.and ? add(grams, multiply(amount.and.value, sizeOf(amount.and.unit.id, cups))) : grams;
}

function readTin(words: string): Answer<ScaleRequest> {
  // `3 of 25x10x8 cm` leaves out what the thing is called.
  const named = words.replace(/^(\S+)\s+of\b/i, '$1 tins of');
  const tin = read(`vessel ${named}`, 'vessel') ?? read(`vessel 1 tin of ${words}`, 'vessel');
  const help =
    'write the number and the size, such as “3 of 25 x 10 x 8 cm” (long, wide, deep), “2 of 20 x 8 cm” (round: across, deep) or “1 of 2.1 l”';
  if (!tin || !isAbove(tin.count)) return refuse(`“${words}” is not a size of tin`, help);
  if (!tin.volume && !(tin.lengths && tin.lengths.length >= 2)) {
    return refuse(`“${words}” does not say how deep the tin is`, help);
  }
  if (lacksDepth(tin)) return refuse(`“${words}” does not say how deep the tin is: two lengths are a round one`, help);
  return answer({ kind: 'tin', tin });
}

function readHave(words: string): Answer<ScaleRequest> {
  const help = 'write what there is with its weight, such as “350 g sunflower seeds”; several with commas between';
  const lines: InLine[] = [];
  for (const part of words.split(/,\s+|;\s*/)) {
    const line = read(part, 'in');
    if (!line) return refuse(`“${part}” is not an amount and a name`, help);
    const { kind } = line.amount;
    if (kind !== 'measure' && kind !== 'count' && kind !== 'pack')
      return refuse(`“${part}” is not a weight, a volume or a number`, help);
    if (!line.amount.range.single) return refuse(`“${part}” is a range; say what there is for certain`, help);
    lines.push(line);
  }
  return answer({ kind: 'have', lines });
}
