import type { Kit } from '../kit/index.ts'
import { inMillimetres } from '../quantity/index.ts'
import type { Action } from './action.ts'
import type { Assembly } from './assembly.ts'
import { jacksAtOnce } from './jacks-at-once.ts'

/** A tool that a plan needs and the kit lacks. @source definition */
export interface MissingTool {
  readonly tool: string
  /** The actions it is for. */
  readonly actions: readonly string[]
  readonly remedy: 'borrow or buy' | 'measure the fastener, then look again'
  readonly sentence: string
}

const special: Readonly<Record<string, string>> = {
  separator: 'separator',
  puller: 'puller',
  'spring compressor': 'spring compressor',
  fork: 'fork',
}
const supportKinds: Readonly<Record<string, 'jack' | 'stand' | 'lift' | 'ramp'>> = {
  'trolley jack': 'jack',
  stands: 'stand',
  lift: 'lift',
  'ramps, pit or drive-on lift': 'ramp',
}

/**
 * The tools of a plan against what the workshop owns: sizes of spanner and socket that are missing, no torque wrench
 * at all, pullers and compressors to borrow, supports, a second jack.
 *
 * @param actions of a plan, in its order
 * @source common practice, no source
 */
export function toolsAgainstKit(
  assembly: Assembly,
  actions: readonly Action[],
  kit: Kit,
): readonly MissingTool[] {
  const uses = new Map<string, string[]>()
  for (const { tool, id } of actions) if (tool) uses.set(tool, [...(uses.get(tool) ?? []), id])
  const found: MissingTool[] = []
  const miss = (
    tool: string,
    ids: readonly string[],
    sentence: string,
    remedy: MissingTool['remedy'] = 'borrow or buy',
  ) => found.push({ tool, actions: ids, remedy, sentence })
  const owned = (sizes: readonly { readonly value: number }[] | undefined, size: number) =>
    (sizes ?? []).some(({ value }) => Math.abs(inMillimetres(value) - size) < 0.05)
  const pullers = Object.values(kit.pullers ?? {}).map(({ kind }) => kind as string)
  const supports = Object.values(kit.supports ?? {}).map(({ kind }) => kind)
  const hasWrench = Object.keys(kit.wrenches ?? {}).length > 0

  for (const [tool, ids] of uses) {
    const size = sizeOf(tool)
    if (tool.startsWith('torque wrench')) {
      if (!hasWrench) miss(tool, ids, 'The kit has no torque wrench: nothing can be made final.')
      else if (size !== null && !owned(kit.sockets, size) && !owned(kit.spanners, size))
        miss(tool, ids, `No socket of ${size} mm: the torque wrench does not reach the fastener.`)
    } else if (size !== null) {
      if (!owned(kit.spanners, size) && !owned(kit.sockets, size))
        miss(tool, ids, `No spanner or socket of ${size} mm.`)
    } else if (special[tool] && !pullers.includes(special[tool]))
      miss(tool, ids, `The kit has no ${tool}: borrow one before the vehicle is lifted.`)
    else if (supportKinds[tool] && !hasSupport(supports, supportKinds[tool]))
      miss(tool, ids, `The kit has nothing for “${tool}”.`)
    else if (
      /^(press|drift|torsion bar tool|tail support|lever|clamp|strap|gripping socket|impact wrench|extractor|nut splitter|blow torch|drill|saw|hammer|stud puller)$/.test(
        tool,
      )
    )
      miss(tool, ids, `The kit lists no ${tool}.`)
  }
  const unknown = actions.filter(({ tool, joint, verb }) => {
    const file = joint === undefined ? undefined : assembly.joints[joint]?.file
    return verb === 'open' && tool?.startsWith('spanner') && file !== undefined && file.spanner === undefined
  })
  if (unknown.length > 0)
    miss(
      'spanner of unknown size',
      unknown.map(({ id }) => id),
      `The corner model has no spanner size for ${unknown.length} of the joints.`,
      'measure the fastener, then look again',
    )
  const jacks = supports.filter((kind) => kind === 'jack').length
  const needed = jacksAtOnce(actions)
  if (jacks > 0 && needed > jacks)
    miss('another jack', [], `${needed} jacks are in use at the same time, and the kit lists ${jacks}.`)
  return found
}

const hasSupport = (supports: readonly string[], kind: string) =>
  supports.includes(kind) || (kind === 'ramp' && supports.includes('lift'))

/** "spanner 24 mm" and "torque wrench, 24 mm" end with the size. */
function sizeOf(tool: string): number | null {
  const size = /([\d.]+) mm$/.exec(tool)
  return size ? Number(size[1]) : null
}
