import * as z from 'zod'

const hex = (digits: number) => z.string().regex(new RegExp(`^[0-9a-f]{${digits}}$`))
const words = z.string().regex(/\S/).max(2000)

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
  }),
  'person left': z.strictObject({ sign: words }),
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
