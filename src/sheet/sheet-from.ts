import { type FaultKind, type Moves, moves } from '../adjust/index.ts'
import { type GaugeContext, rideHeight } from '../gauge/index.ts'
import { foldJob, type HeightFact, type JobState, jobAgainst, type Round } from '../job/index.ts'
import { instrumentsOf, thresholdFor } from '../kit/index.ts'
import type { AxleEnd, ReadingName, Side } from '../linkage/index.ts'
import type { Measured } from '../measure/index.ts'
import { metricUnits, Refusal } from '../quantity/index.ts'
import { type Limit, limitsOf } from '../spec/index.ts'
import { sheetAdvice } from './advice.ts'
import { heightAnswers } from './at-sheet-height.ts'
import { sheetCautions } from './cautions.ts'
import { sheetClamp } from './clamp-of-sheet.ts'
import { sheetCorners } from './corners-of-sheet.ts'
import { firstRound } from './first-round.ts'
import { gaugeContext } from './gauge-setting.ts'
import { sheetHeights } from './heights-of-sheet.ts'
import { impossibleHeights } from './impossible-heights.ts'
import { includedAngleSays } from './included-angles.ts'
import { taughtSetup } from './learned.ts'
import { learnedSays, taughtFor } from './learned-says.ts'
import { sheetMoves } from './moves-of-sheet.ts'
import { nextStep } from './next-step.ts'
import { sheetReach } from './reach-of-sheet.ts'
import { readRound } from './read-round.ts'
import { readingRows } from './reading-rows.ts'
import { readingWords } from './reading-words.ts'
import type { ReadRound } from './recorded-move.ts'
import type { Sheet } from './sheet.ts'
import { cornerAt, type SheetOptions, type SheetSources } from './sources.ts'
import { stagesOf } from './stages.ts'
import { stringsDoubts } from './strings-doubts.ts'
import { sheetTitle } from './title.ts'
import { unlikelyFaults } from './unlikely-faults.ts'
import { sheetWear } from './wear-of-sheet.ts'
import { heightIn } from './wheel-setups.ts'

const ends: readonly AxleEnd[] = ['front', 'rear']
/** Members that name a gauge: one that the kit lacks is told with the reading that it costs. */
const gaugeMember = /\.(?:gauge|steerGauge|rule|strings|tape)$/
const noReadings = { readings: {}, troubles: [] }

/**
 * The whole job as one plain value: its log and the models it names in, everything the person reads out. Pure:
 * the same sources and options give the same sheet.
 *
 * What cannot be worked out is told in `troubles`; the rest stands.
 *
 * @source own derivation: docs/decisions/0005-one-sheet-for-terminal-page-and-paper.md
 */
export function sheetFrom(sources: SheetSources, options: SheetOptions = {}): Sheet {
  const { seed = 1, units = metricUnits } = options
  const threshold = options.threshold ?? thresholdFor(sources)?.value ?? 0.95
  const state = foldJob(sources.job.entries)
  const troubles = state.troubles.map(({ sentence, remedy }) => `${sentence} ${remedy}`)
  const tell = <T>(work: () => T, otherwise: T): T => {
    try {
      return work()
    } catch (error) {
      if (!(error instanceof Refusal)) throw error
      troubles.push(`${error.sentence} ${error.remedy}`)
      return otherwise
    }
  }
  const rounds = state.rounds
    .filter((round) => round.readings.length > 0)
    .map((round): ReadRound => {
      const said = tell(() => readRound(round, gaugeContext(sources, state, round)), noReadings)
      return { round, said }
    })
  const last = rounds.at(-1) ?? null
  const round = last?.round ?? null
  const said = last?.said ?? noReadings
  troubles.push(...said.troubles)
  if (round) troubles.push(...stringsDoubts(sources, round, units))
  const { corners, kit } = sources
  const beside = { front: corners.front, rear: corners.rear ?? undefined, kit: kit ?? undefined }
  for (const { field, wrong, right } of jobAgainst(sources.job, beside))
    if (!gaugeMember.test(field)) troubles.push(`${field}: ${wrong} Right would be ${right}.`)
  const limits = sources.spec ? limitsOf(sources.spec) : {}
  const measured = heightReader(sources)
  const past = taughtFor(sources, state)
  const setups = last
    ? ends.flatMap((end) => {
        const corner = cornerAt(sources, end)
        if (!corner) return []
        const { standing } = impossibleHeights(corner, state, round, units)
        troubles.push(...standing)
        const setup = standing.length > 0 ? null : tell(() => taughtSetup(corner, state, rounds, past), null)
        return setup ? [{ corner, setup }] : []
      })
    : []
  // An adjuster whose corner cannot be computed is no adjuster that does not help.
  const stuck = last ? ends.filter((end) => cornerAt(sources, end)).length - setups.length : 0
  const standing = tell(
    () => sheetHeights({ state, round, spec: sources.spec, units, threshold, measured }),
    { rows: [], says: [] },
  )
  const wear = sheetWear(sources, state, { units, threshold })
  troubles.push(...wear.troubles)
  const included = setups.flatMap(({ setup }) =>
    setup.end === 'front' ? tell(() => includedAngleSays(said, setup, units), []) : [],
  )
  const unlikely = unlikelyFaults(standing.rows, included.length > 0)
  const answer =
    last && stuck === 0
      ? tell(() => theMoves(said.readings, limits, { setups, unlikely }, { threshold, seed }), null)
      : null
  const taught = answer && past ? learnedSays(past, setups, answer.moves) : null
  const toSay = answer ?? (stuck === 0 ? null : { ...nothing, sentence: notComputed })
  const heights = Object.assign(
    {},
    ...setups.map(({ corner, setup }) =>
      tell(
        () =>
          heightAnswers({
            corner,
            setup,
            heights: heightsOf(state, round, setup.end, measured),
            preferred: sources.spec?.rideHeight?.[setup.end]?.preferred?.value ?? null,
          }),
        {},
      ),
    ),
  )
  const readings = readingRows({
    readings: said.readings,
    limits,
    limitSource: sources.spec?.source ?? '',
    foreseen: answer?.foreseen ?? [],
    threshold,
    units,
    heights,
  })
  const unread = (Object.keys(limits) as ReadingName[])
    .filter((name) => !readings.some((row) => row.name === name))
    .map((name) => saidName(name))
  return {
    title: sheetTitle(sources, state, round),
    first: last
      ? null
      : firstRound(
          kit,
          ends.filter((end) => cornerAt(sources, end)),
        ),
    stages: stagesOf(sources.job.entries, state),
    threshold,
    heights: standing.rows,
    readings,
    wear: wear.rows,
    advice: [...standing.says, ...included, ...sheetAdvice(readings, said, units)],
    moves: sheetMoves(
      toSay ?? nothing,
      { made: (round?.moves.length ?? 0) > 0, taught, judged: answer !== null },
      units,
    ),
    reach: setups.flatMap(({ setup }) => tell(() => sheetReach({ setup, said, answer, limits }), [])),
    corners: setups.flatMap(({ corner, setup }) => tell(() => sheetCorners(corner, setup), [])),
    clamp: ends.flatMap((end) => {
      const corner = cornerAt(sources, end)
      if (!corner) return []
      const { hanging } = impossibleHeights(corner, state, round, units)
      return (['left', 'right'] as const).flatMap((side) => {
        const beyond = hanging[side]
        if (beyond) troubles.push(beyond)
        if (beyond) return []
        const pose = tell(
          () => sheetClamp({ corner, spec: sources.spec, state, round, side, units, measured }),
          null,
        )
        return pose ? [pose] : []
      })
    }),
    cautions: sheetCautions(state, round, readings),
    troubles: [...new Set(troubles)],
    unread,
    next: nextStep(round, readings, toSay, unread),
  }
}

const nothing: Moves = {
  moves: [],
  foreseen: [],
  insideNow: 0,
  insideAfter: 0,
  reachableNow: 0,
  reachableAfter: 0,
  steeringWheel: null,
  readFirst: [],
  outOfReach: [],
  notRead: [],
  sentence: 'No moves: nothing was read, or nothing has a limit.',
}

const saidName = (name: ReadingName): string => {
  const { label, of } = readingWords(name)
  return `${label.replace(/^(?!SAI)./, (c) => c.toLowerCase())}, ${of}`
}

const notComputed =
  'No moves: the corner model cannot stand as the log says. What must be read again or corrected is told with the troubles of this sheet.'

function theMoves(
  readings: ReadRound['said']['readings'],
  limits: Readonly<Partial<Record<ReadingName, Limit>>>,
  {
    setups,
    unlikely,
  }: {
    readonly setups: readonly { readonly setup: Parameters<typeof moves>[0]['axles'][number] }[]
    readonly unlikely: readonly FaultKind[]
  },
  options: { threshold: number; seed: number },
): Moves | null {
  if (Object.keys(limits).length === 0) return null
  const values: Partial<Record<ReadingName, Measured>> = {}
  for (const [name, reading] of Object.entries(readings)) values[name as ReadingName] = reading.measured
  const wanted = Object.fromEntries(
    Object.entries(limits).map(([name, { low, high, preferred }]) => [
      name,
      { low, high, ...(preferred === null ? {} : { preferred }) },
    ]),
  )
  return moves(
    {
      axles: setups.map(({ setup }) => setup),
      readings: values,
      limits: wanted,
      unlikely,
      // Told at the road wheels: nobody typed the ratio.
      steering: { ratio: 1 },
    },
    options,
  )
}

/** A height fact as a measured value, by the rule of the kit it was read with. */
function heightReader({ kit }: SheetSources): (fact: HeightFact) => Measured {
  const context: GaugeContext = { instruments: kit ? instrumentsOf(kit) : [] }
  return (fact) => rideHeight(fact.observation, context).measured
}

function heightsOf(
  state: JobState,
  round: Round | null,
  end: AxleEnd,
  measured: (fact: HeightFact) => Measured,
): Partial<Record<Side, Measured>> {
  const found: Partial<Record<Side, Measured>> = {}
  for (const side of ['left', 'right'] as const) {
    const fact = heightIn(state, round, `${end} ${side}`)
    if (fact) found[side] = measured(fact)
  }
  return found
}
