import { parseAngle } from './parse-angle.ts'
import { parseTorque } from './parse-torque.ts'
import { plainText } from './plain-text.ts'
import { quantityRefusal } from './quantity-refusal.ts'
import type { ReadOptions } from './read-quantity.ts'
import { type NewtonMetrePerRadian, NmPerRad } from './tags.ts'

/**
 * Stiffness of a bush in torsion: a torque for an angle, "1.9 N·m/°", "17 lbf·in per degree", "109 N·m/rad".
 *
 * @returns N·m/rad, above zero
 * @throws {Refusal} `no-unit`, `wrong-kind`, `unknown-unit`, `out-of-range`; `empty`, `not-a-number`, `ambiguous-number`
 * @source definition
 * @example parseStiffness('1.9 N·m/°') // 108.862
 */
export function parseStiffness(text: string, { at = 'text' }: ReadOptions = {}): NewtonMetrePerRadian {
  const plain = plainText(text)
  const cut = /^(.*[^\d/ ]) ?(?:\/| per ) ?([^\d/ ]+)$/i.exec(plain)
  if (plain !== '' && !cut) {
    const bare = /^[-+]?[\d.,/ ]+$/.test(plain)
    if (!bare) parseTorque(text, { at })
    throw quantityRefusal({
      code: bare ? 'no-unit' : 'wrong-kind',
      at,
      given: text,
      sentence: bare
        ? `“${text}” has no unit, and a torque for an angle is wanted here.`
        : `“${text}” is a torque, and a torque for an angle is wanted here.`,
      remedy: 'Write torque and angle: 1.9 N·m/°, 109 N·m/rad or 17 lbf·in/°.',
    })
  }
  const torque = parseTorque(cut?.[1] ?? text, { at })
  if (!(torque > 0))
    throw quantityRefusal({
      code: 'out-of-range',
      at,
      given: text,
      sentence: `“${text}” is not above zero, and a bush always resists.`,
      remedy: 'Write a stiffness above zero.',
    })
  return NmPerRad(torque / parseAngle(`1 ${cut?.[2]}`, { at }))
}
