import * as z from 'zod'

const hex = (digits: number) => z.string().regex(new RegExp(`^[0-9a-f]{${digits}}$`))

/**
 * What frames a proof.
 *
 * @source own derivation: docs/methods/record.md
 */
export const proofHead = z.strictObject({
  format: z.literal(1),
  kind: z.literal('proof'),
  workshop: z.string(),
  job: z.string(),
  root: hex(64).nullable(),
})

/**
 * What is needed of the head of a later format.
 *
 * @source own derivation: docs/methods/record.md
 */
export const newerHead = z.looseObject({
  format: z.int().min(2),
  kind: z.literal('proof'),
  workshop: z.string(),
  job: z.string(),
  root: hex(64).nullable(),
})

/**
 * What every sealed entry has, of whatever format; a later format may have more.
 *
 * @source own derivation: docs/decisions/0014-a-log-is-a-set-of-sealed-entries.md
 */
export const sealedShape = z.looseObject({
  format: z.int().min(1),
  workshop: z.string(),
  job: z.string(),
  device: hex(64),
  seq: z.int().min(1),
  after: z.array(hex(64)),
  at: z.string(),
  offset: z.string(),
  person: z.string(),
  kind: z.string(),
  data: z.record(z.string(), z.unknown()),
  id: hex(64),
  signature: hex(128),
})

/**
 * A file that a log pins.
 *
 * @source own derivation: docs/methods/record.md
 */
export const snapshotShape = z.strictObject({
  what: z.enum(['corner', 'spec', 'kit']),
  digest: hex(64),
  file: z.unknown(),
})

/**
 * A personal value beside a log.
 *
 * @source own derivation: docs/methods/record.md
 */
export const privateShape = z.strictObject({ commitment: hex(64), salt: hex(64), value: z.string() })

/**
 * What a sign-off pins; a later version may say more.
 *
 * @source own derivation: docs/methods/record.md
 */
export const signedShape = z.looseObject({
  fold: z.int(),
  engine: z.string(),
  state: hex(64),
  corners: z.looseObject({ front: hex(64), rear: hex(64).optional() }),
  spec: hex(64).optional(),
  kit: hex(64).optional(),
  hand: z.string(),
})
