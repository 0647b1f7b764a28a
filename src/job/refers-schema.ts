import * as z from 'zod'
import { words } from '../corner/index.ts'

/** An earlier entry: by its place in the log, or by its id once it is sealed. @source definition */
export const earlierEntry = z.union([z.int().min(0), z.string().regex(/^[0-9a-f]{64}$/)], {
  error: () => 'the number of an earlier entry (the first is 0), or its id',
})

/** Who did it: initials or a sign, as the workshop agreed; no full name. @source definition */
export const hand = words.describe('Whose hand: initials or a sign, no full name.')

/** A photo by its hash; the picture lies beside the log. @source definition */
export const photoHash = z
  .string({ error: () => 'the SHA-256 of the photo, 64 small hexadecimal digits' })
  .regex(/^[0-9a-f]{64}$/, { error: () => 'the SHA-256 of the photo, 64 small hexadecimal digits' })

/** A SHA-256 of something that lies beside the log. @source definition */
export const digest = z
  .string({ error: () => 'a SHA-256, 64 small hexadecimal digits' })
  .regex(/^[0-9a-f]{64}$/, { error: () => 'a SHA-256, 64 small hexadecimal digits' })
