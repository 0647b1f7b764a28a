import { type Metre, type NewtonMetrePerRadian, NmPerRad, type Pascal, Refusal } from '../quantity/index.ts'
import type { ClampRefusal } from './clamp-refusal.ts'

/** A bonded bush as a rubber ring between two sleeves. @source definition */
export interface RubberRing {
  /** Outer diameter of the inner sleeve. */
  readonly inner: Metre
  /** Inner diameter of the outer sleeve. */
  readonly outer: Metre
  readonly length: Metre
  /** Shear modulus of the rubber; 0.3 to 1.2 MPa is usual. */
  readonly shear: Pascal
}

/**
 * Torsional stiffness of a bonded bush.
 *
 *     k = π · length · G / (1/inner² − 1/outer²)
 *
 * @returns N·m/rad
 * @throws {Refusal} `not-positive` when a size is not, or the outer diameter does not exceed the inner
 * @assumes small strain, ends free, one rubber without voids: real bushes differ by tens of percent
 * @source cylindrical torsion spring in rubber, θ = T (1/d² − 1/D²)/(π L G), read in a public copy
 * @example bushStiffness({ inner: mm(16), outer: mm(32), length: mm(40), shear: pascal(7e5) }) // 30.0252 N·m/rad
 */
export function bushStiffness({ inner, outer, length, shear }: RubberRing): NewtonMetrePerRadian {
  const no = (at: string, given: number, sentence: string) =>
    new Refusal<ClampRefusal>({
      code: 'not-positive',
      at,
      given: String(given),
      sentence,
      remedy: 'Measure the bush again: sleeve diameters, length, and the shear modulus of its rubber.',
    })
  for (const [at, given] of Object.entries({ inner, outer, length, shear }))
    if (!(given > 0 && Number.isFinite(given)))
      throw no(at, given, `The ${at} of a bush must be positive, not ${given}.`)
  if (!(outer > inner))
    throw no('outer', outer, `The outer diameter (${outer} m) must exceed the inner one (${inner} m).`)
  return NmPerRad((Math.PI * length * shear) / (inner ** -2 - outer ** -2))
}
