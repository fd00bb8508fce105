import { collapsed, trimmed } from './tokens.js';

/*
 * Tells sentences from lines. A sentence pasted from a page must not be taken for a line of ours, and a line must not
 * be refused for looking like a sentence: so each test here is narrow, and every refusal says how to get round it.
 */

const ENDS_SENTENCE = /[.!?…][)\]"'”’»]*$/;
const WORDS = /[^ ]+/g;

/** Words that stand in sentences and never in the name of a food or a product. */
export const SENTENCE_WORDS: ReadonlySet<string> = new Set(
  (
    'is are was were be been being will would should goes go went comes come makes into onto until while when before after then them ' +
    'they it its you your this that these those because if so there where which who once them themselves itself together'
  ).split(' '),
);

/** Words that begin a clause after a comma. */
const CLAUSE_WORDS = /^(?:so|then|and|but|because|until|before|after|when|while|as|which|where|this|they|it|you)\b/i;

/** Whether a text ends like a sentence: a stop, perhaps in quotes or brackets. */
export function endsSentence(text: string): boolean {
  return ENDS_SENTENCE.test(trimmed(text));
}

export function wordCount(text: string): number {
  return text.match(WORDS)?.length ?? 0;
}

/** The first words of a text, for a message. */
export function firstWords(text: string, most = 4): string {
  const words = collapsed(text).split(' ');
  return words.length > most ? `${words.slice(0, most).join(' ')} …` : words.join(' ');
}

/** Whether what stands where a name belongs is part of a sentence. */
export function sentenceInName(name: string): boolean {
  if (endsSentence(name)) return true;
  if (/^[.)\]]/.test(name) || /\d (?:seconds?|minutes?|mins?|hours?|hrs?|days?|weeks?|months?)\b/i.test(name))
    return true;
  const words = name.toLowerCase().split(' ');
  return words.length > 1 && words.some((word, index) => SENTENCE_WORDS.has(word) || (index > 0 && word === 'the'));
}

/** Whether a note after a comma is the second half of a sentence. */
export function sentenceInNote(note: string): boolean {
  return endsSentence(note) && CLAUSE_WORDS.test(note);
}

/** The longest name of a block; a longer one is a sentence. Titles may be longer: nobody refers to them in a line. */
export const MOST_BLOCK_WORDS = 6;
export const MOST_TITLE_WORDS = 12;

/** Whether a block word begins a sentence here. `rest` is what follows the word, without a measure after `=`. */
export function sentenceInBlock(block: string, rest: string): boolean {
  const name = collapsed(rest);
  if (endsSentence(name)) return true;
  const most = block === 'recipe' || block === 'menu' ? MOST_TITLE_WORDS : MOST_BLOCK_WORDS;
  if (wordCount(name) > most) return true;
  if ((block === 'make' || block === 'food' || block === 'culture') && /^(?:an?|the|sure) /i.test(name)) return true;
  // A title may say anything ("When it rains"); what other lines refer to is a name.
  return block !== 'recipe' && block !== 'menu' && name.split(' ').some((word) => SENTENCE_WORDS.has(word));
}

/** `Tip the batter into the tin` is a sentence, `tip Wet hands do not stick` is a fact. */
export function tipsSomething(words: string): boolean {
  return /^(?:the|in|into|onto|on|out|it|them|over|off|away|back|a|an|any|all|half|each|everything|your|this|that|these|those)\b/i.test(
    words,
  );
}
