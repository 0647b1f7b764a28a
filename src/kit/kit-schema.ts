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
  remark: words.optional(),
}

const wrench = z.strictObject({
  ...owned,
  kind: z.enum(['clicking', 'dial', 'electronic', 'beam']),
  range: z.tuple([typedTorque, typedTorque]),
  resolution: typedTorque,
  accuracy: typedShare.describe('Of the reading, as its certificate or class says.'),
  lever: typedPositive.describe('Drive centre to the middle of the grip.'),
  drive: words.optional(),
})

const angleGauge = {
  ...owned,
  resolution: typedAngle.describe('Smallest step that it shows.'),
  accuracy: typedAngle.describe('It errs by no more than this either way, as its maker or a check says.'),
}
const lengthGauge = {
  ...owned,
  resolution: typedPositive.describe('Smallest step that it shows.'),
  accuracy: typedLength.describe('It errs by no more than this either way.'),
}
const gauge = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('inclinometer'),
    ...angleGauge,
    zero: z.enum(['on the floor', 'swapped end for end', 'none']).optional(),
  }),
  z.strictObject({ kind: z.literal('turn plates'), ...angleGauge }),
  z.strictObject({
    kind: z.literal('strings'),
    ...owned,
    setUp: typedLength.describe(
      'How far one string may be off from parallel to the other, over the wheelbase.',
    ),
  }),
  z.strictObject({ kind: z.enum(['rule', 'tape', 'dial indicator', 'straight edge']), ...lengthGauge }),
])

const pads = z.strictObject({
  'front left': typedLength,
  'front right': typedLength,
  'rear left': typedLength,
  'rear right': typedLength,
})

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
  adapters: z.record(nameText, z.strictObject({ ...owned, offset: typedPositive })).optional(),
  spanners: z.array(typedPositive).optional(),
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
        spread: typedPositive.describe('Standard uncertainty of each height.'),
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
