import * as z from 'zod'
import { adjusterSchema } from './corner-adjusters-schema.ts'
import { jointSchema } from './corner-joints-schema.ts'
import { partSchema } from './corner-parts-schema.ts'
import type { Fixed } from './fixed.ts'
import { layouts } from './layouts.ts'
import { fileHead, nameText, words } from './names-schema.ts'
import { angleText, forceText, lengthText, positiveLength, rateText, shareText } from './quantity-schema.ts'

const point = z.strictObject({
  at: z.tuple([lengthText, lengthText, lengthText]).describe('Forward, left, up; ride pose.'),
  spread: lengthText
    .optional()
    .describe('Standard uncertainty of each coordinate; absent where it was measured well.'),
})

const hold = z.strictObject({
  heldBy: z
    .array(z.array(nameText).min(1))
    .min(1)
    .describe('Each list holds by itself while all its joints hold.'),
  standIn: z.array(words).optional(),
  standInKinds: z
    .array(z.enum(['jack under the arm', 'spring compressor', 'axle on stands', 'torsion bar unwound']))
    .optional()
    .describe('What may hold in its place, as the planner knows it.'),
  letDown: z
    .enum([
      'with the jack',
      'in the compressor',
      'by its anchor bolt',
      'air let out',
      'with the axle on stands',
    ])
    .optional()
    .describe('How it is let down to nothing.'),
  droopStop: z.array(nameText).min(1).optional().describe('The joints that end the droop.'),
})

/**
 * A corner model (`*.corner.json`), format 1: the one definition of its wire type. Quantities are text with
 * their unit. Decoding turns them into SI numbers.
 *
 * @source own derivation: docs/methods/formats.md
 */
export const cornerSchema = z.strictObject({
  ...fileHead,
  kind: z.literal('corner').optional(),
  id: nameText,
  name: words,
  source: words,
  layout: z.enum(layouts),
  axle: z.enum(['front', 'rear']),
  drawn: z.literal('left'),
  wheel: z.strictObject({
    tyre: words,
    loadedRadius: positiveLength,
    width: positiveLength,
    rim: positiveLength.optional().describe('Rim diameter where a rule or an inclinometer touches it.'),
    studs: z.int().min(3).max(32),
    camber: angleText.describe('At the design pose; top outward is positive.'),
    toe: angleText.describe('At the design pose; front inward is positive.'),
  }),
  rideHeight: z
    .strictObject({ measured: words, at: positiveLength })
    .optional()
    .describe('The height that was measured in the pose whose points are given.'),
  travel: z.strictObject({ droop: positiveLength, bump: positiveLength }).optional(),
  wheelRate: z
    .strictObject({ rate: rateText, spread: shareText })
    .optional()
    .describe(
      'Vertical rate at the wheel, springs and bushes together, with its relative standard uncertainty.',
    ),
  load: forceText.optional().describe('Load of this corner on its wheel.'),
  airSprung: z.boolean().optional(),
  steeredLink: z.int().min(1).max(5).optional().describe('Which link of five the steering moves.'),
  beamShape: z
    .number()
    .optional()
    .describe('Twist beam: 0 where the arms turn by themselves, 1 for a thin open beam.'),
  points: z.record(nameText, point),
  parts: z.record(nameText, partSchema),
  joints: z.record(nameText, jointSchema),
  adjusters: z.record(nameText, adjusterSchema),
  holds: z.record(nameText, hold).describe('What keeps stored energy in, by the part that stores it.'),
})

/** A corner model as it stands in a file. @source definition */
export type CornerFile = z.input<typeof cornerSchema>
/** A corner model inside: the same shape, SI numbers in place of texts. @source definition */
export type Corner = Fixed<z.output<typeof cornerSchema>>
