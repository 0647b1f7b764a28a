import type { Layout } from '../corner/index.ts'
import type { Point } from '../linkage/index.ts'

/**
 * Which way an arm's inner end goes when its rubber is gone, as the standing load has it: the wheel's load stands
 * outside the joints, so it pushes the upper arm in and pulls the lower one out; a spring on an arm presses its pivot
 * down, a torsion bar lifts it.
 *
 * @param pivot by the linkage's name
 * @returns unit vector of a left corner
 * @source own derivation from statics: docs/methods/findings.md
 */
export function givingOf(layout: Layout, pivot: string): Point {
  if (layout === 'semi-trailing arm') return [0, 0, -1]
  if (layout === 'five-link') {
    if (pivot === 'inner0' || pivot === 'inner1') return [0, -1, 0]
    // the spring stands on the fourth link
    return pivot === 'inner3' ? [0, 0.5, -0.866] : [0, 1, 0]
  }
  if (pivot.startsWith('upper'))
    return layout === 'double-wishbone, coil on upper arm' ? [0, -0.5, -0.866] : [0, -1, 0]
  if (layout === 'double-wishbone, coil on lower arm') return [0, 0.6, -0.8]
  return layout === 'double-wishbone, torsion bar' ? [0, 0.6, 0.8] : [0, 1, 0]
}
