import { angleRead, type Corner, changeByMove, isWholeAxle } from '../corner/index.ts'
import type { JobState, WheelName } from '../job/index.ts'
import { wheelPlace } from '../job/index.ts'
import type { WheelAngle } from '../linkage/index.ts'
import { combine, standardUncertainty } from '../measure/index.ts'
import type { MeasuredOnWheel } from './measured-on-wheel.ts'
import type { ReadRound } from './recorded-move.ts'
import { adjustersStanding } from './wheel-setups.ts'

const angles: readonly WheelAngle[] = ['camber', 'caster', 'sai', 'toe']

/**
 * What the rounds of a job say of one wheel's geometry: the angles of the last one, and what the moves between two rounds have
 * done. Where a part was renewed between them, or a setting is not known, nothing is made of it.
 *
 * @source own derivation: docs/methods/fit.md
 */
export function roundsOnWheel(
  corner: Corner,
  state: JobState,
  rounds: readonly ReadRound[],
  wheel: WheelName,
): readonly MeasuredOnWheel[] {
  const last = rounds.at(-1)
  if (!last) return []
  const still = angles.flatMap((angle): MeasuredOnWheel[] => {
    const read = last.said.readings[`${wheel} ${angle}` as 'front left camber']?.measured
    const hasAxis =
      corner.points['upper-outer'] ?? corner.points['strut-top'] ?? corner.points['kingpin-lower']
    const isAxis = angle === 'caster' || angle === 'sai'
    return read && standardUncertainty(read) > 0 && (!isAxis || hasAxis)
      ? [{ entry: null, measurement: { of: angleRead(angle), read } }]
      : []
  })
  return isWholeAxle(corner.layout) ? still : [...still, ...trialMoves(corner, state, rounds, wheel)]
}

function trialMoves(
  corner: Corner,
  state: JobState,
  rounds: readonly ReadRound[],
  wheel: WheelName,
): readonly MeasuredOnWheel[] {
  const { side } = wheelPlace(wheel)
  const standing = (round: ReadRound) => adjustersStanding(corner, round.round.settings, side)
  const now = standing(rounds.at(-1)!)
  return rounds.slice(1).flatMap((after, i): MeasuredOnWheel[] => {
    const before = rounds[i]!
    const renewed = state.renewed.some(
      ({ entry }) => entry > (before.round.entry ?? -1) && entry < (after.round.entry ?? 0),
    )
    const [from, to] = [standing(before).settings, standing(after).settings]
    const turned = now.adjusters.filter(({ id }) => from[id] !== to[id])
    if (renewed || turned.length === 0) return []
    const moves = turned.flatMap((adjuster) => {
      const [a, b, stands] = [from[adjuster.id], to[adjuster.id], now.settings[adjuster.id]]
      return typeof a === 'number' && typeof b === 'number' && typeof stands === 'number'
        ? [{ adjuster, from: a, to: b, standing: stands }]
        : []
    })
    // one whose setting nobody knows takes the lesson of the others away
    if (moves.length < turned.length) return []
    return (['camber', 'toe'] as const).flatMap((angle) => {
      const name = `${wheel} ${angle}` as 'front left camber'
      const [first, second] = [before.said.readings[name], after.said.readings[name]]
      if (!first || !second) return []
      const read = combine([
        { of: second.measured, times: 1 },
        { of: first.measured, times: -1 },
      ])
      if (!(standardUncertainty(read) > 0)) return []
      const of = changeByMove(angle, ...moves)
      return [{ entry: null, measurement: { of, read } }]
    })
  })
}
