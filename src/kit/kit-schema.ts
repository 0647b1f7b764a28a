import * as z from 'zod'
import {
  type Fixed,
  fileHead,
  moment,
  nameText,
  typedAngle,
  typedLength,
  typedPositive,
  typedShare,
  typedTorque,
  words,
} from '../corner/index.ts'

const owned = {
  name: words,
  calibrated: moment.optional(),
  calibrationDue: moment.optional().describe('The day up to which its calibration counts.'),
  remark: words.optional(),
}

const wrench = z.strictObject({
  ...owned,
  kind: z.enum(['clicking', 'dial', 'electronic', 'beam']),
  range: z.tuple([typedTorque, typedTorque]),
  resolution: typedTorque,
  accuracy: typedShare.describe('Of the reading, as its certificate or class says.'),
  lever: typedPositive.describe('Drive centre to the middle of the grip.'),
  handSpread: typedLength
    .optional()
    .describe('Half-width: how far from the middle of the grip the hand may pull.'),
  drive: words.optional(),
})

const half = 'Half-width: it errs by no more than this either way. '
const gauge = z.discriminatedUnion('kind', [
  z.strictObject({
    ...owned,
    kind: z.literal('inclinometer'),
    resolution: typedAngle,
    placing: typedAngle.describe(`${half}What putting it on and reading it adds, anew each time.`),
    accuracy: typedAngle.describe(`${half}The scale’s own error.`),
    zeroError: typedAngle.describe(`${half}The zero error that is left until it is zeroed again.`),
    zeroing: z.enum(['by reversal', 'on a known level', 'none']),
  }),
  z.strictObject({
    ...owned,
    kind: z.literal('rule'),
    resolution: typedPositive,
    placing: typedLength.describe(`${half}Holding and reading, anew each time.`),
    zeroError: typedLength.describe(`${half}Its worn or hooked end.`),
  }),
  z.strictObject({
    ...owned,
    kind: z.literal('tape'),
    resolution: typedPositive,
    placing: typedLength.describe(`${half}Holding and reading, anew each time.`),
    accuracy: typedShare.describe(`${half}Of the length.`),
  }),
  z.strictObject({
    ...owned,
    kind: z.literal('strings'),
    spacing: typedLength.describe(`${half}Spacing of the two strings, front bar against rear bar.`),
    length: typedPositive.describe('Front bar to rear bar.'),
    squareness: typedAngle.describe(`${half}The bar’s angle off square.`),
  }),
  z.strictObject({
    ...owned,
    kind: z.enum(['turn plates', 'string and protractor']),
    resolution: typedAngle,
    placing: typedAngle.describe(`${half}Reading it, anew each time.`),
    accuracy: typedShare.describe(`${half}Of the angle turned.`),
    zeroError: typedAngle.describe(`${half}Its zero against straight ahead.`),
  }),
  z.strictObject({
    ...owned,
    kind: z.literal('dial indicator'),
    resolution: typedPositive,
    placing: typedLength.describe(`${half}Setting it up and reading it, anew each time.`),
    accuracy: typedLength.describe(`${half}Its own error.`),
  }),
])

const pads = z.strictObject({
  'front left': typedLength,
  'front right': typedLength,
  'rear left': typedLength,
  'rear right': typedLength,
})

/** The two ends of a wrench's scale. @source definition */
export const wrenchRange = wrench.shape.range

/**
 * A kit (`*.kit.json`), format 1: what the workshop owns and how well it measures, kept as typed.
 *
 * @source own derivation: docs/methods/formats.md
 */
export const kitSchema = z.strictObject({
  ...fileHead,
  kind: z.literal('kit').optional(),
  id: nameText,
  name: words,
  source: words,
  wrenches: z.record(nameText, wrench).optional(),
  adapters: z
    .record(
      nameText,
      z.strictObject({
        ...owned,
        offset: typedPositive.describe('Wrench drive centre to fastener centre.'),
        offsetSpread: typedLength.optional().describe('Half-width of the offset.'),
        angleSpread: typedAngle.optional().describe('Half-width of the angle it is held at.'),
      }),
    )
    .optional(),
  spanners: z.array(typedPositive).optional(),
  sockets: z.array(typedPositive).optional(),
  thresholds: z
    .strictObject({
      inside: typedShare
        .optional()
        .describe('How probable "inside" must be before it is called that: at least 50 % and below 100 %.'),
      jurisdiction: words.optional().describe('Whose inspection rules apply where the workshop stands.'),
      wear: z
        .array(
          z.strictObject({
            what: words,
            jointKind: words.optional().describe('The kind of joint in the corner model it is meant for.'),
            limit: typedPositive,
            source: words,
          }),
        )
        .optional()
        .describe('The workshop’s own limits of wear; they go before the public ones.'),
    })
    .optional(),
  gauges: z.record(nameText, gauge),
  supports: z
    .record(
      nameText,
      z.strictObject({ ...owned, kind: z.enum(['jack', 'stand', 'lift', 'ramp', 'slip plate']) }),
    )
    .optional(),
  floors: z
    .record(
      nameText,
      z.strictObject({
        name: words,
        heights: pads.describe('Height of each wheel’s pad over the lowest.'),
        spread: typedPositive.describe(`${half}Each height, apart from the others.`),
        found: z.enum(['with a level', 'swap and turn', 'judged']),
        measured: moment.optional(),
      }),
    )
    .optional(),
  pullers: z
    .record(
      nameText,
      z.strictObject({ ...owned, kind: z.enum(['separator', 'puller', 'spring compressor', 'fork']) }),
    )
    .optional(),
})

/** A kit as it stands in a file. @source definition */
export type KitFile = z.input<typeof kitSchema>
/** A kit inside: every quantity as typed, with its SI value. @source definition */
export type Kit = Fixed<z.output<typeof kitSchema>>
