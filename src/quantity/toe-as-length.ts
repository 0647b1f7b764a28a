import { quantityRefusal } from './quantity-refusal.ts'
import { type Metre, metre, type Radian, rad } from './tags.ts'

/**
 * Toe of one wheel as the length by which the front of a circle stands further in than its rear.
 *
 *     length = diameter · sin toe
 *
 * @param toe rad, toe-in positive
 * @param diameter of the circle on which it is measured, m, > 0: rim flange or scribed tread line
 * @returns m, toe-in positive
 * @throws {Refusal} `out-of-range` if the toe is not within a quarter turn or the diameter not above zero
 * @assumes measured at hub height; lower down the chord is shorter than the diameter
 * @source US Army TM 5-3810-293 (toe-in is rear minus front); own derivation: docs/methods/signs.md
 * @example inMillimetres(toeAsLength({ toe: deg(0.1), diameter: mm(400) })) // 0.698
 */
export function toeAsLength({ toe, diameter }: { toe: Radian; diameter: Metre }): Metre {
  mustBeDiameter(diameter)
  if (!(Math.abs(toe) <= Math.PI / 2))
    throw outOfRange(String(toe), 'A toe of more than a quarter turn is none.')
  return metre(diameter * Math.sin(toe))
}

/**
 * The inverse: toe of one wheel from a length at a diameter.
 *
 *     toe = asin(length / diameter)
 *
 * @param length rear minus front, m, toe-in positive
 * @param diameter m, > 0
 * @returns rad, toe-in positive
 * @throws {Refusal} `out-of-range` if the length is longer than the diameter or the diameter not above zero
 * @source US Army TM 5-3810-293 (toe-in is rear minus front); own derivation: docs/methods/signs.md
 * @example inDegrees(toeFromLength({ length: mm(0.698131), diameter: mm(400) })) // 0.1000
 */
export function toeFromLength({ length, diameter }: { length: Metre; diameter: Metre }): Radian {
  mustBeDiameter(diameter)
  if (!(Math.abs(length) <= diameter))
    throw outOfRange(String(length), 'The length of toe is longer than the diameter it is measured at.')
  return rad(Math.asin(length / diameter))
}

function mustBeDiameter(diameter: number): void {
  if (!(diameter > 0 && Number.isFinite(diameter)))
    throw outOfRange(String(diameter), 'The diameter is not above zero.')
}

const outOfRange = (given: string, sentence: string) =>
  quantityRefusal({
    code: 'out-of-range',
    at: 'toe',
    given,
    sentence,
    remedy: 'Check length and diameter and their units.',
  })
