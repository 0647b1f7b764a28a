import type { Addition } from './addition.ts'
import { agrees } from './agrees.ts'
import type { Assembly, JointNode, PartNode } from './assembly.ts'
import type { Choice } from './choice.ts'
import { dropLinkJoints } from './drop-link-joints.ts'
import { flexibleParts } from './flexible-parts.ts'
import { isStrutSpring } from './is-strut-spring.ts'
import { isUndone } from './is-undone.ts'
import { jointsOf } from './joints-of.ts'
import { nodeNamed } from './node-named.ts'
import { opensBefore } from './opens-before.ts'
import { pieceOf } from './piece-of.ts'
import { rideNeeds } from './ride-need.ts'
import { sawNeeds } from './saw-need.ts'
import { seatsInStrut } from './seats-in-strut.ts'
import type { WholeGoal } from './whole-goal.ts'

const flexible: readonly PartNode['kind'][] = ['hose', 'lead', 'height-sensor rod']
const fixed: readonly PartNode['kind'][] = ['body', 'sub-frame']
/** What may come off together with a neighbour, as one piece. */
const detachable: readonly PartNode['kind'][] = [
  'arm',
  'rod',
  'strut',
  'damper',
  'spring',
  'knuckle',
  'hub',
  'disc',
  'backing plate',
  'top mount',
  'shackle',
  'ball joint',
  'bearing',
  'kingpin',
  'boot',
]
const largestPiece = 4

/**
 * What a choice still lacks, one after another, each as alternatives of which one must be added; an empty list is a
 * dead end. Nothing is lacking when every part of the goal comes off, every joint is reached, stored energy is held,
 * hoses and leads are free. What comes first is to be supplied first.
 *
 * @source own derivation: docs/methods/plan.md
 */
export function* needsOf(assembly: Assembly, goal: WholeGoal, choice: Choice): Needs {
  yield* goalNeeds(assembly, goal, choice)
  yield* accessNeeds(assembly, choice)
  yield* sawNeeds(assembly, goal.cut, choice)
  yield* holdNeeds(assembly, choice)
  yield* partNeeds(assembly, goal, choice)
  yield* looseNeeds(assembly, choice)
  yield* swingNeeds(assembly, choice)
  yield* wheelNeeds(assembly, choice)
  yield* reachNeeds(assembly, choice)
  yield* rideNeeds(assembly, choice)
}

/** The first thing that a choice still lacks; null when it is complete. @source definition */
export function nextNeed(assembly: Assembly, goal: WholeGoal, choice: Choice): readonly Addition[] | null {
  for (const need of needsOf(assembly, goal, choice)) return need
  return null
}

type Needs = Generator<readonly Addition[], void>

function* goalNeeds(assembly: Assembly, goal: WholeGoal, choice: Choice): Needs {
  for (const part of goal.replace) if (!choice.off.has(part)) yield [{ off: [part], why: 'it is replaced' }]
  for (const part of goal.off)
    if (!choice.off.has(part)) yield [{ off: [part], why: 'it is mended off the vehicle' }]
  for (const id of goal.open ?? []) {
    if (isUndone(choice, id)) continue
    const joint = assembly.joints[id]!
    const why = `the ${joint.called} ${agrees(joint.called, 'is', 'are')} to be opened`
    const seats = seatsInStrut(assembly, joint)
    // What captures a spring in its strut is undone on the bench, in the compressor; there it leaves its seats.
    if (isCapturing(assembly, joint)) yield [{ bench: [id], off: joint.joins, why }]
    else yield seats.length > 0 ? [{ bench: seats, off: joint.joins, why }] : [{ open: [id], why }]
  }
}

function* accessNeeds(assembly: Assembly, choice: Choice): Needs {
  for (const id of [...choice.open, ...choice.bench]) {
    const joint = assembly.joints[id]!
    for (const access of joint.file.access ?? []) {
      const why = access.why ?? `it is in the way of the ${joint.called}`
      if (access.partOff) {
        const part = nodeNamed(assembly.parts, joint, access.partOff)
        if (part && !choice.off.has(part.id)) yield [{ off: [part.id], why }]
        else if (part && opensBefore(assembly, choice, joint, pieceOf(assembly, choice, part.id)))
          yield [{ open: stillClosed(assembly, choice, part.id), why }]
      }
      if (access.jointOpen) {
        const other = nodeNamed(assembly.joints, joint, access.jointOpen)
        if (other && !choice.open.has(other.id)) {
          // What is in the way on the vehicle must be open there; on the bench it may be opened on the bench.
          const bench =
            choice.bench.has(id) &&
            (isCapturing(assembly, other) || other.joins.every((part) => choice.off.has(part)))
          if (!bench) yield isCapturing(assembly, other) ? [] : [{ open: [other.id], why }]
          else if (!choice.bench.has(other.id)) yield [{ bench: [other.id], why }]
        }
      }
    }
  }
}

/** The joints of a part that would keep it on its piece. */
const stillClosed = (assembly: Assembly, choice: Choice, part: string): readonly string[] =>
  jointsOf(assembly, part)
    .filter(({ joins }) => !joins.some((one) => one !== part && flexible.includes(assembly.parts[one]!.kind)))
    .filter(({ id }) => !choice.open.has(id))
    .map(({ id }) => id)

/** Every joint that helps to keep stored energy in needs something to stand in for it. */
function* holdNeeds(assembly: Assembly, choice: Choice): Needs {
  for (const hold of Object.values(assembly.holds)) {
    const standIn = choice.standIns[hold.id]
    const why = `something must hold the ${hold.called} meanwhile`
    const out = choice.off.has(hold.id) && jointsOf(assembly, hold.id).some(({ id }) => isUndone(choice, id))
    if (!standIn) {
      if (out || hold.joints.some((joint) => isUndone(choice, joint)))
        yield hold.standIns.map((kind) => ({ standIn: [hold.id, kind], why }))
      continue
    }
    // A bar that comes apart, or whose arm comes off its pivots, has no twist left: only its anchor sees to that.
    if (hold.stores === 'torsion bar' && standIn !== 'torsion bar unwound')
      if (out || [...hold.jackPath, ...anchorsOf(assembly, hold.id)].some((joint) => isUndone(choice, joint)))
        yield []
    if (choice.letDown.has(hold.id)) continue
    if (out) yield [{ letDown: hold.id, why: 'it comes out slack' }]
    else if (standIn === 'jack under the arm' && hold.jackPath.some((joint) => choice.open.has(joint)))
      yield [{ letDown: hold.id, why: 'the jack stands on the joints that are to be opened' }]
    else if (standIn === 'torsion bar unwound' || standIn === 'axle on stands' || standIn === 'air let out')
      yield [{ letDown: hold.id, why }]
  }
}

const anchorsOf = (assembly: Assembly, bar: string): readonly string[] =>
  jointsOf(assembly, bar).flatMap(({ id, kind }) => (kind === 'anchor bolt' ? [id] : []))

/** A part that comes off: each joint to what stays is open, or the neighbour comes with it. */
function* partNeeds(assembly: Assembly, goal: WholeGoal, choice: Choice): Needs {
  for (const id of choice.off) {
    const part = assembly.parts[id]!
    for (const joint of jointsOf(assembly, id)) {
      if (isUndone(choice, joint.id)) continue
      const other = assembly.parts[joint.joins.find((one) => one !== id)!]!
      const alternatives = partingOf(assembly, goal, choice, { part, joint, other })
      if (alternatives.length > 0) yield alternatives
    }
  }
}

function partingOf(
  assembly: Assembly,
  goal: WholeGoal,
  choice: Choice,
  { part, joint, other }: { part: PartNode; joint: JointNode; other: PartNode },
): readonly Addition[] {
  const isGoal = (id: string) => goal.replace.includes(id) || goal.off.includes(id)
  const open: Addition = { open: [joint.id], why: `it holds the ${part.called}` }
  const bench: Addition = { bench: [joint.id], why: `it holds the ${part.called}, and both are on the bench` }
  // A caliper hangs on its hook with its hose on.
  if (part.kind === 'caliper' && !isGoal(part.id) && flexible.includes(other.kind)) return []
  if (other.kind === 'caliper' && choice.off.has(other.id) && flexible.includes(part.kind)) return [open]
  // The nut that keeps a strut's spring in is undone on the bench, in the compressor.
  if (isCapturing(assembly, joint)) {
    if (!choice.off.has(other.id))
      return [{ off: [other.id], why: `it comes off with the ${part.called}, as one piece` }]
    return isGoal(part.id) || isGoal(other.id) ? [bench] : []
  }
  if (choice.off.has(other.id)) {
    if (
      other.kind === 'wheel' ||
      part.kind === 'wheel' ||
      part.kind === 'caliper' ||
      other.kind === 'caliper'
    )
      return [open]
    if (!isGoal(part.id) && !isGoal(other.id)) return []
    const hold = assembly.holds[part.id] ?? assembly.holds[other.id]
    if (joint.kind === 'seat' && hold?.loose && !isStrutSpring(assembly, hold)) return [open]
    return [bench, open]
  }
  if (!detachable.includes(other.kind) || flexible.includes(part.kind)) return [open]
  if (pieceOf(assembly, choice, part.id).length >= largestPiece) return [open]
  return [open, { off: [other.id], why: `it comes off with the ${part.called}, as one piece` }]
}

/** The nut that captures a spring in its strut. */
const isCapturing = (assembly: Assembly, joint: JointNode) =>
  joint.kind === 'strut top nut' &&
  Object.values(assembly.holds).some(({ joints }) => joints.includes(joint.id))

/** A part that nothing holds any more has come off too. */
function* looseNeeds(assembly: Assembly, choice: Choice): Needs {
  for (const part of Object.values(assembly.parts)) {
    if (choice.off.has(part.id) || fixed.includes(part.kind) || flexible.includes(part.kind)) continue
    const hold = assembly.holds[part.id]
    if (hold?.loose && !isStrutSpring(assembly, hold))
      if (jointsOf(assembly, part.id).some(({ id, kind }) => kind === 'seat' && choice.open.has(id)))
        yield [{ off: [part.id], why: 'one of its ends stands on nothing any more' }]
    const joints = jointsOf(assembly, part.id).filter(
      (joint) =>
        joint.kind !== 'seat' &&
        !joint.joins.some((one) => one !== part.id && flexible.includes(assembly.parts[one]!.kind)),
    )
    if (joints.length === 0 || !joints.some(({ id }) => isUndone(choice, id))) continue
    const holds = joints.filter(
      ({ id, joins }) => !isUndone(choice, id) && !choice.off.has(joins.find((one) => one !== part.id)!),
    )
    if (holds.length === 0) yield [{ off: [part.id], why: 'nothing holds it any more' }]
  }
}

/** A spring that is let down under its arm: the arm must be able to swing, its link off, and the spring comes out. */
function* swingNeeds(assembly: Assembly, choice: Choice): Needs {
  for (const id of choice.letDown) {
    const hold = assembly.holds[id]!
    const standIn = choice.standIns[id]
    if (standIn !== 'jack under the arm' && standIn !== 'spring compressor') continue
    if (isStrutSpring(assembly, hold)) continue
    for (const set of hold.heldBy) {
      const partings = partingsOf(assembly, set).filter(
        (joints) => !joints.some((joint) => hold.jackPath.includes(joint)),
      )
      if (
        partings.length === 0 ||
        partings.some((joints) => joints.every((joint) => isUndone(choice, joint)))
      )
        continue
      yield partings.map((joints) => ({
        open: joints.filter((joint) => !isUndone(choice, joint)),
        why: `the arm must swing to let the ${hold.called} out`,
      }))
    }
    const link = dropLinkJoints(assembly, hold)
    if (link.length > 0 && !link.some((joint) => isUndone(choice, joint)))
      yield link.map((joint) => ({ open: [joint], why: 'the anti-roll bar would hold the arm' }))
    if (hold.loose && !choice.off.has(id)) yield [{ off: [id], why: 'it is loose once its arm is down' }]
  }
}

/** The joints of a set, by the two parts they hold together: both bolts of a pivot pair part an arm, one does not. */
function partingsOf({ joints }: Assembly, set: readonly string[]): readonly (readonly string[])[] {
  const found = new Map<string, string[]>()
  for (const id of set) {
    const pair = [...joints[id]!.joins].sort().join(' ')
    found.set(pair, [...(found.get(pair) ?? []), id])
  }
  return [...found.values()]
}

/** A wheel that hangs on a knuckle which nothing locates any more is a weight that falls. */
function* wheelNeeds(assembly: Assembly, choice: Choice): Needs {
  for (const id of choice.open) {
    const joint = assembly.joints[id]!
    if (!joint.locates) continue
    const wheels = Object.values(assembly.parts).filter(
      (part) =>
        part.kind === 'wheel' &&
        part.axle === joint.axle &&
        (joint.side === null || part.side === joint.side) &&
        !choice.off.has(part.id),
    )
    for (const wheel of wheels)
      yield [{ off: [wheel.id], why: `its weight would hang on what the ${joint.called} lets go` }]
  }
}

/** Hoses and leads are free before the knuckle moves further than they reach. */
function* reachNeeds(assembly: Assembly, choice: Choice): Needs {
  const moving = [...choice.open]
    .map((id) => assembly.joints[id]!)
    .filter((joint) => joint.locates)
    .map(({ axle, side }) => ({ axle, side }))
  const lowered = [...choice.letDown]
    .filter((id) => choice.standIns[id] === 'jack under the arm')
    .map((id) => assembly.holds[id]!)
  for (const where of [...moving, ...lowered])
    for (const { part, freedBy } of flexibleParts(assembly, where)) {
      if (choice.off.has(part.id)) continue
      if (freedBy.some((set) => set.every((joint) => isUndone(choice, joint)))) continue
      const reach =
        'reach' in part.file && part.file.reach ? ` (${Math.round(part.file.reach * 1000)} mm)` : ''
      yield freedBy.map((set) => ({
        open: set.filter((joint) => !isUndone(choice, joint)),
        why: `the knuckle moves further than the ${part.called} reaches${reach}`,
      }))
    }
}
