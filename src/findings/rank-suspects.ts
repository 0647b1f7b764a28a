import { evidenceRows } from './evidence-rows.ts'
import { familiesOf } from './families-of.ts'
import type { Findings, RankedSuspect, SuspectGroup } from './findings.ts'
import type { FindingsProblem } from './findings-problem.ts'
import { ghostOf } from './ghost-of.ts'
import { type History, historyOf, logEvidence } from './history.ts'
import { type Hypothesis, hypothesisOf, logSum } from './hypothesis.ts'
import { knobsOf } from './knobs.ts'
import { logOfChecks } from './log-of-checks.ts'
import { logOfRoad } from './log-of-road.ts'
import { type OwnFrequencies, priorOfSuspects } from './prior-of-suspects.ts'
import { predictionsOf } from './predictions-of.ts'
import { soundShare, storyShares, suspectPriors } from './suspect-priors.ts'
import { outOfAdjustment } from './suspects-of.ts'
import { fourWheels, playName } from './vehicle-vector.ts'
import { tightGroups } from './tight-groups.ts'
import { vehicleModel } from './vehicle-model.ts'

/** How suspects are ranked. @source definition */
export interface FindingsOptions {
  /** The workshop's own frequencies in place of the table's. */
  readonly frequencies?: OwnFrequencies
}

/** Groups are farther apart than this, and a fault is visible from here on, in standard deviations. @source issue of the house: own choice */
const apart = 2
/** A suspect so much less likely than the first of a group stands by itself. @source own choice */
const leastShare = 0.05
/** Below this a first group does not stand out: one that says that no part is at fault, and one that names a part. @source own choice */
const standsOut = { sound: 0.5, fault: 0.75 } as const

/**
 * Which part explains what was read: every suspect of the vehicle with its share of belief, in groups that these
 * readings cannot tell apart.
 *
 * @throws {Refusal} what the linkage says where an axle cannot stand as it was read; `setting-out-of-range`; `no-such-point`
 * @source own derivation: docs/methods/findings.md
 */
export function rankSuspects(problem: FindingsProblem, options: FindingsOptions = {}): Findings {
  const knobs = problem.axles.flatMap(knobsOf)
  const turns = Object.keys(problem.turns).length > 0
  const plays = problem.play.map(({ wheel, joint }) => playName(wheel, joint))
  const level = { 'front left': 0, 'front right': 0, 'rear left': 0, 'rear right': 0 }
  const travel = Object.fromEntries(
    fourWheels.map((wheel) => [wheel, problem.heights[wheel]?.value ?? 0]),
  ) as typeof level
  const now = vehicleModel(problem.axles, knobs, { travel, turns, plays })
  const level_ = vehicleModel(problem.axles, knobs, { travel: level, turns: false, plays })
  const rows = evidenceRows(problem, now.numbers)
  const histories = (['set before', 'set after', 'anywhere'] as const).map((story) =>
    historyOf(story, { rows, knobs, now, sound: level_ }),
  )
  const families = familiesOf(problem, knobs)
  const priors = priorOfSuspects(families, options.frequencies)
  const hypotheses = families.map((family) =>
    hypothesisOf(family, {
      histories,
      knobs,
      now,
      weights: family.knob === undefined ? (family.late ? lateStories : storyShares) : slipStories,
    }),
  )
  const soundPart = options.frequencies?.sound ?? soundShare.healthy + soundShare.misadjusted
  const hand = [outOfAdjustment, ...families.map(({ suspect }) => suspect)].map(
    (suspect) => logOfChecks(problem.checks, suspect) + logOfRoad(problem, suspect),
  )
  const sound = logsOfSound(histories, hypotheses, knobs)
  const geometry = [logSum(sound), ...hypotheses.map(({ log }) => log)]
  const evidence = geometry.map((log, i) => log + hand[i]!)
  const logs = evidence.map((log, i) => log + Math.log(i === 0 ? soundPart : priors[i - 1]!))
  const all = logSum(logs)
  const posteriors = logs.map((log) => Math.exp(log - all))
  const anywhere = histories.find(({ story }) => story === 'anywhere')!
  const places = predictionsOf(anywhere, now, hypotheses)
  // no part at fault is as good as the best way that it may have come
  const explains = [hand[0]! + Math.max(...sound), ...evidence.slice(1)]
  const visible = places.map(({ typical }) => length(typical) >= apart)
  const distance = (a: number, b: number): number => {
    const told = Math.sqrt(2 * Math.abs(explains[a]! - explains[b]!))
    return Math.max(told, between(places[a]!.best, places[b]!.best))
  }
  const ranked = [
    healthySuspect(posteriors[0]!),
    ...hypotheses.map((hypothesis, i) => rankedOf(hypothesis, posteriors[i + 1]!)),
  ]
  const groups = tightGroups(posteriors, distance, { limit: apart, least: leastShare, first: 0 })
    .map((members): SuspectGroup => {
      const suspects = members.map((i) => ranked[i]!).sort((a, b) => b.posterior - a.posterior)
      return { suspects, posterior: suspects.reduce((sum, one) => sum + one.posterior, 0) }
    })
    .sort((a, b) => b.posterior - a.posterior)
  return {
    groups,
    visible: ranked.filter((_, i) => visible[i]).map(({ suspect }) => suspect),
    unexplained: [],
    nextChecks: [],
    cannotTell: !(groups[0]!.posterior >= (holdsSound(groups[0]!) ? standsOut.sound : standsOut.fault)),
  }
}

const holdsSound = ({ suspects }: SuspectGroup): boolean =>
  suspects.some(({ suspect }) => suspect.kind === outOfAdjustment.kind)

const slipStories = { 'set before': 1 }

const lateStories = {
  'set before': storyShares['set before'] + storyShares['set after'],
  anywhere: storyShares.anywhere,
}

/** No part at fault, by how it came: set and left alone, all adjusters anywhere, or one of them somewhere else since. */
function logsOfSound(
  histories: readonly History[],
  hypotheses: readonly Hypothesis[],
  knobs: Parameters<typeof logEvidence>[1],
): readonly number[] {
  const of = (story: History['story']): number =>
    logEvidence(histories.find((one) => one.story === story)!, knobs, []).log
  const slips = hypotheses.filter(({ family }) => family.suspect.kind === 'adjuster slipped or at its stop')
  const total = soundShare.healthy + soundShare.misadjusted
  const misadjusted = soundShare.misadjusted / total
  return [
    Math.log(soundShare.healthy / total) + of('set before'),
    Math.log(misadjusted * (slips.length > 0 ? 0.4 : 1)) + of('anywhere'),
    ...slips.map(({ log }) => Math.log((0.6 * misadjusted) / slips.length) + log),
  ]
}

const healthySuspect = (posterior: number): RankedSuspect => ({
  suspect: outOfAdjustment,
  posterior,
  size: { value: 0, spread: 0, unit: 'rad' },
  speaksFor: [],
  speaksAgainst: [],
  ghost: { left: null, right: null },
})

function rankedOf(hypothesis: Hypothesis, posterior: number): RankedSuspect {
  const { family, size, spread } = hypothesis
  return {
    suspect: family.suspect,
    posterior,
    size: { value: size, spread, unit: suspectPriors[family.suspect.kind].unit },
    speaksFor: [],
    speaksAgainst: [],
    ghost: ghostOf(hypothesis),
  }
}

function between(a: Float64Array, b: Float64Array): number {
  let sum = 0
  for (let i = 0; i < a.length; i++) sum += (a[i]! - b[i]!) ** 2
  return Math.sqrt(sum)
}

const length = (a: Float64Array): number => Math.hypot(...a)
