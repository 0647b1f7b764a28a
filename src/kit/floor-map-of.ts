import type { FloorMap } from '../gauge/index.ts'
import type { Kit } from './kit-schema.ts'

/**
 * The floor of a bay as the gauge room takes it.
 *
 * @returns null when the kit has no floor of that name
 * @source definition
 */
export function floorMapOf(kit: Kit, bay: string): FloorMap | null {
  const floor = Object.hasOwn(kit.floors ?? {}, bay) ? kit.floors![bay] : undefined
  if (!floor) return null
  const { heights, spread } = floor
  return {
    id: bay,
    name: floor.name,
    heights: {
      'front left': heights['front left'].value,
      'front right': heights['front right'].value,
      'rear left': heights['rear left'].value,
      'rear right': heights['rear right'].value,
    },
    spread: {
      'front left': spread.value,
      'front right': spread.value,
      'rear left': spread.value,
      'rear right': spread.value,
    },
    found: floor.found,
  }
}
