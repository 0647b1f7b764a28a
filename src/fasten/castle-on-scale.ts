import type { NewtonMetre } from '../quantity/index.ts'
import { inOrder, positive } from './fasten-refusal.ts'
import { onScale } from './on-scale.ts'
import { settingOn } from './setting-on.ts'
import type { Adapter, TorqueWrench } from './torque-wrench.ts'

/** Low and high figure of a castle nut, and the wrench in the hand. @source definition */
export interface CastleWindow {
  readonly floor: NewtonMetre
  readonly ceiling: NewtonMetre
  readonly wrench: TorqueWrench
  readonly adapter: Adapter | null
}

/**
 * Floor and ceiling as marks of the wrench: the floor on the first mark that reaches it, the ceiling on the last that does
 * not pass it.
 *
 * @throws {Refusal} `outside-range`, `no-mark`, `no-lever`, `bad-range`, `not-positive`, `not-finite`
 * @source FAA AC 43.13-1B, par. 7-40 f and note (from the minimum, not past the maximum); own derivation: docs/methods/castle-nut.md
 * @example castleOnScale({ floor: Nm(80), ceiling: Nm(120), wrench: longWrench, adapter: openEnd }) // { floor: 75, ceiling: 111 }
 */
export function castleOnScale({ floor, ceiling, wrench, adapter }: CastleWindow): {
  readonly floor: NewtonMetre
  readonly ceiling: NewtonMetre
} {
  positive(floor, 'floor')
  inOrder({ low: floor, high: ceiling }, 'floor and ceiling')
  const low = settingOn(wrench, adapter, floor)
  const high = settingOn(wrench, adapter, ceiling)
  const { scale, unit } = wrench
  return {
    floor: onScale({ setting: low, scale, unit, floor: low, ceiling: high }),
    ceiling: onScale({ setting: high, scale, unit, floor: low, ceiling: high }),
  }
}
