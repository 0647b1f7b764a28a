import { hashOf } from '../proof/index.ts'
import { refused } from './refused.ts'

const check = (secret: string) => hashOf(`axlewright/paper/1\0${secret}`).slice(0, 4)

/**
 * A root's secret as it is written on paper: sixteen groups of four and a check group, in lines of six.
 *
 * @param secret 64 small hexadecimal digits
 * @source own derivation: docs/methods/record.md
 * @example rootPaper('0'.repeat(64))[2] // '0000 0000 0000 0000 e7a6'
 */
export function rootPaper(secret: string): readonly string[] {
  const groups = `${secret}${check(secret)}`.match(/.{4}/g) ?? []
  return [groups.slice(0, 6), groups.slice(6, 12), groups.slice(12)].map((line) => line.join(' '))
}

/**
 * The secret as it was typed from paper; a slip of the pen is told.
 *
 * @throws {Refusal} `bad-paper`
 * @source own derivation: docs/methods/record.md
 */
export function rootFromPaper(typed: string): string {
  const digits = typed.toLowerCase().replace(/\s+/g, '')
  const secret = digits.slice(0, 64)
  // What was typed is a secret: it stands in no message.
  if (!/^[0-9a-f]{68}$/.test(digits))
    throw refused(
      'bad-paper',
      `${digits.length} characters`,
      `The root’s secret has seventeen groups of four digits from 0 to 9 and a to f; ${digits.length} characters came in.`,
      'Type it again as it stands on the paper.',
    )
  if (digits.slice(64) !== check(secret))
    throw refused(
      'bad-paper',
      'another last group',
      'The root’s secret does not agree with its last group, the check: a digit is not as it stands on the paper.',
      'Type it again.',
    )
  return secret
}
