import type { Point } from '../linkage/index.ts'
import { Refusal } from '../quantity/index.ts'
import type { Adjuster, AdjustRefusal } from './adjuster.ts'

/** A unit vector may miss its length by rounding in a file; four digits are enough for a direction. */
const unitSlack = 1e-4
const quarter = Math.PI / 2

/**
 * Makes sure that an adjuster's numbers can be worked with.
 *
 * @throws {Refusal} `bad-adjuster` for a number that is not finite, an empty range, a step or a throw that is not positive, a direction that is not of length 1, an eccentric beyond a quarter turn
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
      no(field, value, 'is not a positive length', 'Measure it on the part and give it with its unit.')
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
      if (!Number.isFinite(adjuster.markAt))
        no(
          'markAt',
          adjuster.markAt,
          'is not an angle',
          'Give the clock position of the mark in the middle of the slot.',
        )
      return
    case 'shims':
      direction('along', adjuster.along)
      if (adjuster.sizes.length === 0)
        no('sizes', 'none', 'is empty', 'List the thicknesses that can be had.')
      for (const size of adjuster.sizes) positive('sizes', size)
      if (adjuster.moves.length === 0)
        no('moves', 'none', 'is empty', 'Name the pivot points under which the shims stand.')
      return
    case 'thread':
      positive('pitch', adjuster.pitch)
      return
    case 'slotted bolt':
      positive('boltSpacing', adjuster.boltSpacing)
      direction('axis', adjuster.axis)
  }
}
