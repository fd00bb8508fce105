import type { Job } from './jobs.js';
import type { Network } from './network.js';
import { VISIT_GAP } from './prices.js';

/**
 * For each job of hands, the other such jobs that may come before it in one visit to the kitchen, as far as the rules
 * alone tell: those that can start no later than it and end no more than an hour before it starts.
 */
export function possibleNeighbours(
  network: Network,
  jobs: readonly Job[],
  hands: readonly number[],
): Map<number, number[]> {
  const apart = leastDistances(network);
  const nodes = network.nodes;
  const between = (from: number, to: number): number => apart[from * nodes + to] ?? -Infinity;
  const neighbours = new Map<number, number[]>();
  for (const second of hands) {
    const b = jobs[second];
    if (!b) continue;
    const before = hands.filter((first) => {
      const a = jobs[first];
      if (!a || first === second) return false;
      const shift = b.start.offset - a.start.offset;
      const least = between(a.start.node, b.start.node) + shift;
      const most = -between(b.start.node, a.start.node) + shift;
      const length = a.end.offset - a.start.offset;
      return least <= length + VISIT_GAP && most >= 0;
    });
    neighbours.set(second, before);
  }
  return neighbours;
}

/** The least that each moment comes after each other by the rules that must hold (longest paths; Floyd and Warshall). */
function leastDistances(network: Network): Float64Array {
  const { nodes, rules } = network;
  const apart = new Float64Array(nodes * nodes).fill(-Infinity);
  for (let node = 0; node < nodes; node++) apart[node * nodes + node] = 0;
  for (const { from, to, gap, price } of rules) {
    if (price !== Infinity) continue;
    const at = from.node * nodes + to.node;
    apart[at] = Math.max(apart[at] ?? -Infinity, gap + from.offset - to.offset);
  }
  for (let via = 0; via < nodes; via++) {
    for (let from = 0; from < nodes; from++) {
      const first = apart[from * nodes + via] ?? -Infinity;
      if (first === -Infinity) continue;
      for (let to = 0; to < nodes; to++) {
        const length = first + (apart[via * nodes + to] ?? -Infinity);
        const at = from * nodes + to;
        if (length > (apart[at] ?? -Infinity)) apart[at] = length;
      }
    }
  }
  return apart;
}
