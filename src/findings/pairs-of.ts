import type { History } from './history.ts'
import { type Explained, type Hypothesis, logShare, sizeOf } from './hypothesis.ts'
import { logEvidence, type Unknown } from './log-evidence.ts'
import { logSum } from './log-sum.ts'
import { storyShares } from './suspect-priors.ts'

/** Two faults at once. */
export interface Pair {
  /** Numbers of its two hypotheses. */
  readonly members: readonly [number, number]
  /** Log of evidence and prior together. */
  readonly log: number
}

/** Of vehicles with a fault, those with two. @source from memory, common practice, no source */
const twoAtOnce = 0.08
/** Where the best leaves so much more than it should, in standard deviations of what it leaves, pairs are looked at. @source own choice */
const bad = 3
/** So many likely ones are paired with so many frequent ones: time is bounded. @source own choice */
const likely = 6
const frequent = 20

/** Whether even the best explanation leaves more of the rows than chance does. */
export function leavesMuch({ left }: Explained): boolean {
  const n = left.length
  const squares = left.reduce((sum, x) => sum + x * x, 0)
  return (squares - n) / Math.sqrt(2 * n) > bad
}

/**
 * Pairs of faults that may explain together what none explains alone: the likeliest singles, each with the most
 * frequent others.
 *
 * @param hand log chance of what hands found, first "no part at fault"
 * @param priors of the same, first "no part at fault"
 * @source own derivation: docs/methods/findings.md
 */
export function pairsOf(
  histories: readonly History[],
  hypotheses: readonly Hypothesis[],
  {
    hand,
    priors,
    beliefs,
  }: {
    readonly hand: readonly number[]
    readonly priors: readonly number[]
    readonly beliefs: readonly number[]
  },
): readonly Pair[] {
  const usable = hypotheses.map((_, i) => i).filter((i) => hypotheses[i]!.family.knob === undefined)
  const by = (of: readonly number[]) => [...usable].sort((a, b) => of[b + 1]! - of[a + 1]!)
  const [firsts, seconds] = [by(beliefs).slice(0, likely), by(priors).slice(0, frequent)]
  const faulty = 1 - priors[0]!
  const told = new Set<string>()
  return firsts.flatMap((a) =>
    seconds.flatMap((b): Pair[] => {
      const key = [Math.min(a, b), Math.max(a, b)].join()
      if (a === b || told.has(key)) return []
      told.add(key)
      const prior = (twoAtOnce * 2 * priors[a + 1]! * priors[b + 1]!) / faulty
      const log = logOfPair(histories, hypotheses[a]!, hypotheses[b]!)
      return [{ members: [a, b], log: log + hand[a + 1]! + hand[b + 1]! - hand[0]! + Math.log(prior) }]
    }),
  )
}

function logOfPair(histories: readonly History[], a: Hypothesis, b: Hypothesis): number {
  return logSum(
    histories.map((history) => {
      const unknowns = [a, b].flatMap((one) => unknownsOf(history, one))
      const cut = [a, b].reduce((sum, one) => sum + logCut(one), 0)
      return Math.log(storyShares[history.story]) + logEvidence(history, unknowns).log - cut
    }),
  )
}

/** Size and side ways; a size that may go both ways is one normal about nothing, as wide as both together. */
function unknownsOf(history: History, { family, main, sides }: Hypothesis): readonly Unknown[] {
  const { mean, spread, low, high, back } = sizeOf(family)
  const column = family.late ? history.lately : history.column
  const wide = Math.hypot(mean, spread)
  const size: Unknown =
    back > 0
      ? { column: scaled(column(main), wide), mean: 0, low: -high / wide, high: high / wide }
      : { column: scaled(column(main), spread), mean: mean / spread, low: low / spread, high: high / spread }
  return [
    size,
    ...family.also.map(
      ({ spread: s, mean: m = 0 }, i): Unknown => ({
        column: scaled(column(sides[i]!), s),
        mean: m / s,
        low: Number.NEGATIVE_INFINITY,
        high: Number.POSITIVE_INFINITY,
      }),
    ),
  ]
}

function logCut({ family }: Hypothesis): number {
  const prior = sizeOf(family)
  if (prior.back === 0) return logShare(prior)
  return logShare({ ...prior, mean: 0, spread: Math.hypot(prior.mean, prior.spread), low: -prior.high })
}

const scaled = (column: Float64Array, k: number): Float64Array => column.map((x) => k * x)
