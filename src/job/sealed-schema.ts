import * as z from 'zod'
import { words } from '../corner/index.ts'

const hex = (digits: number, what: string) => {
  const right = `${what}, ${digits} small hexadecimal digits`
  return z.string({ error: () => right }).regex(new RegExp(`^[0-9a-f]{${digits}}$`), { error: () => right })
}
const id = hex(64, 'an entry’s id')

/**
 * What a sealed entry has beside a bare one. All of it, or none.
 *
 * @source own derivation: docs/decisions/0014-a-log-is-a-set-of-sealed-entries.md
 */
export const sealMembers = {
  format: z.literal(1).optional(),
  workshop: words.optional(),
  job: words.optional(),
  device: hex(64, 'a device’s public key').optional(),
  seq: z.int().min(1).optional().describe('Counts the device’s entries of this job, from 1.'),
  after: z.array(id).optional().describe('The heads that the device knew, ascending.'),
  offset: z
    .string()
    .regex(/^[+-]\d\d:\d\d$/, { error: () => 'an offset from UTC such as "+01:00"' })
    .optional()
    .describe('The device’s offset from UTC when it was sealed.'),
  person: words.optional().describe('Whose hand: initials or a sign, no full name.'),
  id: id.optional(),
  signature: hex(128, 'a signature').optional(),
} as const

/** The names of `sealMembers`. @source definition */
export const sealNames = Object.keys(sealMembers) as readonly (keyof typeof sealMembers)[]
