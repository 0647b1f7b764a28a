import { type Aim, aimsOf } from './aim.ts'
import { angleOrder } from './angles-at-strokes.ts'
import { canBeTold } from './can-be-told.ts'
import { isMovable, type OutOfReach, outOfReach, reachEnds } from './out-of-reach.ts'
import { rowShifts } from './row-shifts.ts'
import type { SearchSpace } from './search-space.ts'
import { settledStrokes } from './settled-strokes.ts'
import { waitsForLook } from './waits-for-look.ts'

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
 * Aims for what adjusters can do. What they cannot is named and aimed at no more: no adjuster should hide a
 * bent part, nor spoil the rest for it.
 *
 * @source own derivation: docs/methods/moves.md
 */
export function aimsInReach(space: SearchSpace, threshold: number): AimsInReach {
  const missed: OutOfReach[] = []
  const lost = new Set<number>()
  const note = (i: number, value: number, alone: boolean) => {
    const said = outOfReach(space, i, value, { alone, lost: [...lost] })
    if (said) missed.push(said)
  }
  const wanted = aimsOf(space.rows, threshold).map((aim, i) => {
    if (!aim || isMovable(space, i)) return aim
    if (waitsForLook(space, i)) return null
    note(i, space.rows[i]!.now.value, true)
    return null
  })
  const ends = reachEnds(space, wanted)
  // a wheel's own readings first: what they lack explains what their sums and differences lack
  const own = [...wanted.keys()].sort((a, b) => space.rows[a]!.terms.length - space.rows[b]!.terms.length)
  for (const i of own) {
    const end = ends[i]
    if (end === null || end === undefined) continue
    if (!waitsForLook(space, i)) note(i, end, true)
    lost.add(i)
  }
  let aims = wanted.map((aim, i) => (lost.has(i) ? null : aim))
  for (let crossed = inTheWay(space, aims); crossed !== null; crossed = inTheWay(space, aims)) {
    note(crossed.row, crossed.value, false)
    lost.add(crossed.row)
    const { row } = crossed
    aims = aims.map((aim, i) => (i === row ? null : aim))
  }
  return { aims, missed, judged: aims.flatMap((aim, i) => (aim ? [i] : [])) }
}

/**
 * A row that stays outside when all limits that still hold are asked for together, without guard bands. Of
 * several, first one that two wheels make together (a wheel's own limit is kept before it), then the one that
 * is farthest out for its width.
 */
function inTheWay(
  space: SearchSpace,
  aims: readonly (Aim | null)[],
): { readonly row: number; readonly value: number } | null {
  const bare = aims.map((aim) => (aim ? { ...aim, safe: aim.half } : null))
  const plain = new Float64Array(angleOrder.length * space.wheels.length)
  const told = [...space.axes.keys()].filter((j) => canBeTold(space.axes[j]!))
  const { strokes } = settledStrokes(space, bare, plain, told)
  const change = rowShifts(space, strokes, plain)
  const outside = bare.flatMap((aim, row) => {
    if (!aim) return []
    const value = space.rows[row]!.now.value + change[row]!
    const excess = (Math.abs(value - aim.middle) - aim.half) / aim.half
    return excess > nearMiss ? [{ row, value, excess, shared: space.rows[row]!.terms.length > 1 }] : []
  })
  outside.sort((a, b) => Number(b.shared) - Number(a.shared) || b.excess - a.excess)
  return outside[0] ?? null
}
