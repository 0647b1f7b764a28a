import * as z from 'zod'

const hex = (digits: number) => z.string().regex(new RegExp(`^[0-9a-f]{${digits}}$`))
const words = z.string().regex(/\S/).max(2000)

const cost = z.strictObject({
  n: z.union([2 ** 14, 2 ** 15, 2 ** 16, 2 ** 17].map((n) => z.literal(n))),
  r: z.int().min(1).max(16),
  p: z.int().min(1).max(16),
})

/** What a slow hash costs: N, r and p of scrypt. @source RFC 7914 */
export type CodeCost = z.output<typeof cost>

/**
 * What the entries of a workshop's own log hold: who may sign for it, and which files are its newest.
 *
 * @source own derivation: docs/methods/record.md
 */
export const workshopEntryData = {
  'workshop made': z.strictObject({ name: words }),
  'device certified': z.strictObject({
    device: hex(64).describe('The device’s public key.'),
    name: words.describe('How the device is called: "bay 2 tablet".'),
    owner: z.boolean().describe('May certify and revoke others.'),
  }),
  'device revoked': z.strictObject({ device: hex(64), why: words }),
  person: z.strictObject({
    sign: words.describe('Initials or a sign; no full name.'),
    salt: hex(32),
    code: hex(64).describe(
      'The short code, hashed slowly with the salt: it tells hands apart, it does not keep anybody out.',
    ),
    role: z.enum(['owner', 'technician']).optional().describe('Left out: technician.'),
    cost: cost.optional(),
  }),
  'person left': z.strictObject({ sign: words, why: words.optional() }),
  keeps: z.strictObject({
    what: z.literal('personal'),
    months: z.int().min(0).max(1200).describe('After the last entry of a job; then it is due to be erased.'),
  }),
  'file kept': z.strictObject({
    what: z.enum(['corner', 'spec', 'kit']),
    id: words,
    digest: hex(64),
  }),
} as const

/** A kind of entry of a workshop's log. @source definition */
export type WorkshopEntryKind = keyof typeof workshopEntryData
/** What it holds. @source definition */
export type WorkshopEntryData<K extends WorkshopEntryKind> = z.output<(typeof workshopEntryData)[K]>
