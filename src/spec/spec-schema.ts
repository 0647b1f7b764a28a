import * as z from 'zod'
import {
  type Fixed,
  fileHead,
  moment,
  nameText,
  typedAngle,
  typedDistance,
  typedLength,
  typedPositive,
  typedPressure,
  typedShare,
  typedToe,
  typedTorque,
  words,
} from '../corner/index.ts'
import { limitKeys } from './limit-keys.ts'

const angleLimit = z.strictObject({ low: typedAngle, high: typedAngle, preferred: typedAngle.optional() })
const toeLimit = z.strictObject({ low: typedToe, high: typedToe, preferred: typedToe.optional() })
const isToe = (key: string) => key.includes('toe')
const limits = z.strictObject(
  Object.fromEntries(
    [...limitKeys.keys()].map((key) => [key, (isToe(key) ? toeLimit : angleLimit).optional()]),
  ),
)

const height = z.strictObject({
  low: typedPositive,
  high: typedPositive,
  preferred: typedPositive.optional(),
  maxSideDifference: typedPositive.optional(),
})

const how = {
  condition: z.enum(['dry', 'oiled', 'locking compound', 'anti-seize']).optional(),
  position: z.enum(['any position', 'at ride height', 'wheels straight', 'on the ground']).optional(),
  secondCheck: z.boolean().optional(),
  source: words.optional().describe('Where this value stands, when it is not the sheet’s own source.'),
}
const tightening = z.discriminatedUnion('procedure', [
  z.strictObject({ procedure: z.literal('torque'), low: typedTorque, high: typedTorque, ...how }),
  z.strictObject({
    procedure: z.literal('torque then angle'),
    torque: typedTorque,
    angle: typedAngle,
    within: typedAngle.optional().describe('Half-width of what counts as turned; 5° where it is not said.'),
    ...how,
  }),
  z.strictObject({ procedure: z.literal('stages'), stages: z.array(typedTorque).min(2), ...how }),
  z.strictObject({ procedure: z.literal('castle slot'), low: typedTorque, high: typedTorque, ...how }),
  z.strictObject({ procedure: z.literal('hand snug'), ...how }),
  z
    .strictObject({
      procedure: z.literal('seat and back off'),
      seat: typedTorque.describe('While the hub turns.'),
      back: z.tuple([typedAngle, typedAngle]).describe('Backed off by at least and at most.'),
      bringUpTo: typedTorque.optional(),
      endFloat: z.tuple([typedLength, typedLength]).optional(),
      ...how,
    })
    .describe('An adjustable taper-roller hub, and nothing else.'),
])
const perJoint = z.record(nameText, tightening).optional()

const wear = z.strictObject({
  what: words.describe('"lower ball joint, up and down", "play at the tread" …'),
  joint: nameText.optional(),
  axle: z.enum(['front', 'rear']).optional(),
  limit: typedPositive,
  jurisdiction: words.describe('Whose rule it is: another country’s differs.'),
  steering: words.optional(),
  wheelDiameter: typedPositive.optional(),
  whose: z
    .enum(['the workshop', 'the maker', 'the inspection'])
    .optional()
    .describe('Whose limit it is; the workshop’s own goes before the others.'),
  source: words,
})

/** The parts of a sheet that have two ends, to be looked at one by one. @source definition */
export const rangeSchemas = { angleLimit, toeLimit, height, tightening } as const

/**
 * A spec sheet (`*.spec.json`), format 1: what the workshop typed from its own information, kept as typed.
 *
 * @source own derivation: docs/methods/formats.md
 */
export const specSchema = z.strictObject({
  ...fileHead,
  kind: z.literal('spec').optional(),
  id: nameText,
  name: words,
  source: words.describe('Where the values stand: whose information, which edition.'),
  typedBy: words,
  typedAt: moment,
  limits,
  rideHeight: z
    .strictObject({ measured: words, front: height.optional(), rear: height.optional() })
    .optional(),
  size: z
    .strictObject({
      wheelbase: typedPositive,
      track: z.strictObject({ front: typedPositive, rear: typedPositive }),
    })
    .optional()
    .describe('What a floor map is divided by.'),
  pressures: z.strictObject({ front: typedPressure, rear: typedPressure }).optional(),
  tightening: z.strictObject({ front: perJoint, rear: perJoint }).optional(),
  wear: z.array(wear).optional(),
  thresholds: z
    .strictObject({
      inside: typedShare.describe(
        'How probable "inside" must be before it is called that: at least 50 % and below 100 %.',
      ),
    })
    .optional()
    .describe('Where this vehicle asks for more than the workshop’s kit says.'),
  reTighten: z.array(z.strictObject({ what: words, after: typedDistance })).optional(),
})

/** A spec sheet as it stands in a file. @source definition */
export type SpecFile = z.input<typeof specSchema>
/** A spec sheet inside: every quantity as typed, with its SI value. @source definition */
export type Spec = Fixed<z.output<typeof specSchema>>
