import type { RecordedMove } from '../adjust/index.ts'
import { axleAdjustersOf, type Corner } from '../corner/index.ts'
import type { JobState, Round } from '../job/index.ts'
import type { Side, WheelAngle } from '../linkage/index.ts'
import { combine, type Measured } from '../measure/index.ts'
import type { RoundReadings } from './read-round.ts'
import { cornersSetup } from './wheel-setups.ts'

/** A round with what its gauges said. */
export interface ReadRound {
  readonly round: Round
  readonly said: RoundReadings
}

/**
 * What was turned at one wheel between two rounds, and what its readings did; null where that teaches nothing of its
 * adjusters: a part was renewed between, something was turned from or to a place that nobody knows, or something that acts
 * on both wheels was moved.
 *
 * @source own derivation: docs/methods/learned-response.md
 */
export function recordedMove(
  corner: Corner,
  state: JobState,
  [before, after]: readonly [ReadRound, ReadRound],
  side: Side,
): RecordedMove | null {
  const [start, end] = [before, after].map(({ round }) => cornersSetup(corner, state, round))
  const [from, to] = [start![side].settings, end![side].settings]
  const turned = state.moves.filter(
    ({ entry, wheel }) => entry > first(before) && entry < first(after) && wheel.startsWith(corner.axle),
  )
  const ofAxle = new Set(axleAdjustersOf(corner).map(({ id }) => id))
  const here = turned.filter(({ wheel }) => wheel === `${corner.axle} ${side}`)
  const unknown = ({ adjuster }: { readonly adjuster: string }) =>
    typeof from[adjuster] !== 'number' || typeof to[adjuster] !== 'number'
  if (here.length === 0 || turned.some(({ adjuster }) => ofAxle.has(adjuster))) return null
  if (partsChanged(state, before.round, after.round) || here.some(unknown)) return null
  return {
    from: known(from),
    to: known(to),
    change: changes(corner.axle, side, before, after),
    standing: end![side].drive,
  }
}

/** A new part changes the corner, so a change of reading across it is not the adjuster's doing. */
export const partsChanged = (state: JobState, before: Round, after: Round): boolean =>
  state.renewed.some((part) => part.entry > (before.entry ?? -1) && part.entry < (after.entry ?? 0))

/** Entry of a round's first reading. */
const first = ({ round }: ReadRound): number => round.readings[0]!.entry

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
