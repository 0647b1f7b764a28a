import type { Action } from './action.ts'
import { aftercareActions } from './aftercare-actions.ts'
import type { AxleName, HoldNode, JointNode, PartNode, Side } from './assembly.ts'
import { axleOnStands } from './axle-on-stands.ts'
import type { Choice } from './choice.ts'
import { dropLinkJoints } from './drop-link-joints.ts'
import { energyActions } from './energy-actions.ts'
import { flexibleParts } from './flexible-parts.ts'
import { isStrutSpring } from './is-strut-spring.ts'
import { undoingActions } from './joint-actions.ts'
import { jointHabits } from './joint-habits.ts'
import { jointsOf } from './joints-of.ts'
import { needsMark } from './needs-mark.ts'
import { nodeNamed } from './node-named.ts'
import { partActions } from './part-actions.ts'
import { pieceOf } from './piece-of.ts'
import { shaftFreedBy } from './shaft-freed-by.ts'
import { springsBeside } from './springs-beside.ts'
import { steeringTurner } from './steering-turner.ts'
import type { Work } from './work.ts'

/** One step of the strip, with what its reverse needs to know. @source definition */
export interface StripStep {
  readonly action: Action
  readonly of:
    | { readonly is: 'joint'; readonly joint: JointNode; readonly does: 'mark' | 'crack' | 'free' | 'open' }
    | { readonly is: 'part'; readonly part: PartNode; readonly piece: readonly PartNode[] }
    | {
        readonly is: 'energy'
        readonly hold: HoldNode
        readonly does: 'jack' | 'let down' | 'compress' | 'unwind' | 'deflate' | 'swap'
      }
    | { readonly is: 'axle'; readonly axle: AxleName; readonly holds: readonly HoldNode[] }
    | { readonly is: 'other' }
    | { readonly is: 'steer'; readonly to: 'left lock' | 'right lock' | 'straight' }
}

const early: readonly PartNode['kind'][] = ['hose', 'lead', 'height-sensor rod']

/**
 * What is undone, in an order that works: each joint after what must come before it, followed back. Trade order
 * decides between equals: wheels, hose brackets and leads, anti-roll links, stored energy, the rest; the side named
 * first goes first.
 *
 * @source common practice, no source; own derivation: docs/methods/plan.md
 */
export function stripActions(work: Work, choice: Choice, sides: readonly Side[]): readonly StripStep[] {
  const { assembly } = work
  const steps: StripStep[] = []
  const done = new Set<string>()

  /** Does a thing once; a thing that waits for itself is left to the one that is being done. */
  const once = (key: string, act: () => void) => {
    if (done.has(key)) return
    done.add(key)
    act()
  }
  const push = (action: Action, of: StripStep['of']) => steps.push({ action, of })

  const steering = steeringTurner(assembly.axles, 'strip', (action, to) => push(action, { is: 'steer', to }))

  function mark(joint: JointNode): void {
    once(`mark ${joint.id}`, () =>
      push(undoingActions(work, joint).mark(), { is: 'joint', joint, does: 'mark' }),
    )
  }

  function openJoint(id: string): void {
    const joint = assembly.joints[id]!
    once(`open ${id}`, () => {
      const onBench = choice.bench.has(id)
      reachFor(joint)
      const seated = joint.joins.map((part) => assembly.holds[part]).find((hold) => hold?.loose)
      if (joint.kind === 'seat' && seated) letDown(seated, 'leave it in')
      for (const hold of Object.values(assembly.holds))
        if (hold.joints.includes(id)) {
          holdEnergy(hold)
          if (hold.jackPath.includes(id) && !onBench) letDown(hold)
        }
      // No saw comes near a loaded spring.
      if (!onBench && work.branches.some(({ joint: at, rung }) => at?.id === id && rung === 'cut'))
        for (const { hold } of springsBeside(assembly, joint)) letDown(hold)
      if (!onBench && joint.locates) {
        for (const set of flexibleWays(joint)) for (const other of set) if (other !== id) openJoint(other)
        const shaft = shaftFreedBy(work, joint)
        if (shaft) openJoint(shaft)
      }
      const isShaft = joint.joins.some((part) => assembly.parts[part]!.kind === 'steering shaft')
      if (isShaft)
        once('hold steering wheel', () => {
          steering.to('straight')
          const care = aftercareActions(assembly.axles)
          push(care.holdWheel(), { is: 'other' })
          push(care.airbagSafe(), { is: 'other' })
        })
      const acts = undoingActions(work, joint)
      if (joint.kind === 'seat' && !onBench) {
        if (needsMark(joint)) mark(joint)
        return
      }
      const habit = jointHabits[joint.kind]
      if (needsMark(joint)) mark(joint)
      if (!onBench) steering.for(joint)
      if (habit.taper || habit.cracked) push(acts.crack(), { is: 'joint', joint, does: 'crack' })
      if (habit.taper) push(acts.free(), { is: 'joint', joint, does: 'free' })
      push(acts.open(), { is: 'joint', joint, does: 'open' })
      // A caliper that is loose goes on its hook before anything else.
      for (const part of joint.joins)
        if (assembly.parts[part]!.kind === 'caliper') takeOff(assembly.parts[part]!)
    })
  }

  function reachFor(joint: JointNode): void {
    for (const access of joint.file.access ?? []) {
      const part = access.partOff && nodeNamed(assembly.parts, joint, access.partOff)
      if (part) takeOff(part)
      const other = access.jointOpen && nodeNamed(assembly.joints, joint, access.jointOpen)
      if (other) openJoint(other.id)
    }
    // The corner's own wheel, where it comes off at all, comes off first.
    for (const part of Object.values(assembly.parts))
      if (part.kind === 'wheel' && part.axle === joint.axle && choice.off.has(part.id))
        if (joint.side === null || part.side === joint.side)
          if (!jointsOf(assembly, part.id).some(({ id }) => id === joint.id)) takeOff(part)
  }

  const flexibleWays = (joint: Pick<JointNode, 'axle' | 'side'>) =>
    flexibleParts(assembly, joint).flatMap(({ freedBy }) =>
      freedBy.filter((set) => set.every((id) => choice.open.has(id) || choice.bench.has(id))).slice(0, 1),
    )

  function holdEnergy(hold: HoldNode): void {
    const standIn = choice.standIns[hold.id]
    if (!standIn) return
    const onBench = isStrutSpring(assembly, hold)
    if (onBench && standIn === 'spring compressor') takeOff(assembly.parts[hold.id]!)
    once(`hold ${hold.id}`, () => {
      const acts = energyActions(work, hold)
      switch (standIn) {
        case 'jack under the arm':
          push(acts.jackUnder(), { is: 'energy', hold, does: 'jack' })
          break
        case 'spring compressor':
          push(acts.compress(1), { is: 'energy', hold, does: 'compress' })
          break
        case 'axle on stands': {
          const holds = Object.values(assembly.holds).filter(
            (one) => one.axle === hold.axle && choice.standIns[one.id] === standIn,
          )
          once(`axle ${hold.axle}`, () =>
            push(axleOnStands(work, hold.axle, holds).on(), { is: 'axle', axle: hold.axle, holds }),
          )
          break
        }
        case 'torsion bar unwound':
          for (const joint of Object.values(assembly.joints))
            if (joint.kind === 'anchor bolt' && joint.axle === hold.axle && joint.side === hold.side)
              mark(joint)
          push(acts.unwind(), { is: 'energy', hold, does: 'unwind' })
          break
        case 'air let out':
          push(acts.deflate(), { is: 'energy', hold, does: 'deflate' })
          break
      }
    })
  }

  /** Down with the jack: everything that holds the arm up is open by then; the spring comes out. */
  function letDown(hold: HoldNode, then: 'take it out' | 'leave it in' = 'take it out'): void {
    if (!choice.letDown.has(hold.id)) return
    holdEnergy(hold)
    if (choice.standIns[hold.id] !== 'jack under the arm') return
    once(`let down ${hold.id}`, () => {
      for (const id of hold.joints) if (choice.open.has(id) && !hold.jackPath.includes(id)) openJoint(id)
      for (const id of dropLinkJoints(assembly, hold)) if (choice.open.has(id)) openJoint(id)
      for (const set of flexibleWays(hold)) for (const id of set) openJoint(id)
      const shaft = shaftFreedBy(work, hold)
      if (shaft) openJoint(shaft)
      push(energyActions(work, hold).letDown(), { is: 'energy', hold, does: 'let down' })
    })
    if (hold.loose && then === 'take it out') takeOff(assembly.parts[hold.id]!)
  }

  function takeOff(part: PartNode): void {
    if (!choice.off.has(part.id)) return
    once(`off ${part.id}`, () => {
      const piece = pieceOf(assembly, choice, part.id).map((id) => assembly.parts[id]!)
      for (const one of piece) done.add(`off ${one.id}`)
      const hold = assembly.holds[part.id]
      if (hold?.loose && !isStrutSpring(assembly, hold)) letDown(hold)
      for (const one of piece)
        for (const joint of shaftLast(assembly, jointsOf(assembly, one.id)))
          if (choice.open.has(joint.id)) openJoint(joint.id)
      for (const one of piece)
        for (const { joins } of jointsOf(assembly, one.id))
          for (const other of joins)
            if (comesOutFirst(assembly.holds[other]) && !piece.some(({ id }) => id === other))
              takeOff(assembly.parts[other]!)
      // What the piece would otherwise hang on: a caliper on its hook first.
      for (const one of piece)
        for (const joint of jointsOf(assembly, one.id))
          for (const other of joint.joins)
            if (assembly.parts[other]!.kind === 'caliper' && !piece.some(({ id }) => id === other))
              takeOff(assembly.parts[other]!)
      // The part that was asked for gives the piece its name; else the strut that its spring is in.
      const main =
        piece.find(({ id }) => work.renewed.has(id)) ?? piece.find(({ kind }) => kind === 'strut') ?? part
      push(partActions(work, main).takeOff(piece), { is: 'part', part: main, piece })
      for (const one of piece)
        for (const joint of jointsOf(assembly, one.id)) if (choice.bench.has(joint.id)) openJoint(joint.id)
      const captured = piece
        .map((one) => assembly.holds[one.id])
        .find((one) => one && choice.standIns[one.id] === 'spring compressor' && choice.letDown.has(one.id))
      // A spring that keeps one of its seats stays in the compressor meanwhile.
      const isOut =
        captured &&
        jointsOf(assembly, captured.id)
          .filter(({ kind }) => kind === 'seat')
          .every(({ id }) => choice.open.has(id) || choice.bench.has(id))
      if (captured && isOut && done.has(`hold ${captured.id}`)) {
        push(energyActions(work, captured).release(1), { is: 'energy', hold: captured, does: 'swap' })
      }
    })
  }

  const rank = (id: string) => {
    const joint = assembly.joints[id]
    const node = joint ?? assembly.parts[id]!
    const side = node.side === null ? sides.length : sides.indexOf(node.side)
    const kinds = (joint?.joins ?? [id]).map((part) => assembly.parts[part]!.kind)
    const order = [
      kinds.includes('wheel'),
      kinds.some((kind) => early.includes(kind)),
      kinds.includes('drop link'),
      !kinds.includes('steering shaft'),
      true,
    ].indexOf(true)
    return order * 10 + side
  }
  const wheels = [...choice.off].filter((id) => assembly.parts[id]!.kind === 'wheel')
  for (const id of ranked(wheels, rank)) takeOff(assembly.parts[id]!)
  // One side's spring is down before the other side's is touched: one jack serves both.
  const sideOf = (id: string) => (assembly.joints[id] ?? assembly.holds[id])!.side
  for (const id of ranked(choice.open, rank)) if (rank(id) < 30) openJoint(id)
  for (const side of [...sides, null]) {
    for (const id of ranked(choice.open, rank)) if (sideOf(id) === side && rank(id) < 40) openJoint(id)
    for (const id of choice.letDown) if (sideOf(id) === side) letDown(assembly.holds[id]!)
  }
  for (const id of ranked(choice.open, rank)) openJoint(id)
  for (const id of ranked(choice.off, rank)) takeOff(assembly.parts[id]!)
  for (const id of choice.bench) openJoint(id)
  return steps
}

const ranked = (ids: Iterable<string>, rank: (id: string) => number) =>
  [...ids]
    .map((id, i) => ({ id, i }))
    .sort((a, b) => rank(a.id) - rank(b.id) || a.i - b.i)
    .map(({ id }) => id)

/** A loose spring leaves what it stands on, a torsion bar the arm it sits in, before that comes off. */
const comesOutFirst = (hold: HoldNode | undefined) => hold?.loose || hold?.stores === 'torsion bar'

/** The steering shaft is parted last, so that the steering wheel still turns the rack until then. */
function shaftLast({ parts }: Work['assembly'], joints: readonly JointNode[]): readonly JointNode[] {
  const isShaft = ({ joins }: JointNode) => joins.some((part) => parts[part]!.kind === 'steering shaft')
  return [...joints.filter((joint) => !isShaft(joint)), ...joints.filter(isShaft)]
}
