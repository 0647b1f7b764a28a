import type { Instance } from './instance.ts'
import { type Relaxation, relaxation } from './relaxation.ts'
import { walkBack } from './walk-back.ts'

/** What a bound rests on: what is remembered where, what is never forgotten, and the prices. */
export interface Footing {
  readonly near: Relaxation['near']
  readonly tracked: readonly number[]
  readonly price: Float64Array
}

/** A bound under way: prices that climb and memories that grow. */
export interface Ascent {
  /** The best bound so far. */
  readonly bound: () => number
  readonly footing: () => Footing
  /** Turns with the present memories, towards `wanted`. @param goOn is told the work of each turn */
  readonly climb: (turns: number, wanted: number, goOn: (looked: number) => boolean) => void
  /** Remembers more where the walks went wrong, up to `most` actions at one. @returns whether anything was added */
  readonly grow: (most: number) => boolean
  /** Never forgets the action most often met wrongly. @returns whether there was one */
  readonly track: () => boolean
  /** States in the present relaxation. */
  readonly states: () => number
}

/** How much of the last direction is kept, by trial. */
const momentum = 0.7

/**
 * The Lagrangian ascent: an action come to too often gets dearer, one left out cheaper, until the cheapest walk
 * is nearly an order. Where it repeats an action or comes to one too late, more is remembered.
 */
export function ascent(inst: Instance): Ascent {
  const { size, earlier, words } = inst
  const near: number[][] = Array.from({ length: size }, () => [])
  const tracked: number[] = []
  let relaxed = relaxation(inst, near, tracked)
  let price = new Float64Array(size)
  let best = 0
  let bestPrice = new Float64Array(size)
  let pace = 1
  /** Wrong turns met since the last growth, by the action and what lay between its two places. */
  let wrong = new Map<string, { count: number; lost: number; between: number[] }>()
  const isEarlier = (a: number, b: number) => (earlier[b * words + (a >>> 5)]! >>> (a & 31)) & 1

  function note(walk: Int32Array): void {
    for (let b = 1; b < size; b++)
      for (let a = b - 1; a >= 0; a--) {
        const lost = walk[b]!
        if (walk[a] !== lost && !isEarlier(lost, walk[a]!)) continue
        const between = [...new Set(walk.slice(a + 1, b))].sort((x, y) => x - y)
        const key = `${lost}|${between.join(' ')}`
        const known = wrong.get(key)
        if (known) known.count++
        else wrong.set(key, { count: 1, lost, between })
        break
      }
  }

  function climb(turns: number, wanted: number, goOn: (looked: number) => boolean): void {
    let stale = 0
    const direction = new Float64Array(size)
    const visits = new Int32Array(size)
    for (let turn = 0; turn < turns && best < wanted && pace > 0.002; turn++) {
      const walk = walkBack(inst, relaxed, price)
      if (!walk) throw new Error('No walk, although every order is one.')
      if (walk.bound > best + 1e-7 * Math.abs(best)) {
        best = walk.bound
        bestPrice = price.slice()
        stale = 0
      } else if (++stale > 7) {
        pace /= 2
        stale = 0
        price = bestPrice.slice()
        direction.fill(0)
      }
      note(walk.actions)
      visits.fill(0)
      for (const i of walk.actions) visits[i]!++
      let length = 0
      for (let i = 0; i < size; i++) {
        direction[i] = 1 - visits[i]! + momentum * direction[i]!
        length += direction[i]! ** 2
      }
      if (!goOn(walk.looked) || length === 0) return
      const stride = (pace * Math.max(wanted - walk.bound, 0.001 * Math.abs(wanted))) / length
      for (let i = 0; i < size; i++) price[i]! += stride * direction[i]!
    }
  }

  function begin(): void {
    relaxed = relaxation(inst, near, tracked)
    wrong = new Map()
    pace = 1
    price = bestPrice.slice()
  }

  function grow(most: number): boolean {
    let added = false
    const ranked = [...wrong.values()].sort(
      (x, y) => y.count - x.count || x.between.length - y.between.length || x.lost - y.lost,
    )
    for (const { lost, between } of ranked) {
      const lacking = between.filter((k) => k !== lost && !near[k]!.includes(lost))
      if (lacking.some((k) => near[k]!.length >= most)) continue
      for (const k of lacking) near[k]!.push(lost)
      if (lacking.length > 0) added = true
    }
    if (added) begin()
    return added
  }

  function track(): boolean {
    const score = new Float64Array(size)
    for (const { count, lost } of wrong.values()) score[lost]! += count
    let worst = -1
    for (let i = 0; i < size; i++)
      if (score[i]! > 0 && !tracked.includes(i) && (worst < 0 || score[i]! > score[worst]!)) worst = i
    if (worst < 0) return false
    tracked.push(worst)
    for (let i = 0; i < size; i++) if (i !== worst && !near[i]!.includes(worst)) near[i]!.push(worst)
    begin()
    return true
  }

  return {
    bound: () => best,
    footing: () => ({ near, tracked, price: bestPrice }),
    climb,
    grow,
    track,
    states: () => relaxed.rest.length,
  }
}
