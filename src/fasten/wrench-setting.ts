import { inMillimetres, type Metre, type NewtonMetre, Nm, type Radian } from '../quantity/index.ts'
import { fastenRefusal, finite, notNegative, positive } from './fasten-refusal.ts'

/** An offset adapter on a wrench. @source definition */
export interface Lever {
  /** Wrench drive centre to middle of the grip. */
  readonly reach: Metre
  /** Wrench drive centre to fastener centre. */
  readonly offset: Metre
  /** From the wrench's axis: 0 lengthens, π/2 changes nothing, π shortens. */
  readonly angle: Radian
}

/** A torque wanted through an adapter. @source definition */
export interface AdapterJob extends Lever {
  readonly torque: NewtonMetre
}

/**
 * The value to set on the wrench so that the fastener receives `torque` through an offset adapter.
 *
 *     setting = torque · reach / (reach + offset · cos angle)
 *
 * @param job torque wanted at the fastener, > 0; reach > 0; offset ≥ 0; angle in rad
 * @returns N·m, unrounded; rounding to the wrench's scale is `onScale`'s work
 * @throws {Refusal} `not-positive`, `not-finite`; `no-lever` if reach + offset · cos angle ≤ 0
 * @assumes hand force at the middle of the grip, square to the wrench, in the fastener's plane
 * @source US Army TM 9-254, fig. 4-6 (2)–(4); derived in docs/methods/wrench-adapter.md
 * @example wrenchSetting({ torque: Nm(100), reach: mm(400), offset: mm(50), angle: deg(30) }) // 90.2321 N·m
 */
export function wrenchSetting({ torque, ...lever }: AdapterJob): NewtonMetre {
  return Nm(positive(torque, 'torque') / leverRatio(lever))
}

/**
 * What the fastener receives when the wrench gives way at its setting.
 *
 *     torque = setting · (reach + offset · cos angle) / reach
 *
 * @throws {Refusal} `not-positive`, `not-finite`; `no-lever` if reach + offset · cos angle ≤ 0
 * @assumes hand force at the middle of the grip, square to the wrench, in the fastener's plane
 * @source US Army TM 9-254, fig. 4-5 and 4-6 (2)–(4); derived in docs/methods/wrench-adapter.md
 * @example torqueThrough({ setting: Nm(90), reach: mm(400), offset: mm(50), angle: deg(0) }) // 101.25
 */
export function torqueThrough({ setting, ...lever }: Lever & { readonly setting: NewtonMetre }): NewtonMetre {
  return Nm(positive(setting, 'setting') * leverRatio(lever))
}

/** A lever this short against the reach is the machine's rounding of none. */
const NONE = 1e-12

/** Lever at the fastener over lever at the wrench's drive. */
function leverRatio({ reach, offset, angle }: Lever): number {
  const whole = positive(reach, 'reach')
  const lever = whole + notNegative(offset, 'offset') * Math.cos(finite(angle, 'angle'))
  if (lever > NONE * whole) return lever / whole
  throw fastenRefusal({
    code: 'no-lever',
    at: 'offset',
    given: `${inMillimetres(offset)} mm`,
    sentence: 'The adapter folds back as far as the grip, so no setting exists.',
    remedy: 'Turn the adapter or take a longer wrench.',
  })
}
