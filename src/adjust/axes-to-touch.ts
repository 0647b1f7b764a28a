import { angleOrder } from './angles-at-strokes.ts'
import { canBeTold } from './can-be-told.ts'
import { leastSure } from './candidate.ts'
import type { FewestTask } from './fewest-task.ts'
import { isToeRow } from './is-toe-row.ts'
import { isForToe } from './job-of.ts'

/**
 * The axes that may be touched at all. Toe is mended by toe adjusters where the wheel has one: an adjuster of
 * camber or caster is there for a reading of those that is not proven inside as it stands and can be brought
 * inside, never for toe alone. A rear adjuster is there for rear readings and the thrust line: front toe is brought to
 * that line in front, where there is something to do it with. What sets toe or centres the steering wheel is there for
 * a reading of toe that it moves: a drag link, which leaves total toe as it is, is not turned for that, nor for camber.
 *
 * @returns places of axes
 * @source common practice, no source (an adjuster is used for its own angle; toe follows; rear before front)
 */
export function axesToTouch({ space, judge, judged, offsets, threshold }: FewestTask): readonly number[] {
  const { axes, jobs, rows, ends, touches } = space
  const strokes = Float64Array.from(axes, (axis) => axis.baseStroke)
  const still = { settings: axes.map((axis) => axis.base), strokes, cost: 0 }
  const open = judged.filter((i) => leastSure(space, judge, still, { judged: [i], offsets }) < threshold)
  const leans = open.filter((i) => !isToeRow(rows[i]!.name))
  const behind = open.some((i) => rows[i]!.terms.every(({ wheel }) => ends[wheel >> 1] === 'rear'))
  const toeInFront = axes.some((axis, j) => ends[axis.axle] === 'front' && isForToe(jobs[j]!))
  return [...axes.keys()].filter((j) => {
    const axis = axes[j]!
    if (!canBeTold(axis)) return false
    if (ends[axis.axle] === 'rear' && toeInFront && !behind) return false
    const fellows = space.groups.filter((group) => group.axes.includes(j)).flatMap((group) => group.axes)
    const hasToeAdjuster = fellows.some((k) => isForToe(jobs[k]!))
    if (isForToe(jobs[j]!)) return judged.some((i) => isToeRow(rows[i]!.name) && movesToe(space, i, j))
    return !hasToeAdjuster || leans.some((i) => touches[i * axes.length + j])
  })
}

/** A toe adjuster is there for a row of toes that it moves by more than this share of what it does to a wheel. @source own choice */
const least = 1 / 3

function movesToe({ axes, rows, groups }: FewestTask['space'], i: number, j: number): boolean {
  const toe = angleOrder.indexOf('toe')
  let [most, sum] = [0, 0]
  for (const { wheel: first, inputs, signs, surface } of groups) {
    const k = inputs.indexOf(axes[j]!.input)
    if (k < 0) continue
    for (let a = toe; a < surface.value.length; a += angleOrder.length) {
      const slope = signs[k]! * surface.slope[a * inputs.length + k]!
      most = Math.max(most, Math.abs(slope))
      const wheel = first + (a - toe) / angleOrder.length
      for (const term of rows[i]!.terms)
        if (term.wheel === wheel && term.angle === toe) sum += term.by * slope
    }
  }
  return Math.abs(sum) > least * most
}
