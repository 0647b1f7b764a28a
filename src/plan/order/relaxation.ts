import type { Instance } from './instance.ts'

/**
 * The problem with a short memory: walks of as many places as there are actions that may repeat an action or come
 * to one too late, unless the action is still remembered. At action i a walk (seen from its end) remembers which of
 * `near[i]` come later; a state is (place, action, remembered set). No order is lost, so the cheapest walk is a bound.
 */
export interface Relaxation {
  readonly near: readonly (readonly number[])[]
  /** Of each action's memory the bits that are never forgotten. */
  readonly always: Int32Array
  /** Where the states of an action begin within a place's; the last entry is how many there are a place. */
  readonly offset: Int32Array
  /** Least cost from the state to the end, place by place; ∞ where no walk leads on. Filled by `walkBack`. */
  readonly rest: Float64Array
  /** Allowed steps i → j, grouped by j. */
  readonly arcs: { readonly first: Int32Array; readonly from: Int32Array; readonly table: Int32Array }
  /** For a step and what is remembered at j: what is remembered at i; 65535 where the step is not allowed. */
  readonly remember: Uint16Array
  /** Which state of the next place a state goes on with. */
  readonly next: Int32Array
}

/** What `remember` says where a step is not allowed. */
export const forbidden = 65535

/** Lays out the states for these memories; at most 15 actions are remembered at one. */
export function relaxation(
  inst: Instance,
  near: readonly (readonly number[])[],
  tracked: readonly number[] = [],
): Relaxation {
  const { size, follows, earlier, words } = inst
  const offset = new Int32Array(size + 1)
  for (let i = 0; i < size; i++) offset[i + 1] = offset[i]! + (1 << near[i]!.length)
  const first = new Int32Array(size + 1)
  const from: number[] = []
  const table: number[] = []
  let entries = 0
  for (let j = 0; j < size; j++) {
    for (let i = 0; i < size; i++)
      if (follows[i * size + j]) {
        from.push(i)
        table.push(entries)
        entries += 1 << near[j]!.length
      }
    first[j + 1] = from.length
  }
  const remember = new Uint16Array(entries)
  const always = Int32Array.from(near, (all) =>
    all.reduce((mask, m, bit) => (tracked.includes(m) ? mask | (1 << bit) : mask), 0),
  )
  const isEarlier = (a: number, b: number) => (earlier[b * words + (a >>> 5)]! >>> (a & 31)) & 1
  for (let j = 0; j < size; j++) {
    const here = near[j]!
    const states = 1 << here.length
    for (let k = first[j]!; k < first[j + 1]!; k++) {
      const i = from[k]!
      const at = table[k]!
      let blocks = 0
      let needs = 0
      const bits = here.map((m, bit) => {
        // i comes again later, or something later should have come before i.
        if (m === i || isEarlier(m, i)) blocks |= 1 << bit
        if ((always[j]! >>> bit) & 1 && isEarlier(i, m)) needs |= 1 << bit
        const place = near[i]!.indexOf(m)
        return place < 0 ? 0 : 1 << place
      })
      const own = near[i]!.indexOf(j)
      remember[at] = own < 0 ? 0 : 1 << own
      for (let set = 1; set < states; set++) {
        const low = set & -set
        remember[at + set] = remember[at + (set ^ low)]! | bits[31 - Math.clz32(low)]!
      }
      if ((blocks | needs) !== 0)
        for (let set = 0; set < states; set++)
          if ((set & blocks) !== 0 || (set & needs) !== needs) remember[at + set] = forbidden
    }
  }
  const states = offset[size]!
  return {
    near,
    always,
    offset,
    rest: new Float64Array(size * states),
    arcs: { first, from: Int32Array.from(from), table: Int32Array.from(table) },
    remember,
    next: new Int32Array(size * states),
  }
}
