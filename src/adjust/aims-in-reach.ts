import { type Aim, aimsOf } from './aim.ts'
import { angleOrder } from './angles-at-strokes.ts'
import { isMovable, type OutOfReach, outOfReach, reachEnds } from './out-of-reach.ts'
import { rowShifts } from './row-shifts.ts'
import type { SearchSpace } from './search-space.ts'
import { settledStrokes } from './settled-strokes.ts'

/** A reading that misses by less than this share of its half-width is near enough not to be called out of reach. @source own choice */
const nearMiss = 0.02

/** What the search aims for, and what it has to leave. */
export interface AimsInReach {
  /** One per row; null where nothing is wanted or nothing can be done. */
  readonly aims: readonly (Aim | null)[]
  readonly missed: readonly OutOfReach[]
  /** Limited rows that adjusters move and can bring inside: what the moves are judged by. */
  readonly judged: readonly number[]
}

/**
 * Aims for what adjusters can do. What they cannot is named, keeps no more than a pull towards the nearest
 * value that can be reached, and does not push the rest about.
 *
 * @source own derivation: docs/methods/moves.md
 */
export function aimsInReach(space: SearchSpace, threshold: number): AimsInReach {
  const plain = new Float64Array(angleOrder.length * space.wheels.length)
  const missed: OutOfReach[] = []
  const lost = new Set<number>()
  const note = (i: number, value: number, alone: boolean) => {
    const said = outOfReach(space, i, value, alone)
    if (said) missed.push(said)
  }
  let aims = aimsOf(space.rows, threshold).map((aim, i) => {
    if (!aim || isMovable(space, i)) return aim
    note(i, space.rows[i]!.now.value, true)
    return null
  })
  const ends = reachEnds(space, aims)
  aims = aims.map((aim, i) => {
    const end = ends[i]
    if (!aim || end === null || end === undefined) return aim
    note(i, end, true)
    lost.add(i)
    return { ...aim, target: end, holds: false }
  })
  // limits alone, without guard bands: what is still outside then stands in the way of something else
  const bare = aims.map((aim) => (aim ? { ...aim, safe: aim.half } : null))
  const best = settledStrokes(space, bare, plain, [...space.axes.keys()])
  const change = rowShifts(space, best.strokes, plain)
  bare.forEach((aim, i) => {
    if (!aim || lost.has(i)) return
    const value = space.rows[i]!.now.value + change[i]!
    if (Math.abs(value - aim.middle) - aim.half <= nearMiss * aim.half) return
    note(i, value, false)
    lost.add(i)
  })
  return { aims, missed, judged: aims.flatMap((aim, i) => (aim && !lost.has(i) ? [i] : [])) }
}
