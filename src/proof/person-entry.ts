import type { Entry } from '../job/index.ts'
import { Refusal } from '../quantity/index.ts'
import { codeHash, usualCodeCost } from './code-hash.ts'
import { toHex } from './hex.ts'
import type { ProofRefusal } from './proof-refusal.ts'

/**
 * The entry by which a workshop gets to know a person, or by which a person gets another role or code.
 *
 * @param sign initials or a sign; no full name
 * @param code four to eight digits
 * @param salt 16 random bytes
 * @throws {Refusal} `bad-code` for another length, letters, or digits that everybody tries first
 * @source own derivation: docs/methods/record.md
 */
export function personEntry({
  sign,
  role,
  code,
  salt,
}: {
  readonly sign: string
  readonly role: 'owner' | 'technician'
  readonly code: string
  readonly salt: Uint8Array
}): Entry {
  const weak = isGuessedFirst(code)
  if (!/^\d{4,8}$/.test(code) || weak)
    throw new Refusal<ProofRefusal>({
      code: 'bad-code',
      at: 'code',
      given: `${code.length} characters`,
      sentence: weak
        ? 'This code is among the first that anybody tries: one digit again and again, or digits in a row.'
        : 'A code has four to eight digits and nothing else.',
      remedy: 'Choose another one.',
    })
  const random = toHex(salt)
  return {
    kind: 'person',
    data: { sign, role, salt: random, code: codeHash(code, random), cost: usualCodeCost },
  }
}

/** One digit all along, or each one more, or one less, than the one before. */
function isGuessedFirst(code: string): boolean {
  const steps = [...code].slice(1).map((digit, i) => Number(digit) - Number(code[i]))
  return steps.length > 0 && [0, 1, -1].some((step) => steps.every((one) => one === step))
}
