import type { Family } from './point-names.ts'

/** What a corner is built like, as a file says it: the linkage, and what carries the spring. @source definition */
export const layouts = [
  'double-wishbone, coil on lower arm',
  'double-wishbone, coil on upper arm',
  'double-wishbone, torsion bar',
  'strut',
  'five-link',
  'semi-trailing arm',
  'twist beam',
  'solid axle, leaf springs',
  'solid axle, coils',
] as const

/** One of `layouts`. @source definition */
export type Layout = (typeof layouts)[number]

/** Layouts of which one wheel cannot be computed without the other. @source definition */
export type WholeAxleLayout = Extract<Layout, 'twist beam' | `solid axle, ${string}`>

/**
 * The linkage behind a layout: what carries the spring of a wishbone does not change how the wheel moves.
 *
 * @source definition
 * @example familyOf('double-wishbone, torsion bar') // 'double wishbone'
 */
export function familyOf(layout: Layout): Family {
  switch (layout) {
    case 'double-wishbone, coil on lower arm':
    case 'double-wishbone, coil on upper arm':
    case 'double-wishbone, torsion bar':
      return 'double wishbone'
    case 'solid axle, leaf springs':
    case 'solid axle, coils':
      return 'solid axle'
    default:
      return layout
  }
}

/**
 * Whether a layout is computed as a whole axle, both wheels at once: `wholeAxlePoints` then has its points,
 * else `cornerPoints`.
 *
 * @source definition
 * @example isWholeAxle('twist beam') // true
 */
export function isWholeAxle(layout: Layout): layout is WholeAxleLayout {
  return layout === 'twist beam' || familyOf(layout) === 'solid axle'
}
