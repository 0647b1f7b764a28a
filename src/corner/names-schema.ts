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
