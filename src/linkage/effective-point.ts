import { Refusal } from '../quantity/index.ts'
import { checkKinds } from './check-kinds.ts'
import { checkFinite } from './check-points.ts'
import type { LinkageRefusal } from './linkage-refusal.ts'
import type { Point } from './points.ts'
import type { TwistBeam } from './twist-beam-points.ts'
import { cross, dot, minus, norm, plus, times, unit } from './vector.ts'

/** Shorter than this is no length, m; below this part of a length there is no lever. */
const nothing = 1e-6

/** The point of a twist beam that neither side moves when it is twisted: on the pivots' line at shape 0, the shear centre at 1. */
export function effectivePoint({ left, right, shearCentre, shape }: TwistBeam): Point {
  const line = unit(minus(left.pivot, right.pivot))
  const foot = plus(right.pivot, times(dot(minus(shearCentre, right.pivot), line), line))
  return plus(foot, times(shape, minus(shearCentre, foot)))
}

const no = (code: LinkageRefusal, at: string, sentence: string, remedy: string): Refusal<LinkageRefusal> =>
  new Refusal<LinkageRefusal>({ code, at, given: '', sentence, remedy })

/** All checks of a twist beam, the first fault in the order of the codes. */
export function checkTwistBeam(beam: TwistBeam): void {
  checkFinite(beam, '')
  const hub = { wheelCentre: 'point', camber: 'number', toe: 'number', tyreRadius: 'number' } as const
  const side = { ...hub, pivot: 'point' } as const
  checkKinds(beam, { left: side, right: side, shearCentre: 'point', shape: 'number' }, '')
  for (const [name, shim] of Object.entries(beam.shim ?? {}))
    if (shim !== undefined) checkKinds(shim, { camber: 'number', toe: 'number' }, `shim.${name}`)
  const { left, right } = beam
  for (const side of ['left', 'right'] as const) {
    const { tyreRadius, camber, toe } = beam[side]
    if (!(tyreRadius > 0))
      throw no(
        'bad-input',
        `${side}.tyreRadius`,
        `The ${side} tyre radius is ${tyreRadius} m.`,
        'Give it above 0.',
      )
    if (!(Math.abs(camber) < Math.PI / 2 && Math.abs(toe) < Math.PI / 2))
      throw no(
        'bad-input',
        `${side}.camber`,
        'Camber or toe is a right angle or more.',
        'Give it as measured.',
      )
  }
  if (!(left.pivot[1] - right.pivot[1] > nothing && left.wheelCentre[1] > right.wheelCentre[1]))
    throw no(
      Math.abs(left.pivot[1] - right.pivot[1]) <= nothing ? 'coincident-pivots' : 'bad-input',
      'right.pivot',
      'The right side of the beam does not lie to the right of the left one.',
      'Give both sides in vehicle axes: y is positive on the left and negative on the right.',
    )
  const line = minus(left.pivot, right.pivot)
  const still = effectivePoint(beam)
  for (const side of ['left', 'right'] as const) {
    const { pivot, wheelCentre } = beam[side]
    const axis = minus(pivot, still)
    if (norm(axis) < nothing)
      throw no(
        'coincident-pivots',
        `${side}.pivot`,
        `The ${side} pivot lies in the point that the beam twists about.`,
        'Measure the pivots and the cross beam again.',
      )
    for (const way of [line, axis]) {
      const lift = cross(unit(way), minus(wheelCentre, pivot))
      if (Math.abs(lift[2]) < Math.max(nothing, nothing * norm(lift)))
        throw no(
          'singular',
          `${side}.wheelCentre`,
          `The ${side} wheel is not lifted when its arm turns: it lies on an axis of the beam, or above or below one.`,
          'Measure the pivots, the cross beam and the wheel centre again.',
        )
    }
  }
}
