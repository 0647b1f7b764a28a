import { Refusal } from '../quantity/index.ts'
import type { Layout } from './layouts.ts'
import type { CornerRefusal } from './parse-clock.ts'

/** A whole corner model to start from. Its points are typical, not measured. @source definition */
export interface StartingLayout {
  readonly id: string
  readonly name: string
  readonly layout: Layout
  readonly axle: 'front' | 'rear'
  /** What it is typical of, in one sentence. */
  readonly says: string
}

/**
 * The layouts to start from, in the order in which they are offered. Each is one file in `layouts/`, loaded only
 * when it is asked for.
 *
 * @source own choice
 * @example startingLayouts.length // 9
 */
export const startingLayouts: readonly StartingLayout[] = [
  {
    id: 'wishbone-coil-lower',
    name: 'Double wishbone, coil on the lower arm',
    layout: 'double-wishbone, coil on lower arm',
    axle: 'front',
    says: 'A light van or bus: coil and damper on the lower arm, shims under the upper arm’s pivot shaft, a rack behind the axle.',
  },
  {
    id: 'wishbone-coil-upper',
    name: 'Double wishbone, coil on the upper arm',
    layout: 'double-wishbone, coil on upper arm',
    axle: 'front',
    says: 'An older saloon: coil and damper on the upper arm, a radius rod to the lower one, steering box and centre link.',
  },
  {
    id: 'wishbone-torsion-bar',
    name: 'Double wishbone, torsion bar',
    layout: 'double-wishbone, torsion bar',
    axle: 'front',
    says: 'A four-wheel-drive pick-up: torsion bar in the lower arm, eccentrics in the upper one, drive shaft, steering box and centre link.',
  },
  {
    id: 'strut-front',
    name: 'Strut',
    layout: 'strut',
    axle: 'front',
    says: 'A front-driven car or small van: strut with its coil, lower arm and rack on a sub-frame, drive shaft.',
  },
  {
    id: 'five-link-rear',
    name: 'Five-link',
    layout: 'five-link',
    axle: 'rear',
    says: 'A rear-driven saloon: five links on a sub-frame, coil on the spring link, gas damper, a rod to the height sensor.',
  },
  {
    id: 'semi-trailing-rear',
    name: 'Semi-trailing arm',
    layout: 'semi-trailing arm',
    axle: 'rear',
    says: 'An older rear-driven saloon: one arm on a slanted hinge, coil and damper apart.',
  },
  {
    id: 'twist-beam-rear',
    name: 'Twist beam',
    layout: 'twist beam',
    axle: 'rear',
    says: 'A small front-driven car: two trailing arms joined by a beam, coils and dampers apart, hub units bolted on.',
  },
  {
    id: 'solid-axle-leaf-front',
    name: 'Solid axle, leaf springs',
    layout: 'solid axle, leaf springs',
    axle: 'front',
    says: 'A light truck or small tipper: steered beam on leaf springs, kingpins with offset sleeves, box and drag link.',
  },
  {
    id: 'solid-axle-coil-rear',
    name: 'Solid axle, coils',
    layout: 'solid axle, coils',
    axle: 'rear',
    says: 'A light truck or off-road vehicle: driven axle on coils, two lower links, a middle link and a track bar; nothing adjusts.',
  },
]

type File = () => Promise<{ readonly default: unknown }>
/** Written out one by one: a bundler follows only paths that it can read. */
const files: Readonly<Record<string, File>> = {
  'wishbone-coil-lower': () =>
    import('./layouts/wishbone-coil-lower.corner.json', { with: { type: 'json' } }),
  'wishbone-coil-upper': () =>
    import('./layouts/wishbone-coil-upper.corner.json', { with: { type: 'json' } }),
  'wishbone-torsion-bar': () =>
    import('./layouts/wishbone-torsion-bar.corner.json', { with: { type: 'json' } }),
  'strut-front': () => import('./layouts/strut-front.corner.json', { with: { type: 'json' } }),
  'five-link-rear': () => import('./layouts/five-link-rear.corner.json', { with: { type: 'json' } }),
  'semi-trailing-rear': () => import('./layouts/semi-trailing-rear.corner.json', { with: { type: 'json' } }),
  'twist-beam-rear': () => import('./layouts/twist-beam-rear.corner.json', { with: { type: 'json' } }),
  'solid-axle-leaf-front': () =>
    import('./layouts/solid-axle-leaf-front.corner.json', { with: { type: 'json' } }),
  'solid-axle-coil-rear': () =>
    import('./layouts/solid-axle-coil-rear.corner.json', { with: { type: 'json' } }),
}

/**
 * A corner model to start from, as a file's value, made anew each time; `readCorner` reads it.
 *
 * @param id one of `startingLayouts`
 * @throws {Refusal} `no-such-layout`
 * @source definition
 */
export async function startingLayout(id: string): Promise<unknown> {
  const file = Object.hasOwn(files, id) ? files[id] : undefined
  if (!file)
    throw new Refusal<CornerRefusal>({
      code: 'no-such-layout',
      at: 'id',
      given: id,
      sentence: `There is no layout “${id}” to start from.`,
      remedy: `Take one of ${startingLayouts.map((one) => one.id).join(', ')}.`,
    })
  return JSON.parse(JSON.stringify((await file()).default))
}
