import type { JointNode } from './assembly.ts'
import { cautionWords as say } from './caution-words.ts'
import type { RideRoute } from './ride-route.ts'
import { spannerFor } from './spanner-for.ts'

const tool = (joint: JointNode): string | null => {
  const spanner = spannerFor(joint)
  return spanner === null ? null : `torque wrench, ${spanner.replace(/^(spanner|socket) (for )?/, '')}`
}

function method({ kind }: JointNode): string {
  if (kind === 'tapered stud, castle nut') return 'castle slot'
  if (kind === 'adjustable taper-roller hub') return 'seat and back off'
  if (kind === 'wheel nuts') return 'opposite first, in stages'
  return 'torque'
}

function close({ kind, called }: JointNode, isNew: boolean): string {
  switch (kind) {
    case 'clip':
    case 'hose bracket':
      return `Fix the ${called} again, as it ran before`
    case 'plug':
      return `Plug the ${called} in until it locks`
    case 'seat':
      return `Seat the ${called}, turned as marked`
    case 'spline':
    case 'press fit':
      return `Bring the ${called} home`
    case 'wheel nuts':
      return `Run the ${called} up, opposite first, until the wheel sits`
    default:
      return `Run the ${called} up${isNew ? ', new fastener' : ''}`
  }
}

function final(joint: JointNode): string {
  const { called, kind, final: position } = joint
  if (kind === 'tapered stud, castle nut')
    return `Tighten the ${called} to its low figure, then forward to the next slot`
  if (kind === 'wheel nuts')
    return `Tighten the ${called} finally, opposite first, in two passes, on the ground`
  if (kind === 'adjustable taper-roller hub') return `Seat the ${called} and back it off to its end float`
  return `Tighten the ${called} finally${position === 'any position' ? '' : `, ${position}`}`
}

function cautions(joint: JointNode, route: RideRoute): readonly string[] {
  return [
    ...(joint.kind === 'tapered stud, castle nut' ? [say.castle] : []),
    ...(joint.kind === 'adjustable taper-roller hub' ? [say.hub] : []),
    ...(joint.kind === 'wheel nuts' ? [say.wheel] : []),
    ...(joint.kind === 'axle nut' ? [say.bearing] : []),
    ...(joint.final === 'at ride height'
      ? [say.bonded, ...(route === 'jack under the arm' ? [say.rideByJack] : [])]
      : []),
    ...(joint.final === 'wheels straight' ? [say.straight] : []),
  ]
}

/**
 * How the closing of a joint is said: tool, method, sentences, cautions.
 *
 * @source common practice, no source
 */
export const closingWords = { tool, method, close, final, cautions } as const
