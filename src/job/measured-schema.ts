import * as z from 'zod'
import { nameText, typedAngle, typedLength, typedPositive, words } from '../corner/index.ts'
import { wheelNames } from './wheel-name.ts'

const of = <W extends string>(what: W) => ({ what: z.literal(what), wheel: z.enum(wheelNames) })
const lengths = {
  readings: z.array(typedLength).min(1).describe('As read; more than one are repeats.'),
  spread: typedPositive
    .optional()
    .describe('Standard uncertainty of one reading, where it is not the usual one.'),
  remark: words.optional(),
}
const angles = {
  readings: z.array(typedAngle).min(1).describe('As read; more than one are repeats.'),
  spread: typedAngle
    .optional()
    .describe('Standard uncertainty of one reading, where it is not the usual one.'),
  remark: words.optional(),
}
const point = nameText.describe('A point of the corner model.')

/**
 * Something measured on one corner so that its model can be fitted to this vehicle: at ride height where nothing else is said.
 *
 * @source definition
 */
export const measuredData = z.discriminatedUnion('what', [
  z.strictObject({ ...of('distance'), from: point, to: point, ...lengths }),
  z.strictObject({ ...of('height'), point, ...lengths }),
  z.strictObject({
    ...of('offset'),
    way: z
      .enum(['lengthways', 'across'])
      .describe('Square to the vehicle: forward, or outward from the centre line.'),
    point,
    from: point.optional().describe('Without it: from the front axle, or from the centre line.'),
    ...lengths,
  }),
  z.strictObject({
    ...of('slope'),
    from: point,
    to: point.describe('Rising towards this one is positive.'),
    seen: z.enum(['along', 'front', 'side']).optional().describe('Default: along the line itself.'),
    ...angles,
  }),
  z.strictObject({
    ...of('angle'),
    angle: z.enum(['camber', 'toe', 'caster', 'sai']),
    travel: typedLength.optional().describe('Wheel above ride height; bump is positive.'),
    outward: typedAngle.optional().describe('Turned from straight ahead, front outward positive.'),
    ...angles,
  }),
  z.strictObject({
    ...of('outer wheel'),
    inner: typedAngle.describe('Turn of the wheel on the inside of the turn, on its plate.'),
    ...angles,
  }),
])
