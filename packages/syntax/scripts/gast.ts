import type { TokenType } from 'chevrotain';
import { LineParser } from '../src/parser.js';
import { lineWords } from '../src/classify.js';
import * as tokens from '../src/tokens.js';
import type { Expression } from './ebnf.js';

/*
 * The parser's own grammar as expressions, to be compared with grammar/quern.ebnf.
 */

/** What the grammar calls each token: a literal, or the name of a lexical rule. */
const LEXICAL: ReadonlyMap<TokenType, string> = new Map([
  [tokens.Digits, 'digits'],
  [tokens.Vulgar, 'vulgar'],
  [tokens.Word, 'word'],
  [tokens.Unit, 'unitWord'],
  [tokens.TimeWord, 'timeWord'],
  [tokens.Degrees, 'degrees'],
  [tokens.NameStart, 'nameStart'],
  [tokens.NameWord, 'nameWord'],
  [tokens.Note, 'noteText'],
  [tokens.Prose, 'proseText'],
  [tokens.Text, 'text'],
]);
const MARKS: ReadonlyMap<TokenType, string> = new Map([
  [tokens.Slash, '/'],
  [tokens.Dash, '-'],
  [tokens.By, 'x'],
  [tokens.Percent, '%'],
  [tokens.Equals, '='],
  [tokens.Comma, ','],
  [tokens.Colon, ':'],
]);

const literal = (text: string): Expression => ({ kind: 'literal', text });
const choice = (parts: readonly Expression[]): Expression =>
  parts.length === 1 && parts[0] ? parts[0] : { kind: 'choice', parts };

/** What the productions of Chevrotain hold, whichever class they are of. */
interface Production {
  readonly definition: readonly Production[];
  readonly nonTerminalName: string;
  readonly terminalType: TokenType;
  readonly separator: TokenType;
}

/** The name of a production's class; bundlers may put an underscore or a number to it. */
function typeOf(production: Production): string {
  return production.constructor.name.replace(/^_+|\d+$/g, '');
}

const sequence = (parts: readonly Expression[]): Expression => {
  const flat = parts.flatMap((part) => (part.kind === 'sequence' ? part.parts : [part]));
  return flat.length === 1 && flat[0] ? flat[0] : { kind: 'sequence', parts: flat };
};

function terminal(type: TokenType, rule: string): Expression {
  if (type === tokens.Opening)
    return choice(lineWords.filter((word) => word.rule === rule).map(({ word }) => literal(word)));
  if (type === tokens.CupName) return choice(['us', 'metric', 'australian'].map(literal));
  const lexical = LEXICAL.get(type);
  if (lexical !== undefined) return { kind: 'name', name: lexical };
  return literal(MARKS.get(type) ?? tokens.spellingOf(type));
}

function expression(production: Production, rule: string): Expression {
  const inner = (): Expression => sequence(production.definition.map((part) => expression(part, rule)));
  const type = typeOf(production);
  switch (type) {
    case 'NonTerminal':
      return { kind: 'name', name: production.nonTerminalName };
    case 'Terminal':
      return terminal(production.terminalType, rule);
    case 'Alternation':
      return choice(production.definition.map((part) => expression(part, rule)));
    case 'Alternative':
      return inner();
    case 'Option':
      return { kind: 'option', part: inner() };
    case 'Repetition':
      return { kind: 'repetition', part: inner() };
    case 'RepetitionMandatory':
      return sequence([inner(), { kind: 'repetition', part: inner() }]);
    case 'RepetitionMandatoryWithSeparator':
      return sequence([
        inner(),
        { kind: 'repetition', part: sequence([terminal(production.separator, rule), inner()]) },
      ]);
    default:
      throw new TypeError(`the parser uses a ${type}, which the grammar has no form for`);
  }
}

/** Each rule of the parser as an expression. */
export function parserRules(): Map<string, Expression> {
  const productions = new LineParser().getGAstProductions() as unknown as Readonly<Record<string, Production>>;
  return new Map(
    Object.entries(productions).map(([name, rule]) => [
      name,
      sequence(rule.definition.map((part) => expression(part, name))),
    ]),
  );
}
