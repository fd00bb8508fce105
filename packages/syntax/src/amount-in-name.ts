import { unitSpellings, units } from '@quern/quantity';
import type { Span } from '@quern/text';
import { Fault } from './fault.js';
import type { InLine } from './ast.js';

/*
 * A second amount that has got into a name: "100 g (4 oz) butter", "100 g sugar and 50 g honey". Read as it stands, the
 * second amount would be lost in a name that no food has. So the line is refused, with the way to write both.
 */

const NUMBER = String.raw`(?:\d+(?:[.,/]\d+)?(?: ?(?:\d+\/\d+|[¼½¾⅐-⅞]))?|[¼½¾⅐-⅞])`;
const UNIT = [...unitSpellings]
  .filter(([, id]) => units[id].dimension === 'mass' || units[id].dimension === 'volume')
  .map(([spelling]) => spelling)
  .concat('fl oz', 'pint', 'pints', 'pt', 'quart', 'quarts', 'qt')
  .sort((a, b) => b.length - a.length)
  .join('|');
const AMOUNT = String.raw`(?:(?:about|approx\.?|ca\.?) )?${NUMBER}(?: ?(?:-|–|to) ?${NUMBER})? ?-?(?:${UNIT})\b\.?`;
const CONTAINER = 'tins?|cans?|jars?|packets?|packs?|bags?|bottles?|cartons?|boxes|box|tubs?|pots?';

const SECOND = new RegExp(String.raw`(?:^|[\s(/])(${AMOUNT})`, 'i');
const CONTAINED = new RegExp(String.raw`^\(?(${AMOUNT})\)? ?(${CONTAINER}) (.+)$`, 'i');
const BRACKETED = new RegExp(String.raw`^(.*?) ?\((${AMOUNT})\) ?(.*)$`, 'i');
const AFTER_SLASH = new RegExp(String.raw`^((?:${UNIT})?) ?\/ ?(${AMOUNT}) (.+)$`, 'i');
const TWO_FOODS = new RegExp(String.raw`^(.*?) ?(?:\b(and|plus|or)\b|[+&]) ?(${AMOUNT}) (.+)$`, 'i');
const FILLED = new RegExp(
  String.raw`^(heaped|heaping|level|levelled|scant|rounded|generous|good|brimming) (${UNIT})\b\.? (.+)$`,
  'i',
);

/** How full a spoon or a cup is, after its unit: `1 tbsp heaped cocoa`. */
const FULL = /^\(?(heaped|heaping|level|levelled|scant|rounded|brimming)\)? (.+)$/i;

const isByVolume = ({ amount }: Pick<InLine, 'amount'>): boolean =>
  amount.kind === 'measure' && units[amount.unit.id].dimension === 'volume';

/** Refuses an in line whose name holds an amount. `text` is the line. */
export function refuseAmountInName(line: Pick<InLine, 'amount' | 'name'>, text: string): void {
  const { name, amount } = line;
  const [, full, food = ''] = (isByVolume(line) && FULL.exec(name.text)) || [];
  if (full !== undefined) {
    const written = text.slice(amount.span.start, amount.span.end).trim();
    throw new Fault('Q27', name.span, { found: full, way: `write “${written} ${food}, ${full}”` });
  }
  const filled = FILLED.exec(name.text);
  const found = filled ? `${filled[1] ?? ''} ${filled[2] ?? ''}` : SECOND.exec(name.text)?.[1];
  if (found === undefined) return;
  const written = text.slice(amount.span.start, amount.span.end).trim();
  const at = Math.max(0, text.slice(name.span.start, name.span.end).indexOf(found));
  const span: Span = { start: name.span.start + at, end: name.span.start + at + found.length };
  throw new Fault('Q27', span, { found, way: wayOut(written, name.text) });
}

/** The way out of a yield that is stated twice, `1 cup (240 ml)`; undefined when the line is not such a one. */
export function yieldStatedTwice(text: string): string | undefined {
  const [, before = '', bracketed = '', after = ''] = BRACKETED.exec(text.replace(/^\s*gives\s+/i, '')) ?? [];
  if (bracketed === '') return undefined;
  const [one, other] = [before, plain(bracketed)].map((amount) => `“gives ${`${amount} ${after}`.trim()}”`);
  return `a yield is stated once: write ${one ?? ''} or ${other ?? ''}`;
}

function wayOut(amount: string, name: string): string {
  const [, filled = '', unit = '', what = ''] = FILLED.exec(name) ?? [];
  if (filled !== '') return `write “${amount} ${unit} ${what}, ${filled}”`;
  const [, size = '', container = '', contents = ''] = CONTAINED.exec(name) ?? [];
  if (container !== '') return `write “${amount} ${container} of ${plain(size)} ${contents}”`;
  const [, before = '', bracketed = '', after = ''] = BRACKETED.exec(name) ?? [];
  if (bracketed !== '') return equal(amount, `${before} ${after}`, bracketed);
  const [, first = '', second = '', food = ''] = AFTER_SLASH.exec(name) ?? [];
  if (second !== '') return equal(`${amount} ${first}`, food, second);
  const [, one = '', joint = '', other = '', rest = ''] = TWO_FOODS.exec(name) ?? [];
  if (other === '') return 'write the second amount after “=”, or on a line of its own';
  if (joint === 'or') return `write “${amount} ${one || rest}”, and under it “or ${plain(other)} ${rest}”`;
  return `write two lines, “${amount} ${one || rest}” and “${plain(other)} ${rest}”`;
}

const equal = (amount: string, name: string, second: string): string =>
  `both measure the same: write “${`${amount} ${name}`.replace(/\s+/g, ' ').trim()} = ${plain(second)}”`;

/** `14-oz`, `4oz`: a space between the number and the unit. */
const plain = (amount: string): string => amount.replace(/([\d½¼¾⅐-⅞])-?(?=[a-z])/i, '$1 ');
