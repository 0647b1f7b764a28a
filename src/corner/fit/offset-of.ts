import { placeOf } from './corner-at.ts'
import type { Observable } from './observable.ts'
import { type Way, ways, wordsOf } from './unknowns.ts'

const fromVehicle: Readonly<Record<Way, string>> = {
  lengthways: 'lengthways from the front axle',
  across: 'across from the centre line',
  up: 'above the floor',
}

/**
 * How far a point stands forward, to the left or up of another, square to the vehicle: a height by rule, half a track,
 * a wheelbase with plumb lines, at ride height.
 *
 * @param from another point; without it the front axle's middle, the centre line or the floor
 * @throws {Refusal} `no-such-point` when it is computed for a corner whose layout has no such point
 * @source definition; axes: docs/methods/signs.md
 * @example offsetOf({ point: 'lower-outer', way: 'up' }).says // lower outer above the floor
 */
export function offsetOf({
  point,
  way,
  from,
}: {
  readonly point: string
  readonly way: Way
  readonly from?: string
}): Observable {
  const axis = ways.indexOf(way)
  return {
    says: from
      ? `${wordsOf(point)} ${way === 'up' ? 'above' : `${way} from`} ${wordsOf(from)}`
      : `${wordsOf(point)} ${fromVehicle[way]}`,
    unit: 'm',
    at: ({ unknowns, values }) => {
      const slopes = new Float64Array(unknowns.count)
      const to = placeOf(unknowns, point) + axis
      slopes[to] = 1
      if (from === undefined) return { value: values[to]!, slopes }
      const start = placeOf(unknowns, from) + axis
      slopes[start]! -= 1
      return { value: values[to]! - values[start]!, slopes }
    },
  }
}
