import * as z from 'zod'

const hex = z.string().regex(/^[0-9a-f]{64}$/)

/**
 * The list in a backup: every file with its SHA-256, every log with its heads.
 *
 * @source own derivation: docs/methods/carrying.md
 */
export const backupSchema = z.strictObject({
  format: z.literal(1),
  kind: z.literal('backup'),
  at: z.string().min(1),
  logs: z.array(
    z.strictObject({
      dir: z.string(),
      workshop: z.string(),
      job: z.string(),
      entries: z.int().min(1),
      heads: z.array(hex).min(1),
    }),
  ),
  files: z.array(z.strictObject({ name: z.string(), size: z.int().min(0), sha256: hex })),
})

/** It, read. @source definition */
export type BackupList = z.output<typeof backupSchema>
