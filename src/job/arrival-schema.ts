import * as z from 'zod'
import { nameText, typedDistance, typedLength, typedPressure, words } from '../corner/index.ts'
import { personalText } from './personal-schema.ts'
import { hand } from './refers-schema.ts'
import { wheelNames } from './wheel-name.ts'

const wheel = z.enum(wheelNames)
/** What the owner agreed to, up to which limit, and how they said so. */
const consent = z.strictObject({
  to: words,
  limit: words.optional().describe('Money or hours, as they said it.'),
  by: personalText('Owner, driver, fleet office: a role, no full name.'),
  how: z.enum(['in person', 'by telephone', 'in writing']),
})

const depth = typedLength.optional()

/**
 * What is told and looked at before anything is undone.
 *
 * @source own derivation: docs/methods/formats.md
 */
export const arrivalData = {
  arrival: z.strictObject({
    vin: personalText('As read; a check digit that does not agree is a hint, no fault.').optional(),
    plate: personalText('Registration plate, as read.').optional(),
    owner: personalText('Whose vehicle it is.').optional(),
    driver: personalText('Who brought it, or drives it.').optional(),
    phone: personalText('Where to call.').optional(),
    mileage: typedDistance.optional(),
    asked: words.describe('What the owner asked for.'),
    consent: consent.optional(),
    firstTest: z.enum(['may be driven', 'yard pace only', 'not to be driven']).optional(),
    why: words.optional(),
    cautions: z.array(words).optional(),
  }),
  tyre: z.strictObject({
    wheel,
    designation: words.optional().describe('As on the sidewall: "215/70R15 109S".'),
    pressure: typedPressure.optional().describe('As found, cold unless the remark says otherwise.'),
    depths: z.strictObject({ outer: depth, middle: depth, inner: depth }).optional(),
    wear: z
      .array(
        z.enum([
          'even',
          'both shoulders',
          'centre',
          'outer shoulder',
          'inner shoulder',
          'feathered, sharp edge inward',
          'feathered, sharp edge outward',
          'cups',
          'flat spot',
        ]),
      )
      .optional(),
    remark: words.optional(),
  }),
  'road test': z.strictObject({
    when: z.enum(['before the work', 'after the work']),
    driven: z.boolean(),
    answers: z
      .array(
        z.strictObject({
          question: words,
          answer: z.enum(['yes', 'no', 'could not tell']),
          remark: words.optional(),
        }),
      )
      .optional(),
    remark: words.optional(),
    hand: hand.optional(),
  }),
  'hand check': z.strictObject({
    check: z.enum([
      'rock at 12 and 6',
      'rock at 3 and 9',
      'lever at the bush',
      'spin the bearing',
      'push the damper',
      'strut top while steering',
      'links by hand',
      'free movement of the steering wheel',
      'looked at',
    ]),
    wheel: wheel.optional(),
    joint: nameText.optional(),
    part: nameText.optional(),
    load: z.enum(['loaded', 'unloaded', 'on its wheels']).optional(),
    found: z
      .array(
        z.enum([
          'nothing',
          'play',
          'play that the brake takes away',
          'noise',
          'rough',
          'stiff',
          'loose',
          'torn',
          'cracked',
          'bent',
          'leaking',
          'heated or welded',
          'corroded through',
          'missing',
        ]),
      )
      .min(1),
    amount: typedLength.optional(),
    remark: words.optional(),
    hand: hand.optional(),
  }),
} as const
