import * as z from 'zod'
import { nameText, typedClock, typedLength, typedPressure, words } from '../corner/index.ts'
import { arrivalData } from './arrival-schema.ts'
import { filesData } from './files-schema.ts'
import { handoverData } from './handover-schema.ts'
import { holdingData } from './holding-schema.ts'
import { measuredData } from './measured-schema.ts'
import { playData, readingData, rideHeightData } from './reading-schema.ts'
import { earlierEntry } from './refers-schema.ts'
import { typedSetting } from './setting-schema.ts'
import { foundMembers, stripData } from './strip-schema.ts'
import { tighteningData } from './tightening-schema.ts'
import { wheelNames } from './wheel-name.ts'

const wheel = z.enum(wheelNames)
const oneOrMore = <T extends z.ZodType>(quantity: T) => z.array(quantity).min(1)

const opened = z.strictObject({
  number: words.describe('The job’s short number, such as "7-0412".'),
  vehicle: words,
  complaint: words,
  corners: z.strictObject({ front: nameText, rear: nameText.optional() }).describe('Corner models by id.'),
  spec: nameText.optional(),
  kit: nameText.optional(),
  mileage: words.optional(),
  invented: z.boolean().optional().describe('True for a demo: nothing in it was measured.'),
})

const asFound = z.strictObject({
  adjuster: nameText,
  wheel,
  setting: typedSetting.optional(),
  clock: typedClock.optional().describe('Where the mark of a washer stands.'),
  fitted: z.enum(['as drawn', 'turned round']).optional(),
  exposedThread: typedLength.optional(),
  jointToThread: typedLength.optional(),
  ...foundMembers,
  remark: words.optional(),
})

const round = z.strictObject({
  number: z.int().min(1),
  purpose: z.enum(['as found', 'provisional', 'proving']),
  settled: z.boolean().describe('Rolled and jounced, or on slip plates, before it was read.'),
})

const moved = z.strictObject({
  adjuster: nameText,
  wheel,
  from: typedSetting.optional(),
  to: typedSetting.optional(),
  by: typedSetting.optional(),
  fromClock: typedClock.optional().describe('Where the mark stood before, in place of "from".'),
  toClock: typedClock.optional().describe('Where the mark was turned to, in place of "to".'),
})

const correction = z.strictObject({
  of: earlierEntry,
  data: z
    .record(z.string(), z.unknown())
    .describe('Members that replace those of the entry; null takes one out (RFC 7396).'),
  why: words.optional(),
})

/**
 * What each kind of entry holds. A kind or a member is only ever added.
 *
 * @source own derivation: docs/methods/formats.md
 */
export const entryData = {
  opened,
  'set pressures': z.strictObject({ front: typedPressure, rear: typedPressure }),
  'ride height': rideHeightData,
  floor: z.strictObject({ bay: words }),
  'as found': asFound,
  play: playData,
  measured: measuredData,
  round,
  reading: readingData,
  moved,
  'part renewed': z.strictObject({
    part: nameText,
    wheels: oneOrMore(wheel),
    lot: words.optional(),
    number: words.optional().describe('The part’s own number, as on its label.'),
    side: z.enum(['left', 'right', 'either']).optional().describe('As marked on the part itself.'),
    compared: z
      .array(z.enum(['against the order', 'beside the old one']))
      .optional()
      .describe('Side, length, taper, thread and plug.'),
    remark: words.optional(),
  }),
  'caution acknowledged': z.strictObject({ caution: words }),
  note: z.strictObject({ text: words }),
  ...arrivalData,
  ...stripData,
  ...holdingData,
  ...tighteningData,
  ...handoverData,
  ...filesData,
  correction,
} as const

/** A kind of entry that this version knows. @source definition */
export type EntryKind = keyof typeof entryData
/** What an entry of a kind holds, SI beside what was typed. @source definition */
export type EntryData<K extends EntryKind> = z.output<(typeof entryData)[K]>

/** All kinds that this version knows. @source definition */
export const entryKinds = Object.keys(entryData) as readonly EntryKind[]
