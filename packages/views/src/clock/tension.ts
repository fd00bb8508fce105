/**
 * Moments tied by rules of one form: `to` comes at least `gap` minutes after `from` (a negative gap makes it an upper
 * bound), or each minute short of that costs `price`. The cheapest choice of all moments is found exactly, in whole
 * minutes, and kept up to date as rules are added; adding can be undone.
 *
 * The choice of moments is the dual of a circulation of greatest worth: each rule is an arc that may carry up to `price`,
 * worth `gap` for each unit. A new rule that the moments break opens at most one family of cycles that are worth
 * something; they are filled along shortest paths, and the moments are the potentials (successive shortest paths; see
 * Ahuja, Magnanti and Orlin, 'Network Flows', 1993, sections 9.7 and 14.5; from memory). Everything is whole numbers far
 * below 2^53, so nothing is ever rounded.
 */
export class Tension {
  /** Moment of each node. Only differences mean anything. */
  readonly times: Float64Array;
  /** The least cost of all rules so far. */
  cost = 0;

  readonly #first: Int32Array;
  // Arc 2k is a rule, 2k+1 the same rule run backwards once it carries something.
  #to = new Int32Array(1024);
  #next = new Int32Array(1024);
  #gap = new Float64Array(1024);
  #room = new Float64Array(1024);
  #arcs = 0;
  readonly #kept: Saved[] = [];
  #depth = 0;

  readonly #distance: Float64Array;
  readonly #into: Int32Array;
  readonly #settled: Uint8Array;
  readonly #touched: number[] = [];
  readonly #heap: number[] = [];
  readonly #keys: number[] = [];

  constructor(nodes: number) {
    this.times = new Float64Array(nodes);
    this.#first = new Int32Array(nodes).fill(-1);
    this.#distance = new Float64Array(nodes).fill(Infinity);
    this.#into = new Int32Array(nodes).fill(-1);
    this.#settled = new Uint8Array(nodes);
  }

  /** Remembers the present state on top of those remembered before. */
  save(): void {
    const kept = (this.#kept[this.#depth] ??= new Saved(this.times.length));
    this.#depth++;
    kept.keep(this.#arcs, this.cost, this.times, this.#room);
  }

  /** Goes back to the state last remembered and forgets it. */
  restore(): void {
    const kept = this.#kept[--this.#depth];
    if (!kept) throw new RangeError('nothing was saved');
    for (let arc = this.#arcs - 1; arc >= kept.arcs; arc--) {
      const from = this.#to[arc ^ 1] ?? 0;
      this.#first[from] = this.#next[arc] ?? -1;
    }
    this.#arcs = kept.arcs;
    this.cost = kept.cost;
    this.times.set(kept.times);
    for (let arc = 0; arc < kept.arcs; arc++) this.#room[arc] = kept.room[arc] ?? 0;
  }

  /**
   * Adds the rule `time(to) - time(from) >= gap`, or `price` for each minute short of it (`Infinity`: it must hold).
   * Stops early, with moments that mean nothing, when the cost is sure to reach `limit`.
   * @returns false when the rules cannot hold together, or only at `limit` or above.
   */
  add(from: number, to: number, gap: number, price: number, limit = Infinity): boolean {
    if (from === to) {
      if (gap <= 0) return true;
      if (price === Infinity) return false;
      this.cost += gap * price;
      return this.cost < limit;
    }
    const rule = this.#append(from, to, gap, price);
    let short = gap - ((this.times[to] ?? 0) - (this.times[from] ?? 0));
    while (short > 0 && (this.#room[rule] ?? 0) > 0) {
      const reach = this.#search(to, from, short);
      this.#raise(reach);
      short -= reach;
      if (short <= 0) break;
      const flow = this.#fill(rule, from, to);
      if (flow === Infinity) return false;
      this.cost += flow * short;
      if (this.cost >= limit) return false;
    }
    return true;
  }

  #append(from: number, to: number, gap: number, price: number): number {
    if (this.#arcs + 2 > this.#to.length) this.#grow();
    const rule = this.#arcs;
    this.#arcs += 2;
    this.#set(rule, from, to, gap, price);
    this.#set(rule + 1, to, from, -gap, 0);
    return rule;
  }

  #set(arc: number, from: number, to: number, gap: number, room: number): void {
    this.#to[arc] = to;
    this.#gap[arc] = gap;
    this.#room[arc] = room;
    this.#next[arc] = this.#first[from] ?? -1;
    this.#first[from] = arc;
  }

  #grow(): void {
    const widen = <T extends Int32Array | Float64Array>(old: T, fresh: T): T => {
      fresh.set(old);
      return fresh;
    };
    const size = this.#to.length * 2;
    this.#to = widen(this.#to, new Int32Array(size));
    this.#next = widen(this.#next, new Int32Array(size));
    this.#gap = widen(this.#gap, new Float64Array(size));
    this.#room = widen(this.#room, new Float64Array(size));
  }

  /**
   * How far `source` can be moved later before `target` has to move as well, at most `most`. Leaves the distances of
   * all nodes nearer than that.
   */
  #search(source: number, target: number, most: number): number {
    const distance = this.#distance;
    const times = this.times;
    this.#clear();
    distance[source] = 0;
    this.#touched.push(source);
    this.#push(source);
    while (this.#heap.length > 0) {
      const node = this.#pop();
      if (this.#settled[node] === 1) continue;
      const here = distance[node] ?? 0;
      if (here >= most) return most;
      this.#settled[node] = 1;
      if (node === target) return here;
      const base = here - (times[node] ?? 0);
      for (let arc = this.#first[node] ?? -1; arc >= 0; arc = this.#next[arc] ?? -1) {
        if ((this.#room[arc] ?? 0) <= 0) continue;
        const to = this.#to[arc] ?? 0;
        if (this.#settled[to] === 1) continue;
        const there = base + (times[to] ?? 0) - (this.#gap[arc] ?? 0);
        const known = distance[to] ?? Infinity;
        if (there < known) {
          if (known === Infinity) this.#touched.push(to);
          distance[to] = there;
          this.#into[to] = arc;
          this.#push(to);
        }
      }
    }
    return most;
  }

  #clear(): void {
    for (const node of this.#touched) {
      this.#distance[node] = Infinity;
      this.#settled[node] = 0;
    }
    this.#touched.length = 0;
    this.#heap.length = 0;
    this.#keys.length = 0;
  }

  #raise(reach: number): void {
    for (const node of this.#touched) {
      const distance = this.#distance[node] ?? Infinity;
      if (distance < reach) this.times[node] = (this.times[node] ?? 0) + reach - distance;
    }
  }

  /** Sends as much as fits around the cycle of the rule and the path just found. */
  #fill(rule: number, from: number, to: number): number {
    let flow = this.#room[rule] ?? 0;
    for (let node = from; node !== to;) {
      const arc = this.#into[node] ?? 0;
      flow = Math.min(flow, this.#room[arc] ?? 0);
      node = this.#to[arc ^ 1] ?? 0;
    }
    if (flow === Infinity) return flow;
    this.#move(rule, flow);
    for (let node = from; node !== to;) {
      const arc = this.#into[node] ?? 0;
      this.#move(arc, flow);
      node = this.#to[arc ^ 1] ?? 0;
    }
    return flow;
  }

  #move(arc: number, flow: number): void {
    this.#room[arc] = (this.#room[arc] ?? 0) - flow;
    this.#room[arc ^ 1] = (this.#room[arc ^ 1] ?? 0) + flow;
  }

  // A heap of nodes by distance with the distance they had when put in; a node may stand in it twice, the later place is
  // then passed over.
  #push(node: number): void {
    const heap = this.#heap;
    const keys = this.#keys;
    const key = this.#distance[node] ?? 0;
    let at = heap.length;
    heap.push(node);
    keys.push(key);
    while (at > 0) {
      const up = (at - 1) >> 1;
      const above = keys[up] ?? 0;
      if (above <= key) break;
      heap[at] = heap[up] ?? 0;
      keys[at] = above;
      at = up;
    }
    heap[at] = node;
    keys[at] = key;
  }

  #pop(): number {
    const heap = this.#heap;
    const keys = this.#keys;
    const top = heap[0] ?? 0;
    const last = heap.pop() ?? 0;
    const key = keys.pop() ?? 0;
    const size = heap.length;
    if (size === 0) return top;
    let at = 0;
    for (;;) {
      let down = at * 2 + 1;
      if (down >= size) break;
      const right = down + 1;
      if (right < size && (keys[right] ?? 0) < (keys[down] ?? 0)) down = right;
      const below = keys[down] ?? 0;
      if (below >= key) break;
      heap[at] = heap[down] ?? 0;
      keys[at] = below;
      at = down;
    }
    heap[at] = last;
    keys[at] = key;
    return top;
  }
}

/** A remembered state; the arrays are used again and again. */
class Saved {
  arcs = 0;
  cost = 0;
  readonly times: Float64Array;
  room = new Float64Array(1024);

  constructor(nodes: number) {
    this.times = new Float64Array(nodes);
  }

  keep(arcs: number, cost: number, times: Float64Array, room: Float64Array): void {
    if (this.room.length < arcs) this.room = new Float64Array(room.length);
    this.arcs = arcs;
    this.cost = cost;
    this.times.set(times);
    for (let arc = 0; arc < arcs; arc++) this.room[arc] = room[arc] ?? 0;
  }
}
