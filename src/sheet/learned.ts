import {
  type AxleSetup,
  type LearnedResponse,
  learnMove,
  priorResponse,
  type WheelSetup,
} from '../adjust/index.ts'
import type { Corner } from '../corner/index.ts'
import type { JobState, Round } from '../job/index.ts'
import type { Side, WheelAngle } from '../linkage/index.ts'
import { combine, type Measured } from '../measure/index.ts'
import { Refusal } from '../quantity/index.ts'
import type { RoundReadings } from './read-round.ts'
import { axleSetup, cornersSetup, pointsKnown } from './wheel-setups.ts'

/** A round with what its gauges said. */
export interface ReadRound {
  readonly round: Round
  readonly said: RoundReadings
}

/**
 * Both wheels with what earlier moves of this job have taught about them; a whole axle is taken as its points say,
 * since what one wheel's adjuster does there is no other wheel's lesson.
 */
export function taughtSetup(corner: Corner, state: JobState, rounds: readonly ReadRound[]): AxleSetup {
  const last = rounds.at(-1)!
  const setup = axleSetup(corner, state, last.round)
  if ('axle' in setup) return setup
  const taught = (side: Side): WheelSetup => ({
    ...setup[side],
    response: responseOf(corner, state, rounds, { side, wheel: setup[side] }),
  })
  return { ...setup, left: taught('left'), right: taught('right') }
}

function responseOf(
  corner: Corner,
  state: JobState,
  rounds: readonly ReadRound[],
  { side, wheel }: { side: Side; wheel: WheelSetup },
): LearnedResponse {
  let response = priorResponse(wheel, { known: pointsKnown(corner), source: `response: ${corner.id}` })
  for (let i = 1; i < rounds.length; i++) {
    const [before, after] = [rounds[i - 1]!, rounds[i]!]
    if (before.round.moves.length === 0 || partsChanged(state, before.round, after.round)) continue
    const [from, to] = [before, after].map(({ round }) =>
      known(cornersSetup(corner, state, round)[side].settings),
    )
    try {
      response = learnMove(response, wheel, {
        from: from!,
        to: to!,
        change: changes(corner.axle, side, before, after),
      })
    } catch (error) {
      // A recorded setting outside the adjuster's range teaches nothing; the job's troubles name it.
      if (!(error instanceof Refusal)) throw error
    }
  }
  return response
}

/** A new part changes the corner, so a change of reading across it is not the adjuster's doing. */
const partsChanged = (state: JobState, before: Round, after: Round): boolean =>
  state.renewed.some((part) => part.entry > (before.entry ?? -1) && part.entry < (after.entry ?? 0))

const known = (settings: Readonly<Record<string, number | null>>): Record<string, number> =>
  Object.fromEntries(Object.entries(settings).filter((pair): pair is [string, number] => pair[1] !== null))

function changes(
  end: string,
  side: Side,
  before: ReadRound,
  after: ReadRound,
): Partial<Record<WheelAngle, Measured>> {
  const change: Partial<Record<WheelAngle, Measured>> = {}
  for (const angle of ['camber', 'caster', 'toe'] as const) {
    const name = `${end} ${side} ${angle}` as 'front left camber'
    const [a, b] = [before.said.readings[name], after.said.readings[name]]
    if (a && b)
      change[angle] = combine([
        { of: b.measured, times: 1 },
        { of: a.measured, times: -1 },
      ])
  }
  return change
}
