import type { Family } from './point-names.ts'

/** What a corner is built like, as a file says it: the linkage, and for wishbones what carries the spring. @source definition */
export const layouts = [
  'double-wishbone, coil on lower arm',
  'double-wishbone, coil on upper arm',
  'double-wishbone, torsion bar',
  'strut',
  'five-link',
] as const

/** One of `layouts`. @source definition */
export type Layout = (typeof layouts)[number]

/**
 * The linkage behind a layout: what carries the spring does not change how the wheel moves.
 *
 * @source definition
 * @example familyOf('double-wishbone, torsion bar') // 'double wishbone'
 */
export function familyOf(layout: Layout): Family {
  if (layout === 'strut' || layout === 'five-link') return layout
  return 'double wishbone'
}
