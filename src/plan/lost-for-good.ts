import { factOf } from './fact-of.ts'
import { jointStageOf } from './joint-stage-of.ts'
import { keys } from './keys.ts'
import { needsMark } from './needs-mark.ts'
import type { State } from './state.ts'
import { supports } from './supports.ts'
import type { Work } from './work.ts'

/**
 * What should have been done before something else and can no longer be done so, as sentences: marks of joints that
 * were disturbed, marks on a part that goes, heights of a vehicle that is apart, parts that were not compared before lifting.
 *
 * @source common practice, no source
 */
export function lostForGood({ assembly, renewed, open, bench }: Work, state: State): readonly string[] {
  const is = (key: string) => factOf(state, key)
  const touched = [...open, ...bench]
    .map((id) => assembly.joints[id]!)
    .filter(({ id }) => jointStageOf(is(keys.joint(id))) > 0)
  const marks = touched
    .filter((joint) => needsMark(joint) && is(keys.mark(joint.id)) === 'not recorded')
    .map(
      ({ called }) =>
        `The ${called} was disturbed before its mark was recorded: how it was found is lost. Set it by the sheet and read the angles.`,
    )
  const going = touched
    .filter((joint) => needsMark(joint) && is(keys.mark(joint.id)) === 'recorded')
    .filter((joint) => joint.joins.some((part) => renewed.has(part) && is(keys.part(part)) !== 'new'))
    .map(
      ({ called }) =>
        `The mark of the ${called} stands on a part that goes: carry it over to the new one by measure, or set it by the sheet.`,
    )
  const apart = touched.filter(({ id }) => jointStageOf(is(keys.joint(id))) > 1)
  const asks = [...open].some((id) => assembly.joints[id]!.final === 'at ride height')
  const heights =
    is(keys.heights) === 'not recorded' && apart.length > 0 && asks
      ? [
          'The heights were not recorded before joints were opened: bush bolts are made final at the height of the sheet.',
        ]
      : []
  const late = [...renewed]
    .map((id) => assembly.parts[id]!)
    .filter(({ id }) => is(keys.compared(id)) === 'not yet' && is(keys.part(id)) !== 'new')
    .filter(({ axle }) => axle && !(supports.onWheels as readonly string[]).includes(is(keys.support(axle))))
    .map(
      ({ called }) => `The new ${called} was not compared before lifting: compare it before more is undone.`,
    )
  const unseen = assembly.axles
    .filter((axle) => ['on a jack', 'on stands', 'on the lift'].includes(is(keys.support(axle))))
    .filter((axle) =>
      touched.some((joint) => joint.axle === axle && jointStageOf(is(keys.joint(joint.id))) > 2),
    )
    .map(
      (axle) =>
        `The ${axle} axle is ${is(keys.support(axle))} and nobody has seen it carried: that comes first, before any hand goes near.`,
    )
  return [...unseen, ...marks, ...going, ...heights, ...late]
}
