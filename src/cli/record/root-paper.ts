import { hashOf } from '../../proof/index.ts'
import { BadInput } from '../files/outcome.ts'

const check = (secret: string) => hashOf(`axlewright/paper/1\0${secret}`).slice(0, 4)

/** A root's secret as it is written on paper: sixteen groups of four and a check group, in lines of six. */
export function rootPaper(secret: string): readonly string[] {
  const groups = `${secret}${check(secret)}`.match(/.{4}/g) ?? []
  return [groups.slice(0, 6), groups.slice(6, 12), groups.slice(12)].map((line) => line.join(' '))
}

/** The secret as it was typed from paper; a slip of the pen is told. */
export function rootFromPaper(typed: string): string {
  const digits = typed.toLowerCase().replace(/\s+/g, '')
  const secret = digits.slice(0, 64)
  if (!/^[0-9a-f]{68}$/.test(digits))
    throw new BadInput([
      `The root’s secret has seventeen groups of four digits from 0 to 9 and a to f; ${digits.length} characters came in. Type it again as it stands on the paper.`,
    ])
  if (digits.slice(64) !== check(secret))
    throw new BadInput([
      'The root’s secret does not agree with its last group, the check: a digit is not as it stands on the paper. Type it again.',
    ])
  return secret
}
