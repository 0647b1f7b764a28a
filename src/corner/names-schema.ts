import * as z from 'zod'

/**
 * A name that other members refer to: letters, digits and `-`.
 *
 * @source definition
 */
export const nameText = z
  .string({ error: () => 'a name such as "lower-arm"' })
  .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, {
    error: () => 'a name of small letters and digits joined by "-", such as "lower-arm"',
  })

/** Words for people. @source definition */
export const words = z
  .string({ error: () => 'words in double quotes' })
  .regex(/\S/, { error: () => 'at least one word' })
  .max(2000, { error: () => 'at most 2000 characters' })

/**
 * What every one of the four formats starts with. `source` says whose numbers these are.
 *
 * @source definition
 */
export const fileHead = {
  $schema: z.string().optional().describe('Only for editors that check while typing.'),
  format: z.literal(1).describe('Version of the format.'),
} as const

/**
 * A day or a moment, as RFC 3339 writes it: "2026-03-14" or "2026-03-14T09:30:00+01:00".
 *
 * @source RFC 3339, 5.6
 */
export const moment = z
  .string({ error: () => 'a day "2026-03-14" or a moment "2026-03-14T09:30:00+01:00"' })
  .refine(
    (text) => {
      const form = /^(\d{4}-\d\d-\d\d)(T([01]\d|2[0-3]):[0-5]\d(:[0-5]\d(\.\d+)?)?(Z|[+-]\d\d:\d\d))?$/.exec(
        text,
      )
      const day = form ? new Date(`${form[1]}T00:00:00Z`) : null
      return day !== null && !Number.isNaN(day.getTime()) && day.toISOString().startsWith(form![1]!)
    },
    {
      error: (issue) => `“${String(issue.input)}” is no day or moment.`,
      params: { right: 'a day "2026-03-14" or a moment "2026-03-14T09:30:00+01:00"' },
    },
  )
