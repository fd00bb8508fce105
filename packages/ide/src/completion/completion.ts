import type { Span } from '@quern/text';
import { lineWords, type LineWord, type Standing } from '@quern/syntax';
import { entryTyped } from '../opening.js';
import type { Snapshot } from '../snapshot.js';
import * as from from './candidates.js';
import { listOf, type Candidate, type CompletionItem, type CompletionList } from './item.js';
import { lineSnippets } from './line-snippets.js';
import { checkCandidates, measureCandidates } from './measure-candidates.js';
import { usedKeywords, usedNotes } from './used-names.js';

/** A place where something can be typed: what may stand there, and what is typed of it so far. */
interface Slot {
  readonly candidates: Iterable<Candidate>;
  readonly typed: string;
}

const NOTHING: CompletionList = { items: [], incomplete: false };

/** What can stand at an offset. */
export function completion(snapshot: Snapshot, offset: number): CompletionList {
  const line = snapshot.lineAt(offset);
  const before = line.text.slice(0, offset - line.start);
  const slot = slotAt(snapshot, line.number, before);
  if (slot === undefined) return NOTHING;
  const span: Span = { start: offset - slot.typed.length, end: offset };
  const list = listOf(slot.candidates, slot.typed, span);
  return { ...list, items: list.items.map((item) => withDetail(snapshot, item)) };
}

/** A food of the table with its role and allergens. Only what is shown is looked up. */
function withDetail(snapshot: Snapshot, item: CompletionItem): CompletionItem {
  if (item.kind !== 'food' || item.detail !== undefined) return item;
  const answer = snapshot.foods.find(item.label);
  const detail = answer.kind === 'found' ? from.detailOf(answer.match.food) : '';
  return detail === '' ? item : { ...item, detail };
}

function slotAt(snapshot: Snapshot, line: number, before: string): Slot | undefined {
  const text = before.trimStart();
  if (text.startsWith('//')) return undefined;
  const where = standingAt(snapshot, line);
  const entry = entryTyped(text);
  if (entry === undefined) {
    if (/^[\d¼½¾⅓⅔⅛⅜⅝⅞]/.test(text)) return inSlot(snapshot, line, text, where);
    return /^[\p{L} ]*$/u.test(text) ? { candidates: openings(where), typed: text } : undefined;
  }
  const rest = text.slice(entry.word.length).replace(/^\s/, '');
  switch (entry.kind) {
    case 'in':
      return entry.word === 'optional' || entry.word === 'about'
        ? inSlot(snapshot, line, rest, where)
        : inSlot(snapshot, line, text, where);
    case 'or':
      return inSlot(snapshot, line, rest, where);
    case 'out':
      return outSlot(snapshot, line, entry.word, rest);
    case 'step':
      return stepSlot(snapshot, line, rest);
    case 'every':
      return rest.includes(':') ? sentenceSlot(snapshot, line, rest) : timeSlot(rest);
    case 'check':
      return checkSlot(snapshot, line, rest);
    case 'block':
      return blockSlot(snapshot, line, entry.word, rest);
    case 'fact':
      return factSlot(snapshot, line, entry.word, rest);
  }
}

/** Where a line stands: the block above it, or the head of the file. */
function standingAt(snapshot: Snapshot, line: number): Standing {
  return snapshot.blockAt(line - 1)?.block ?? 'file';
}

// ---- first words -----------------------------------------------------------------------------------------------------

function* openings(where: Standing): Iterable<Candidate> {
  const inBody = where === 'make' || where === 'recipe';
  if (inBody) {
    yield { label: '100 g', kind: 'value', insert: '${1:100} g ${2:name}', snippet: true, detail: 'goes in', rank: 40 };
  }
  for (const entry of lineWords) {
    const stands = entry.standsIn.includes(where) || (where === 'recipe' && entry.standsIn.includes('make'));
    const opens = entry.kind === 'block' && !(entry.word === 'course' && where !== 'menu' && where !== 'course');
    if (!stands && !opens) continue;
    const snippet = lineSnippets[entry.word];
    yield {
      label: entry.word,
      kind: 'word',
      insert: snippet ?? `${entry.word} `,
      snippet: snippet !== undefined,
      detail: entry.says,
      documentation: `\`${entry.form}\`\n\nFor instance \`${entry.example}\``,
      rank:
        (stands ? 0 : 300) + ORDER.indexOf(entry.kind) * 10 - (entry.word === 'recipe' && where === 'file' ? 200 : 0),
    };
  }
}

const ORDER: readonly LineWord['kind'][] = ['step', 'in', 'out', 'check', 'every', 'or', 'fact', 'block'];

// ---- what goes in ----------------------------------------------------------------------------------------------------

const NUMBER = String.raw`[\d¼½¾⅓⅔⅛⅜⅝⅞][\d.,/ ¼½¾⅓⅔⅛⅜⅝⅞]*(?:\s?-\s?[\d.,/ ¼½¾⅓⅔⅛⅜⅝⅞]+)?`;
const SHARE = /^(?:all|half(?: of)?|rest(?: of)?|\d+\/\d+ of|[\d.,-]+ ?% of)\s(.*)$/i;
const PERCENT = new RegExp(String.raw`^(${NUMBER})\s?%\s(.*)$`);
const OPEN = /^(?:a little|enough)\s(.*)$/i;
const PACK = new RegExp(String.raw`^${NUMBER}\p{L}[\p{L} ]*\sof\s${NUMBER}\p{L}+\s(.*)$`, 'u');
const PORTION = new RegExp(String.raw`^(?:about )?${NUMBER}\p{L}+\sof\s(.*)$`, 'u');
const MEASURE = new RegExp(String.raw`^(?:about )?${NUMBER}(?:(?:us |imperial )?\p{L}+)\s(.*)$`, 'u');
const BARE = new RegExp(String.raw`^(${NUMBER})([\p{L} ]*)$`, 'u');

function inSlot(snapshot: Snapshot, line: number, text: string, where: Standing): Slot | undefined {
  const share = SHARE.exec(text);
  if (share)
    return named(
      snapshot,
      line,
      share[1] ?? '',
      where === 'course' ? from.dishCandidates(snapshot) : from.productCandidates(snapshot, line),
    );
  const percent = PERCENT.exec(text);
  if (percent) return percentSlot(snapshot, line, percent[2] ?? '');
  const open = OPEN.exec(text);
  if (open) return named(snapshot, line, open[1] ?? '', from.foodCandidates(snapshot));
  const whole =
    where === 'course'
      ? from.dishCandidates(snapshot)
      : both(from.productCandidates(snapshot, line), from.foodCandidates(snapshot));
  const pack = PACK.exec(text);
  if (pack) return named(snapshot, line, pack[1] ?? '', whole);
  const portion = PORTION.exec(text);
  if (portion) return named(snapshot, line, portion[1] ?? '', whole);
  const bare = BARE.exec(text);
  if (bare && !/\s/.test((bare[2] ?? '').trim()) && !isUnitThen(bare[2] ?? '')) {
    // After a number a unit may stand, or the name of what is counted.
    return { candidates: both(from.unitCandidates(bare[1] ?? ''), whole), typed: bare[2] ?? '' };
  }
  const measure = MEASURE.exec(text);
  return measure ? named(snapshot, line, measure[1] ?? '', whole) : undefined;
}

/** Whether the letters are a unit with a space after it, so that a name follows. */
const isUnitThen = (letters: string): boolean => /\p{L}\s$/u.test(letters);

/** The name, the other measure after `=`, or the note after a comma. */
function named(snapshot: Snapshot, line: number, text: string, names: Iterable<Candidate>): Slot | undefined {
  const comma = text.search(/,(?!\d)/);
  if (comma >= 0) {
    const food = text.slice(0, comma).split(/\s=|\son\s|\sas\s/)[0] ?? '';
    const notes = usedNotes(snapshot, food).map((label, rank): Candidate => ({ label, kind: 'note', rank }));
    return { candidates: notes, typed: text.slice(comma + 1).trimStart() };
  }
  const equals = text.lastIndexOf('=');
  if (equals >= 0) return { candidates: measureCandidates(snapshot, line), typed: text.slice(equals + 1).trimStart() };
  const as = /\sas\s(.*)$/i.exec(text);
  if (as) return { candidates: from.foodCandidates(snapshot), typed: as[1] ?? '' };
  return { candidates: names, typed: text };
}

function percentSlot(snapshot: Snapshot, line: number, text: string): Slot | undefined {
  const on = /\son\s(.*)$/i.exec(text);
  if (on) {
    const special: Candidate[] = [
      { label: 'flour', kind: 'value', detail: 'the flour of the recipe', rank: 0 },
      { label: 'all', kind: 'value', detail: 'everything in the pot', rank: 1 },
    ];
    return {
      candidates: both(special, from.potCandidates(snapshot, line), from.productCandidates(snapshot, line)),
      typed: on[1] ?? '',
    };
  }
  return named(snapshot, line, text, from.foodCandidates(snapshot));
}

function* both(...lists: readonly Iterable<Candidate>[]): Iterable<Candidate> {
  for (const list of lists) yield* list;
}

// ---- what comes out, steps, checks -----------------------------------------------------------------------------------

function outSlot(snapshot: Snapshot, line: number, verb: string, rest: string): Slot | undefined {
  const as = /(?:^|\s)as\s(.*)$/i.exec(rest);
  if (as) {
    const special = verb === 'save' ? [] : from.values('water', 'peel', 'trimmings', 'bones');
    const cultures = [...from.foodCandidates(snapshot)].filter(({ kind }) => kind === 'culture');
    return {
      candidates: both(special, verb === 'save' ? cultures : from.potCandidates(snapshot, line)),
      typed: as[1] ?? '',
    };
  }
  const of = /\sof\s(.*)$/i.exec(rest);
  if (of) return { candidates: both(from.values('liquid'), from.potCandidates(snapshot, line)), typed: of[1] ?? '' };
  const bare = BARE.exec(rest);
  if (bare)
    return {
      candidates: both(from.unitCandidates(bare[1] ?? ''), from.values('% as water', '% of')),
      typed: bare[2] ?? '',
    };
  const word = /(?:^|\s)(\p{L}*)$/u.exec(rest);
  return { candidates: from.values('of', 'as'), typed: word?.[1] ?? '' };
}

function stepSlot(snapshot: Snapshot, line: number, rest: string): Slot | undefined {
  if (rest.includes(':')) return sentenceSlot(snapshot, line, rest);
  const using = /\busing\s(?:.*,\s)?([^,]*)$/i.exec(rest);
  if (using) return { candidates: from.thingCandidates(snapshot), typed: using[1] ?? '' };
  return timeSlot(rest);
}

/** Before the colon: a time, then the clauses. */
function timeSlot(rest: string): Slot | undefined {
  const degrees = /\b(?:at|until|to|=)\s-?[\d.,-]+\s([cf]?)$/i.exec(rest);
  if (degrees) return { candidates: from.values('C', 'F'), typed: degrees[1] ?? '' };
  const unit = new RegExp(String.raw`^(?:about )?${NUMBER}([\p{L}]*)$`, 'u').exec(rest);
  if (unit) return { candidates: from.timeUnitCandidates, typed: unit[1] ?? '' };
  const word = /(?:^|\s)(\p{L}*)$/u.exec(rest);
  return {
    candidates:
      rest.trim() === (word?.[1] ?? '') ? both(from.timeCandidates, from.clauseCandidates) : from.clauseCandidates,
    typed: word?.[1] ?? '',
  };
}

function sentenceSlot(snapshot: Snapshot, line: number, rest: string): Slot | undefined {
  const bracket = /\[[^\]]*\sof\s([^\]]*)$/i.exec(rest);
  if (bracket) return { candidates: from.spokenCandidates(snapshot, line), typed: bracket[1] ?? '' };
  const word = /[\s:]([\p{L}-]{2,})$/u.exec(rest);
  return word ? { candidates: from.spokenCandidates(snapshot, line), typed: word[1] ?? '' } : undefined;
}

function checkSlot(snapshot: Snapshot, line: number, rest: string): Slot | undefined {
  if (rest === '') return { candidates: checkCandidates(snapshot, line), typed: rest };
  const fromMake = /\sfrom\s(.*)$/i.exec(rest);
  if (fromMake) return { candidates: from.productCandidates(snapshot, line), typed: fromMake[1] ?? '' };
  const on = /\son\s(.*)$/i.exec(rest);
  if (on)
    return { candidates: both(from.values('flour', 'all'), from.potCandidates(snapshot, line)), typed: on[1] ?? '' };
  const percent = PERCENT.exec(rest);
  if (percent)
    return {
      candidates: both(from.values('water', 'all water', 'flour'), from.potCandidates(snapshot, line)),
      typed: percent[2] ?? '',
    };
  const bare = BARE.exec(rest);
  return bare ? { candidates: from.values('g', 'kg', '%'), typed: bare[2] ?? '' } : undefined;
}

// ---- blocks and facts ------------------------------------------------------------------------------------------------

function blockSlot(snapshot: Snapshot, line: number, word: string, rest: string): Slot | undefined {
  const wanted = (kind: 'unknown-food'): readonly Candidate[] =>
    snapshot.names
      .filter(({ meaning }) => meaning.kind === kind && !meaning.key.startsWith('label:'))
      .map(({ text }) => ({ label: text, kind: 'food', detail: 'named here, not in the table', rank: 10 }));
  if (word === 'food' || word === 'culture') return { candidates: wanted('unknown-food'), typed: rest };
  if (word === 'make') {
    const variant = snapshot.blockAt(line - 1)?.block === 'variant';
    return {
      candidates: both(variant ? from.makeCandidates(snapshot, line) : [], wanted('unknown-food')),
      typed: rest,
    };
  }
  return undefined;
}

/** The last item of a list with commas. */
const lastOf = (rest: string): string => rest.slice(rest.lastIndexOf(',') + 1).trimStart();

function factSlot(snapshot: Snapshot, line: number, word: string, rest: string): Slot | undefined {
  switch (word) {
    case 'free of':
      return { candidates: from.allergenCandidates, typed: lastOf(rest) };
    case 'contains':
    case 'traces':
      return {
        candidates: both(
          word === 'contains' && !rest.includes(',') ? from.values('nothing') : [],
          from.allergenCandidates,
        ),
        typed: lastOf(rest),
      };
    case 'keywords':
      return {
        candidates: usedKeywords(snapshot).map((label, rank): Candidate => ({ label, kind: 'tag', rank })),
        typed: lastOf(rest),
      };
    case 'cup':
      return { candidates: from.values('us', 'metric', 'australian'), typed: rest };
    case 'basis':
      return { candidates: both(from.values('flour'), from.recipeNameCandidates(snapshot, line)), typed: rest };
    case 'use':
      return useSlot(snapshot, rest);
    case 'count': {
      const as = /\sas\s(.*)$/i.exec(rest);
      if (as) return { candidates: from.values('flour', 'water', 'other'), typed: as[1] ?? '' };
      return { candidates: from.recipeNameCandidates(snapshot, line), typed: rest };
    }
    case 'swap':
    case 'drop':
    case 'add':
      return editSlot(snapshot, line, word, rest);
    case 'per':
      return rest.startsWith('100 ')
        ? { candidates: from.nutrientCandidates, typed: lastOf(rest.replace(/^100 (?:g|ml)\s?/, '')) }
        : { candidates: from.values('100 g', '100 ml'), typed: rest };
    case 'parts': {
      const item = /^[\d./]+\s(.*)$/.exec(lastOf(rest));
      return item ? { candidates: from.foodCandidates(snapshot), typed: item[1] ?? '' } : undefined;
    }
    case 'keeps':
    case 'best after':
      return timeSlot(rest);
    case 'has':
      return { candidates: from.values('1 oven of 2 shelves', '4 rings', '1 cook', '1 mixer'), typed: lastOf(rest) };
    default:
      return undefined;
  }
}

function useSlot(snapshot: Snapshot, rest: string): Slot {
  const path = /\sfrom\s(.*)$/i.exec(rest);
  return path
    ? { candidates: from.fileCandidates(snapshot), typed: path[1] ?? '' }
    : { candidates: from.usableCandidates(snapshot), typed: rest };
}

function editSlot(snapshot: Snapshot, line: number, word: string, rest: string): Slot | undefined {
  const inMake = /\sin\s(.*)$/i.exec(rest);
  if (inMake && !/\sfor\s/i.test(rest))
    return { candidates: from.makeCandidates(snapshot, line), typed: inMake[1] ?? '' };
  const target = /\s(?:for|beside)\s(.*)$/i.exec(rest);
  if (target && word === 'swap') {
    const text = target[1] ?? '';
    return /^\d/.test(text)
      ? inSlot(snapshot, line, text, 'make')
      : { candidates: from.foodCandidates(snapshot), typed: text };
  }
  if (target) return { candidates: from.recipeNameCandidates(snapshot, line), typed: target[1] ?? '' };
  if (word === 'add') return inSlot(snapshot, line, rest, 'make');
  return { candidates: from.recipeNameCandidates(snapshot, line), typed: rest };
}
