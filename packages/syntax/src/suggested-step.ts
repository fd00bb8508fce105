/*
 * What a pasted sentence would be as a step: who or what is busy, and for how long, as far as the sentence says it.
 * Only offered, never done: the writer decides.
 */

import type { Lane } from './ast.js';

const LANES: readonly { readonly lane: Lane; readonly words: RegExp }[] = [
  { lane: 'oven', words: /\b(?:bake|baking|roast|roasting|oven|preheat|broil|gratinate|grill)\b/i },
  {
    lane: 'hob',
    words:
      /\b(?:simmer|boil|fry|sauté|saute|sear|brown|toast|poach|steam|braise|stew|sweat|reduce|heat|warm|melt|blanch|scald|deglaze|saucepan|pan|skillet|stove|hob)\b/i,
  },
  {
    lane: 'wait',
    words:
      /\b(?:rest|resting|leave|chill|cool|cooling|prove|proof|rise|ferment|soak|marinate|refrigerate|freeze|set aside|stand|overnight|steep|infuse|drain)\b/i,
  },
];

const TIME =
  /(?:about |around )?(\d+(?:[.,]\d+)?(?: ?(?:-|–|—|to) ?\d+(?:[.,]\d+)?)?) ?(seconds?|secs?|minutes?|mins?|min|hours?|hrs?|h|days?|d|weeks?|months?)\b/i;
const UNITS: readonly { readonly word: string; readonly unit: string }[] = [
  { word: 's', unit: 's' },
  { word: 'mi', unit: 'min' },
  { word: 'h', unit: 'h' },
  { word: 'd', unit: 'd' },
  { word: 'w', unit: 'weeks' },
  { word: 'mo', unit: 'months' },
];

/** The lane a sentence speaks of; `hands` if it names none. */
export function laneOf(sentence: string): Lane {
  let best: { lane: Lane; at: number } | undefined;
  for (const { lane, words } of LANES) {
    const at = sentence.search(words);
    if (at >= 0 && (best === undefined || at < best.at)) best = { lane, at };
  }
  return best?.lane ?? 'hands';
}

/** The first time a sentence names, as a step would write it; empty when it names none. */
export function timeIn(sentence: string): string {
  if (/\bovernight\b/i.test(sentence)) return 'overnight';
  const found = TIME.exec(sentence);
  if (found === null) return '';
  const [, figure = '', word = ''] = found;
  const lower = word.toLowerCase();
  const unit =
    UNITS.find((one) => lower.startsWith(one.word) && !(one.unit === 'min' && lower.startsWith('mo')))?.unit ?? lower;
  const plain = figure.replace(',', '.').replace(/ ?(?:-|–|—|to) ?/, '-');
  return `${plain} ${plain === '1' && /^(?:week|month)s$/.test(unit) ? unit.slice(0, -1) : unit}`;
}

/** The opening of the step that a sentence would be: `wait 30 min:`. */
export function suggestedStep(sentence: string): string {
  const time = timeIn(sentence);
  return time === '' ? `${laneOf(sentence)}:` : `${laneOf(sentence)} ${time}:`;
}
