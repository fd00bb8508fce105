/**
 * Number of single slips (a letter wrong, missing, added, or two neighbours swapped) between two words,
 * or `limit + 1` when there are more. Optimal string alignment distance.
 */
export function slips(a: string, b: string, limit = 2): number {
  if (Math.abs(a.length - b.length) > limit) return limit + 1;
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    let smallest = i;
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      let cost = Math.min((last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (last[j - 1] ?? 0) + (same ? 0 : 1));
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        cost = Math.min(cost, (beforeLast[j - 2] ?? 0) + 1);
      row.push(cost);
      smallest = Math.min(smallest, cost);
    }
    if (smallest > limit) return limit + 1;
    beforeLast = last;
    last = row;
  }
  return last[b.length] ?? 0;
}

/** The candidates nearest to a word, nearest first, none further than a third of its length (at most two slips). */
export function nearest(word: string, candidates: Iterable<string>, most = 3): string[] {
  const limit = word.length < 4 ? 1 : 2;
  const scored: { candidate: string; distance: number }[] = [];
  const own = lettersOf(word);
  for (const candidate of candidates) {
    if (Math.abs(candidate.length - word.length) > limit) continue;
    // One slip puts in one letter and takes out one at most; of thousands of names this leaves a few to be looked at closely.
    if (count(own ^ lettersOf(candidate)) > 2 * limit) continue;
    const distance = slips(word, candidate, limit);
    if (distance <= limit) scored.push({ candidate, distance });
  }
  scored.sort((a, b) => a.distance - b.distance || (a.candidate < b.candidate ? -1 : 1));
  return scored.slice(0, most).map((entry) => entry.candidate);
}

/** Which of the letters a to z are in a word, a bit each. */
function lettersOf(word: string): number {
  let letters = 0;
  for (let index = 0; index < word.length; index++) {
    const letter = word.charCodeAt(index) - 97;
    if (letter >= 0 && letter < 26) letters |= 1 << letter;
  }
  return letters;
}

/** How many bits are set. */
function count(bits: number): number {
  let found = 0;
  for (let rest = bits; rest !== 0; rest &= rest - 1) found++;
  return found;
}
