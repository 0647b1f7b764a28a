import type { ReadingName, WheelAngle } from '../linkage/index.ts'
import { type FaultKind, faultKinds } from './fault-kinds.ts'
import type { WheelSetup } from './problem.ts'

/**
 * The kinds of fault that could hold a reading outside on these wheels: the table, less what the layout does
 * not have.
 *
 * @source common practice, no source (`faultKinds`)
 * @example faultKindsFor('thrust', [])[0] // 'rear axle shifted'
 */
export function faultKindsFor(reading: ReadingName, wheels: readonly WheelSetup[]): readonly FaultKind[] {
  const kinds = reading === 'thrust' ? faultKinds.thrust : faultKinds[angleIn(reading)]
  const layouts = new Set(wheels.map((wheel) => wheel.points.layout))
  const struts = layouts.size === 0 || layouts.has('strut')
  const arms = layouts.size === 0 || layouts.has('double wishbone') || layouts.has('five-link')
  const washers = wheels.some((wheel) => wheel.adjusters.some((one) => one.kind === 'eccentric'))
  return kinds.filter((kind) => {
    if (kind === 'bent strut tube' || kind === 'shifted tower') return struts
    if (kind === 'bent upper arm') return arms
    if (kind === 'eccentric fitted the wrong way round') return washers
    return true
  })
}

const angleIn = (reading: ReadingName): WheelAngle =>
  (['camber', 'caster', 'sai', 'toe'] as const).find((angle) => reading.includes(angle)) ?? 'toe'
