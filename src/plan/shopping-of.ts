import { failureRungs } from './failure-rungs.ts'
import { hasPin } from './has-pin.ts'
import { jointHabits } from './joint-habits.ts'
import type { Shopping } from './shopping.ts'
import type { Work } from './work.ts'

/**
 * What must be there before the vehicle is lifted: the parts, the fasteners and pins that are used once, what closing
 * uses up.
 *
 * @param alsoSet joints that are only loosened to set an adjuster
 * @source common practice, no source
 */
export function shoppingOf(work: Work, alsoSet: readonly string[] = []): Shopping {
  const { joints, parts } = work.assembly
  const touched = [...new Set([...work.open, ...work.bench, ...alsoSet])].map((id) => joints[id]!)
  const failed = new Set(
    work.branches.flatMap(({ fastener, joint }) => (fastener && joint ? [joint.id] : [])),
  )
  const singleUse = touched.flatMap((joint) => {
    const { file, called, kind } = joint
    const many = file.count !== undefined && file.count > 1 ? `${file.count} × ` : ''
    const thread = file.thread ? `, ${file.thread}` : ''
    const found: string[] = []
    if (file.reuse === 'new' && jointHabits[kind].threaded && !failed.has(joint.id))
      found.push(`${many}fastener of the ${called}${thread}`)
    if (hasPin(joint)) found.push(`${many}pin of the ${called}`)
    return found
  })
  const lines = touched.filter(({ kind }) => kind === 'hydraulic union')
  const fluids = [
    ...new Set(
      lines.flatMap(({ joins }) =>
        joins.map((part) => {
          const { file } = parts[part]!
          return file.kind === 'hose' ? (file.carries ?? 'brake fluid') : null
        }),
      ),
    ),
  ].filter((fluid) => fluid !== null)
  const used = work.branches.flatMap(({ rung }) => (rung ? failureRungs[rung].consumables : []))
  const consumables = [
    ...new Set([...touched.flatMap(({ file }) => file.consumables ?? []), ...fluids, ...used]),
  ]
  return {
    parts: [...[...work.renewed].map((id) => parts[id]!.called), ...lostWithIt(work)],
    singleUse,
    consumables,
  }
}

/** What a failure costs besides whole parts: bolt and nut, the bush they were sawn out with, the stud of a wheel. */
function lostWithIt({ branches, renewed }: Work): readonly string[] {
  const found = branches.flatMap(({ joint, fastener, mended }) => {
    if (!joint) return []
    const { called, file } = joint
    const lost: string[] = []
    if (mended && !renewed.has(mended.part)) lost.push(`${mended.what} of the ${called}`)
    if (fastener) lost.push(`bolt or stud, and nut, of the ${called}${file.thread ? `, ${file.thread}` : ''}`)
    if (fastener && joint.kind === 'eccentric bolt') lost.push(`eccentric washers of the ${called}`)
    return lost
  })
  return [...new Set(found)]
}
