import * as z from 'zod'
import { moment, nameText, typedAngle, typedLength, typedTorque, words } from '../corner/index.ts'
import { hand } from './refers-schema.ts'
import { wheelNames } from './wheel-name.ts'

const joint = { joint: nameText, wheel: z.enum(wheelNames) }

/** How the vehicle stood. A position that is not named was not looked at. */
const standing = z.enum([
  'at ride height',
  'hanging',
  'under the arm',
  'wheels straight',
  'on the ground',
  'wheel held',
])

const facts = {
  ...joint,
  torque: typedTorque.optional().describe('What the fastener received.'),
  setting: typedTorque.optional().describe('What was set on the wrench; differs with an adapter.'),
  angle: typedAngle.optional().describe('Turned on after the torque.'),
  endFloat: typedLength.optional().describe('Of an adjustable hub, read on a dial.'),
  wrench: nameText.optional(),
  calibrated: moment.optional().describe('The wrench’s calibration at that time.'),
  adapter: z.strictObject({ adapter: nameText, angle: typedAngle.optional() }).optional(),
  position: z.array(standing).optional(),
  condition: z.enum(['dry', 'oiled', 'locking compound', 'anti-seize']).optional(),
  fastener: z.enum(['new', 'used again']).optional(),
  hand,
  remark: words.optional(),
}

/**
 * Everything about closing a joint.
 *
 * @source own derivation: docs/methods/formats.md
 */
export const tighteningData = {
  tightened: z.discriminatedUnion('stage', [
    z.strictObject({ stage: z.enum(['started', 'run up', 'final']), ...facts }),
    z.strictObject({ stage: z.literal('stage'), number: z.int().min(1), ...facts }),
  ]),
  pinned: z.strictObject({
    ...joint,
    pin: z.enum(['new', 'used again']),
    legsBent: z.boolean(),
    hand,
    remark: words.optional(),
  }),
  checked: z.strictObject({
    ...joint,
    by: z
      .enum(['another person', 'the same person, later'])
      .describe('A later second look by the same person is recorded as that.'),
    how: z.enum(['mark and record', 'pulled again', 'looked at and felt']),
    passed: z.boolean(),
    hand,
    remark: words.optional(),
  }),
} as const
