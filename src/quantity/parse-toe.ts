import { findUnit } from './find-unit.ts'
import { parseAngle } from './parse-angle.ts'
import { parseLength } from './parse-length.ts'
import { plainText } from './plain-text.ts'
import { type QuantityRefusal, quantityRefusal } from './quantity-refusal.ts'
import type { ReadOptions } from './read-quantity.ts'
import type { Metre, Radian } from './tags.ts'
import { toeFromLength } from './toe-as-length.ts'

/** What a caller may say when toe is read. @source definition */
export interface ToeOptions extends ReadOptions {
  /** Diameter at which a length of toe is measured, m. */
  readonly diameter?: Metre | undefined
}

/** A length: its own unit, or inch marks with neither degree nor minute before them. */
const isLength = (plain: string) =>
  findUnit(/[a-zµ]+(?=\.?$)/i.exec(plain)?.[0] ?? '', 'length') !== undefined || /^[^°']*"$/.test(plain)

/**
 * Toe as an angle, or as a length at a diameter: "0.1°", "6'", "1.5 mm @ 400 mm", "1/16 in at 15 in".
 * A diameter in the text goes before the one in the options. `'` is minutes; `"` alone is inches.
 *
 * @returns rad, toe-in positive
 * @throws {Refusal} `needs-diameter`; `empty`, `not-a-number`, `ambiguous-number`, `no-unit`, `unknown-unit`, `wrong-kind`, `out-of-range`
 * @assumes a length of total toe taken as one wheel's errs by less than 0.02 % up to 2° in total
 * @source US Army TM 5-3810-293 (toe-in is rear minus front); own derivation: docs/methods/signs.md
 * @example inDegrees(parseToe('1.5 mm @ 400 mm')) // 0.21486
 */
export function parseToe(text: string, { diameter, at = 'text' }: ToeOptions = {}): Radian {
  const plain = plainText(text)
  const [toe = '', measuredAt, ...more] = plain.split(/ ?@ ?| at /i)
  const refuse = (code: QuantityRefusal, sentence: string, remedy: string) =>
    quantityRefusal({ code, at, given: text, sentence, remedy })
  if (more.length > 0 || (measuredAt !== undefined && !isLength(toe)))
    throw refuse(
      'not-a-number',
      `“${text}” is not one length at one diameter.`,
      'Write the length of toe, @ and the diameter: 1.5 mm @ 400 mm.',
    )
  if (!isLength(toe)) {
    if (/^[-+]?[\d.,/ ]+$/.test(toe))
      throw refuse(
        'no-unit',
        `“${text}” has no unit.`,
        `Understood would be: ${toe}°, ${toe}′, ${toe} mm @ 400 mm, ${toe} in @ 15 in.`,
      )
    return parseAngle(text, { at })
  }
  const length = parseLength(toe, { at })
  const across = measuredAt === undefined ? diameter : parseLength(measuredAt, { at })
  if (across === undefined)
    throw refuse(
      'needs-diameter',
      `“${text}” is a length, and the same length is more toe on a small rim than on a large one.`,
      `Write the diameter it was measured at, ${toe} @ 400 mm, or the toe as an angle, 0.20° or 12′.`,
    )
  if (!(across > 0 && Math.abs(length) <= across))
    throw refuse(
      'out-of-range',
      `“${text}” is a toe longer than the diameter it is measured at.`,
      'Check length and diameter and their units.',
    )
  return toeFromLength({ length, diameter: across })
}
