import * as z from 'zod'
import { moment, nameText, typedDistance, words } from '../corner/index.ts'
import { personalText } from './personal-schema.ts'
import { digest, earlierEntry, hand } from './refers-schema.ts'
import { wheelNames } from './wheel-name.ts'

const wheels = z.array(z.enum(wheelNames)).min(1).optional()

/**
 * What is decided, agreed and handed over.
 *
 * @source own derivation: docs/methods/formats.md
 */
export const handoverData = {
  decision: z
    .strictObject({
      of: z.array(earlierEntry).min(2).describe('The entries that say different things.'),
      keep: earlierEntry.describe('The one that holds; the others are set aside, not erased.'),
      why: words,
      hand,
    })
    .describe('Two values: decide.'),
  'extra work': z.strictObject({
    what: words,
    why: words.optional(),
    part: nameText.optional(),
    wheels,
    answer: z.enum(['asked', 'yes', 'no']),
    by: personalText('Who answered: a role, no full name.').optional(),
    how: z.enum(['in person', 'by telephone', 'in writing']).optional(),
    risk: words.optional().describe('What was said of leaving it undone.'),
  }),
  'follow-up': z.strictObject({
    what: z.enum(['wheel nuts again', 'grease', 'heights and angles again', 'look again', 'other']),
    after: typedDistance.optional(),
    on: moment.optional(),
    wheels,
    card: z.boolean().optional().describe('A card for whoever drives the vehicle was handed over.'),
    remark: words.optional(),
  }),
  electronics: z.strictObject({
    what: z.enum([
      'steering angle zero',
      'forward camera',
      'forward radar',
      'headlamps',
      'ride height sensor',
      'warning lamp looked at',
      'other',
    ]),
    state: z.enum(['to do', 'done', 'not fitted', 'sent out']),
    to: words.optional().describe('Where it was sent.'),
    remark: words.optional(),
    hand: hand.optional(),
  }),
  'not road-ready': z.strictObject({
    reason: words,
    told: personalText('Who was told: a role, no full name.'),
    keys: words.optional().describe('Where the keys are.'),
    made: z.enum(['safe to stand', 'safe to roll']).optional(),
    hand,
  }),
  cleared: z
    .strictObject({ of: earlierEntry, how: words, hand })
    .describe('A deviation put right, a follow-up done, or a vehicle road-ready again.'),
  'came back': z
    .strictObject({
      job: words.describe('The old job’s short number.'),
      complaint: words,
      mileage: typedDistance.optional(),
      proof: z
        .string()
        .regex(/^[0-9a-f]{64}$/)
        .optional()
        .describe('Hash of the old job’s last state.'),
    })
    .describe('It came back: this job follows an old one.'),
  'taken back': z
    .strictObject({ of: earlierEntry, why: words.optional() })
    .describe('Undo: the entry says nothing any more; only until it is signed off.'),
  'signed off': z
    .strictObject({
      heads: z.array(digest).min(1).describe('The heads of what is signed, ascending.'),
      fold: z.int().min(1).describe('Version of the rules by which the state was made.'),
      engine: words.describe('Version of the program that worked the numbers out.'),
      state: digest.describe('Digest of the state of all that is signed.'),
      corners: z
        .strictObject({ front: digest, rear: digest.optional() })
        .describe('Digests of the corner models.'),
      spec: digest.optional(),
      kit: digest.optional(),
      remark: words.optional(),
      hand,
    })
    .describe('The work is signed: what is covered, and by which models and rules it was worked out.'),
} as const
