import * as z from 'zod'
import { nameText, typedClock, typedLength, typedTurns, words } from '../corner/index.ts'
import { earlierEntry, hand, photoHash } from './refers-schema.ts'
import { wheelNames } from './wheel-name.ts'

const wheel = z.enum(wheelNames)

/** How anything was found, beside an adjuster's setting. @source definition */
export const foundMembers = {
  hole: words.optional().describe('Which hole or notch, counted from where.'),
  shims: z
    .array(z.strictObject({ at: words, thicknesses: z.array(typedLength) }))
    .optional()
    .describe('Per bolt, from the frame outward.'),
  photo: photoHash.optional(),
}

/**
 * What is recorded while things come apart.
 *
 * @source own derivation: docs/methods/formats.md
 */
export const stripData = {
  mark: z
    .strictObject({
      what: words.describe('What was marked: "wheel to stud", "hose routing", "drop link, upper hole".'),
      wheel: wheel.optional(),
      joint: nameText.optional(),
      part: nameText.optional(),
      clock: typedClock.optional(),
      wayRound: words.optional().describe('Which end is front, which face is outside.'),
      ...foundMembers,
      exposedThread: typedLength.optional(),
      jointLength: typedLength.optional().describe('Joint centre to joint centre, or to the thread’s end.'),
      turns: typedTurns.optional().describe('Turns to let a torsion bar down.'),
      bodySideToo: z.boolean().optional().describe('Marked on the body as well, since the part is replaced.'),
      remark: words.optional(),
    })
    .describe('A witness mark, taken before the thing is disturbed.'),
  undone: z.strictObject({
    joint: nameText,
    wheel,
    to: z.enum(['cracked', 'on a few threads', 'open']),
    remark: words.optional(),
    hand: hand.optional(),
  }),
  deviation: z.strictObject({
    what: z.enum([
      'snapped stud',
      'stripped thread',
      'seized sleeve',
      'rounded head',
      'taper will not part',
      'stud spins',
      'split boot',
      'hole not round',
      'wrong part in the box',
      'damage found',
      'done out of order',
      'other',
    ]),
    joint: nameText.optional(),
    part: nameText.optional(),
    wheel: wheel.optional(),
    remark: words.optional(),
    photo: photoHash.optional(),
    hand: hand.optional(),
  }),
  photo: z.strictObject({
    hash: photoHash,
    of: words,
    wheel: wheel.optional(),
    joint: nameText.optional(),
    part: nameText.optional(),
    beside: earlierEntry.optional().describe('The entry that it shows.'),
  }),
} as const
