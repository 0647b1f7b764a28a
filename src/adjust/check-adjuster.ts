import type { Point } from '../linkage/index.ts'
import { Refusal } from '../quantity/index.ts'
import type { Adjuster, AdjustRefusal } from './adjuster.ts'

/** A unit vector may miss its length by rounding in a file; four digits are enough for a direction. */
const unitSlack = 1e-4
const quarter = Math.PI / 2

/**
 * Makes sure that an adjuster's numbers can be worked with.
 *
 * @throws {Refusal} `bad-adjuster` for a number that is not finite, an empty range, a step or a size that is not positive, a direction that is not of length 1, a turn beyond what there is, nothing named that moves
 * @source definition
 */
export function checkAdjuster(adjuster: Adjuster): void {
  const no = (field: string, given: unknown, wrong: string, remedy: string): never => {
    throw new Refusal<AdjustRefusal>({
      code: 'bad-adjuster',
      at: `${adjuster.id}.${field}`,
      given: String(given),
      sentence: `The ${field} of "${adjuster.name}" ${wrong} (given: ${String(given)}).`,
      remedy,
    })
  }
  const [low, high] = adjuster.range
  if (!(Number.isFinite(low) && Number.isFinite(high) && low < high))
    no(
      'range',
      `${low} … ${high}`,
      'has no room between its ends',
      'Give the lowest and the highest setting.',
    )
  if (!(adjuster.step > 0 && Number.isFinite(adjuster.step)))
    no('step', adjuster.step, 'is not a positive amount', 'Give the smallest amount a hand can set.')
  if (!(adjuster.play >= 0 && Number.isFinite(adjuster.play)))
    no('play', adjuster.play, 'is below zero or not a number', 'Give 0 when it cannot move.')
  const positive = (field: string, value: number) => {
    if (!(value > 0 && Number.isFinite(value)))
      no(field, value, 'is not a positive size', 'Measure it on the part and give it with its unit.')
  }
  const direction = (field: string, v: Point) => {
    if (!(Math.abs(Math.hypot(v[0], v[1], v[2]) - 1) <= unitSlack))
      no(
        field,
        v.join(', '),
        'is not a direction of length 1',
        'Give a unit vector, such as 0, 1, 0 for outward.',
      )
  }
  const sizes = (list: readonly number[]) => {
    if (list.length === 0) no('sizes', 'none', 'is empty', 'List the sizes that can be had.')
    for (const size of list) positive('sizes', size)
  }
  const points = (names: readonly string[], remedy: string) => {
    if (names.length === 0) no('moves', 'none', 'is empty', remedy)
  }
  const mark = (at: number, remedy: string) => {
    if (!Number.isFinite(at)) no('markAt', at, 'is not an angle', remedy)
  }
  switch (adjuster.kind) {
    case 'eccentric':
      positive('throw', adjuster.throw)
      direction('along', adjuster.along)
      if (low < -quarter - 1e-9 || high > quarter + 1e-9)
        no(
          'range',
          `${low} … ${high} rad`,
          'goes beyond a quarter turn',
          'The far half of the washer repeats the same shifts: keep the range within −90° and 90°.',
        )
      mark(adjuster.markAt, 'Give the clock position of the mark in the middle of the slot.')
      return
    case 'shims':
      direction('along', adjuster.along)
      sizes(adjuster.sizes)
      points(adjuster.moves, 'Name the pivot points under which the shims stand.')
      return
    case 'thread':
      positive('pitch', adjuster.pitch)
      return
    case 'slotted bolt':
      positive('boltSpacing', adjuster.boltSpacing)
      direction('axis', adjuster.axis)
      return
    case 'slide':
      direction('along', adjuster.along)
      points(adjuster.moves, 'Name the pivot points that are slid.')
      return
    case 'top plate':
      direction('along', adjuster.along)
      return
    case 'offset sleeve':
      positive('tilt', adjuster.tilt)
      if (adjuster.tilt >= quarter)
        no('tilt', adjuster.tilt, 'is a right angle or more', 'Give the lean that is marked on the sleeve.')
      if (high - low > 4 * quarter + 1e-9)
        no(
          'range',
          `${low} … ${high} rad`,
          'is more than one turn',
          'Once round is all there is: keep the range within 360°.',
        )
      mark(adjuster.markAt, 'Give the clock position of the mark where the sleeve leans the wheel outward.')
      return
    case 'wedge':
      sizes(adjuster.sizes)
      if (Math.max(Math.abs(low), Math.abs(high)) >= quarter)
        no('range', `${low} … ${high} rad`, 'reaches a right angle', 'Give the largest wedge to either side.')
      return
    case 'sub-frame shift':
      points(adjuster.moves, 'Name the points of a corner that sit on the sub-frame.')
  }
}
