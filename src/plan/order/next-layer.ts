import type { Layer } from './layer.ts'

/** Collects the states of one place: one list of last actions for each set of done actions, in typed arrays that grow. */
export interface NextLayer {
  readonly clear: () => void
  /** Adds a state unless another of the same set makes it needless; drops those it makes needless. */
  readonly add: (
    done: Uint32Array,
    last: number,
    cost: number,
    paid: number,
    bound: number,
    parent: number,
  ) => void
  readonly count: () => number
  /** The states with the smallest bounds, at most `width`; and the smallest bound of those let go. */
  readonly kept: (width: number) => { readonly layer: Layer; readonly letGo: number }
  /** The smallest bound of all. */
  readonly leastBound: () => number
}

/**
 * @param worse `worse[size · a + b]`: by how much at most going on from a costs more than from b, whatever comes next
 */
export function nextLayer(size: number, words: number, worse: Float64Array): NextLayer {
  let setRoom = 1 << 10
  let sets = 0
  let setBits = new Uint32Array(setRoom * words)
  let setPaid = new Float64Array(setRoom)
  let head = new Int32Array(setRoom)
  let slots = new Int32Array(setRoom * 4).fill(-1)
  let room = 1 << 11
  let states = 0
  let dead = 0
  let setOf = new Int32Array(room)
  let last = new Uint16Array(room)
  let cost = new Float64Array(room)
  let bound = new Float64Array(room)
  let parent = new Int32Array(room)
  let next = new Int32Array(room)

  const hashed = (bits: Uint32Array, at: number): number => {
    let h = 0x9e3779b9
    for (let w = 0; w < words; w++) {
      h = Math.imul(h ^ bits[at + w]!, 0x85ebca6b)
      h ^= h >>> 15
      h = Math.imul(h, 0xc2b2ae35)
      h ^= h >>> 13
    }
    return h >>> 0
  }

  function growSets(): void {
    setRoom *= 2
    setBits = longer(setBits, new Uint32Array(setRoom * words))
    setPaid = longer(setPaid, new Float64Array(setRoom))
    head = longer(head, new Int32Array(setRoom))
    slots = new Int32Array(setRoom * 4).fill(-1)
    const mask = slots.length - 1
    for (let s = 0; s < sets; s++) {
      let slot = hashed(setBits, s * words) & mask
      while (slots[slot]! >= 0) slot = (slot + 1) & mask
      slots[slot] = s
    }
  }
  function growStates(): void {
    room *= 2
    setOf = longer(setOf, new Int32Array(room))
    last = longer(last, new Uint16Array(room))
    cost = longer(cost, new Float64Array(room))
    bound = longer(bound, new Float64Array(room))
    parent = longer(parent, new Int32Array(room))
    next = longer(next, new Int32Array(room))
  }

  function setFor(done: Uint32Array, paid: number): number {
    const mask = slots.length - 1
    let slot = hashed(done, 0) & mask
    for (; slots[slot]! >= 0; slot = (slot + 1) & mask) {
      const at = slots[slot]! * words
      let same = true
      for (let w = 0; w < words; w++) if (setBits[at + w] !== done[w]) same = false
      if (same) return slots[slot]!
    }
    if (sets === setRoom) {
      growSets()
      return setFor(done, paid)
    }
    slots[slot] = sets
    for (let w = 0; w < words; w++) setBits[sets * words + w] = done[w]!
    setPaid[sets] = paid
    head[sets] = -1
    return sets++
  }

  function add(
    done: Uint32Array,
    action: number,
    value: number,
    paid: number,
    least: number,
    from: number,
  ): void {
    const set = setFor(done, paid)
    const row = action * size
    let previous = -1
    for (let s = head[set]!; s >= 0; s = next[s]!) {
      const other = last[s]!
      if (cost[s]! + worse[other * size + action]! <= value) return
      if (value + worse[row + other]! <= cost[s]!) {
        // Taken out of the list; its place stays as a dead one.
        bound[s] = Number.POSITIVE_INFINITY
        dead++
        if (previous < 0) head[set] = next[s]!
        else next[previous] = next[s]!
      } else previous = s
    }
    if (states === room) growStates()
    setOf[states] = set
    last[states] = action
    cost[states] = value
    bound[states] = least
    parent[states] = from
    next[states] = head[set]!
    head[set] = states++
  }

  function kept(width: number): { layer: Layer; letGo: number } {
    let letGo = Number.POSITIVE_INFINITY
    let threshold = Number.POSITIVE_INFINITY
    let ties = Number.POSITIVE_INFINITY
    const alive = states - dead
    if (alive > width) {
      const sorted = bound.slice(0, states).sort()
      threshold = sorted[width]!
      letGo = threshold
      let below = width
      while (below > 0 && sorted[below - 1] === threshold) below--
      ties = width - below
    }
    const count = Math.min(alive, width)
    const layer: Layer = {
      count,
      done: new Uint32Array(count * words),
      last: new Uint16Array(count),
      cost: new Float64Array(count),
      paid: new Float64Array(count),
      bound: new Float64Array(count),
      parent: new Int32Array(count),
    }
    let to = 0
    for (let s = 0; s < states; s++) {
      const b = bound[s]!
      if (b > threshold || b === Number.POSITIVE_INFINITY || (b === threshold && ties-- <= 0)) continue
      const set = setOf[s]!
      for (let w = 0; w < words; w++) layer.done[to * words + w] = setBits[set * words + w]!
      layer.last[to] = last[s]!
      layer.cost[to] = cost[s]!
      layer.paid[to] = setPaid[set]!
      layer.bound[to] = b
      layer.parent[to] = parent[s]!
      to++
    }
    return { layer, letGo }
  }

  return {
    clear() {
      sets = 0
      states = 0
      dead = 0
      slots.fill(-1)
    },
    add,
    count: () => states - dead,
    kept,
    leastBound() {
      let least = Number.POSITIVE_INFINITY
      for (let s = 0; s < states; s++) if (bound[s]! < least) least = bound[s]!
      return least
    },
  }
}

function longer<T extends Int32Array | Uint32Array | Uint16Array | Float64Array>(old: T, fresh: T): T {
  fresh.set(old)
  return fresh
}
