import type { Assembly, JointNode } from './assembly.ts'
import type { Failure, FailureKind } from './failure.ts'
import { jointHabits } from './joint-habits.ts'

const tapers: readonly JointNode['kind'][] = ['tapered stud, castle nut', 'tapered stud, lock nut']
const spinning: readonly JointNode['kind'][] = [...tapers, 'stud nuts', 'strut top nut', 'ball-joint bolts']
const through: readonly JointNode['kind'][] = ['bolt', 'eccentric bolt', 'slotted bolt', 'shackle bolt']
const pinned: readonly JointNode['kind'][] = ['axle nut', 'adjustable taper-roller hub', 'strut top nut']
const unbroken: readonly JointNode['kind'][] = [
  ...pinned,
  'thread and lock nut',
  'hydraulic union',
  'air union',
]
const holed: readonly JointNode['kind'][] = [
  ...tapers,
  ...through,
  'pinch bolt',
  'stud nuts',
  'ball-joint bolts',
  'wheel nuts',
]

const hasBush = ({ kind, file }: JointNode) =>
  through.includes(kind) && (file.bush?.bonded === true || kind === 'shackle bolt')
const threaded = ({ kind }: JointNode) => jointHabits[kind].threaded && kind !== 'ball-joint rivets'

const canHave: Readonly<Record<FailureKind, (joint: JointNode) => boolean>> = {
  'seized sleeve': (joint) => hasBush(joint) || joint.kind === 'thread and lock nut',
  'snapped stud': (joint) => threaded(joint) && !unbroken.includes(joint.kind),
  'stripped thread': threaded,
  'rounded head': threaded,
  'taper will not part': ({ kind }) => tapers.includes(kind),
  'stud spins': ({ kind }) => spinning.includes(kind),
  'split boot': (joint) => tapers.includes(joint.kind) || joint.kind === 'clip',
  'hole not round': ({ kind }) => holed.includes(kind),
  'damage found': threaded,
  'wrong part in the box': () => false,
}

const why: Readonly<Record<FailureKind, string>> = {
  'seized sleeve': 'no bolt goes through a sleeve there',
  'snapped stud': 'it has no stud or bolt that snaps',
  'stripped thread': 'it has no thread',
  'rounded head': 'nothing is turned there with a spanner',
  'taper will not part': 'it has no taper',
  'stud spins': 'it has no stud that can turn with its nut',
  'split boot': 'no boot is held there',
  'hole not round': 'no stud or bolt sits in a hole there',
  'damage found': 'name the part that is damaged',
  'wrong part in the box': 'a part comes in a box, a joint does not: name the part',
}

/**
 * Why a failure cannot be so on this vehicle, as a sentence; null where it can.
 *
 * @param renewed parts that come new anyway
 * @source common practice, no source
 */
export function failureMisfit(
  { joints, parts }: Assembly,
  { what, joint, part }: Failure,
  renewed: ReadonlySet<string>,
): string | null {
  const one = joint === undefined ? undefined : joints[joint]
  if (joint !== undefined && !one) return `There is no joint “${joint}” on this vehicle.`
  const other = part === undefined ? undefined : parts[part]
  if (part !== undefined && (!other || other.kind === 'body'))
    return `There is no part “${part}” on this vehicle that could be renewed.`
  if (!one && !other) return `“${what}” is told of nothing: it has neither joint nor part.`
  if (what === 'wrong part in the box') {
    if (!other) return `“${what}” at the ${one!.called}: ${why[what]}.`
    return renewed.has(other.id)
      ? null
      : `The ${other.called} does not come new here, so no box has a wrong one.`
  }
  if (one && !canHave[what](one)) return `“${what}” cannot be at the ${one.called}: ${why[what]}.`
  if (!one && what !== 'split boot' && what !== 'damage found')
    return `“${what}” happens at a joint: name it, not only the ${other!.called}.`
  if (
    !one &&
    what === 'split boot' &&
    !other!.file.wears?.some((wears) => wears === 'boot' || wears === 'joint') &&
    other!.kind !== 'boot'
  )
    return `“${what}” cannot be at the ${other!.called}: it has no boot.`
  return null
}
