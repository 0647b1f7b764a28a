import { checkJoint, type Joint } from '../fasten/index.ts'
import { torqueWrenchesOf } from '../kit/index.ts'
import type { Action, Assembly, JointNode } from '../plan/index.ts'
import { formatTorque, type NewtonMetre, Nm, Refusal } from '../quantity/index.ts'
import { tighteningJoint } from '../spec/index.ts'
import { nextTorque } from './next-torque.ts'
import { cornerAt, type SheetSources } from './sources.ts'
import { wrenchFor } from './wrench-for.ts'

interface Uncovered {
  readonly called: string
  readonly torque: NewtonMetre
  /** Why the kit's wrenches will not do. */
  readonly lacks: 'too weak' | 'too coarse' | string
}

/**
 * Joints of a plan whose value no torque wrench of the kit covers, grouped by what would have to be borrowed. Where the
 * kit has no wrench at all the plan itself tells it; a joint without a value has none to cover.
 *
 * @param actions of the plan
 * @source own derivation: docs/methods/wrench-adapter.md
 */
export function planWrenches(
  assembly: Assembly,
  actions: readonly Action[],
  sources: SheetSources,
): readonly string[] {
  const { kit, job } = sources
  if (!kit || Object.keys(kit.wrenches ?? {}).length === 0) return []
  const today = job.entries.findLast(({ at }) => at)?.at?.slice(0, 10) ?? '0001-01-01'
  const finals = new Set(actions.flatMap(({ verb, joint }) => (verb === 'final' && joint ? [joint] : [])))
  const scales = Object.values(torqueWrenchesOf(kit)).map(({ scale }) => scale)
  const uncovered = [...finals].flatMap((id): readonly Uncovered[] => {
    const node = assembly.joints[id]!
    const joint = soundJoint(sources, node)
    const stated = joint && nextTorque(joint, 0)
    if (!joint || !stated) return []
    const found = wrenchFor({ kit, joint, stated, rod: node.kind === 'thread and lock nut', today })
    if (!('whyNot' in found)) return []
    const top = stated.ceiling ?? stated.torque
    const torque = scales.every(({ high }) => high < top) ? top : (stated.floor ?? stated.torque)
    return [{ called: node.called, torque, lacks: lackOf(scales, top, torque, found.whyNot) }]
  })
  return [...new Set(uncovered.map(({ lacks }) => lacks))].map((lacks) =>
    told(
      lacks,
      uncovered.filter((one) => one.lacks === lacks),
    ),
  )
}

/** What the sheet says of a joint; null where it says nothing, or what the fasten room refuses. */
function soundJoint(sources: SheetSources, { axle, name }: JointNode): Joint | null {
  const corner = cornerAt(sources, axle)
  const tightening = sources.spec?.tightening?.[axle]?.[name]
  if (!corner || !tightening) return null
  const joint = tighteningJoint(corner, name, tightening)
  try {
    checkJoint(joint)
    return joint
  } catch (refusal) {
    if (refusal instanceof Refusal) return null
    throw refusal
  }
}

function lackOf(
  scales: readonly { readonly low: NewtonMetre; readonly high: NewtonMetre }[],
  top: NewtonMetre,
  torque: NewtonMetre,
  whyNot: readonly string[],
): Uncovered['lacks'] {
  if (scales.every(({ high }) => high < top)) return 'too weak'
  if (scales.every(({ low }) => low > torque)) return 'too coarse'
  return whyNot[0]!
}

function told(lacks: Uncovered['lacks'], joints: readonly Uncovered[]): string {
  const said = (value: number) => formatTorque(Nm(value), { unit: 'N·m', digits: 0 })
  const names = joints.map(({ called, torque }) => `${called} (${said(torque)})`).join(', ')
  const torques = joints.map(({ torque }) => torque)
  const head = `No torque wrench of the kit covers: ${names}.`
  if (lacks === 'too weak')
    return `${head} Borrow a wrench that reaches ${said(Math.max(...torques))} before the vehicle is lifted.`
  if (lacks === 'too coarse')
    return `${head} Borrow a wrench that goes down to ${said(Math.min(...torques))} before the vehicle is lifted.`
  return `${head} ${lacks} See to it, or borrow one, before the vehicle is lifted.`
}
