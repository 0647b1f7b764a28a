import type { Corner } from '../corner/index.ts'
import type { WheelName } from './wheel-name.ts'

/** Where one joint of a corner model is found on the vehicle. @source definition */
export interface JointPlace {
  /** Wheels under whose name the log may speak of it; the first is the one to write down. */
  readonly wheels: readonly WheelName[]
  /** "front right"; "front axle" for a joint that the axle has once. */
  readonly place: string
}

/** Parts that an axle has once by their nature. */
const once: readonly string[] = [
  'body',
  'sub-frame',
  'rack',
  'axle beam',
  'steering box',
  'centre link',
  'steering shaft',
  'compensator',
]

/**
 * Where a joint of a corner model sits: at each wheel of the axle; on one side, where the model says so; or once for
 * the whole axle, when both parts that it joins are parts of the axle. The log may name such a joint under either
 * wheel of its axle: both mean the same bolts.
 *
 * @source own derivation: docs/methods/bolt-book.md
 */
export function jointPlaces(corner: Corner, joint: string): readonly JointPlace[] {
  const model = corner.joints[joint]!
  const at = (side: 'left' | 'right'): WheelName => `${corner.axle} ${side}`
  if (model.side) return [{ wheels: [at(model.side)], place: at(model.side) }]
  const ofAxle = model.joins.every((name) => {
    const part = corner.parts[name]
    return part !== undefined && (part.span === 'axle' || once.includes(part.kind))
  })
  if (ofAxle) return [{ wheels: [at('left'), at('right')], place: `${corner.axle} axle` }]
  return (['left', 'right'] as const).map((side) => ({ wheels: [at(side)], place: at(side) }))
}
