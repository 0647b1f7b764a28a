import { formatAngle, formatTorque, type NewtonMetre } from '../quantity/index.ts'
import { largestAdvance } from './castle-slot.ts'
import { fastenRefusal, finite, inOrder, positive } from './fasten-refusal.ts'
import { frictionOf } from './friction.ts'
import type { Joint } from './joint.ts'
import type { SeatAndBackOff, StatedTorque } from './procedure.ts'
import { stagesOf } from './stages-of.ts'
import { checkTypedTorque } from './typed-torque.ts'

const allowed: Readonly<Record<Joint['kind'], readonly Joint['procedure']['kind'][]>> = {
  bolted: ['torque', 'torque then angle', 'stages', 'hand snug', 'castle slot'],
  'tapered stud': ['torque', 'torque then angle', 'stages', 'castle slot'],
  'adjustable taper-roller hub': ['seat and back off'],
}

/**
 * Holds a joint as it was typed against its kind and its thread, before anybody picks up a wrench.
 *
 * @returns warnings about typed values; none when nothing speaks against them
 * @throws {Refusal} `wrong-joint` when the procedure belongs to another kind; `bad-stages`, `bad-range`, `bad-count`, `above-proof`, `unknown-strength`, `not-positive`, `not-finite`
 * @source common practice, no source, for which rule goes with which joint; docs/methods/tightening-procedures.md
 * @example checkJoint(lowerBall) // []
 */
export function checkJoint(joint: Joint): readonly string[] {
  const { kind, procedure, name } = joint
  // from a file the two may come apart
  if (!(allowed[kind] as readonly string[]).includes(procedure.kind))
    throw fastenRefusal({
      code: 'wrong-joint',
      at: name,
      given: `${kind}, ${procedure.kind}`,
      sentence: `“${procedure.kind}” is not a rule for ${name}, a joint of the kind “${kind}”.`,
      remedy:
        kind === 'adjustable taper-roller hub'
          ? 'Seat the bearings while the hub turns, then back off: type that procedure.'
          : 'Take a procedure of this kind; backing off belongs to adjustable taper-roller hubs alone.',
    })
  if (procedure.kind === 'hand snug') return []
  if (procedure.kind === 'seat and back off') return checkHub(procedure)
  if (procedure.kind === 'castle slot') {
    largestAdvance(procedure)
    return checkStated(joint, { torque: procedure.ceiling, floor: procedure.floor })
  }
  const stages = stagesOf(joint)
  const [first] = stages
  if (first?.by !== 'torque' || !rising(stages.map((stage) => (stage.by === 'torque' ? stage.torque : null))))
    throw fastenRefusal({
      code: 'bad-stages',
      at: name,
      given: stages.map(({ by }) => by).join(', '),
      sentence: `The stages of ${name} do not begin with a torque and rise from there.`,
      remedy: 'Type the stages in order: torques rising, turns after them.',
    })
  const last = stages.filter((stage) => stage.by === 'torque').length - 1
  return stages.flatMap((stage, i) => {
    if (stage.by === 'torque') return checkStated(joint, stage, i < last || stages.length > last + 1)
    positive(stage.angle, 'angle')
    inOrder({ low: stage.within, high: stage.angle }, 'turn, within')
    return []
  })
}

function checkStated(
  joint: Joint,
  { torque, floor, ceiling }: StatedTorque,
  early = false,
): readonly string[] {
  inOrder({ low: floor ?? 0, high: positive(torque, 'torque') }, 'floor and torque')
  if (ceiling !== undefined) inOrder({ low: torque, high: ceiling }, 'torque and ceiling')
  if (joint.thread === null) return []
  const { verdict, sentence } = checkTypedTorque({
    torque: ceiling ?? torque,
    thread: joint.thread,
    strength: joint.strength,
    threadFriction: frictionOf(joint.condition),
  })
  // a first stage is meant to be low
  return verdict === 'plausible' || (early && verdict === 'far too low') ? [] : [sentence]
}

function checkHub({ seat, back, bringUpTo, endFloat }: SeatAndBackOff): readonly string[] {
  positive(seat, 'seat')
  inOrder({ low: positive(back.least, 'back off, least'), high: back.most }, 'back off')
  if (bringUpTo !== null && positive(bringUpTo, 'bring up to') >= seat)
    throw fastenRefusal({
      code: 'bad-range',
      at: 'bring up to',
      given: say(bringUpTo),
      sentence: `After backing off by ${formatAngle(back.least, { unit: '°', digits: 0 })} the hub would be brought up to ${say(bringUpTo)}, no less than the ${say(seat)} that seated it.`,
      remedy: 'Read the procedure again: what follows backing off is far lower than the seating torque.',
    })
  if (endFloat !== null) {
    inOrder(endFloat, 'end float')
    finite(endFloat.high, 'end float')
  }
  return []
}

const say = (torque: NewtonMetre) => formatTorque(torque, { unit: 'N·m', digits: 0 })

/** Torques rise; turns between them (null) do not count. */
function rising(torques: readonly (number | null)[]): boolean {
  const plain = torques.filter((one) => one !== null)
  return plain.every((torque, i) => i === 0 || torque > plain[i - 1]!)
}
