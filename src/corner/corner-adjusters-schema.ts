import * as z from 'zod'
import { pair } from './corner-parts-schema.ts'
import { nameText, words } from './names-schema.ts'
import { angleText, clockText, lengthText, positiveLength, turnsText } from './quantity-schema.ts'

const direction = z
  .tuple([z.number(), z.number(), z.number()])
  .describe('Direction in the left corner’s axes: forward, left, up.')
const rangeOf = <T extends z.ZodType>(quantity: T) => z.tuple([quantity, quantity])
const lengths = { range: rangeOf(lengthText), step: lengthText, play: lengthText.optional() }
const angles = { range: rangeOf(angleText), step: angleText, play: angleText.optional() }

const seenFrom = z.enum(['front', 'rear', 'outside', 'inside', 'above', 'below'])
const looks = z.enum(['clockwise', 'anticlockwise'])
const sets = z.enum(['caster', 'camber', 'toe']).optional()
const onLeft = looks.describe('How a growing setting looks on the left corner.')
const markAt = clockText.describe('Clock position of the mark at setting 0 on the left corner.')
const moves = z.array(nameText).min(1)
const span = z
  .literal('axle')
  .optional()
  .describe('The axle has it once: the tie rod and the drag link of a solid axle.')

/**
 * An adjuster: one setting with range, step and play, and what it moves.
 *
 * @source own derivation: docs/methods/formats.md
 */
export const adjusterSchema = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('eccentric'),
    name: words,
    moves: nameText,
    along: direction,
    throw: positiveLength.describe('Hole centre to washer centre.'),
    ...angles,
    seenFrom,
    positiveLooks: onLeft,
    markAt,
    fitted: z.enum(['as drawn', 'turned round']).optional(),
    sets,
  }),
  z.strictObject({
    kind: z.literal('shims'),
    name: words,
    moves,
    along: direction,
    sizes: z.array(positiveLength).min(1),
    asDrawn: lengthText.optional(),
    ...lengths,
    sets,
  }),
  z.strictObject({
    kind: z.literal('thread'),
    name: words,
    between: pair('points'),
    span,
    pitch: positiveLength,
    sleeve: z.boolean().describe('Left-hand and right-hand thread: twice the pitch per turn.'),
    range: rangeOf(turnsText),
    step: turnsText,
    play: turnsText.optional(),
    seenFrom,
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
    ...lengths,
    seenFrom,
    sets,
  }),
  z
    .strictObject({
      kind: z.literal('slide'),
      name: words,
      moves,
      along: direction,
      ...lengths,
      seenFrom,
      sets,
    })
    .describe('An arm, or its bracket, slid along a slot: setting is the shift.'),
  z
    .strictObject({
      kind: z.literal('top plate'),
      name: words,
      moves: nameText.describe('"strut-top"'),
      along: direction,
      ...lengths,
      seenFrom,
      sets,
    })
    .describe('The plate on which a strut’s top mount stands, slid: camber and SAI together.'),
  z
    .strictObject({
      kind: z.literal('offset sleeve'),
      name: words,
      tilt: angleText.describe('How far it leans the kingpin; above 0.'),
      ...angles,
      seenFrom,
      positiveLooks: onLeft,
      markAt,
      sets,
    })
    .describe(
      'Of a solid axle. Setting is the sleeve’s turn: at 0 it adds its tilt to camber, at 90° to caster.',
    ),
  z
    .strictObject({
      kind: z.literal('wedge'),
      name: words,
      tilts: z.enum(['camber', 'toe']),
      sizes: z.array(angleText).min(1),
      asDrawn: angleText.optional(),
      range: rangeOf(angleText),
      step: angleText,
      seenFrom,
      sets,
    })
    .describe('A wedge-shaped shim between axle or beam and hub: setting is the angle it adds.'),
  z
    .strictObject({
      kind: z.literal('sub-frame shift'),
      name: words,
      along: z.literal('y'),
      moves,
      ...lengths,
      seenFrom,
      sets,
    })
    .describe(
      'Of the axle. A shift to the left moves these points of the left corner outward, of the right one inward.',
    ),
])
