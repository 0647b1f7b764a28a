import * as z from 'zod'
import { nameText, typedAngle, typedLength, typedPositive } from '../corner/index.ts'
import { wheelNames } from './wheel-name.ts'

const wheel = z.enum(wheelNames)
const many = <T extends z.ZodType>(one: T) => z.array(one).min(1)
const perWheel = <T extends z.ZodType>(one: T) =>
  z.strictObject({ 'front left': one, 'front right': one, 'rear right': one, 'rear left': one })
const someWheels = <T extends z.ZodType>(one: T) => {
  const may = one.optional()
  return perWheel(may)
}

const inclinometer = z.strictObject({
  method: z.literal('inclinometer'),
  wheel,
  gauge: nameText,
  readings: many(
    z.strictObject({
      wheelTurn: typedAngle.describe(
        'How far the wheel was turned on its hub; the same turn again is a repeat.',
      ),
      reading: typedAngle.describe('Camber as shown; top outward is positive.'),
    }),
  ),
})

const strings = z.strictObject({
  method: z.literal('strings and rule'),
  rule: nameText,
  strings: nameText,
  wheels: someWheels(
    z.strictObject({
      front: many(typedPositive).describe('String to the front edge of the rim, at hub height.'),
      rear: many(typedPositive),
      span: typedPositive.describe('Front to rear measuring point.'),
    }),
  ),
  hubs: perWheel(typedPositive).describe('String to hub centre.'),
  wheelbase: typedPositive,
  along: someWheels(typedLength).optional().describe('Front bar back to each hub centre of an axle.'),
})

const tape = z.strictObject({
  method: z.literal('tape on a scribed line'),
  axle: z.enum(['front', 'rear']),
  tape: nameText,
  front: many(typedPositive),
  rear: many(typedPositive),
  belowHub: typedLength,
  levelled: typedLength,
  radius: typedPositive,
})

const place = z.strictObject({
  steer: typedAngle.describe('To the left is positive, for this wheel.'),
  camber: typedAngle.describe('Gauge across the wheel; top outward is positive.'),
  tilt: typedAngle.optional().describe('Gauge fore and aft, brake held; front end up is positive.'),
})
const sweep = z.strictObject({
  method: z.literal('steer sweep'),
  side: z.enum(['left', 'right']),
  gauge: nameText,
  steerGauge: nameText.optional(),
  sweeps: many(z.strictObject({ left: place, right: place })),
})

const runOut = z.strictObject({
  method: z.literal('run-out'),
  wheel,
  gauge: nameText,
  readings: z.array(z.strictObject({ wheelTurn: typedAngle, reading: typedLength })).min(3),
  diameter: typedPositive,
})

/**
 * One observation with a gauge, in the gauge room's own words with texts for its numbers.
 *
 * @source definition
 */
export const readingData = z.discriminatedUnion('method', [inclinometer, strings, tape, sweep, runOut])

/** A ride height: the gauge room's observation, and in which state the vehicle stood. @source definition */
export const rideHeightData = z.strictObject({
  wheel,
  when: z.enum(['before lifting', 'settled', 'hanging']),
  rule: nameText,
  readings: many(typedPositive),
})

/** Play of a joint: the gauge room's observation, and which joint. @source definition */
export const playData = z.strictObject({
  joint: nameText,
  wheel,
  direction: z.enum(['up and down', 'in and out', 'fore and aft']).optional(),
  gauge: nameText,
  moves: z.enum(['camber', 'toe']).describe('Which angle the play lets move.'),
  swings: many(typedLength).describe('Full swing of the pointer.'),
  arm: typedPositive.describe('Pivot about which it moves to the indicator’s tip.'),
})
