import { combine, type Measured, propagate, rectangular, resolution } from '../measure/index.ts'
import { metre, type NewtonMetre, Nm, rad } from '../quantity/index.ts'
import { positive } from './fasten-refusal.ts'
import type { Adapter, TorqueWrench } from './torque-wrench.ts'
import { wrenchDeviation } from './wrench-class.ts'
import { torqueThrough } from './wrench-setting.ts'

/** A wrench as it stands in the hand. @source definition */
export interface WrenchInHand {
  readonly wrench: TorqueWrench
  /** Null: the socket sits on the drive. */
  readonly adapter: Adapter | null
  /** The mark it is set to. */
  readonly setting: NewtonMetre
}

/**
 * What the fastener receives, with everything that makes it uncertain: deviation of the wrench by certificate or class,
 * its scale, where the hand pulls, the adapter's offset and how straight it stands. Errors are named after their tool,
 * so that two pulls with one wrench share them.
 *
 * @returns N·m; `budget` of it says what is worth improving
 * @throws {Refusal} `not-positive`, `not-finite`; `no-lever`
 * @assumes a socket on the drive itself: where the hand pulls then changes nothing
 * @source ISO 6789-1:2017, 5.1.5 (deviation by class; from memory); JCGM 100:2008, 5.1.2; derived in docs/methods/wrench-adapter.md
 * @example torqueReceived({ wrench: longWrench, adapter: null, setting: Nm(100) }).value // 100
 */
export function torqueReceived({ wrench, adapter, setting }: WrenchInHand): Measured {
  positive(setting, 'setting')
  const share = wrench.deviation ?? wrenchDeviation(wrench.kind, wrench.scale.high)
  const given = combine([
    { of: rectangular(share * setting, `deviation of ${wrench.name}`, setting), times: 1 },
    { of: resolution(wrench.scale.step, `scale of ${wrench.name}`), times: 1 },
  ])
  if (adapter === null) return given
  return propagate(
    ([s, reach, offset, angle]) =>
      torqueThrough({
        setting: Nm(s!),
        reach: metre(reach!),
        // a spread may reach below nothing where there is hardly an offset
        offset: metre(Math.abs(offset!)),
        angle: rad(offset! < 0 ? angle! + Math.PI : angle!),
      }),
    [
      given,
      rectangular(wrench.handSpread, `hand on the grip of ${wrench.name}`, wrench.reach),
      rectangular(adapter.offsetSpread, `offset of ${adapter.name}`, adapter.offset),
      rectangular(adapter.angleSpread, `angle of ${adapter.name}`, adapter.angle),
    ],
  )
}
