/*
 * Says in a result what is not as it was before. Both are pages of the same view; the new one is marked, block by block:
 * a block of words that reads otherwise is marked with what it said, a block that was not there is marked as new.
 */

const MARK = 'data-quern-mark';
const WAS = 'data-quern-was';

/** Old words are shown beside the new ones when both are short: a figure, not a sentence. */
const MOST_SHOWN = 28;

/** Elements that hold others to be compared by themselves; in any other element only the words count. */
const BLOCKS =
  'article,aside,div,dd,dl,dt,figure,footer,h1,h2,h3,h4,h5,h6,header,li,main,ol,p,section,table,tbody,td,tfoot,th,thead,tr,ul';

/** Marks what differs and gives the number of marks. */
export function markChanges(now: Element, before: Element): number {
  if (textOf(now) === textOf(before)) return 0;
  // A drawing says what the words beside it say.
  if (now.localName === 'svg' || now.querySelector(':scope > svg')) return 0;
  if (!now.querySelector(BLOCKS)) return markWords(now, before);
  let marks = 0;
  for (const [element, other] of paired([...now.children], [...before.children]))
    marks += other ? markChanges(element, other) : markNew(element);
  return marks === 0 && ownWords(now) !== ownWords(before) ? markWords(now, before) : marks;
}

/** The words that stand in an element itself, between its blocks. */
function ownWords(element: Element): string {
  const own = [...element.childNodes].filter((node) => !(node instanceof Element) || !node.matches(BLOCKS));
  return own
    .map((node) => node.textContent ?? '')
    .join('')
    .replace(/\s+/g, ' ')
    .trim();
}

function markWords(now: Element, before: Element): number {
  const was = textOf(before);
  now.setAttribute(MARK, 'changed');
  if (was !== '' && was.length <= MOST_SHOWN && textOf(now).length <= MOST_SHOWN) now.setAttribute(WAS, was);
  return 1;
}

function markNew(element: Element): number {
  if (element.localName === 'svg' || textOf(element) === '') return 0;
  element.setAttribute(MARK, 'new');
  return 1;
}

const textOf = (element: Element): string => (element.textContent ?? '').replace(/\s+/g, ' ').trim();

/** What an element is, whatever it says. */
const shapeOf = (element: Element): string => `${element.localName}.${element.className}`;

/** What an element is about: a row its heading, another its words. */
function subjectOf(element: Element): string {
  const heading = element.localName === 'tr' ? element.querySelector('th') : element.querySelector('h1,h2,h3,h4,dt');
  return `${shapeOf(element)} ${textOf(heading ?? element)}`;
}

/**
 * Each new element with the old one that it stands for. Where both sides have the same shapes in the same order they are
 * paired as they come; else those with the same subject are, in order, and what is left between them by shape.
 */
function paired(
  now: readonly Element[],
  before: readonly Element[],
): readonly (readonly [Element, Element | undefined])[] {
  if (now.length === before.length && now.every((element, index) => sameShape(element, before[index])))
    return now.map((element, index) => [element, before[index]]);
  const common = longestCommon(now.map(subjectOf), before.map(subjectOf));
  const pairs: (readonly [Element, Element | undefined])[] = [];
  let from = 0;
  let fromBefore = 0;
  for (const [at, atBefore] of [...common, [now.length, before.length] as const]) {
    const left = before.slice(fromBefore, atBefore);
    for (const element of now.slice(from, at)) {
      const index = left.findIndex((other) => sameShape(element, other));
      pairs.push([element, index < 0 ? undefined : left.splice(0, index + 1).at(-1)]);
    }
    const element = now[at];
    if (element) pairs.push([element, before[atBefore]]);
    from = at + 1;
    fromBefore = atBefore + 1;
  }
  return pairs;
}

const sameShape = (a: Element, b: Element | undefined): boolean => b !== undefined && shapeOf(a) === shapeOf(b);

/** The places of a longest common subsequence of two short lists. */
function longestCommon(a: readonly string[], b: readonly string[]): readonly (readonly [number, number])[] {
  const lengths: number[][] = Array.from({ length: a.length + 1 }, () => new Array<number>(b.length + 1).fill(0));
  const at = (i: number, j: number): number => lengths[i]?.[j] ?? 0;
  for (let i = a.length - 1; i >= 0; i--) {
    const row = lengths[i];
    if (!row) continue;
    for (let j = b.length - 1; j >= 0; j--)
      row[j] = a[i] === b[j] ? at(i + 1, j + 1) + 1 : Math.max(at(i + 1, j), at(i, j + 1));
  }
  const places: (readonly [number, number])[] = [];
  for (let i = 0, j = 0; i < a.length && j < b.length;) {
    if (a[i] === b[j]) places.push([i++, j++]);
    else if (at(i + 1, j) >= at(i, j + 1)) i++;
    else j++;
  }
  return places;
}

/** How marks look: a bar at the side and the old words below, so that nobody needs the colour. */
export const marksStyle = `
[${MARK}]{background:var(--mark-wash);box-shadow:inset 2px 0 0 var(--mark)}
[${MARK}]:not(tr){padding-inline-start:.5rem}
[${WAS}]::after{content:"was " attr(${WAS});display:block;font:400 .72rem/1.2 system-ui,-apple-system,"Segoe UI",Roboto,sans-serif;color:var(--mark)}
[${MARK}=new]:not(tr)::before{content:"new ";font:600 .72rem/1.2 system-ui,-apple-system,"Segoe UI",Roboto,sans-serif;color:var(--mark)}
tr[${MARK}=new]>:last-child::after{content:" new";font:600 .72rem/1.2 system-ui,-apple-system,"Segoe UI",Roboto,sans-serif;color:var(--mark)}
:root{--mark:#8a4b08;--mark-wash:#8a4b0812}
@media (prefers-color-scheme:dark){:root{--mark:#e3b26a;--mark-wash:#e3b26a17}}
`;
