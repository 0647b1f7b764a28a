import * as z from 'zod'
import { fileHead, moment, words } from '../corner/index.ts'
import { entryData, entryKinds } from './entries-schema.ts'
import { sealMembers } from './sealed-schema.ts'

const entry = z.strictObject({
  kind: words,
  data: z.record(z.string(), z.unknown()),
  at: moment.optional().describe('The device’s clock; shown, never used to order.'),
  ...sealMembers,
})

const hex64 = z.string().regex(/^[0-9a-f]{64}$/, { error: () => '64 small hexadecimal digits' })

const head = {
  ...fileHead,
  kind: z.literal('job').optional(),
  workshop: words,
  job: words.describe('The job’s short number.'),
  private: z
    .array(z.strictObject({ commitment: hex64, salt: hex64, value: z.string() }))
    .optional()
    .describe(
      'Personal values that stand in sealed entries as tokens; what was erased is not there any more.',
    ),
}

/**
 * A job file as it is first read: its head, and entries of any kind; each entry is then read by its kind.
 *
 * @source own derivation: docs/methods/formats.md
 */
export const jobFileSchema = z.strictObject({ ...head, entries: z.array(entry) })

const known = entryKinds.map((kind) =>
  z.strictObject({ kind: z.literal(kind), data: entryData[kind], at: entry.shape.at, ...sealMembers }),
)

/**
 * A job (`*.job.json`), format 1, with the kinds of entries that this version writes: the definition of its
 * wire type and of the JSON Schema.
 *
 * @source own derivation: docs/methods/formats.md
 */
export const jobSchema = z.strictObject({
  ...head,
  entries: z.array(z.discriminatedUnion('kind', known as [(typeof known)[number], ...typeof known])),
})

/** A job as it stands in a file. @source definition */
export type JobFile = z.input<typeof jobFileSchema>
