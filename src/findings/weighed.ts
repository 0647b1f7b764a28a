import { checkProblem } from './check-problem.ts'
import { type EvidenceRows, evidenceRows } from './evidence-rows.ts'
import { familiesOf } from './families-of.ts'
import type { Family } from './family.ts'
import type { ExaminedWheel, FindingsProblem } from './findings-problem.ts'
import type { History } from './history.ts'
import { historyOf } from './history-of.ts'
import { type Hypothesis, hypothesisOf, type StoryWeights } from './hypothesis.ts'
import { knobsOf } from './knobs.ts'
import { logOfChecks } from './log-of-checks.ts'
import { logOfRoad } from './log-of-road.ts'
import { logSum } from './log-sum.ts'
import { pairsOf } from './pairs-of.ts'
import { type OwnFrequencies, priorOfSuspects } from './prior-of-suspects.ts'
import { renewedShare } from './renewed-share.ts'
import { type SoundHypothesis, soundHypothesis } from './sound-hypothesis.ts'
import { soundShare, storyShares } from './suspect-priors.ts'
import { outOfAdjustment } from './suspects-of.ts'
import { vehicleModel } from './vehicle-model.ts'
import { fourWheels, playName } from './vehicle-vector.ts'

/** All suspects weighed by all evidence; lists start with "no part at fault". */
export interface Weighed {
  readonly problem: FindingsProblem
  readonly rows: EvidenceRows
  readonly histories: readonly History[]
  readonly sound: SoundHypothesis
  readonly hypotheses: readonly Hypothesis[]
  /** Log chance of what hands, eyes and the road found. */
  readonly hand: readonly number[]
  /** Log evidence of everything, and how well each explains it at its best. */
  readonly evidence: readonly number[]
  readonly explains: readonly number[]
  readonly priors: readonly number[]
  /** Two faults at once, by numbers of hypotheses, where no single one explains it. */
  readonly pairs: readonly { readonly members: readonly [number, number]; readonly belief: number }[]
  /** Share of belief of each. */
  readonly beliefs: readonly number[]
  /** The vehicle's numbers as it stands. */
  readonly numbers: Float64Array
}

const slipStories: StoryWeights = { 'set before': 1 }
const lateStories: StoryWeights = {
  'set before': storyShares['set before'] + storyShares['set after'],
  anywhere: storyShares.anywhere,
}

/**
 * Everything that was measured and found, against every suspect.
 *
 * @throws {Refusal} what the linkage says where an axle cannot stand as it was read; `setting-out-of-range`; `no-such-point`
 * @source own derivation: docs/methods/findings.md
 */
export function weighed(
  problem: FindingsProblem,
  {
    frequencies = {},
    spreads = 1,
  }: { readonly frequencies?: OwnFrequencies; readonly spreads?: number } = {},
): Weighed {
  checkProblem(problem, spreads)
  const knobs = problem.axles.flatMap(knobsOf)
  const plays = problem.play.map(({ wheel, joint }) => playName(wheel, joint))
  const travelOf = (height: (wheel: ExaminedWheel) => number) =>
    Object.fromEntries(fourWheels.map((wheel) => [wheel, height(wheel)])) as Record<ExaminedWheel, number>
  const now = vehicleModel(problem.axles, knobs, {
    travel: travelOf((wheel) => problem.heights[wheel]?.value ?? 0),
    turns: Object.keys(problem.turns).length > 0,
    plays,
  })
  const design = vehicleModel(problem.axles, knobs, { travel: travelOf(() => 0), turns: false, plays })
  const rows = evidenceRows(problem, now.numbers)
  const histories = (['set before', 'set after', 'anywhere'] as const).map((story) =>
    historyOf(story, { rows, knobs, now, sound: design, spreads }),
  )
  const families = familiesOf(problem, knobs)
  const hand = [outOfAdjustment, ...families.map(({ suspect }) => suspect)].map(
    (suspect) => logOfChecks(problem.checks, suspect) + logOfRoad(problem, suspect),
  )
  const priors = asShares([
    frequencies.sound ?? soundShare.healthy + soundShare.misadjusted,
    ...priorOfSuspects(families, frequencies).map(
      (share, i) => share * renewedShare(problem, families[i]!.suspect),
    ),
  ])
  const weightsOf = (family: Family): StoryWeights =>
    family.knob === undefined ? (family.late ? lateStories : storyShares) : slipStories
  const hypotheses = refined(
    families.map((family) => hypothesisOf(family, { histories, now, weights: weightsOf(family) })),
    ({ log }, i) => log + hand[i + 1]! + Math.log(priors[i + 1]!),
    ({ family, size }) => {
      const chord = family.main.axles && family.knob === undefined ? now.chord(family.main, size) : null
      return chord && hypothesisOf(family, { histories, now, weights: weightsOf(family), chord })
    },
  )
  const sound = soundHypothesis(histories, hypotheses)
  const evidence = [sound.log, ...hypotheses.map(({ log }) => log)].map((log, i) => log + hand[i]!)
  const logs = evidence.map((log, i) => log + Math.log(priors[i]!))
  const alone = shared(logs)
  const explains = [sound.most + hand[0]!, ...evidence.slice(1)]
  const pairs = pairsOf(histories, hypotheses, { hand, priors, beliefs: alone })
  const together = shared([...logs, ...pairs.map(({ log }) => log)])
  const beliefs = together.slice(0, logs.length)
  const ofPairs = pairs.map(({ members }, k) => ({ members, belief: together[logs.length + k]! }))
  // of a pair each has half
  for (const { members, belief } of ofPairs) for (const i of members) beliefs[i + 1]! += belief / 2
  return {
    problem,
    rows,
    histories,
    sound,
    hypotheses,
    hand,
    evidence,
    explains,
    pairs: ofPairs,
    priors,
    beliefs,
    numbers: now.numbers,
  }
}

function asShares(weights: readonly number[]): readonly number[] {
  const all = weights.reduce((sum, weight) => sum + weight, 0)
  return weights.map((weight) => weight / all)
}

/** Shares of belief of logs. */
function shared(logs: readonly number[]): number[] {
  const all = logSum(logs)
  return logs.map((log) => Math.exp(log - all))
}

/** Those that are so much less likely than the likeliest, as a log, are not gone over again. @source own choice */
const worthAgain = 8
const mostAgain = 12

/** The likely ones once more, with what they do over their whole size in place of its rate. */
function refined(
  hypotheses: readonly Hypothesis[],
  likely: (hypothesis: Hypothesis, i: number) => number,
  again: (hypothesis: Hypothesis) => Hypothesis | null,
): readonly Hypothesis[] {
  const logs = hypotheses.map(likely)
  const order = [...logs.keys()].sort((a, b) => logs[b]! - logs[a]!)
  const best = new Set(order.slice(0, mostAgain).filter((i) => logs[i]! > logs[order[0]!]! - worthAgain))
  return hypotheses.map((one, i) => (best.has(i) && one.size !== 0 ? (again(one) ?? one) : one))
}
