import { specRefusal } from './spec-refusal.ts'

/** What the check digit of a VIN would be, and how. @source 49 CFR 565.15(c) */
export interface VinCheck {
  readonly sum: number
  readonly remainder: number
  /** 0–9, or X for ten. */
  readonly digit: string
  /** Whether the ninth character is it. */
  readonly agrees: boolean
}

/** Place in the row is the weight's place; the ninth, the check digit's own, weighs nothing. 49 CFR 565.15, Table IV. */
const weights = [8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2] as const
/** 49 CFR 565.15, Table III: letters by their value, from 1; I, O and Q have none. */
const letters = ['AJ', 'BKS', 'CLT', 'DMU', 'ENV', 'FW', 'GPX', 'HY', 'RZ'] as const
const MODULUS = 11

/**
 * The check digit that North American rules ask for in the ninth place of a VIN. Elsewhere the ninth place is
 * the maker's own: a digit that does not agree is a hint to look again, and never a fault.
 *
 *     remainder = Σ weight · value mod 11        ten is written X
 *
 * @param vin 17 characters, capitals
 * @throws {Refusal} `not-a-vin` for another length, or a character that no VIN has
 * @source 49 CFR 565.15(c), Tables III, IV and V; characters: ISO 3779
 * @example vinCheck('11111111111111111').digit // '1'
 */
export function vinCheck(vin: string): VinCheck {
  if (!/^[0-9A-HJ-NPR-Z]{17}$/.test(vin))
    throw specRefusal({
      code: 'not-a-vin',
      at: 'vin',
      given: vin,
      sentence: `“${vin}” is not 17 of the digits and capitals that a VIN has; I, O and Q are none of them.`,
      remedy: 'Read it again from the vehicle; 1 and I, 0 and O look alike.',
    })
  return vinCheckOfValues([...vin].map(valueOfCharacter), vin[8]!)
}

/**
 * The same for the values that the characters stand for.
 *
 * @param values 17 numbers from 0 to 9
 * @param found the character in the ninth place
 * @throws {Refusal} `not-a-vin` for another count or another number
 * @source 49 CFR 565.15(c)(4)
 * @example vinCheckOfValues([1, 7, 4, 1, 8, 5, 9, 8, 0, 5, 7, 1, 1, 8, 3, 4, 1], '4').sum // 411
 */
export function vinCheckOfValues(values: readonly number[], found: string): VinCheck {
  if (values.length !== weights.length || values.some((v) => !Number.isInteger(v) || v < 0 || v > 9))
    throw specRefusal({
      code: 'not-a-vin',
      at: 'values',
      given: values.join(' '),
      sentence: 'A VIN has 17 values, each from 0 to 9.',
      remedy: 'Give the value of every character.',
    })
  const sum = weights.reduce<number>((all, weight, i) => all + weight * values[i]!, 0)
  const remainder = sum % MODULUS
  const digit = remainder === MODULUS - 1 ? 'X' : String(remainder)
  return { sum, remainder, digit, agrees: found === digit }
}

function valueOfCharacter(character: string): number {
  if (/\d/.test(character)) return Number(character)
  return 1 + letters.findIndex((row) => row.includes(character))
}
