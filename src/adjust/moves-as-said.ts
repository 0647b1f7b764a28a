import type { Measured, Part } from '../measure/index.ts'
import type { Axis } from './axis.ts'
import { canBeTold } from './can-be-told.ts'
import { type Candidate, chanceOf } from './candidate.ts'
import { exactOffsets } from './exact-offsets.ts'
import { handOf } from './hand-of.ts'
import { isForToe } from './job-of.ts'
import type { Judge } from './judge.ts'
import { moveNoises, type NamedNoise } from './move-noises.ts'
import type { Foreseen, Move, Moves } from './moves-answer.ts'
import { movesSentence } from './moves-sentence.ts'
import { orderOfMoves } from './order-of-moves.ts'
import type { OutOfReach } from './out-of-reach.ts'
import type { RowName } from './reading-rows.ts'
import { rowShifts } from './row-shifts.ts'
import type { SearchSpace } from './search-space.ts'

/** What was found, before it is put into words. */
export interface Outcome {
  readonly made: Candidate
  readonly nothing: Candidate
  readonly offsets: Float64Array
  readonly missed: readonly OutOfReach[]
  readonly notRead: Moves['notRead']
  readonly threshold: number
}

/**
 * Puts settings into moves in trade order, and says what is foreseen of every reading after each of them.
 *
 * @source own derivation: docs/methods/moves.md
 */
export function movesAnswer(space: SearchSpace, judge: Judge, outcome: Outcome): Moves {
  const { made, nothing, offsets } = outcome
  const order = space.axes
    .filter((axis, j) => made.settings[j] !== axis.base)
    .sort((a, b) => orderOfMoves(space, a, b))
  const list = order.map((axis, k): Move => {
    const job = space.jobs[space.axes.indexOf(axis)]!
    const to = made.settings[space.axes.indexOf(axis)]!
    const { adjuster, on, base, known } = axis
    return {
      order: k + 1,
      end: space.ends[axis.axle]!,
      side: on,
      adjuster,
      job,
      from: base,
      to,
      known,
      hand: handOf(adjuster, on, { from: base, to, known }),
      before:
        space.ends[axis.axle] === 'front' && isForToe(job)
          ? 'centre the steering wheel and hold it there'
          : '',
    }
  })
  const noises = moveNoises(space, judge, made)
  const change = rowShifts(space, made.strokes, offsets)
  const none = new Float64Array(space.rows.length)
  const paths = pathsOf(space, made.strokes, order)
  const said = space.rows.map((row, i): Omit<Foreseen, 'name'> & { readonly name: RowName } => ({
    name: row.name,
    now: row.now,
    after: withNoises(row.now, change[i]!, noises, i),
    path: paths.map((path) => row.now.value + path[i]!),
    insideNow: row.limit ? chanceOf(space, judge, [i], none, []) : null,
    insideAfter: row.limit ? chanceOf(space, judge, [i], change, noises) : null,
  }))
  const foreseen = said.filter((one): one is Foreseen => one.name !== 'steering wheel')
  const wheel = said.find(({ name }) => name === 'steering wheel')
  const limited = space.rows.flatMap((row, i) => (row.limit ? [i] : []))
  const insideNow = chanceOf(space, judge, limited, none, [])
  const insideAfter = chanceOf(space, judge, limited, change, noises)
  const rest = {
    moves: list,
    foreseen,
    insideNow,
    insideAfter,
    reachableNow: nothing.chance,
    reachableAfter: made.chance,
    steeringWheel: wheel
      ? {
          now: wheel.now,
          after: wheel.after,
          insideNow: wheel.insideNow,
          insideAfter: wheel.insideAfter,
        }
      : null,
    readFirst: readFirst(space, change),
    outOfReach: outcome.missed,
    notRead: outcome.notRead,
  }
  return { ...rest, sentence: movesSentence(rest, outcome.threshold) }
}

/** Changes of every row after each move in turn, by exact poses and what recorded moves have taught. */
function pathsOf(space: SearchSpace, goal: Float64Array, order: readonly Axis[]) {
  let strokes = Float64Array.from(space.axes, (axis) => axis.baseStroke)
  let offsets = exactOffsets(space, strokes)
  return order.map((axis) => {
    const j = space.axes.indexOf(axis)
    const next = strokes.slice()
    next[j] = goal[j]!
    offsets = exactOffsets(space, next, { strokes, offsets })
    strokes = next
    return rowShifts(space, strokes, offsets)
  })
}

/** What nobody has looked at and what moves a reading that stays out. */
function readFirst(space: SearchSpace, change: Float64Array): Moves['readFirst'] {
  return space.axes.flatMap((axis, j) => {
    const helps = space.rows.some(
      ({ now, limit }, i) =>
        limit &&
        (now.value + change[i]! < limit.low || now.value + change[i]! > limit.high) &&
        space.touches[i * space.axes.length + j],
    )
    return helps && !canBeTold(axis)
      ? [{ end: space.ends[axis.axle]!, side: axis.on, adjuster: axis.adjuster }]
      : []
  })
}

function withNoises(now: Measured, change: number, noises: readonly NamedNoise[], i: number): Measured {
  const parts: Part[] = noises
    .filter((noise) => noise.effect[i] !== 0)
    .map((noise) => ({
      source: noise.source,
      effect: noise.effect[i]! * noise.spread,
      shape: 'normal',
      dof: Number.POSITIVE_INFINITY,
    }))
  return { value: now.value + change, parts: [...now.parts, ...parts] }
}
