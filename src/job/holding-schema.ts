import * as z from 'zod'
import { nameText, words } from '../corner/index.ts'
import { hand } from './refers-schema.ts'
import { wheelNames } from './wheel-name.ts'

const wheel = z.enum(wheelNames)
const who = { hand: hand.optional(), remark: words.optional() }

/**
 * How the vehicle and what is loose on it are held meanwhile: what a plan goes on from.
 *
 * @source own derivation: docs/methods/formats.md
 */
export const holdingData = {
  carried: z
    .strictObject({
      axle: z.enum(['front', 'rear']),
      by: z
        .enum(['its wheels', 'ramps or pit', 'slip plates', 'jack', 'stands', 'lift'])
        .describe('What carries the axle from now on.'),
      seen: z.boolean().optional().describe('Stands seen loaded, lift arms seen locked, ramps chocked.'),
      ...who,
    })
    .describe('What carries an axle.'),
  placed: z
    .strictObject({
      part: nameText,
      wheel: wheel.optional().describe('Left out for what the vehicle or an axle has once.'),
      where: z
        .enum(['off', 'off with another', 'on a hook', 'tied up', 'in its place'])
        .describe('Where the part is from now on.'),
      broken: z.boolean().optional().describe('It cannot go back.'),
      ...who,
    })
    .describe('A part taken off, hung, tied up or put back.'),
  compared: z
    .strictObject({
      part: nameText,
      wheel: wheel.optional(),
      when: z.enum(['before lifting', 'beside the old one']),
      ...who,
    })
    .describe('A new part held against the old: side, length, taper, thread, plug.'),
  spring: z
    .strictObject({
      part: nameText,
      wheel: wheel.optional(),
      held: z
        .enum([
          'by its own joints',
          'by a jack under the arm',
          'in a compressor',
          'let down',
          'raised to ride height',
        ])
        .describe('What keeps its energy in from now on.'),
      ...who,
    })
    .describe('Stored energy: held by what, or let down.'),
  line: z
    .strictObject({
      wheel,
      joint: nameText.optional().describe('The union of a hydraulic line.'),
      part: nameText.optional().describe('The lead.'),
      is: z.enum(['capped', 'bled, no leak', 'lamp seen out']),
      ...who,
    })
    .describe('An open line capped or bled, a lead’s lamp looked at.'),
  pedal: z.strictObject({ firm: z.boolean(), ...who }).describe('The brake pedal, pumped or found soft.'),
  steering: z
    .strictObject({
      turned: z.enum(['straight', 'left lock', 'right lock']),
      held: z.boolean().optional().describe('The steering wheel is held, the rack counted to its middle.'),
      ...who,
    })
    .describe('Where the steering stands.'),
  tag: z
    .strictObject({
      says: words,
      keys: words.optional().describe('Where the keys are.'),
      off: z.boolean().optional().describe('Taken off again.'),
      ...who,
    })
    .describe('A tag on a vehicle that is left unfinished.'),
} as const
