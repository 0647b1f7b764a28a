import * as z from 'zod'
import type { Fixed } from './fixed.ts'
import { layouts } from './layouts.ts'
import { fileHead, nameText, words } from './names-schema.ts'
import {
  angleText,
  clockText,
  forceText,
  lengthText,
  positiveLength,
  rateText,
  shareText,
  stiffnessText,
  turnsText,
} from './quantity-schema.ts'

const pair = (what: string) =>
  z.tuple([nameText, nameText], { error: () => `two ${what}, such as ["one", "another"]` })
const direction = z
  .tuple([z.number(), z.number(), z.number()])
  .describe('Direction in the left corner’s axes: forward, left, up.')
const rangeOf = <T extends z.ZodType>(quantity: T) => z.tuple([quantity, quantity])

const point = z.strictObject({
  at: z.tuple([lengthText, lengthText, lengthText]).describe('Forward, left, up; ride pose.'),
  spread: lengthText
    .optional()
    .describe('Standard uncertainty of each coordinate; absent where it was measured well.'),
})

const called = { name: words.optional() }
const links = z.array(pair('points')).min(1).describe('Rigid lengths between two points.')
const between = pair('parts')
const ends = pair('points').optional()
const stores = z.enum(['coil', 'torsion bar', 'leaf', 'air', 'gas'])
const part = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.enum(['body', 'sub-frame', 'knuckle', 'rack', 'bar', 'caliper', 'wheel']),
    ...called,
  }),
  z.strictObject({
    kind: z.enum(['arm', 'rod', 'drop link']),
    links,
    wears: z.array(z.enum(['bush', 'joint', 'thread'])).optional(),
    ...called,
  }),
  z.strictObject({ kind: z.literal('strut'), links, stores: stores.optional(), ...called }),
  z.strictObject({ kind: z.literal('spring'), between, ends, stores, ...called }),
  z.strictObject({ kind: z.literal('damper'), between, ends, ...called }),
  z.strictObject({ kind: z.enum(['lead', 'hose']), clippedTo: z.array(nameText).min(1), ...called }),
])

const access = z.strictObject({
  partOff: nameText.optional(),
  steering: z.enum(['left lock', 'right lock', 'straight']).optional(),
  station: z.enum(['ground', 'hanging', 'under the arm', 'ride']).optional(),
  why: words.optional(),
})

const joint = z.strictObject({
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
  ]),
  name: words.optional(),
  joins: pair('parts'),
  at: nameText.optional().describe('The point where it sits.'),
  thread: words.optional(),
  class: words.optional(),
  spanner: lengthText.optional(),
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
  reuse: z.enum(['again', 'inspect', 'new', 'new pin']).optional(),
  adjuster: nameText.optional(),
  access: z.array(access).optional(),
})

const view = z.enum(['front', 'rear', 'outside', 'inside', 'above', 'below'])
const looks = z.enum(['clockwise', 'anticlockwise'])
const sets = z.enum(['caster', 'camber', 'toe']).optional()
const adjuster = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('eccentric'),
    name: words,
    moves: nameText,
    along: direction,
    throw: positiveLength.describe('Hole centre to washer centre.'),
    range: rangeOf(angleText),
    step: angleText,
    play: angleText.optional(),
    seenFrom: view,
    positiveLooks: looks.describe('How a growing setting looks on the left corner.'),
    markAt: clockText.describe('Clock position of the mark at setting 0 on the left corner.'),
    fitted: z.enum(['as drawn', 'turned round']).optional(),
    sets,
  }),
  z.strictObject({
    kind: z.literal('shims'),
    name: words,
    moves: z.array(nameText).min(1),
    along: direction,
    sizes: z.array(positiveLength).min(1),
    asDrawn: lengthText.optional(),
    range: rangeOf(lengthText),
    step: lengthText,
    play: lengthText.optional(),
    sets,
  }),
  z.strictObject({
    kind: z.literal('thread'),
    name: words,
    between: pair('points'),
    pitch: positiveLength,
    sleeve: z.boolean().describe('Left-hand and right-hand thread: twice the pitch per turn.'),
    range: rangeOf(turnsText),
    step: turnsText,
    play: turnsText.optional(),
    seenFrom: view,
    positiveLooks: looks.describe('How the rod is turned to get longer, on the left side.'),
    rightSide: z.enum(['same thread', 'mirrored thread']).optional(),
    sets,
  }),
  z.strictObject({
    kind: z.literal('slotted bolt'),
    name: words,
    turns: z.enum(['strut', 'stub']),
    pivot: nameText.describe('The point of the bolt it turns about.'),
    axis: direction,
    boltSpacing: positiveLength,
    range: rangeOf(lengthText),
    step: lengthText,
    play: lengthText.optional(),
    seenFrom: view,
    sets,
  }),
])

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
  points: z.record(nameText, point),
  parts: z.record(nameText, part),
  joints: z.record(nameText, joint),
  adjusters: z.record(nameText, adjuster),
  holds: z
    .record(
      nameText,
      z.strictObject({
        heldBy: z.array(z.array(nameText).min(1)).min(1),
        standIn: z.array(words).optional(),
      }),
    )
    .describe('What keeps stored energy in: each list holds by itself while all its joints hold.'),
})

/** A corner model as it stands in a file. @source definition */
export type CornerFile = z.input<typeof cornerSchema>
/** A corner model inside: the same shape, SI numbers in place of texts. @source definition */
export type Corner = Fixed<z.output<typeof cornerSchema>>
