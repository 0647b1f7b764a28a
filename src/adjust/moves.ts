import { Refusal } from '../quantity/index.ts'
import type { AdjustRefusal } from './adjuster.ts'
import { aimsInReach } from './aims-in-reach.ts'
import { angleOrder } from './angles-at-strokes.ts'
import { type Candidate, chanceOf, judgedCandidate } from './candidate.ts'
import { exactOffsets } from './exact-offsets.ts'
import { fewestAdjusters } from './fewest.ts'
import { type Judge, judgeOf } from './judge.ts'
import type { Moves } from './moves-answer.ts'
import { movesAnswer } from './moves-as-said.ts'
import { onSteps } from './on-steps.ts'
import type { MovesOptions, MovesProblem } from './problem.ts'
import { readingRows } from './reading-rows.ts'
import { type SearchSpace, searchSpace } from './search-space.ts'
import { settledStrokes } from './settled-strokes.ts'

/** Moves must add this much chance, or double it, to be worth a hand. @source own choice */
const worth = 0.05
/** Rounds in which an exact pose corrects the polynomial. @source own choice */
const corrections = 2

/**
 * The moves: which adjusters to turn, how far and in which order, so that all readings come inside together
 * with the fewest adjusters, near their preferred values, on real steps, within range; with what camber and
 * caster moves do to toe taken back by the toe that is set last.
 *
 * @param options threshold (0.95), seed (1), draws (2000)
 * @returns the same for the same problem and options; what lies out of reach is named with the rest brought inside
 * @throws {Refusal} `bad-option`; `bad-limit`; `no-reading`; `bad-adjuster`; `repeated-id`; `setting-out-of-range`; `no-such-point`
 * @assumes the corner's points, or the learned response, describe how this vehicle answers
 * @source own derivation: docs/methods/moves.md; JCGM 101:2008 for the probabilities
 */
export function moves(problem: MovesProblem, options: MovesOptions = {}): Moves {
  const { threshold = 0.95, seed = 1, draws = 2000 } = checkedOptions(options)
  const { rows, notRead } = readingRows(problem)
  const space = searchSpace(problem, rows)
  const still = Float64Array.from(space.axes, (axis) => axis.baseStroke)
  const plain = new Float64Array(angleOrder.length * space.wheels.length)
  const { aims, missed, judged } = aimsInReach(space, threshold)
  const judge = judgeOf(space, { draws, seed })
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
    if (made.chance < nothing.chance + worth && made.chance <= 2 * nothing.chance) {
      made = nothing
      offsets = plain
    }
  }
  return movesAnswer(space, judge, { made, nothing, offsets, missed, notRead, threshold })
}

function eachProven(judge: Judge, space: SearchSpace, judged: readonly number[], threshold: number): boolean {
  const none = new Float64Array(space.rows.length)
  return judged.every((i) => chanceOf(space, judge, [i], none, []) >= threshold)
}

function checkedOptions(options: MovesOptions): MovesOptions {
  const { threshold = 0.95, seed = 1, draws = 2000 } = options
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
