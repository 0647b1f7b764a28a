import { rideHeight } from '../gauge/index.ts'
import { type HeightFact, type JobState, type Round, wheelNames, wheelPlace } from '../job/index.ts'
import { instrumentsOf } from '../kit/index.ts'
import { decide } from '../measure/index.ts'
import type { UnitChoice } from '../quantity/index.ts'
import { limitsOf } from '../spec/index.ts'
import { gaugeContext } from './gauge-setting.ts'
import { sheetHeights } from './heights-of-sheet.ts'
import type { ProofMark, ProofPair, ProofSheet } from './proof-sheet.ts'
import type { ProofRounds } from './proof-sheet-rounds.ts'
import { readRound } from './read-round.ts'
import { readingRows } from './reading-rows.ts'
import type { SheetReading } from './sheet.ts'
import { sheetNumber } from './sheet-number.ts'
import type { SheetSources } from './sources.ts'
import { heightIn } from './wheel-setups.ts'

/** What the rows of before and after are made from. */
interface PairsTask {
  readonly sources: SheetSources
  readonly state: JobState
  readonly rounds: ProofRounds
  readonly threshold: number
  readonly units: UnitChoice
  /** Does the work, or tells in a trouble why it cannot be done. */
  readonly tell: <T>(work: () => T, otherwise: T) => T
}

const nothingRead: ReturnType<typeof readRound> = { readings: {}, troubles: [] }

/** Every angle that was read before or after, both on one scale, and what could not be read out. */
export function proofAngles(task: PairsTask): {
  readonly rows: ProofSheet['angles']
  readonly troubles: readonly string[]
} {
  const { sources, state, rounds, threshold, units, tell } = task
  const limits = sources.spec ? limitsOf(sources.spec) : {}
  const troubles: string[] = []
  const rowsOf = (round: Round | null): readonly SheetReading[] => {
    if (!round) return []
    const said = tell(() => readRound(round, gaugeContext(sources, state, round)), nothingRead)
    troubles.push(...said.troubles)
    return readingRows({
      readings: said.readings,
      limits,
      limitSource: sources.spec?.source ?? '',
      foreseen: [],
      threshold,
      units,
      heights: {},
    })
  }
  const [before, after] = [rowsOf(rounds.before), rowsOf(rounds.after)]
  // In the order of the sheet: whatever only one of them has stands after the reading it follows there.
  const first = after.length >= before.length ? after : before
  const names = [...new Set([...first, ...before, ...after].map(({ name }) => name))]
  const rows = names.map((name) => {
    const [was, is] = [before, after].map((all) => all.find((row) => row.name === name) ?? null) as [
      SheetReading | null,
      SheetReading | null,
    ]
    const { label, of, limit } = (is ?? was)!
    return { name, ...pair(`${label}, ${of}`, limit, was && mark(was), is && mark(is)) }
  })
  return { rows, troubles }
}

/** Heights of every wheel before it was lifted, and as they stood in the last round. */
export function proofHeights(task: PairsTask): readonly ProofPair[] {
  const { sources, state, rounds, threshold, units, tell } = task
  const context = { instruments: sources.kit ? instrumentsOf(sources.kit) : [] }
  return wheelNames.flatMap((wheel): ProofPair[] => {
    const { axle, side } = wheelPlace(wheel)
    const range = sources.spec?.rideHeight?.[axle]
    const limit = range
      ? {
          low: range.low.value,
          high: range.high.value,
          preferred: range.preferred?.value ?? null,
          lowText: range.low.text,
          highText: range.high.text,
          source: sources.spec!.source,
        }
      : null
    const standing = state.heights.filter((height) => height.wheel === wheel && height.when !== 'hanging')
    const was = standing.find(({ when }) => when === 'before lifting') ?? standing[0]
    const now = rounds.after ? heightIn(state, rounds.after, wheel) : null
    const marked = (fact: typeof was | null): ProofMark | null => {
      if (!fact) return null
      const measured = tell(() => rideHeight(fact.observation, context).measured, null)
      if (!measured) return null
      const decision = limit ? decide(measured, limit, { threshold }) : null
      return {
        ...sheetNumber(measured, { kind: 'length', unit: units.length }),
        verdict: decision?.verdict ?? 'no limit',
        probability: decision?.probability ?? null,
      }
    }
    // A height that was not read again since is one mark, not two.
    const again = now && now.entry !== was?.entry && now.round > (rounds.before?.number ?? 0) ? now : null
    return was ? [pair(`Ride height, ${side} ${axle}`, limit, marked(was), marked(again))] : []
  })
}

/** Sides that stand further apart than the sheet allows, after the work. */
export function proofLeans({ sources, state, rounds, threshold, units, tell }: PairsTask): readonly string[] {
  if (!rounds.after) return []
  const context = { instruments: sources.kit ? instrumentsOf(sources.kit) : [] }
  const measured = (fact: HeightFact) => rideHeight(fact.observation, context).measured
  const round = rounds.after
  return tell(() => sheetHeights({ state, round, spec: sources.spec, units, threshold, measured }).says, [])
}

const mark = ({ value, low, high, text, spread, verdict, probability }: SheetReading): ProofMark => ({
  value,
  low,
  high,
  text,
  spread,
  verdict,
  probability,
})

/** Room at either end of the scale, as a share of what stands on it. */
const room = 0.08

function pair(
  label: string,
  limit: ProofPair['limit'],
  before: ProofMark | null,
  after: ProofMark | null,
): ProofPair {
  const marks = [before, after].flatMap((one) => (one ? [one.low, one.high] : []))
  const all = limit ? [...marks, limit.low, limit.high] : marks
  const [low, high] = [Math.min(...all), Math.max(...all)]
  const edge = Math.max((high - low) * room, 1e-9)
  return { label, limit, before, after, scale: [low - edge, high + edge] }
}
