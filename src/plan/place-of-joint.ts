import type { Corner } from '../corner/index.ts'
import type { Place } from './assembly.ts'

/** A pivot this far below the wheel centre is reached from under the vehicle. */
const underBy = 0.03

/**
 * Where the hands are for a joint: a strut's or damper's top from above, a low pivot on body or sub-frame from
 * under, all else at the wheel.
 *
 * @source common practice, no source
 */
export function placeOfJoint(corner: Corner, joint: Corner['joints'][string]): Place {
  const kinds = joint.joins.map((part) => corner.parts[part]?.kind)
  const onBody = kinds.includes('body') || kinds.includes('sub-frame')
  if (!onBody) {
    if (kinds.includes('steering shaft')) return 'in the cabin'
    return kinds.includes('bar') ? 'under' : 'at the wheel'
  }
  const height = joint.at === undefined ? undefined : corner.points[joint.at]?.at[2]
  if (
    kinds.includes('top mount') ||
    (joint.kind === 'stud nuts' && (kinds.includes('strut') || kinds.includes('damper')))
  )
    return 'from above'
  if (kinds.some((kind) => kind === 'hose' || kind === 'lead')) return 'at the wheel'
  if (height === undefined) return 'under'
  return height < corner.wheel.loadedRadius - underBy ? 'under' : 'at the wheel'
}
