import type { Adapter } from '../fasten/index.ts'
import { deg, metre, mm, type Radian } from '../quantity/index.ts'
import type { Kit } from './kit-schema.ts'

/** Where the kit does not say how well the offset is known, and how well the angle is held by eye. */
const OFFSET = mm(1)
const ANGLE = deg(5)

/**
 * An adapter of the kit put on at an angle, as the fasten room takes it.
 *
 * @param id its place in the kit
 * @param angle from the wrench's axis, rad; 0 straight ahead
 * @returns null when the kit has none of that name
 * @source definition; spreads where none are typed: common practice, no source
 */
export function adapterOf(kit: Kit, id: string, angle: Radian): Adapter | null {
  const adapter = Object.hasOwn(kit.adapters ?? {}, id) ? kit.adapters![id] : undefined
  if (!adapter) return null
  return {
    name: adapter.name,
    offset: metre(adapter.offset.value),
    angle,
    offsetSpread: adapter.offsetSpread?.value ?? OFFSET,
    angleSpread: adapter.angleSpread?.value ?? ANGLE,
  }
}
