import { formatTorque, type NewtonMetre, Nm, type TorqueUnit } from '../quantity/index.ts'
import { fastenRefusal, finite, positive } from './fasten-refusal.ts'
import type { WrenchScale } from './torque-wrench.ts'

/** A setting to be made on a scale. @source definition */
export interface ScaleJob {
  readonly setting: NewtonMetre
  readonly scale: WrenchScale
  /** Not below this, on the wrench; a mark on it counts. */
  readonly floor?: NewtonMetre | undefined
  /** Never above this, on the wrench; a mark on it counts. */
  readonly ceiling?: NewtonMetre | undefined
  /** Unit of the sentences. */
  readonly unit?: TorqueUnit | undefined
}

/** Share of a step that is the machine's rounding. */
const ROUNDING = 1e-9

/**
 * The mark of the scale nearest to a setting, never below the floor, never above the ceiling. Halfway goes down.
 *
 * @returns N·m, a mark of the scale
 * @throws {Refusal} `outside-range` when the setting is not on the scale; `no-mark` when no mark lies between floor and ceiling; `not-positive`, `not-finite`
 * @source ISO 6789:2003, 6.5, and ISO 6789-1:2017 (a wrench counts within its range only); rounding: common practice, no source
 * @example onScale({ setting: Nm(90.23), scale: { low: Nm(40), high: Nm(200), step: Nm(1) } }) // 90
 */
export function onScale({ setting, scale, floor, ceiling, unit = 'N·m' }: ScaleJob): NewtonMetre {
  const { low, high } = scale
  const step = positive(scale.step, 'step')
  const say = (value: number) => formatTorque(Nm(value), { unit, digits: 1 })
  const slack = ROUNDING * step
  if (!(finite(setting, 'setting') >= low - slack && setting <= high + slack))
    throw fastenRefusal({
      code: 'outside-range',
      at: 'wrench',
      given: say(setting),
      sentence: `${say(setting)} is outside this wrench, which goes from ${say(low)} to ${say(high)}.`,
      remedy: 'Take another wrench; outside its range a wrench proves nothing.',
    })
  const last = Math.floor((high - low) / step + ROUNDING)
  const from = floor === undefined ? 0 : Math.max(0, Math.ceil((floor - low) / step - ROUNDING))
  const to = ceiling === undefined ? last : Math.min(last, Math.floor((ceiling - low) / step + ROUNDING))
  if (from > to)
    throw fastenRefusal({
      code: 'no-mark',
      at: 'wrench',
      given: say(setting),
      sentence: `No mark of this wrench lies between ${floor === undefined ? say(low) : say(floor)} and ${ceiling === undefined ? say(high) : say(ceiling)}; its steps are ${say(step)}.`,
      remedy: 'Take a wrench with a finer scale, or another adapter.',
    })
  const nearest = Math.ceil((setting - low) / step - 1 / 2 - ROUNDING)
  return Nm(low + Math.min(to, Math.max(from, nearest)) * step)
}
