import * as z from 'zod'
import { pair } from './corner-parts-schema.ts'
import { nameText, words } from './names-schema.ts'
import { lengthText, shareText, stiffnessText } from './quantity-schema.ts'

const access = z
  .strictObject({
    partOff: nameText.optional(),
    jointOpen: nameText.optional().describe('A bracket that is first swung aside.'),
    steering: z.enum(['left lock', 'right lock', 'straight']).optional(),
    station: z.enum(['ground', 'hanging', 'under the arm', 'ride']).optional(),
    arm: z.enum(['raised', 'lowered']).optional(),
    why: words.optional(),
  })
  .describe('One condition that must hold before the joint can be reached.')

const minute = z.number().positive()

/**
 * A joint: what holds two parts together, and how it is reached, opened and closed.
 *
 * @source own derivation: docs/methods/formats.md
 */
export const jointSchema = z.strictObject({
  kind: z.enum([
    'bolt',
    'eccentric bolt',
    'slotted bolt',
    'pinch bolt',
    'stud nuts',
    'tapered stud, castle nut',
    'tapered stud, lock nut',
    'thread and lock nut',
    'wheel nuts',
    'clip',
    'plug',
    'ball-joint rivets',
    'ball-joint bolts',
    'strut clamp',
    'strut top nut',
    'press fit',
    'hose bracket',
    'hydraulic union',
    'air union',
    'spline',
    'axle nut',
    'adjustable taper-roller hub',
    'retaining ring',
    'U-bolts',
    'shackle bolt',
    'anchor bolt',
    'seat',
  ]),
  name: words.optional(),
  joins: pair('parts'),
  at: nameText.optional().describe('The point where it sits.'),
  side: z
    .enum(['left', 'right'])
    .optional()
    .describe('The only side that has it, such as the drag link’s; else each side has one.'),
  thread: words.optional(),
  class: words.optional(),
  count: z.int().min(1).max(32).optional().describe('How many fasteners it has.'),
  spanner: lengthText.optional(),
  tool: z
    .enum(['separator', 'puller', 'spring compressor', 'fork', 'press', 'drift'])
    .optional()
    .describe('What it needs besides a spanner.'),
  swing: z.literal('tight').optional().describe('Little room for the lever to swing.'),
  slots: z.int().min(2).optional(),
  pin: lengthText.optional(),
  bush: z
    .strictObject({
      bonded: z.boolean(),
      stiffness: stiffnessText.optional(),
      stiffnessSpread: shareText.optional(),
    })
    .optional(),
  final: z
    .enum(['any position', 'at ride height', 'wheels straight', 'on the ground'])
    .optional()
    .describe('The position in which it is tightened for good.'),
  cracked: z
    .enum(['on the ground', 'lifted, brake held'])
    .optional()
    .describe('Where an axle nut is cracked and finished.'),
  reuse: z.enum(['again', 'inspect', 'new', 'new pin']).optional(),
  consumables: z.array(words).optional().describe('What closing it uses up: "split pin 4 × 40".'),
  red: z.literal(true).optional().describe('Loose, it drops a wheel, the steering or the brakes.'),
  marks: z.array(words).optional().describe('As-found marks to record before it is disturbed.'),
  minutes: z
    .tuple([minute, minute, minute])
    .optional()
    .describe('Time to open it, and again to close it: low, usual, high.'),
  adjuster: nameText.optional(),
  access: z.array(access).optional(),
})
