import { unitSpellings, units } from '@quern/quantity';
import { degreeSpellings, timeSpellings } from '../src/tokens.js';
import type { LineList } from './line-kinds.js';

/*
 * The TextMate grammar: first colour before any program runs, made from the list of lines and the units. Its patterns
 * keep to what both Oniguruma and ECMAScript understand. What a line means is told by the parser; here a line is
 * coloured by its first word, and the inside of it by shape.
 */

interface Pattern {
  readonly [key: string]: unknown;
}

/** Longest first, so that `cups` is not read as `cup`. */
function alternatives(words: Iterable<string>): string {
  const escaped = [...words].map((word) => word.replace(/[.*+?^${}()|[\]\\]/g, '\\$&').replaceAll(' ', '\\s+'));
  return escaped.toSorted((a, b) => b.length - a.length || (a < b ? -1 : 1)).join('|');
}

const capture = (name: string): Pattern => ({ name });
const includes = (...names: string[]): Pattern[] => names.map((name) => ({ include: `#${name}` }));

/** The whole grammar as an object, ready to be written as JSON. */
export function tmGrammar(list: LineList): Pattern {
  const { figure, wordEnd } = list;
  const number = '\\d+(?:[.,]\\d+)*';
  const vulgar = '[¼½¾⅐-⅞]';
  const anyNumber = `(?:${number}(?:\\s*(?:[/⁄∕]\\s*\\d+|${vulgar}))?|${vulgar})`;
  const range = `${anyNumber}(?:\\s+\\d+\\s*[/⁄∕]\\s*\\d+)?(?:\\s*(?:[-‐-―−]|\\bto\\b)\\s*${anyNumber}(?:\\s+\\d+\\s*[/⁄∕]\\s*\\d+)?)?`;
  const volumes = '(?:u\\.?s\\.?|imperial)\\s+(?:fl\\.?\\s*oz|fluid\\s+ounces?|pints?|quarts?|gallons?)';
  const unitWords = [...unitSpellings.keys()].filter((word) => !/^(?:us|imperial) /.test(word));
  const measured = unitWords.filter(
    (word) => units[unitSpellings.get(word) ?? 'g'].dimension !== 'energy' && word !== 'in',
  );
  const times = alternatives(timeSpellings.keys());
  const degrees = alternatives(degreeSpellings.keys());

  const wordsOf = (test: (word: LineList['words'][number]) => boolean): string =>
    alternatives(list.words.filter(test).map(({ word }) => word));
  const opening = (words: string): string => `(?i)^\\s*(${words})${wordEnd}`;

  /** A line from its opening words to its end, with what may stand in it. */
  const line = (kind: string, words: string, scope: string, patterns: Pattern[]): Pattern => ({
    name: `meta.line.${kind}.quern`,
    begin: opening(words),
    beginCaptures: { 1: capture(scope) },
    end: '$',
    patterns,
  });

  const inWords = wordsOf(({ kind, word }) => kind === 'in' && word !== 'optional');
  const noteModes =
    (mode: string) =>
    (word: LineList['words'][number]): boolean =>
      word.kind === 'fact' && word.mode === mode;

  return {
    name: 'Quern',
    scopeName: 'source.quern',
    fileTypes: ['quern'],
    patterns: includes(
      'conflict',
      'remark',
      'more',
      'step',
      'every',
      'in',
      'or',
      'out',
      'check',
      'block',
      'course',
      'text-fact',
      'list-fact',
      'note-fact',
      'baked',
    ),
    repository: {
      conflict: { name: 'invalid.illegal.conflict.quern', match: '^(?:<{7}|={7}|>{7}|\\|{7})(?=\\s|$).*$' },
      remark: { name: 'comment.line.double-slash.quern', match: '^\\s*//.*$' },
      more: { name: 'meta.line.more.quern', begin: '^(?=\\s*:)', end: '$', patterns: includes('prose') },
      step: line(
        'step',
        wordsOf(({ kind }) => kind === 'step'),
        'keyword.control.lane.quern',
        includes('prose', 'clause', 'time', 'temperature', 'number'),
      ),
      every: line(
        'every',
        wordsOf(({ kind }) => kind === 'every'),
        'keyword.control.every.quern',
        includes('prose', 'time', 'number'),
      ),
      in: {
        name: 'meta.line.in.quern',
        begin: `(?i)^\\s*(?:(optional)${wordEnd}\\s*)?(?=${figure}|(?:${inWords})${wordEnd})|^\\s*(optional)${wordEnd}`,
        beginCaptures: { 1: capture('keyword.other.amount.quern'), 2: capture('keyword.other.amount.quern') },
        end: '$',
        patterns: includes('note', 'equals', 'amount', 'joint', 'name'),
      },
      or: line(
        'or',
        wordsOf(({ kind }) => kind === 'or'),
        'keyword.control.or.quern',
        includes('note', 'equals', 'amount', 'joint', 'name'),
      ),
      out: line(
        'out',
        wordsOf(({ kind }) => kind === 'out'),
        'keyword.control.out.quern',
        includes('note', 'equals', 'amount', 'joint', 'name'),
      ),
      check: line(
        'check',
        wordsOf(({ kind }) => kind === 'check'),
        'keyword.control.check.quern',
        includes('amount', 'joint', 'name'),
      ),
      block: line(
        'block',
        wordsOf(({ kind, rule }) => kind === 'block' && rule !== 'courseLine'),
        'storage.type.block.quern',
        [
          {
            begin: '=',
            beginCaptures: { 0: capture('keyword.operator.equals.quern') },
            end: '$',
            patterns: includes('amount'),
          },
          { name: 'entity.name.section.quern', match: '[^\\s=][^=]*' },
        ],
      ),
      course: line(
        'block',
        wordsOf(({ rule }) => rule === 'courseLine'),
        'storage.type.block.quern',
        [...includes('clock'), { name: 'entity.name.section.quern', match: '[^\\s\\d].*' }],
      ),
      'text-fact': line('fact', wordsOf(noteModes('text')), 'keyword.other.fact.quern', [
        { name: 'string.unquoted.words.quern', match: '\\S.*' },
      ]),
      'list-fact': line(
        'fact',
        wordsOf(noteModes('list')),
        'keyword.other.fact.quern',
        includes('comma', 'clock', 'amount', 'number', 'name'),
      ),
      'note-fact': line(
        'fact',
        wordsOf(noteModes('note')),
        'keyword.other.fact.quern',
        includes('note', 'equals', 'date', 'clause', 'time', 'temperature', 'amount', 'joint', 'name'),
      ),
      baked: line(
        'fact',
        wordsOf(noteModes('prose')),
        'keyword.other.fact.quern',
        includes('prose', 'comma', 'date', 'amount', 'number'),
      ),

      prose: {
        name: 'string.unquoted.prose.quern',
        begin: ':',
        beginCaptures: { 0: capture('punctuation.separator.prose.quern') },
        end: '$',
        patterns: [
          {
            name: 'meta.bracket.quern',
            match: '(\\[)([^\\[\\]]*)(\\])',
            captures: {
              1: capture('punctuation.section.bracket.quern'),
              2: capture('constant.numeric.scaled.quern'),
              3: capture('punctuation.section.bracket.quern'),
            },
          },
        ],
      },
      note: {
        name: 'comment.other.note.quern',
        match: '(,)(?!(?<=\\d,)\\d)(.*)$',
        captures: { 1: capture('punctuation.separator.note.quern') },
      },
      comma: { name: 'punctuation.separator.list.quern', match: ',' },
      equals: { name: 'keyword.operator.equals.quern', match: '=' },
      clause: {
        match: `(?i)(?:^|(?<=\\s))(at|until|using|falling\\s+to|rising\\s+to|fan|pH(?:\\s+below)?)${wordEnd}`,
        captures: { 1: capture('keyword.other.clause.quern') },
      },
      time: {
        patterns: [
          { name: 'constant.numeric.time.quern', match: `(?i)(?:^|(?<=\\s))overnight${wordEnd}` },
          {
            match: `(?i)(?:(about)\\s+)?(${range})\\s*(${times})\\.?${wordEnd}(?:\\s+(or\\s+more)${wordEnd})?`,
            captures: {
              1: capture('keyword.other.amount.quern'),
              2: capture('constant.numeric.time.quern'),
              3: capture('keyword.other.unit.quern'),
              4: capture('keyword.other.amount.quern'),
            },
          },
        ],
      },
      temperature: {
        match: `(?i)((?:[-−]\\s*)?${range})\\s*(°?\\s*(?:${degrees}))${wordEnd}`,
        captures: { 1: capture('constant.numeric.temperature.quern'), 2: capture('keyword.other.unit.quern') },
      },
      clock: { name: 'constant.numeric.clock.quern', match: '\\d{1,2}:\\d\\d' },
      date: { name: 'constant.numeric.date.quern', match: '\\d{4}-\\d\\d-\\d\\d' },
      number: { name: 'constant.numeric.quern', match: range },
      amount: {
        patterns: [
          {
            // The unit list says where an amount ends: `2 leaves gelatine`, but `2 leeks`.
            match: `(?i)(?:(about)\\s+)?(?:^|(?<=[\\s=,])|(?<![^\\s]))(${range})\\s*(${volumes}|${alternatives(measured)}|%)\\.?${wordEnd}(?:\\s*(of)${wordEnd})?`,
            captures: {
              1: capture('keyword.other.amount.quern'),
              2: capture('constant.numeric.amount.quern'),
              3: capture('keyword.other.unit.quern'),
              4: capture('keyword.other.joint.quern'),
            },
          },
          {
            match: `(?i)(?:(about)\\s+)?(?:^|(?<=[\\s=]))(${range})${wordEnd}(?:\\s*(of)${wordEnd})?`,
            captures: {
              1: capture('keyword.other.amount.quern'),
              2: capture('constant.numeric.amount.quern'),
              3: capture('keyword.other.joint.quern'),
            },
          },
          {
            name: 'keyword.other.amount.quern',
            match: `(?i)(?:^|(?<=[\\s=]))(?:about|all|half|rest|enough|a\\s+little|each)${wordEnd}`,
          },
        ],
      },
      joint: { name: 'keyword.other.joint.quern', match: `(?i)(?<=\\s)(?:of|on|as|from|in|for|beside|any)${wordEnd}` },
      name: { name: 'variable.other.name.quern', match: '[^\\s,=:%0-9][^\\s,=:]*' },
    },
  };
}
