import { diagnose, nearest, type Diagnostic } from '@quern/text';
import { compare, rational, temperaturePoint } from '@quern/quantity';
import type { KitchenBlock, Temperature, Thing } from '@quern/syntax';
import type { Formula, LineRef } from '../model.js';
import { placeOf } from '../places.js';

type Report = (diagnostic: Diagnostic) => void;

/** Things that every planner knows. */
const KITCHEN_WORDS: readonly string[] = ['oven', 'shelf', 'ring', 'hob', 'cook', 'flame'];

/** What is left of `shelves` when a slip in it hides that it is the plural of a shelf. */
const SHELVES = 'shelve';

/** N19: things that a step uses and that look like a slip of one the kitchen has. */
function checkThings(things: readonly Thing[], ref: LineRef, known: ReadonlySet<string>, report: Report): void {
  for (const thing of things) {
    if (known.has(thing.name)) continue;
    const words = thing.name.split(' ');
    const near =
      nearest(thing.name, known, 1)[0] ??
      (nearest(thing.name, [SHELVES], 1).length > 0 ? 'shelf' : undefined) ??
      [...known].find((word) => thing.name.startsWith(word) && /[\s\d]/.test(thing.name)) ??
      // A figure inside the name is what was meant for the shelves.
      (/\d/.test(thing.name) ? nearest(words[0] ?? '', known, 1)[0] : undefined) ??
      // A comma too early: `4 ring,s 1 cook`.
      (/\d/.test(thing.name) && known.has(words.at(-1) ?? '') ? words.at(-1) : undefined);
    if (near) report(diagnose('N19', placeOf(ref, thing.span), { name: thing.name, near }));
  }
}

/** The same for everything that the steps of a formula use. */
export function checkUsing(formula: Formula, kitchen: ReadonlySet<string>, report: Report): void {
  const known = new Set([...KITCHEN_WORDS, ...kitchen]);
  for (const make of formula.makes) {
    for (const item of make.items) {
      if (item.kind !== 'step') continue;
      for (const clause of item.content.clauses)
        if (clause.kind === 'using') checkThings(clause.things, item.ref, known, report);
    }
  }
}

const COLDEST_ROOM = rational(0);
const WARMEST_ROOM = rational(45);

/** A kitchen's own lines: things that are likely slips, and a room nobody works in. */
export function checkKitchen(block: KitchenBlock, file: string, report: Report): void {
  const known = new Set(KITCHEN_WORDS);
  for (const { content, line } of block.facts) {
    const ref: LineRef = { file, line };
    if (content.kind === 'has') checkThings(content.things, ref, known, report);
    if (content.kind === 'room') checkRoom(content.temperature, ref, report);
  }
}

function checkRoom(room: Temperature, ref: LineRef, report: Report): void {
  const low = temperaturePoint(room.low, room.scale).celsius;
  const high = temperaturePoint(room.high, room.scale).celsius;
  if (compare(low, COLDEST_ROOM) >= 0 && compare(high, WARMEST_ROOM) <= 0) return;
  const written = ref.line.text.slice(room.span.start, room.span.end);
  report(diagnose('T31', placeOf(ref, room.span), { written, what: 'a room', range: '0 to 45 C' }));
}
