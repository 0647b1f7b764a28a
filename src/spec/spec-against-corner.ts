import { type Corner, closestName, type Problem } from '../corner/index.ts'
import type { Spec } from './spec-schema.ts'

/** Procedures that belong to one kind of joint and would ruin any other. */
const ruled: Readonly<Record<string, string>> = {
  'castle slot': 'tapered stud, castle nut',
  'seat and back off': 'adjustable taper-roller hub',
}

/**
 * What a spec sheet says of a corner that the corner model does not have: a tightening or a wear limit for
 * a joint that is not there, a castle nut's
 * procedure for another kind of joint, ride heights measured in another way.
 *
 * @source definition
 */
export function specAgainstCorner(spec: Spec, corner: Corner): readonly Problem[] {
  const found: Problem[] = []
  const joints = Object.keys(corner.joints)
  const mustBe = (joint: string, field: string) => {
    if (joints.includes(joint)) return
    const close = closestName(joint, joints)
    found.push({
      field,
      wrong: `The corner model "${corner.name}" has no joint "${joint}".`,
      right: close ? `"${close}", if that is meant` : `one of ${joints.map((j) => `"${j}"`).join(', ')}`,
    })
  }
  for (const [joint, { procedure }] of Object.entries(spec.tightening?.[corner.axle] ?? {})) {
    mustBe(joint, `tightening.${corner.axle}.${joint}`)
    const kind: string | undefined = corner.joints[joint]?.kind
    if (kind === ruled['seat and back off'] && procedure !== 'seat and back off')
      found.push({
        field: `tightening.${corner.axle}.${joint}.procedure`,
        wrong: `“${joint}” is an adjustable taper-roller hub; “${procedure}” would clamp its bearings.`,
        right: '"seat and back off", as your own information states it',
      })
    else if (kind !== undefined && ruled[procedure] !== undefined && kind !== ruled[procedure])
      found.push({
        field: `tightening.${corner.axle}.${joint}.procedure`,
        wrong: `“${procedure}” is for a ${ruled[procedure]}; “${joint}” is a joint of the kind “${kind}”.`,
        right: 'the procedure of this kind of joint, or the right kind in the corner model',
      })
  }
  spec.wear?.forEach((limit, i) => {
    if (limit.joint !== undefined && limit.axle === corner.axle) mustBe(limit.joint, `wear[${i}].joint`)
  })
  if (spec.rideHeight && corner.rideHeight && spec.rideHeight.measured !== corner.rideHeight.measured)
    found.push({
      field: 'rideHeight.measured',
      wrong: `The spec sheet measures the ride height “${spec.rideHeight.measured}”, the corner model “${corner.rideHeight.measured}”.`,
      right:
        'the same two points in both, in the same words; a height between other points is another height',
    })
  return found
}
