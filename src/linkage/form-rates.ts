import type { RowFacts, Rows } from './constraint-rows.ts'
import { bodyAt, lengthAt, strutTopAt } from './numeric-form.ts'

/**
 * How fast the five constraint errors grow when the numbers of the form grow at `rate`, the knuckle held.
 *
 *     link:  d · (R δq − δb) / L − δL
 *     strut: δT · N − (R δq) · N − (present / design length) (δtop − δq) · n
 *
 * Exact where the constraints hold.
 *
 * @source own derivation: docs/methods/pose-of-a-corner.md
 */
export function formRates(facts: RowFacts, rows: Rows, rate: Float64Array, out: Float64Array): void {
  const { turn, along, acrossKnuckle, strutRatio } = rows
  const legs = facts.strut ? 3 : 5
  for (let i = 0; i < 5; i++) {
    const place = 3 * (i < legs ? i : 3)
    const x = rate[place]!
    const y = rate[place + 1]!
    const z = rate[place + 2]!
    const kx = turn[0]! * x + turn[1]! * y + turn[2]! * z - rate[bodyAt + place]!
    const ky = turn[3]! * x + turn[4]! * y + turn[5]! * z - rate[bodyAt + place + 1]!
    const kz = turn[6]! * x + turn[7]! * y + turn[8]! * z - rate[bodyAt + place + 2]!
    const across = along[3 * i]! * kx + along[3 * i + 1]! * ky + along[3 * i + 2]! * kz
    if (i < legs) out[i] = across - rate[lengthAt + i]!
    else {
      const n = 3 * (i - 3)
      const tilt =
        acrossKnuckle[n]! * (rate[strutTopAt]! - x) +
        acrossKnuckle[n + 1]! * (rate[strutTopAt + 1]! - y) +
        acrossKnuckle[n + 2]! * (rate[strutTopAt + 2]! - z)
      out[i] = -across - strutRatio * tilt
    }
  }
}
