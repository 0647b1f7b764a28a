import type { Measured, Part } from '../measure/index.ts'
import { Refusal } from '../quantity/index.ts'
import type { AdjustRefusal } from './adjuster.ts'
import { type Aim, aimsOf } from './aim.ts'
import { angleChanges } from './angle-changes.ts'
import { angleOrder, anglesAtStrokes } from './angles-at-strokes.ts'
import { type Candidate, chanceOf, judgedCandidate } from './candidate.ts'
import { fewestAdjusters } from './fewest.ts'
import { handOf } from './hand-of.ts'
import { jobOf } from './job-of.ts'
import { type Judge, judgeOf } from './judge.ts'
import { moveNoises, type NamedNoise } from './move-noises.ts'
import type { Foreseen, Move, Moves } from './moves-answer.ts'
import { movesSentence } from './moves-sentence.ts'
import { onSteps } from './on-steps.ts'
import { orderOfMoves } from './order-of-moves.ts'
import { isMovable, type OutOfReach, outOfReach, reachEnds } from './out-of-reach.ts'
import type { MovesOptions, MovesProblem } from './problem.ts'
import { readingRows } from './reading-rows.ts'
import { rowChanges } from './row-changes.ts'
import { type SearchSpace, searchSpace } from './search-space.ts'
import { settledStrokes } from './settled-strokes.ts'

/** A reading that misses by less than this share of its half-width is near enough not to be called out of reach. @source own choice */
const nearMiss = 0.02
/** Moves must add this much chance, or double it, to be worth a hand. @source own choice */
const worth = 0.05
/** Rounds in which an exact pose corrects the polynomial. @source own choice */
const corrections = 2

/**
 * The moves: which adjusters to turn, how far and in which order, so that all readings come inside together
 * with the fewest adjusters, near their preferred values, on real steps, within range; with what camber and
 * caster moves do to toe taken back by the toe that is set last.
 *
 * @param options threshold (0.95), seed (1), draws (4000)
 * @returns the same for the same problem and options; what lies out of reach is named with the rest brought inside
 * @throws {Refusal} `bad-option`; `bad-limit`; `no-reading`; `bad-adjuster`; `repeated-id`; `setting-out-of-range`; `no-such-point`
 * @assumes the corner's points, or the learned response, describe how this vehicle answers
 * @source own derivation: docs/methods/moves.md; JCGM 101:2008 for the probabilities
 */
export function moves(problem: MovesProblem, options: MovesOptions = {}): Moves {
  const { threshold = 0.95, seed = 1, draws = 4000 } = checkedOptions(options)
  const { rows, notRead } = readingRows(problem)
  const space = searchSpace(problem, rows)
  const still = Float64Array.from(space.axes, (axis) => axis.baseStroke)
  const plain = new Float64Array(angleOrder.length * space.wheels.length)
  const { aims, missed, lost } = aimed(space, aimsOf(rows, threshold), plain)
  const judge = judgeOf(space, { draws, seed })
  const judged = aims.flatMap((aim, i) => (aim && !lost.has(i) ? [i] : []))
  const nothing: Candidate = judgedCandidate(
    space,
    judge,
    { settings: space.axes.map((axis) => axis.base), strokes: still, cost: 0 },
    { judged, offsets: plain },
  )
  let made = nothing
  let offsets: Float64Array = plain
  if (nothing.chance < threshold && !eachProven(judge, space, judged, threshold)) {
    const task = { space, judge, aims, judged, threshold, offsets }
    made = fewestAdjusters(task)
    const touched = space.axes.flatMap((axis, j) => (made.settings[j] === axis.base ? [] : [j]))
    for (let round = 0; round < corrections && touched.length > 0; round++) {
      offsets = exactOffsets(space, made.strokes)
      const settled = settledStrokes(space, aims, offsets, touched)
      made = judgedCandidate(space, judge, onSteps(space, aims, offsets, touched, settled.strokes), {
        judged,
        offsets,
      })
    }
    offsets = exactOffsets(space, made.strokes)
    made = judgedCandidate(space, judge, made, { judged, offsets })
    if (made.chance < nothing.chance + worth && made.chance < 2 * nothing.chance) {
      made = nothing
      offsets = plain
    }
  }
  return answer(space, judge, { made, nothing, offsets, missed, notRead, threshold })
}

/** Aims for what adjusters can do; what they cannot is named, and does not push the rest about. */
function aimed(
  space: SearchSpace,
  first: readonly (Aim | null)[],
  plain: Float64Array,
): { aims: (Aim | null)[]; missed: OutOfReach[]; lost: Set<number> } {
  const missed: OutOfReach[] = []
  const lost = new Set<number>()
  const note = (i: number, value: number, alone: boolean) => {
    const said = outOfReach(space, i, value, alone)
    if (said) missed.push(said)
  }
  let aims = first.map((aim, i) => {
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
  const { change } = rowChanges(space, best.strokes, plain)
  bare.forEach((aim, i) => {
    if (!aim || lost.has(i)) return
    const value = space.rows[i]!.now.value + change[i]!
    if (Math.abs(value - aim.middle) - aim.half <= nearMiss * aim.half) return
    note(i, value, false)
    lost.add(i)
  })
  return { aims, missed, lost }
}

/** What exact poses add to the polynomial at these strokes, rad, [wheel · angles + angle]. */
function exactOffsets(space: SearchSpace, strokes: Float64Array): Float64Array {
  const offsets = new Float64Array(angleOrder.length * space.wheels.length)
  space.wheels.forEach((wheel, w) => {
    const [start, end] = [space.starts[w]!, space.starts[w + 1]!]
    const own = strokes.subarray(start, end)
    const surface = space.surfaces[w]!
    if (own.every((stroke, i) => stroke === surface.at[i])) return
    const exact = anglesAtStrokes(wheel, own)
    const { change } = angleChanges(space, w, strokes)
    const taught = space.taught[w]!
    for (let a = 0; a < angleOrder.length; a++) {
      let by = exact[a]! - surface.value[a]! - change[a]!
      for (let i = 0; i < own.length; i++) by += taught[a * own.length + i]! * (own[i]! - surface.at[i]!)
      offsets[w * angleOrder.length + a] = by
    }
  })
  return offsets
}

function eachProven(judge: Judge, space: SearchSpace, judged: readonly number[], threshold: number): boolean {
  const none = new Float64Array(space.rows.length)
  return judged.every((i) => chanceOf(space, judge, [i], none, []) >= threshold)
}

interface Outcome {
  readonly made: Candidate
  readonly nothing: Candidate
  readonly offsets: Float64Array
  readonly missed: readonly OutOfReach[]
  readonly notRead: Moves['notRead']
  readonly threshold: number
}

function answer(space: SearchSpace, judge: Judge, outcome: Outcome): Moves {
  const { made, nothing, offsets } = outcome
  const order = space.axes
    .filter((axis, j) => made.settings[j] !== axis.base)
    .sort((a, b) => orderOfMoves(space, a, b))
  const list = order.map((axis, k): Move => {
    const to = made.settings[space.axes.indexOf(axis)]!
    const { adjuster, side, base, known } = axis
    return {
      order: k + 1,
      end: space.ends[axis.wheel >> 1]!,
      side,
      adjuster,
      job: jobOf(axis.adjuster, space.surfaces[axis.wheel]!, axis.column),
      from: base,
      to,
      known,
      hand: handOf(adjuster, side, { from: base, to, known }),
    }
  })
  const noises = moveNoises(space, judge, made)
  const { change } = rowChanges(space, made.strokes, offsets)
  const none = new Float64Array(space.rows.length)
  const paths = pathsOf(space, made.strokes, order)
  const foreseen = space.rows.map(
    (row, i): Foreseen => ({
      name: row.name,
      now: row.now,
      after: withNoises(row.now, change[i]!, noises, i),
      path: paths.map((path) => row.now.value + path[i]!),
      insideNow: row.limit ? chanceOf(space, judge, [i], none, []) : null,
      insideAfter: row.limit ? chanceOf(space, judge, [i], change, noises) : null,
    }),
  )
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
    outOfReach: outcome.missed,
    notRead: outcome.notRead,
  }
  return { ...rest, sentence: movesSentence(rest, outcome.threshold) }
}

/** Changes of every row after each move in turn, by exact poses and what recorded moves have taught. */
function pathsOf(space: SearchSpace, goal: Float64Array, order: readonly SearchSpace['axes'][number][]) {
  const strokes = Float64Array.from(space.axes, (axis) => axis.baseStroke)
  return order.map((axis) => {
    const j = space.axes.indexOf(axis)
    strokes[j] = goal[j]!
    return rowChanges(space, strokes, exactOffsets(space, strokes)).change
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

function checkedOptions(options: MovesOptions): MovesOptions {
  const { threshold = 0.95, seed = 1, draws = 4000 } = options
  const wrong = !(threshold > 0.5 && threshold < 1)
    ? 'threshold'
    : !(Number.isInteger(draws) && draws >= 100)
      ? 'draws'
      : !(Number.isInteger(seed) && seed >= 0 && seed < 2 ** 31)
        ? 'seed'
        : null
  if (wrong)
    throw new Refusal<AdjustRefusal>({
      code: 'bad-option',
      at: `options.${wrong}`,
      given: String(options[wrong as keyof MovesOptions]),
      sentence: `The option ${wrong} cannot be ${String(options[wrong as keyof MovesOptions])}.`,
      remedy: 'Give a threshold between 0.5 and 1, at least 100 draws, and a whole number from 0 up as seed.',
    })
  return { threshold, seed, draws }
}
