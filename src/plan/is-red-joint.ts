import type { JointNode } from './assembly.ts'

const red: readonly JointNode['kind'][] = [
  'tapered stud, castle nut',
  'tapered stud, lock nut',
  'pinch bolt',
  'wheel nuts',
  'ball-joint rivets',
  'ball-joint bolts',
  'axle nut',
  'adjustable taper-roller hub',
  'hydraulic union',
  'U-bolts',
]

/**
 * Whether a joint of this kind drops a wheel, the steering or the brakes when it comes apart, where the file does
 * not say so itself.
 *
 * @source common practice, no source
 */
export const isRedJoint = (kind: JointNode['kind']): boolean => red.includes(kind)
