import * as z from 'zod'
import { nameText } from '../corner/index.ts'
import { digest } from './refers-schema.ts'

/**
 * By which files a job is worked from now on: a model that was measured anew, a sheet of values that was typed later.
 *
 * @source own derivation: docs/methods/record.md
 */
export const filesData = {
  'works with': z
    .strictObject({
      role: z.enum(['front', 'rear', 'spec', 'kit']),
      id: nameText,
      digest: digest.describe('Which version of the file: its digest.'),
    })
    .describe('From here on this version of a file counts, whatever the job named before.'),
} as const
