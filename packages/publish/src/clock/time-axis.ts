import type { Minute } from '@quern/views';

/**
 * A folded axis of time: each stretch between two moments at which something happens takes room by the logarithm of its
 * length, so that a step of five minutes can be seen beside a wait of four weeks. Order and simultaneity are kept
 * exactly; lengths are not to scale, and the chart says so by writing them out.
 */
export interface TimeAxis {
  /** Where a moment lies, from 0 to 100. */
  at(minute: Minute): number;
  readonly from: Minute;
  readonly to: Minute;
}

export function foldedAxis(moments: readonly Minute[]): TimeAxis {
  const sorted = [...new Set(moments)].sort((a, b) => a - b);
  const from = sorted[0] ?? 0;
  const to = sorted.at(-1) ?? from;
  const places = [0];
  for (let index = 1; index < sorted.length; index++) {
    const gap = (sorted[index] ?? 0) - (sorted[index - 1] ?? 0);
    places.push((places[index - 1] ?? 0) + 1 + 2 * Math.log2(1 + gap / 30));
  }
  const whole = places.at(-1) || 1;
  return {
    from,
    to,
    at(minute) {
      if (minute <= from) return 0;
      if (minute >= to) return 100;
      let index = sorted.findIndex((moment) => moment > minute) - 1;
      if (index < 0) index = 0;
      const [a = 0, b = a] = [sorted[index], sorted[index + 1]];
      const [x = 0, y = x] = [places[index], places[index + 1]];
      const inside = b > a ? (minute - a) / (b - a) : 0;
      return ((x + (y - x) * inside) / whole) * 100;
    },
  };
}
