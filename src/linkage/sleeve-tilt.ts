import { type Radian, Refusal, rad } from '../quantity/index.ts'
import type { LinkageRefusal } from './linkage-refusal.ts'
import type { KingpinTilt } from './solid-axle-points.ts'

/** One offset sleeve: how far it tilts the axis, and which way it stands. @source definition */
export interface OffsetSleeve {
  /** Tilt of the axis when the sleeve is in, ≥ 0. */
  readonly offset: Radian
  /** 0: all camber, top outward; π/2: all caster, top rearward. */
  readonly angle: Radian
}

/**
 * What offset sleeves at the upper end of a kingpin do together: an eccentric turned by its angle, or one in
 * another.
 *
 *     camber = Σ offset · cos angle,   caster = Σ offset · sin angle
 *
 * @throws {Refusal} `not-finite`; `bad-input` for an offset below 0 or of a right angle
 * @source own derivation: docs/methods/solid-axle.md
 * @example inDegrees(sleeveTilt([{ offset: deg(1), angle: deg(30) }]).caster) // 0.5
 */
export function sleeveTilt(sleeves: readonly OffsetSleeve[]): KingpinTilt {
  let [camber, caster] = [0, 0]
  for (const [i, { offset, angle }] of sleeves.entries()) {
    const bad = !(offset >= 0 && offset < Math.PI / 2)
    if (bad || !Number.isFinite(angle))
      throw new Refusal<LinkageRefusal>({
        code: Number.isFinite(offset) && Number.isFinite(angle) ? 'bad-input' : 'not-finite',
        at: `sleeves.${i}`,
        given: `offset ${offset}, angle ${angle}`,
        sentence: `Sleeve ${i + 1} has the offset ${offset} rad at ${angle} rad; an offset is 0 or more and below a right angle.`,
        remedy: 'Give the offset that is marked on the sleeve, and the way it stands as its angle.',
      })
    camber += offset * Math.cos(angle)
    caster += offset * Math.sin(angle)
  }
  return { camber: rad(camber), caster: rad(caster) }
}
