import type { Findings, RankedSuspect, SuspectGroup } from './findings.ts'
import type { FindingsProblem } from './findings-problem.ts'
import { ghostOf } from './ghost-of.ts'
import { nextChecks } from './next-checks.ts'
import { predictionsOf } from './predictions-of.ts'
import type { OwnFrequencies } from './prior-of-suspects.ts'
import { speaking } from './speaking.ts'
import { suspectPriors } from './suspect-priors.ts'
import { outOfAdjustment } from './suspects-of.ts'
import { tightGroups } from './tight-groups.ts'
import { unexplainedBy } from './unexplained-by.ts'
import { type Weighed, weighed } from './weighed.ts'

/** How suspects are ranked. @source definition */
export interface FindingsOptions {
  /** The workshop's own frequencies in place of the table's. */
  readonly frequencies?: OwnFrequencies
  /**
   * Every spread that is believed (reading errors, points, making, springs, marks, what limits say) is taken so many
   * times over. 1 is what is believed; anything else shows what too much or too little trust in readings does.
   */
  readonly spreads?: number
}

/** Groups are farther apart than this, and a fault is visible from here on, in standard deviations. @source own choice */
const apart = 2
/** A suspect so much less likely than the first of a group stands by itself. @source own choice */
const leastShare = 0.05
/** Below this nothing stands out: belief that no part is at fault, or belief in a first group that names parts. @source own choice */
const standsOut = { sound: 0.4, fault: 0.75 } as const

/**
 * Which part explains what was read: every suspect of the vehicle with its share of belief, in groups that these
 * readings cannot tell apart.
 *
 * @throws {Refusal} `not-finite`; `not-positive`; `repeated-axle`; `setting-out-of-range`; `no-such-point`; what the linkage says where
 *   an axle cannot stand as it was read
 * @source own derivation: docs/methods/findings.md
 */
export function rankSuspects(problem: FindingsProblem, options: FindingsOptions = {}): Findings {
  const all = weighed(problem, options)
  const { hypotheses, beliefs, explains } = all
  const places = predictionsOf(all.histories.find(({ story }) => story === 'anywhere')!, hypotheses)
  const distance = (a: number, b: number): number =>
    Math.max(Math.sqrt(2 * Math.abs(explains[a]! - explains[b]!)), between(places[a]!.best, places[b]!.best))
  const ranked = beliefs.map((_, i) => rankedSuspect(all, i))
  const visible = places.map(({ usual }) => Math.hypot(...usual) >= apart)
  // what shows hardly anything now is told apart by what it would show at its usual size
  const faint = (a: number, b: number): number =>
    visible[a] && visible[b] ? between(places[a]!.usual, places[b]!.usual) : Number.POSITIVE_INFINITY
  const groups = tightGroups(beliefs, distance, { limit: apart, least: leastShare, first: 0, faint })
    .map((members): SuspectGroup => {
      const suspects = members.map((i) => ranked[i]!).sort((a, b) => b.posterior - a.posterior)
      return { suspects, posterior: suspects.reduce((sum, one) => sum + one.posterior, 0) }
    })
    .sort((a, b) => b.posterior - a.posterior)
  const first = groups[0]!
  return {
    groups,
    pairs: likelyPairs(all),
    visible: ranked.filter((_, i) => visible[i]).map(({ suspect }) => suspect),
    unexplained: unexplainedBy(all),
    nextChecks: nextChecks(all),
    cannotTell: !(holdsSound(first)
      ? beliefs[0]! >= standsOut.sound
      : takesPart(first, all) >= standsOut.fault),
  }
}

/** Belief that some suspect of a group takes part, alone or in a pair; the group itself counts half of a pair. */
function takesPart({ suspects, posterior }: SuspectGroup, { pairs, hypotheses }: Weighed): number {
  const inside = new Set(suspects.map(({ suspect }) => suspect))
  return pairs.reduce((sum, { members, belief }) => {
    const [a, b] = members.map((i) => inside.has(hypotheses[i]!.family.suspect))
    return a === b ? sum : sum + belief / 2
  }, posterior)
}

/** A pair with less belief is not told. @source own choice */
const leastPair = 0.02

const likelyPairs = ({ pairs, hypotheses }: Weighed): Findings['pairs'] =>
  pairs
    .filter(({ belief }) => belief >= leastPair)
    .sort((a, b) => b.belief - a.belief)
    .map(({ members: [a, b], belief }) => ({
      suspects: [hypotheses[a]!.family.suspect, hypotheses[b]!.family.suspect],
      posterior: belief,
    }))

const holdsSound = ({ suspects }: SuspectGroup): boolean =>
  suspects.some(({ suspect }) => suspect.kind === outOfAdjustment.kind)

function rankedSuspect(all: Weighed, i: number): RankedSuspect {
  const posterior = all.beliefs[i]!
  if (i === 0)
    return {
      suspect: outOfAdjustment,
      posterior,
      size: { value: 0, spread: 0, unit: 'rad' },
      speaksFor: [],
      speaksAgainst: [],
      ghost: { left: null, right: null },
    }
  const hypothesis = all.hypotheses[i - 1]!
  const { family, size, spread } = hypothesis
  return {
    suspect: family.suspect,
    posterior,
    size: { value: size, spread, unit: suspectPriors[family.suspect.kind].unit },
    ...speaking(all, i),
    ghost: ghostOf(hypothesis),
  }
}

function between(a: Float64Array, b: Float64Array): number {
  let sum = 0
  for (let i = 0; i < a.length; i++) sum += (a[i]! - b[i]!) ** 2
  return Math.sqrt(sum)
}
