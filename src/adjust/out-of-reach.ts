import type { ReadingName } from '../linkage/index.ts'
import type { Aim } from './aim.ts'
import type { Axis } from './axis.ts'
import { canBeTold } from './can-be-told.ts'
import type { FaultKind } from './fault-kinds.ts'
import { faultKindsFor } from './fault-kinds-for.ts'
import { isToeRow } from './is-toe-row.ts'
import { isForToe } from './job-of.ts'
import { rowChanges } from './row-changes.ts'
import { rowShifts } from './row-shifts.ts'
import type { SearchSpace } from './search-space.ts'

/** A reading that stays outside whatever is turned. @source definition */
export interface OutOfReach {
  readonly reading: ReadingName
  /** How far from the limit the reach ends, rad, positive. */
  readonly by: number
  /** Which limit it cannot meet. */
  readonly beyond: 'low' | 'high'
  readonly why: 'no adjuster moves it' | 'the adjusters end' | 'the adjusters are needed elsewhere'
  /** Kinds of fault that could hold it there; the findings decide. */
  readonly mayBe: readonly FaultKind[]
  readonly sentence: string
}

/** Below this nobody could read it, so it does not count as outside, rad. @source own choice */
const hair = 1e-6
/** A hundredth of a degree, rad. @source own choice */
const least = 1.7e-4
/** A sleeve is looked at in steps of its own, but not finer than 5°. @source own choice */
const fineTurn = Math.PI / 36

/**
 * Readings that lie outside and cannot be brought inside by themselves, with the value nearest to the limit
 * that can be reached: every axis goes to the end that helps.
 *
 * @returns one entry per row, null where the row is inside, unlimited or in reach
 * @source own derivation: docs/methods/moves.md
 */
export function reachEnds(space: SearchSpace, aims: readonly (Aim | null)[]): (number | null)[] {
  const still = Float64Array.from(space.axes, (axis) => axis.baseStroke)
  const offsets = new Float64Array(4 * space.wheels.length)
  return aims.map((aim, i) => {
    if (!aim) return null
    const row = space.rows[i]!
    const now = row.now.value
    const away = Math.abs(now - aim.middle) - aim.half
    if (away <= hair) return null
    const wanted = now > aim.middle ? -1 : 1
    let best = now
    const strokes = still.slice()
    for (let round = 0; round < 3; round++) {
      const { slope } = rowChanges(space, strokes, offsets)
      space.axes.forEach((axis, j) => {
        if (!serves(space, j, i) || !canBeTold(axis)) return
        const g = slope[i * space.axes.length + j]!
        if (axis.adjuster.kind === 'offset sleeve')
          strokes[j] = bestOnCircle(axis, (turn) => wanted * changeAt(space, i, strokes, j, turn))
        else if (g !== 0) strokes[j] = g * wanted > 0 ? axis.high : axis.low
      })
      const reached = now + rowChanges(space, strokes, offsets).change[i]!
      if ((reached - best) * wanted > 0) best = reached
    }
    const leftOver = wanted > 0 ? aim.middle - aim.half - best : best - aim.middle - aim.half
    return leftOver > hair ? best : null
  })
}

/**
 * Says of one row, which would end at `value`, by how much it misses and what could hold it there.
 *
 * @source own derivation: docs/methods/moves.md
 */
export function outOfReach(
  space: SearchSpace,
  i: number,
  value: number,
  { alone, lost }: { readonly alone: boolean; readonly lost: readonly number[] },
): OutOfReach | null {
  const row = space.rows[i]!
  const { name } = row
  // where the steering wheel will stand is said by itself
  if (!row.limit || name === 'steering wheel') return null
  const by = Math.max(row.limit.low - value, value - row.limit.high)
  if (!(by > hair)) return null
  const beyond = value < row.limit.low ? 'low' : 'high'
  const movable = isMovable(space, i)
  const why = !movable
    ? 'no adjuster moves it'
    : alone
      ? 'the adjusters end'
      : 'the adjusters are needed elsewhere'
  const degrees = `${((by * 180) / Math.PI).toFixed(2)}°`
  const because = lost.map((j) => space.rows[j]!).find((other) => hangsOn(row, other))
  const mayBe = because
    ? []
    : faultKindsFor(name, wheelsOf(space, i)).filter((kind) => !space.unlikely.includes(kind))
  const side = beyond === 'low' ? 'below its lower limit' : 'above its upper limit'
  const start = !movable
    ? `${name} lies ${degrees} ${side} and no adjuster moves it`
    : because
      ? `${name} cannot come inside as long as ${because.name} is out of reach`
      : alone
        ? `${name}: the reach ends ${degrees} ${side}`
        : `${name} stays ${degrees} ${side}, because the same adjusters are needed for the other readings`
  return { reading: name, by, beyond, why, mayBe, sentence: `${start}.` }
}

/**
 * Whether some adjuster is there to set this row: it moves it by more than a hundredth of a degree over its
 * range, and it is not a toe adjuster asked to set camber or caster.
 *
 * @source own derivation: docs/methods/moves.md
 */
export function isMovable(space: SearchSpace, i: number): boolean {
  const still = Float64Array.from(space.axes, (axis) => axis.baseStroke)
  const { slope } = rowChanges(space, still, new Float64Array(4 * space.wheels.length))
  const count = space.axes.length
  return space.axes.some((axis, j) => {
    if (!serves(space, j, i) || !canBeTold(axis)) return false
    if (axis.adjuster.kind !== 'offset sleeve')
      return Math.abs(slope[i * count + j]!) * (axis.high - axis.low) > least
    const at = (turn: number) => changeAt(space, i, still, j, turn)
    return at(bestOnCircle(axis, at)) - at(bestOnCircle(axis, (turn) => -at(turn))) > least
  })
}

/** What row i changes by with axis j at a turn and the others at these strokes. */
function changeAt(space: SearchSpace, i: number, strokes: Float64Array, j: number, turn: number): number {
  const there = strokes.slice()
  there[j] = turn
  return rowShifts(space, there, new Float64Array(4 * space.wheels.length))[i]!
}

/** The turn of a sleeve, on its steps, where something is most. */
function bestOnCircle({ adjuster, base }: Axis, of: (turn: number) => number): number {
  const [low, high] = adjuster.range
  const step = Math.max(adjuster.step, fineTurn)
  let [best, most] = [base, of(base)]
  for (let k = Math.ceil((low - base) / step); base + k * step <= high + 1e-9; k++) {
    const there = of(base + k * step)
    if (there > most) [best, most] = [base + k * step, there]
  }
  return best
}

/** The wheels of the axles that a row is read at: a rear beam bends no front wheel. */
function wheelsOf({ wheels, rows }: SearchSpace, i: number): SearchSpace['wheels'] {
  const axles = new Set(rows[i]!.terms.map(({ wheel }) => wheel >> 1))
  return wheels.filter((_, w) => axles.has(w >> 1))
}

/** Whether a reading that two wheels make together contains the other, a wheel's own. */
const hangsOn = (row: SearchSpace['rows'][number], other: SearchSpace['rows'][number]): boolean =>
  row.terms.length > 1 &&
  other.terms.length === 1 &&
  row.terms.some((one) => one.wheel === other.terms[0]!.wheel && one.angle === other.terms[0]!.angle)

function serves(space: SearchSpace, j: number, i: number): boolean {
  const { name } = space.rows[i]!
  return isToeRow(name) || !isForToe(space.jobs[j]!)
}
