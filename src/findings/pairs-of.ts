import type { History } from './history.ts'
import { type Explained, type Hypothesis, logShare, sizeOf } from './hypothesis.ts'
import { logEvidence, type Unknown } from './log-evidence.ts'
import { logSum } from './log-sum.ts'
import { scaledColumn } from './scaled-column.ts'
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
/** A second fault that gains less than this, as a log, for what a first one leaves is not looked at. @source own choice */
const worthwhile = 4
/** So many first ones are each paired with so many second ones: time is bounded. @source own choice */
const firstOnes = 4
const secondOnes = 8

/** About what a fault would gain as a second one, for what the first one leaves: as if its size were normal about nothing. */
function gainOf({ left }: Explained, { family }: Hypothesis, column: Float64Array): number {
  const { mean, spread } = sizeOf(family)
  const wide = Math.hypot(mean, spread)
  let [along, square] = [0, 0]
  for (let i = 0; i < left.length; i++) {
    const x = wide * column[i]!
    along += x * left[i]!
    square += x * x
  }
  return 0.5 * ((along * along) / (1 + square) - Math.log(1 + square))
}

/** Two that do the same to the readings would only share out one size between them. @source own choice */
const alike = 0.9

function isLike(x: Float64Array, y: Float64Array): boolean {
  let [along, left, right] = [0, 0, 0]
  for (let i = 0; i < x.length; i++) {
    along += x[i]! * y[i]!
    left += x[i]! ** 2
    right += y[i]! ** 2
  }
  return along * along >= alike ** 2 * left * right
}

/**
 * Pairs of faults that may explain together what none explains alone: the likeliest singles, each with those that
 * gain most for what it leaves and do not do the same.
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
  const firsts = [...usable].sort((a, b) => beliefs[b + 1]! - beliefs[a + 1]!).slice(0, firstOnes)
  const faulty = 1 - priors[0]!
  const told = new Set<string>()
  const columns = new Map<string, Float64Array>()
  /** What a fault does to the rows of a story, after the setting whatever the story says or as the story has it. */
  const columnOf = (history: History, i: number, late: boolean): Float64Array => {
    const key = `${history.story} ${i} ${late}`
    const known = columns.get(key)
    if (known) return known
    const { main } = hypotheses[i]!
    const made = late ? history.lately(main) : history.column(main)
    columns.set(key, made)
    return made
  }
  return firsts.flatMap((a) => {
    const first = hypotheses[a]!.best
    const { history } = first
    const own = columnOf(history, a, true)
    const seconds = usable
      .filter((b) => b !== a && !isLike(own, columnOf(history, b, true)))
      .map((b) => {
        const column = columnOf(history, b, hypotheses[b]!.family.late === true)
        return { b, gain: gainOf(first, hypotheses[b]!, column) }
      })
      .filter(({ gain }) => gain > worthwhile)
      .sort((x, y) => y.gain + Math.log(priors[y.b + 1]!) - x.gain - Math.log(priors[x.b + 1]!))
      .slice(0, secondOnes)
    return seconds.flatMap(({ b }): Pair[] => {
      const key = [Math.min(a, b), Math.max(a, b)].join()
      if (told.has(key)) return []
      told.add(key)
      const prior = (twoAtOnce * 2 * priors[a + 1]! * priors[b + 1]!) / faulty
      const log = logOfPair(histories, hypotheses[a]!, hypotheses[b]!)
      return [{ members: [a, b], log: log + hand[a + 1]! + hand[b + 1]! - hand[0]! + Math.log(prior) }]
    })
  })
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
      ? { column: scaledColumn(column(main), wide), mean: 0, low: -high / wide, high: high / wide }
      : {
          column: scaledColumn(column(main), spread),
          mean: mean / spread,
          low: low / spread,
          high: high / spread,
        }
  return [
    size,
    ...family.also.map(
      ({ spread: s, mean: m = 0 }, i): Unknown => ({
        column: scaledColumn(column(sides[i]!), s),
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
