import { adjustersOf, axleAdjustersOf, type Corner } from '../corner/index.ts'
import type { ExaminedAxle, FindingsProblem, RoadAnswer } from '../findings/index.ts'
import { type GaugeContext, playReading, readingOf, rideHeight } from '../gauge/index.ts'
import {
  type JobState,
  type Round,
  type Stand,
  standOf,
  standOfAxle,
  type WheelName,
  wheelNames,
  wheelPlace,
} from '../job/index.ts'
import { instrumentsOf, wearLimitsFor } from '../kit/index.ts'
import type { AxleEnd, Side } from '../linkage/index.ts'
import { type Measured, normal, propagate } from '../measure/index.ts'
import { Refusal } from '../quantity/index.ts'
import { limitsOf } from '../spec/index.ts'
import { gaugeContext } from './gauge-setting.ts'
import { impossibleHeights } from './impossible-heights.ts'
import { publicWearLimits } from './public-wear-limits.ts'
import { type RoundReadings, readRound } from './read-round.ts'
import { cornerAt, type SheetOptions, type SheetSources } from './sources.ts'
import { heightIn } from './wheel-setups.ts'

const ends: readonly AxleEnd[] = ['front', 'rear']
/** Angles of one wheel: what an axle adds up is not read twice. */
const ofWheel = /^(front|rear) (left|right) (camber|caster|sai|toe)$/

/** A tread gauge pressed into a groove by hand, m. @source from memory, common practice, no source */
const depthSpread = 0.0003
const questions: readonly RoadAnswer['question'][] = [
  'pulls to the left',
  'pulls to the right',
  'pull swaps with the front wheels',
  'steering wheel off centre',
  'wanders',
  'knocks over bumps',
  'steering does not return',
]

/** A round as evidence, and what of it could not be used. */
export interface FindingsAsked {
  readonly problem: FindingsProblem
  readonly troubles: readonly string[]
}

/**
 * What a job's log says up to the end of one round, as the findings ask for it. Threads tell turns from how they were found
 * and not from the drawing, so where they stand is not known; play that was renewed before the round is no evidence.
 *
 * @source own derivation: docs/methods/findings.md
 */
export function findingsProblemOfJob(
  sources: SheetSources,
  state: JobState,
  { round, units }: { readonly round: Round; readonly units: NonNullable<SheetOptions['units']> },
): FindingsAsked {
  const troubles: string[] = []
  const told = <T>(work: () => T, otherwise: T): T => {
    try {
      return work()
    } catch (error) {
      if (!(error instanceof Refusal)) throw error
      troubles.push(`${error.sentence} ${error.remedy}`)
      return otherwise
    }
  }
  const { kit, spec } = sources
  const plain: GaugeContext = { instruments: kit ? instrumentsOf(kit) : [] }
  const corners = ends.flatMap((end) => {
    const corner = cornerAt(sources, end)
    if (!corner) return []
    const { standing } = impossibleHeights(corner, state, round, units)
    troubles.push(...standing)
    return standing.length > 0 ? [] : [corner]
  })
  // Play has a row of its own among the evidence: it is not counted again in the spread of the angles.
  const context = told((): GaugeContext => ({ ...gaugeContext(sources, state, round), plays: [] }), plain)
  const said = told((): RoundReadings => readRound(round, context), { readings: {}, troubles: [] })
  troubles.push(...said.troubles)
  // The same vehicle until something of it is renewed or moved.
  const read = Math.max(-1, ...round.readings.map(({ entry }) => entry))
  const changes = [...state.renewed, ...state.moves].map(({ entry }) => entry)
  const next = state.rounds.find(({ number }) => number > round.number)?.entry ?? Number.POSITIVE_INFINITY
  const until = Math.min(next, ...changes.filter((entry) => entry > read))
  const before = <F extends { readonly entry: number }>(fact: F) => fact.entry < until
  const renewedSince = (entry: number, wheel: string, joins: readonly string[]) =>
    state.renewed.some(
      (part) =>
        part.entry > entry &&
        before(part) &&
        part.wheels.some((one) => one === wheel) &&
        joins.includes(part.part),
    )
  const road: RoadAnswer[] = state.roadTests.filter(before).flatMap(({ answers = [] }) =>
    answers.flatMap(({ question, answer }): RoadAnswer[] => {
      const known = questions.find((one) => one === question.trim().toLowerCase().replace(/\?$/, ''))
      if (!known)
        troubles.push(
          `The road test’s “${question}” weighs nothing here: it is none of the questions that are known (${questions.join(', ')}).`,
        )
      return known && answer !== 'could not tell' ? [{ question: known, answer: answer === 'yes' }] : []
    }),
  )
  const problem: FindingsProblem = {
    axles: corners.map((corner) => examined(corner, round)),
    readings: Object.fromEntries(
      Object.entries(said.readings)
        .filter(([name]) => ofWheel.test(name) && corners.some(({ axle }) => name.startsWith(axle)))
        .map(([name, reading]) => [name, reading!.measured]),
    ),
    heights: Object.fromEntries(
      wheelNames.flatMap((wheel) => {
        const fact = heightIn(state, round, wheel)
        const at = corners.find(({ axle }) => axle === wheelPlace(wheel).axle)?.rideHeight?.at
        if (!fact || at === undefined) return []
        const read = told(() => rideHeight(fact.observation, plain).measured, null)
        return read ? [[wheel, above(at, read)]] : []
      }),
    ),
    turns: {},
    setBack: setBackOf(round, context),
    limits: Object.fromEntries(
      Object.entries(spec ? limitsOf(spec) : {}).map(([name, { low, high, preferred }]) => [
        name,
        { low, high, ...(preferred === null ? {} : { preferred }) },
      ]),
    ),
    heightLimits: Object.fromEntries(
      corners.flatMap(({ axle, rideHeight: design }) => {
        const limit = spec?.rideHeight?.[axle]
        if (!limit || !design) return []
        const [low, high] = [design.at - limit.high.value, design.at - limit.low.value]
        return (['left', 'right'] as const).map((side) => [`${axle} ${side}`, { low, high }])
      }),
    ),
    checks: state.handChecks
      .filter(before)
      .filter(({ entry, wheel, joint, part }) => {
        const joins = joint === undefined ? [] : (cornerOf(sources, wheel)?.joints[joint]?.joins ?? [])
        return !(wheel && renewedSince(entry, wheel, part === undefined ? joins : [...joins, part]))
      })
      .map(({ check, wheel, joint, part, found }) => ({
        check,
        wheel: wheel ?? null,
        joint: joint ?? null,
        part: part ?? null,
        found,
      })),
    play: state.play.filter(before).flatMap((fact) => {
      const corner = cornerOf(sources, fact.wheel)
      const model = corner?.joints[fact.joint]
      const later = state.play.some(
        (one) =>
          one.entry > fact.entry && before(one) && one.wheel === fact.wheel && one.joint === fact.joint,
      )
      if (!corner || !model || later || renewedSince(fact.entry, fact.wheel, model.joins)) return []
      const swing = told(() => {
        const angle = playReading(fact.observation, plain).measured
        return propagate(([a]) => Math.tan(a!) * fact.observation.arm, [angle])
      }, null)
      if (!swing) return []
      const typed = wearLimitsFor({ spec, kit, axle: corner.axle, joint: fact.joint, kind: model.kind })
      const held = [
        ...typed.map(({ limit }) => limit),
        ...publicWearLimits({ corner, fact, swing, kit })
          .filter(({ of }) => of === swing)
          .map(({ limit }) => limit),
      ]
      return [
        { wheel: fact.wheel, joint: fact.joint, swing, limit: held.find((one) => one !== null) ?? null },
      ]
    }),
    treads: state.tyres.filter(before).flatMap(({ wheel, depths }) => {
      if (depths?.outer === undefined || depths.middle === undefined || depths.inner === undefined) return []
      const depth = ({ value }: { readonly value: number }): Measured =>
        normal(depthSpread, `tread gauge, ${wheel}`, value)
      return [{ wheel, outer: depth(depths.outer), middle: depth(depths.middle), inner: depth(depths.inner) }]
    }),
    road,
    renewed: state.renewed.filter(before).map(({ part, wheels }) => ({ part, wheels })),
  }
  return { problem, troubles }
}

const cornerOf = (sources: SheetSources, wheel: WheelName | undefined): Corner | null =>
  wheel === undefined ? null : cornerAt(sources, wheelPlace(wheel).axle)

/** A height of the body over the hub as the hub's height above its design place. */
const above = (design: number, { value, parts }: Measured): Measured => ({
  value: design - value,
  parts: parts.map((part) => ({ ...part, effect: -part.effect })),
})

function examined(corner: Corner, { settings }: Round): ExaminedAxle {
  const known = (stands: readonly Stand[]) =>
    Object.fromEntries(
      stands.map(({ adjuster, setting }) => [adjuster.id, adjuster.kind === 'thread' ? null : setting]),
    )
  const wheel = (side: Side) =>
    known(standOf({ settings, adjusters: adjustersOf(corner), wheel: `${corner.axle} ${side}` }))
  return {
    end: corner.axle,
    corner,
    settings: {
      left: wheel('left'),
      right: wheel('right'),
      both: known(standOfAxle({ settings, adjusters: axleAdjustersOf(corner), axle: corner.axle })),
    },
  }
}

function setBackOf(round: Round, context: GaugeContext): Measured | null {
  for (const { observation } of round.readings) {
    // Only strings give it: nothing else is read twice.
    if (observation.method !== 'strings and rule') continue
    try {
      const read = readingOf(observation, context).find(({ name }) => name === 'front set-back')
      if (read) return read.measured
    } catch (error) {
      // Told already, where the round was read.
      if (!(error instanceof Refusal)) throw error
    }
  }
  return null
}
