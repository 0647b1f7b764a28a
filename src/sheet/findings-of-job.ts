import type { Corner } from '../corner/index.ts'
import { beforeOrdering, type Findings, type RankedSuspect, rankSuspects } from '../findings/index.ts'
import { foldJob, type JobState, type Round } from '../job/index.ts'
import { thresholdFor } from '../kit/index.ts'
import type { AxleEnd } from '../linkage/index.ts'
import { metricUnits, Refusal, type UnitChoice } from '../quantity/index.ts'
import { sheetCorners } from './corners-of-sheet.ts'
import { alikeTo, isSame } from './findings-alike.ts'
import { beliefText } from './findings-belief.ts'
import { checkCautions } from './findings-check-words.ts'
import { findingsChecks, separatingCheck } from './findings-checks.ts'
import { evidenceSentence } from './findings-evidence.ts'
import { type Ghost, ghostOnCorner } from './findings-ghost.ts'
import { findingsOrders } from './findings-orders.ts'
import { type FindingsAsked, findingsProblemOfJob } from './findings-problem-of-job.ts'
import { answerOf, groupSentence, othersOf } from './findings-sentences.ts'
import type { FindingsGroup, FindingsSheet } from './findings-sheet.ts'
import { unreadOf } from './findings-unread.ts'
import { findingsWear } from './findings-wear.ts'
import { proofOf, suspectWords } from './findings-words.ts'
import { readingWords } from './reading-words.ts'
import type { SheetCorner } from './sheet.ts'
import { cornerAt, type SheetOptions, type SheetSources } from './sources.ts'
import { sheetTitle } from './title.ts'
import { axleSetup } from './wheel-setups.ts'

/** Whose readings are judged. @source definition */
export interface FindingsOptions extends Pick<SheetOptions, 'units' | 'threshold'> {
  /** Number of the round. Default: the first with readings, since findings are about the vehicle as it came. */
  readonly round?: number | undefined
}

/** A group that is told by itself: at least this belief, and not more of them than these. @source own choice */
const told = { belief: 0.025, groups: 6 } as const
/** Suspects of a group that are told: at least this share of its first. @source own choice */
const worthTelling = { share: 0.1, most: 5 } as const

type TakesPart = (suspects: readonly RankedSuspect[]) => number

/**
 * Which part explains a job's readings, as one plain value of words and figures. What cannot be told is said to be so.
 *
 * @source own derivation: docs/methods/findings.md
 */
export function findingsOfJob(sources: SheetSources, options: FindingsOptions = {}): FindingsSheet {
  const { units = metricUnits } = options
  const threshold = options.threshold ?? thresholdFor(sources)?.value ?? 0.95
  const state = foldJob(sources.job.entries)
  const rounds = state.rounds.filter(({ readings }) => readings.length > 0)
  const chosen = rounds.find(({ number }) => number === options.round)
  const round = chosen ?? rounds[0] ?? nothingRead(state)
  const { vehicle, job, workshop, source } = sheetTitle(sources, state, rounds.length > 0 ? round : null)
  const common = {
    title: { vehicle, job, workshop, source },
    round: rounds.length > 0 ? round.number : null,
    rounds: rounds.map(({ number, purpose }) => ({ number, words: `Round ${number}, ${purpose}` })),
    cautions: checkCautions,
  }
  const missing =
    options.round !== undefined && !chosen
      ? [
          `No round ${options.round} with readings stands in the log; these are the findings of the first one.`,
        ]
      : []
  const foldTroubles = state.troubles.map(({ sentence, remedy }) => `${sentence} ${remedy}`)
  try {
    const asked = findingsProblemOfJob(sources, state, { round, units })
    const told = laidOut({ sources, state, round, asked, units, threshold })
    return { ...common, ...told, troubles: [...missing, ...foldTroubles, ...told.troubles] }
  } catch (error) {
    if (!(error instanceof Refusal)) throw error
    const troubles = [...missing, ...foldTroubles, `${error.sentence} ${error.remedy}`]
    return { ...common, ...nothing, troubles }
  }
}

const nothing = {
  cannotTell: true,
  answer: 'I cannot tell: what the log says cannot be computed with. The reason stands below.',
  groups: [],
  others: '',
  pairs: [],
  checks: [],
  orders: [],
  wear: [],
  unexplained: [],
  unread: [],
  corners: [],
} as const

const nothingRead = ({ settings }: JobState): Round => ({
  number: 0,
  purpose: 'as found',
  settled: false,
  entry: null,
  readings: [],
  moves: [],
  settings,
})

function laidOut({
  sources,
  state,
  round,
  asked: { problem, troubles },
  units,
  threshold,
}: {
  readonly sources: SheetSources
  readonly state: JobState
  readonly round: Round
  readonly asked: FindingsAsked
  readonly units: UnitChoice
  readonly threshold: number
}): Omit<FindingsSheet, 'title' | 'round' | 'rounds' | 'cautions'> {
  const found = rankSuspects(problem)
  const cornerOf = (axle: string | null | undefined) =>
    axle === 'front' || axle === 'rear' ? cornerAt(sources, axle satisfies AxleEnd) : null
  const takesPart = takingPart(found)
  const all = found.groups.flatMap(({ suspects }) => suspects)
  const ghosts = new Map<RankedSuspect, Ghost>()
  const ghostOf = (one: RankedSuspect): Ghost => {
    const made = ghosts.get(one) ?? ghostOnCorner(one, cornerOf(one.suspect.axle), state, round)
    ghosts.set(one, made)
    return made
  }
  const words = (one: RankedSuspect['suspect']) => {
    const ranked =
      all.find(({ suspect }) => suspect === one) ?? all.find(({ suspect }) => isSame(suspect, one))!
    return suspectWords({ ...ranked, moved: ghostOf(ranked).moved }, cornerOf(one.axle), units)
  }
  const groups = found.groups
    .filter(({ suspects }) => takesPart(suspects) >= told.belief)
    .slice(0, told.groups)
    .map(({ suspects }): FindingsGroup => {
      const belief = takesPart(suspects)
      const first = suspects[0]!.posterior
      const shown = suspects
        .filter(({ posterior }) => posterior >= worthTelling.share * first)
        .slice(0, worthTelling.most)
      const lines = shown.map((one) => {
        const corner = cornerOf(one.suspect.axle)
        const own = takesPart([one])
        return {
          id: [one.suspect.kind, one.suspect.axle, one.suspect.side, one.suspect.at].join(' | '),
          words: words(one.suspect),
          belief: own,
          beliefText: beliefText(own),
          speaksFor: one.speaksFor.slice(0, 5).map((said) => evidenceSentence(said, problem, units)),
          speaksAgainst: one.speaksAgainst.slice(0, 5).map((said) => evidenceSentence(said, problem, units)),
          proof: proofOf(one.suspect, corner),
          ghost: ghostOf(one).drawn,
        }
      })
      return {
        sentence: groupSentence(
          lines.map((line) => line.words),
          suspects.length - shown.length,
        ),
        belief,
        beliefText: beliefText(belief),
        suspects: lines,
        alike: alikeTo(suspects, all).map(({ suspect }) => words(suspect)),
        separate: separatingCheck(shown, found, cornerOf),
      }
    })
  const pairs = found.pairs.map(({ suspects: [a, b], posterior }) =>
    groupSentence([`${words(a)}, together with ${words(b)}`], 0).replace(
      /\.$/,
      `: ${beliefText(posterior)}.`,
    ),
  )
  const alike = (one: RankedSuspect['suspect']) => {
    const mine = found.groups.find(({ suspects }) => suspects.some(({ suspect }) => isSame(suspect, one)))
    return alikeTo(mine?.suspects ?? [], all).map(({ suspect }) => words(suspect))
  }
  const counted = {
    ...found,
    groups: found.groups.map((group) => ({
      ...group,
      suspects: group.suspects.map((one) => ({ ...one, posterior: takesPart([one]) })),
    })),
  }
  return {
    cannotTell: found.cannotTell,
    answer: answerOf(found, groups, pairs),
    groups,
    others: othersOf(found.groups.length - groups.length),
    pairs,
    checks: findingsChecks(found, cornerOf, words),
    orders: findingsOrders(beforeOrdering(problem, counted), { state, round, cornerOf, alike }),
    wear: findingsWear(sources, state, problem, { units, threshold }),
    unexplained: found.unexplained.map((name) => {
      const { label, of } = readingWords(name)
      return `${label}, ${of}, is explained by nothing that is known here: read it again.`
    }),
    unread: unreadOf(problem),
    corners: problem.axles.flatMap(({ corner }) => standing(corner, state, round)),
    troubles,
  }
}

/** Belief that some of these take part, alone or in a pair; their own share counts half of a pair already. */
function takingPart({ pairs }: Findings): TakesPart {
  return (suspects) => {
    const has = (one: RankedSuspect['suspect']) => suspects.some(({ suspect }) => isSame(suspect, one))
    const own = suspects.reduce((sum, { posterior }) => sum + posterior, 0)
    const more = pairs.reduce(
      (sum, { suspects: [a, b], posterior }) => (has(a) === has(b) ? sum : sum + posterior / 2),
      own,
    )
    return Math.min(1, more)
  }
}

/** Both wheels of an axle as they stood, in ink. */
const standing = (corner: Corner, state: JobState, round: Round): readonly SheetCorner[] =>
  sheetCorners(corner, axleSetup(corner, state, round)).map(({ present, ride, ...one }) => ({
    ...one,
    ride: present ?? ride,
    present: null,
  }))
