import { cornerPoints, isWholeAxle } from '../corner/index.ts'
import {
  type GaugeContext,
  playReading,
  type RunOut,
  runOutReading,
  type WheelPlace,
} from '../gauge/index.ts'
import type { JobState, PlayFact, Round } from '../job/index.ts'
import { floorMapOf, instrumentsOf } from '../kit/index.ts'
import { type Mechanism, mechanism, type Side } from '../linkage/index.ts'
import { type Metre, metre, rad } from '../quantity/index.ts'
import type { SheetSources } from './sources.ts'
import { adjustersStanding, displacementStanding, pointsKnown } from './wheel-setups.ts'

/** How far a correction through the linkage may be off, as a share, when the points were measured. @source own choice */
const measuredPointsWithin = 0.15

/**
 * All that a round's readings need besides themselves: gauges, floor, run-out, plays that were still there,
 * and the corner as its adjusters stood.
 *
 * @source own derivation: docs/methods/uncertainty.md
 */
export function gaugeContext(sources: SheetSources, state: JobState, round: Round): GaugeContext {
  const { kit } = sources
  const corner = sources.corners.front
  const floor = kit && state.bay ? floorMapOf(kit, state.bay.bay) : null
  const plain: GaugeContext = { instruments: kit ? instrumentsOf(kit) : [] }
  const strings = round.readings.find((fact) => fact.observation.method === 'strings and rule')?.observation
  const wheelbase =
    sources.spec?.size?.wheelbase.value ??
    (strings?.method === 'strings and rule' ? strings.wheelbase : undefined)
  const track: Partial<Record<'front' | 'rear', Metre>> = {}
  for (const end of ['front', 'rear'] as const) {
    const model = sources.corners[end] ?? corner
    track[end] = sources.spec?.size?.track[end].value ?? metre(2 * model.points['wheel-centre']!.at[1])
  }
  return {
    ...plain,
    ...(floor ? { floor } : {}),
    track,
    ...(wheelbase === undefined ? {} : { wheelbase }),
    runOut: runOuts(state, plain),
    plays: state.play
      .filter((play) => play.round <= round.number && !isMended(sources, state, play, round))
      .map((play) => ({
        wheel: play.wheel,
        moves: play.observation.moves,
        swing: playReading(play.observation, plain).measured,
      })),
    ...(isWholeAxle(corner.layout)
      ? {}
      : { linkage: { left: standing(sources, round, 'left'), right: standing(sources, round, 'right') } }),
    ...(pointsKnown(corner) === 'measured' ? { linkageWithin: measuredPointsWithin } : {}),
  }
}

/** A play is gone when one of the parts that its joint holds was renewed after it was measured, before the round. */
function isMended(sources: SheetSources, state: JobState, play: PlayFact, round: Round): boolean {
  const corner = play.wheel.startsWith('front') ? sources.corners.front : sources.corners.rear
  const joined: readonly string[] = corner?.joints[play.joint]?.joins ?? []
  return state.renewed.some(
    (fact) =>
      fact.entry > play.entry &&
      fact.entry < (round.entry ?? 0) &&
      fact.wheels.includes(play.wheel) &&
      joined.includes(fact.part),
  )
}

function runOuts(state: JobState, plain: GaugeContext): Partial<Record<WheelPlace, RunOut>> {
  const found: Partial<Record<WheelPlace, RunOut>> = {}
  for (const { observation } of state.rounds.flatMap((round) => round.readings))
    if (observation.method === 'run-out')
      found[observation.wheel] = {
        amplitude: rad(runOutReading(observation, plain).measured.value / 2),
        known: 'measured',
      }
  return found
}

/** The front corner of one side with its adjusters as they stood. */
function standing({ corners }: SheetSources, round: Round, side: Side): Mechanism {
  const points = cornerPoints(corners.front)
  const wheel = { points, ...adjustersStanding(corners.front, round.settings, side) }
  return mechanism(points, displacementStanding(wheel))
}
