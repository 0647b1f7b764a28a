import type { ReadingName, WheelAngle } from '../linkage/index.ts'
import { type FaultKind, faultKinds } from './fault-kinds.ts'
import type { SpaceWheel } from './search-space.ts'

/**
 * The kinds of fault that could hold a reading outside on these wheels: the table, less what the layout does
 * not have.
 *
 * @source common practice, no source (`faultKinds`)
 * @example faultKindsFor('thrust', [])[0] // 'rear axle shifted'
 */
export function faultKindsFor(reading: ReadingName, wheels: readonly SpaceWheel[]): readonly FaultKind[] {
  const kinds = reading === 'thrust' ? faultKinds.thrust : faultKinds[angleIn(reading)]
  const layouts = new Set(wheels.map((wheel) => wheel.layout))
  const any = layouts.size === 0
  const struts = any || layouts.has('strut')
  const upper = any || layouts.has('double wishbone') || layouts.has('five-link')
  const beam = layouts.has('solid axle') || layouts.has('twist beam')
  const lower = upper || struts || layouts.has('semi-trailing arm')
  const washers = wheels.some((wheel) => wheel.adjusters.some((one) => one.kind === 'eccentric'))
  return kinds.filter((kind) => {
    if (kind === 'bent strut tube' || kind === 'shifted tower') return struts
    if (kind === 'bent upper arm') return upper
    if (kind === 'bent lower arm' || kind === 'shifted cross-member') return lower
    if (kind === 'bent axle or beam') return beam
    if (kind === 'worn kingpin') return layouts.has('solid axle')
    if (kind === 'worn ball joint' || kind === 'rack off centre') return lower
    if (kind === 'eccentric fitted the wrong way round') return washers
    return true
  })
}

const angleIn = (reading: ReadingName): WheelAngle =>
  (['camber', 'caster', 'sai', 'toe'] as const).find((angle) => reading.includes(angle)) ?? 'toe'
