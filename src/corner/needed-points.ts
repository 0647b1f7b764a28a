import { familyOf, type Layout } from './layouts.ts'
import { pointNames } from './point-names.ts'

const steering = [
  'kingpin-lower',
  'kingpin-upper',
  'drop-axis-from',
  'drop-axis-to',
  'drag-inner',
  'drag-outer',
  'tie-outer',
] as const
const ends = (rod: string): readonly string[] => [`${rod}-inner`, `${rod}-outer`]

/**
 * The points that a layout is computed with, by the file's names. A solid axle is steered when it is a front
 * one or when any point of its steering is given; on coils it is guided by a lower link at each side and either
 * an upper link at each side, or one middle link and one track bar.
 *
 * @param given names of the points that the file has
 * @source definition
 * @example neededPoints('twist beam', 'rear', []) // ['beam-pivot', 'shear-centre', 'wheel-centre']
 */
export function neededPoints(
  layout: Layout,
  axle: 'front' | 'rear' | undefined,
  given: readonly string[],
): readonly string[] {
  const family = familyOf(layout)
  if (family !== 'solid axle') return Object.keys(pointNames[family])
  const steered = axle === 'front' || steering.some((name) => given.includes(name))
  const single = [...ends('middle-link'), ...ends('track-bar')]
  const guided =
    layout === 'solid axle, leaf springs'
      ? ['roll-axis-rear', 'roll-axis-front']
      : [
          ...ends('lower-link'),
          ...(single.some((name) => given.includes(name)) ? single : ends('upper-link')),
        ]
  return [...guided, ...(steered ? steering : []), 'wheel-centre']
}
