import * as z from 'zod'
import { nameText, words } from './names-schema.ts'
import { positiveLength } from './quantity-schema.ts'

/** Two names, such as the ends of a link or the parts of a joint. @source definition */
export const pair = (what: string) =>
  z.tuple([nameText, nameText], { error: () => `two ${what}, such as ["one", "another"]` })

const every = {
  name: words.optional(),
  wears: z
    .array(z.enum(['bush', 'joint', 'thread', 'bearing', 'spring', 'damper', 'boot', 'lining', 'face']))
    .optional()
    .describe('What of it wears, the face that a brake rubs on among it: why it may come new.'),
  span: z.literal('axle').optional().describe('The axle has it once; else each corner has its own.'),
  heavy: z.literal(true).optional().describe('Taking it off shifts the balance of the vehicle on a lift.'),
}
const links = z.array(pair('points')).min(1).describe('Rigid lengths between two points.')
const between = pair('parts')
const ends = pair('points').optional()
const stores = z.enum(['coil', 'torsion bar', 'leaf', 'air', 'gas'])
const clippedTo = z.array(nameText).min(1)
const reach = positiveLength
  .optional()
  .describe('How far the knuckle may move from ride while this is connected.')

/**
 * A part of a corner: what it is, what it stands between, what it stores.
 *
 * @source own derivation: docs/methods/formats.md
 */
export const partSchema = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.enum(['body', 'sub-frame', 'knuckle', 'rack', 'bar', 'caliper', 'wheel']),
    ...every,
  }),
  z.strictObject({
    kind: z.enum([
      'hub',
      'bearing',
      'ball joint',
      'boot',
      'disc',
      'brake carrier',
      'brake pads',
      'backing plate',
      'top mount',
      'axle beam',
      'kingpin',
      'steering box',
      'drop arm',
      'idler arm',
      'centre link',
      'steering shaft',
      'height-sensor rod',
      'shackle',
      'shield',
      'compensator',
    ]),
    links: links.optional(),
    ...every,
  }),
  z.strictObject({ kind: z.literal('drive shaft'), links: links.optional(), reach, ...every }),
  z.strictObject({ kind: z.enum(['arm', 'rod', 'drop link']), links, ...every }),
  z.strictObject({ kind: z.literal('strut'), links, stores: stores.optional(), ...every }),
  z.strictObject({ kind: z.literal('spring'), between, ends, stores, ...every }),
  z.strictObject({
    kind: z.literal('damper'),
    between,
    ends,
    stores: z.literal('gas').optional().describe('Gas under pressure inside: never cut, never heated.'),
    ...every,
  }),
  z.strictObject({ kind: z.literal('lead'), clippedTo, reach, ...every }),
  z.strictObject({
    kind: z.literal('hose'),
    clippedTo,
    carries: z.enum(['brake fluid', 'steering fluid', 'air']).optional(),
    reach,
    ...every,
  }),
])
