import type { Action } from './action.ts'
import type { JointNode, PartNode } from './assembly.ts'
import { axleOnStands } from './axle-on-stands.ts'
import { closingActions } from './closing-actions.ts'
import { energyActions } from './energy-actions.ts'
import { hasPin } from './has-pin.ts'
import { jointHabits } from './joint-habits.ts'
import { jointsOf } from './joints-of.ts'
import { keys } from './keys.ts'
import { mendingActions } from './mending-actions.ts'
import { partActions } from './part-actions.ts'
import { startedTogether } from './started-together.ts'
import { steeringTurner } from './steering-turner.ts'
import type { StripStep } from './strip-actions.ts'
import type { Work } from './work.ts'

/** What follows on the strip, while the vehicle is still lifted. @source definition */
export interface Refit {
  readonly actions: readonly Action[]
  /** Joints that are not final yet: at ride height, on the ground, after the last move. */
  readonly later: readonly JointNode[]
}

/**
 * The refit: the strip walked back, each step reversed; joints that may be final in any position are made final at
 * once, with pin and second look.
 *
 * @source own derivation: docs/methods/plan.md
 */
export function refitActions(work: Work, strip: readonly StripStep[]): Refit {
  const { assembly } = work
  const actions: Action[] = []
  const later: JointNode[] = []
  const compared = new Set<string>()
  const fitted = new Set<string>()
  const started = new Set<string>()
  const mended = new Set<string>()
  const turned = strip.flatMap(({ of }) => (of.is === 'steer' ? [of.to] : []))
  const steering = steeringTurner(assembly.axles, 'refit', (action) => actions.push(action), turned.at(-1))
  const compare = (part: PartNode) => {
    if (!work.renewed.has(part.id) || compared.has(part.id)) return
    compared.add(part.id)
    actions.push(partActions(work, part).compareBeside())
  }

  function start(joint: JointNode): void {
    if (started.has(joint.id)) return
    started.add(joint.id)
    mend(joint)
    steering.for(joint)
    actions.push(closingActions(work, joint).start())
  }

  /** What failed is mended before its part goes back, and before it is closed. */
  function mend(joint: JointNode): void {
    if (mended.has(joint.id)) return
    mended.add(joint.id)
    actions.push(...mendingActions(work, joint))
  }

  function close(joint: JointNode): void {
    mend(joint)
    const acts = closingActions(work, joint)
    const habit = jointHabits[joint.kind]
    const onBench = work.bench.has(joint.id)
    if (onBench) for (const id of joint.joins) compare(assembly.parts[id]!)
    for (const beside of startedTogether(work, joint)) start(beside)
    if (!onBench) steering.for(joint)
    actions.push(acts.close())
    const isHome =
      joint.final === 'any position' ||
      joint.final === 'wheels straight' ||
      (onBench && joint.final !== 'at ride height')
    // An anchor bolt winds the bar: it is final once the height is set.
    if (habit.threaded && (!isHome || joint.adjusts || joint.kind === 'anchor bolt')) {
      later.push(joint)
      return
    }
    if (joint.final === 'wheels straight' && habit.threaded) steering.to('straight')
    if (habit.threaded) actions.push(acts.final('on its wheels'))
    if (hasPin(joint)) actions.push(acts.pin())
    if (joint.red) actions.push(acts.check())
  }

  for (const { of } of [...strip].reverse()) {
    switch (of.is) {
      case 'joint':
        if (of.does === 'open') close(of.joint)
        break
      case 'part':
        for (const one of of.piece) compare(one)
        for (const one of of.piece) for (const joint of mendedBefore(work, one)) mend(joint)
        actions.push(onItsParts(work, partActions(work, of.part).fit(of.piece), of.piece, fitted))
        for (const { id } of of.piece) fitted.add(id)
        break
      case 'energy': {
        const acts = energyActions(work, of.hold)
        if (of.does === 'swap') {
          compare(assembly.parts[of.hold.id]!)
          actions.push(acts.compress(2))
        } else if (of.does === 'let down') actions.push(acts.raise())
        else if (of.does === 'jack') actions.push(acts.jackAway())
        else if (of.does === 'compress') actions.push(acts.release(2))
        else if (of.does === 'unwind') actions.push(acts.wind())
        else actions.push(acts.letAirIn())
        break
      }
      case 'axle':
        actions.push(axleOnStands(work, of.axle, of.holds).off())
        break
      default:
        break
    }
  }
  steering.to('straight')
  return { actions, later }
}

/** A part goes back onto what is back already: not before it, to lie there loose. */
function onItsParts(
  { assembly, open, off }: Work,
  fit: Action,
  piece: readonly PartNode[],
  fitted: ReadonlySet<string>,
): Action {
  const inPiece = new Set(piece.map(({ id }) => id))
  const neighbours = new Set(
    piece
      .flatMap(({ id }) => jointsOf(assembly, id))
      .filter(({ id }) => open.has(id))
      .flatMap(({ joins }) => joins)
      .filter((part) => !inPiece.has(part) && off.has(part) && fitted.has(part)),
  )
  const needs = [...neighbours].map((part) => ({
    key: keys.part(part),
    is: ['fitted', 'new'],
    why: `it goes onto the ${assembly.parts[part]!.called}`,
  }))
  return { ...fit, needs: [...fit.needs, ...needs] }
}

/** The joints of a part, and those that were mended with it out of the way. */
const mendedBefore = ({ assembly, branches }: Work, { id }: PartNode): readonly JointNode[] => [
  ...jointsOf(assembly, id),
  ...branches.flatMap(({ joint, off }) => (joint && off.includes(id) ? [joint] : [])),
]
