import type { Round } from '../job/index.ts'
import { formatLength, metre, type UnitChoice } from '../quantity/index.ts'
import type { SheetSources } from './sources.ts'

/** Past these a figure is likelier a slip than a vehicle. @source own choice */
const most = {
  /** Wheelbase read against the sheet's, m. */
  wheelbase: 0.05,
  /** Measuring points against the rim they stand on, as a share. */
  span: 0.25,
  /** One string's distance to the hubs of its own side, front against rear, m. */
  hubs: 0.15,
} as const

/**
 * Figures of a round's strings that cannot well be right: each would give toe of the wrong size and send a
 * person looking for a part. They are told; nothing is changed.
 *
 * @source own choice
 */
export function stringsDoubts(
  { spec, corners }: SheetSources,
  round: Round,
  units: UnitChoice,
): readonly string[] {
  const said = (length: number) => formatLength(metre(length), { unit: units.length, digits: 0 })
  const doubts: string[] = []
  for (const { observation } of round.readings) {
    if (observation.method !== 'strings and rule') continue
    const { wheelbase, wheels, hubs } = observation
    const known = spec?.size?.wheelbase.value
    if (known !== undefined && Math.abs(wheelbase - known) > most.wheelbase)
      doubts.push(
        `The strings say a wheelbase of ${said(wheelbase)}, the spec sheet ${said(known)}. Measure it again: thrust and toe follow it.`,
      )
    for (const [wheel, readings] of Object.entries(wheels)) {
      const rim = (wheel.startsWith('front') ? corners.front : corners.rear)?.wheel.rim
      if (readings && rim !== undefined && Math.abs(readings.span / rim - 1) > most.span)
        doubts.push(
          `At the ${wheel} wheel the measuring points are ${said(readings.span)} apart, on a rim of ${said(rim)}. Measure it again: toe is read across this span.`,
        )
    }
    for (const side of ['left', 'right'] as const) {
      const [front, rear] = [hubs[`front ${side}`], hubs[`rear ${side}`]]
      if (Math.abs(front - rear) > most.hubs)
        doubts.push(
          `The ${side} string stands ${said(front)} from the front hub and ${said(rear)} from the rear one. Look at both figures again: they say how the strings lie against the vehicle.`,
        )
    }
  }
  return doubts
}
