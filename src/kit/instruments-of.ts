import type { Instrument } from '../gauge/index.ts'
import type { Kit } from './kit-schema.ts'

/**
 * The gauges of a kit as the gauge room takes them: the same members, SI numbers in place of typed
 * quantities, named by their place in the kit.
 *
 * @source definition
 */
export function instrumentsOf(kit: Kit): readonly Instrument[] {
  return Object.entries(kit.gauges).map(
    ([id, { calibrated: _, calibrationDue: __, remark: ___, ...gauge }]) => {
      const members = Object.entries(gauge).map(([name, member]) => [
        name,
        typeof member === 'object' ? member.value : member,
      ])
      return { id, ...Object.fromEntries(members) } as Instrument
    },
  )
}
