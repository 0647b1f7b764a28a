import type { Corner } from '../corner/index.ts'

/**
 * How the vehicle is held for a check, so that it shows what it is to show and nobody is under what may fall.
 *
 * @source common practice, no source; which joint carries the spring: the corner model's layout
 */
export function holdFor(check: string, corner: Corner | null): string {
  if (check.startsWith('rock at 12 and 6'))
    return `${unloaded(corner)} One person rocks the wheel at top and bottom, another feels each joint; then again with the brake held: a bearing's play goes away.`
  if (check.startsWith('rock at 3 and 9'))
    return 'Wheel just off the ground, body on stands that you have seen take the load. One person rocks the wheel at front and back, steering wheel held; another feels each rod end.'
  if (check.startsWith('lever at the bush'))
    return 'On its wheels over a pit or on ramps, held against rolling: the bush stands as it does on the road. A bar between arm and mounting, fingers clear: torn rubber or a pin off its middle shows.'
  if (check.startsWith('spin'))
    return 'Wheel off the ground, body on stands, gear in neutral, engine off. Turn it by hand, the other hand on the spring or the knuckle: fingers clear of disc and calliper.'
  if (check.startsWith('looked at'))
    return 'Body on stands or on a lift. Wipe it clean; look for creases, cracked paint, fresh rust, a straight edge that does not lie; hold it against the other side.'
  if (check.startsWith('free movement'))
    return 'On its wheels, straight ahead, engine running where the steering is assisted.'
  if (check.startsWith('pull swaps'))
    return 'Body on stands to swap the front wheels (not where the tread has a direction); wheel nuts to their torque before the drive.'
  return 'On its wheels, settled: rolled, not jacked, before it is read.'
}

/** The joint that carries the spring swings only where it is unloaded. */
function unloaded(corner: Corner | null): string {
  const layout = corner?.layout ?? ''
  if (layout.startsWith('double-wishbone') && layout !== 'double-wishbone, coil on upper arm')
    return 'Jack under the lower arm, near its outer end, until the tyre is clear of the ground: the spring is then held by the arm and not by the joint. Stands under the body as well.'
  if (layout === 'double-wishbone, coil on upper arm')
    return 'Lifted under the body, with the upper arm blocked up off its stop; stands under the body.'
  if (layout.startsWith('solid axle') || layout === 'twist beam')
    return 'Jack and stands under the axle, wheel just off the ground.'
  return 'Lifted under the body, wheel hanging; body on stands that you have seen take the load.'
}

/** @source common practice, no source */
export const checkCautions: readonly string[] = [
  'Never get under a vehicle that a jack alone carries. Wheels that stay on the ground are blocked.',
  'What is found here is likely, not certain. No part is condemned, and none declared sound, by angles alone.',
  'A steering or suspension part that was bent is never straightened or heated: it is renewed.',
]
