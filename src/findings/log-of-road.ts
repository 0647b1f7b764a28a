import type { ReadingName } from '../linkage/index.ts'
import { roadChances } from './check-chances.ts'
import type { FindingsProblem, RoadAnswer } from './findings-problem.ts'
import type { Suspect } from './suspect.ts'

const degree = Math.PI / 180
/** Degrees of cross camber or cross caster that are felt: a pull of 1. @source common practice, no source */
const felt = 0.6
/** A pull that people notice, and how sharply. @source from memory, common practice, no source */
const noticed = 0.9
const sharpness = 4
/** What a tyre that pulls does to either side, in pulls. @source from memory, common practice, no source */
const tyrePulls = [-1.8, -1.3, -0.9, 0.9, 1.3, 1.8] as const

/**
 * Log chance of what the road answered, if this suspect is the cause. A pull is expected from cross camber and cross
 * caster as they were read; a tyre pulls without them, and swaps sides with the wheels.
 *
 * @source own derivation: docs/methods/findings.md
 */
export function logOfRoad(problem: FindingsProblem, suspect: Suspect): number {
  const answers = new Map(problem.road.map(({ question, answer }) => [question, answer]))
  const tyre = suspect.kind === 'tyre pulls'
  return logOfPull(problem, answers, tyre) + logOfLooseness(answers, suspect)
}

type Answers = ReadonlyMap<RoadAnswer['question'], boolean>

function logOfPull({ readings }: FindingsProblem, answers: Answers, tyre: boolean): number {
  const [left, right] = [answers.get('pulls to the left'), answers.get('pulls to the right')]
  if (left === undefined && right === undefined) return 0
  const cross = (angle: 'camber' | 'caster'): number => {
    const own = readings[`front cross ${angle}` as ReadingName]?.value
    const [a, b] = (['left', 'right'] as const).map((side) => readings[`front ${side} ${angle}`]?.value)
    return own ?? (a !== undefined && b !== undefined ? a - b : 0)
  }
  const angles = (cross('camber') - cross('caster')) / degree / felt
  const seen = (pull: number): number => {
    const [toLeft, toRight] = [noticedAt(pull), noticedAt(-pull)]
    return left ? toLeft : right ? toRight : (1 - toLeft) * (1 - toRight)
  }
  const pulls = tyre ? tyrePulls.map((by) => angles + by) : [angles - 0.3, angles, angles + 0.3]
  const log = Math.log(pulls.reduce((sum, pull) => sum + seen(pull), 0) / pulls.length)
  const swaps = answers.get('pull swaps with the front wheels')
  if (swaps === undefined) return log
  const explained = Math.abs(angles) > noticed / 2
  const p = roadChances.swaps[tyre ? 'tyre' : explained ? 'explained' : 'unexplained']
  return log + Math.log(swaps ? p : 1 - p)
}

const noticedAt = (pull: number): number => 1 / (1 + Math.exp(-sharpness * (pull - noticed)))

function logOfLooseness(answers: Answers, { kind }: Suspect): number {
  const loose = /^(worn|loose)/.test(kind)
  const of = (question: RoadAnswer['question'], p: number): number => {
    const answer = answers.get(question)
    return answer === undefined ? 0 : Math.log(answer ? p : 1 - p)
  }
  const { wanders, knocks } = roadChances
  return (
    of('wanders', loose ? wanders.loose : wanders.other) +
    of('knocks over bumps', loose || kind === 'collapsed bush' ? knocks.loose : knocks.other)
  )
}
