import { Refusal } from '../quantity/index.ts'
import { checkFinite } from './check-points.ts'
import { turnOf } from './constraint-rows.ts'
import type { LinkageRefusal } from './linkage-refusal.ts'
import type { Point } from './points.ts'
import { solveLinear } from './solve-linear.ts'

/** A rigid body held by six distances from fixed points to points of its own. @source definition */
export interface SixDistances {
  readonly base: readonly Point[]
  readonly body: readonly Point[]
  readonly lengths: readonly number[]
}

/** Place of the body's origin and its attitude, unit quaternion w, x, y, z. @source definition */
export interface Placement {
  readonly origin: Point
  readonly turn: readonly [number, number, number, number]
}

/** A step this small, in largest lengths, leaves an error of its square. */
const settled = 1e-9

/**
 * The place of a rigid body that six distances give, by damped Newton from a place nearby. Such a body can have
 * up to forty real places; which one is found depends on the start.
 *
 * @throws {Refusal} `not-finite`; `bad-input` when there are not six; `singular`, `unreachable` when Newton comes to
 *   no place where the distances hold
 * @source own derivation: docs/methods/pose-of-a-corner.md
 */
export function rigidBodyFromDistances({ base, body, lengths }: SixDistances, start: Placement): Placement {
  checkFinite({ base, body, lengths, start }, '')
  if (base.length !== 6 || body.length !== 6 || lengths.length !== 6)
    throw no('bad-input', `${lengths.length} distances are given; a free body needs six.`)
  const state = Float64Array.of(...start.origin, ...start.turn)
  const norm = Math.hypot(...start.turn)
  for (let i = 3; i < 7; i++) state[i]! /= norm
  const turn = new Float64Array(9)
  const a = new Float64Array(36)
  const b = new Float64Array(6)
  const size = Math.max(...lengths)
  const look = (): number => {
    turnOf(state, turn)
    let cost = 0
    for (let i = 0; i < 6; i++) {
      const [x, y, z] = body[i]!
      const r = [0, 3, 6].map((k) => turn[k]! * x + turn[k + 1]! * y + turn[k + 2]! * z)
      const d = [0, 1, 2].map((k) => state[k]! + r[k]! - base[i]![k]!)
      const row = [
        d[0]!,
        d[1]!,
        d[2]!,
        r[1]! * d[2]! - r[2]! * d[1]!,
        r[2]! * d[0]! - r[0]! * d[2]!,
        r[0]! * d[1]! - r[1]! * d[0]!,
      ]
      a.set(row, 6 * i)
      b[i] = (lengths[i]! ** 2 - d[0]! ** 2 - d[1]! ** 2 - d[2]! ** 2) / 2
      cost += b[i]! ** 2
    }
    return cost
  }
  let cost = look()
  for (let round = 0; round < 100; round++) {
    if (solveLinear(a, b, 6) === 0) throw no('singular', 'The distances do not hold the body here.')
    const step = Math.hypot(b[0]!, b[1]!, b[2]!, size * b[3]!, size * b[4]!, size * b[5]!)
    const before = Float64Array.from(state)
    const full = Float64Array.from(b)
    let share = Math.min(1, size / step)
    for (;;) {
      state.set(before)
      advance(state, full, share)
      const next = look()
      if (next < cost || step < settled * size) {
        cost = next
        break
      }
      share /= 2
      if (share < 1e-9)
        throw no('unreachable', 'From this start no place is found where all six distances hold.')
    }
    if (step < settled * size) {
      const [x, y, z, w, i, j, k] = state as unknown as [
        number,
        number,
        number,
        number,
        number,
        number,
        number,
      ]
      return { origin: [x, y, z], turn: [w, i, j, k] }
    }
  }
  throw no('unreachable', 'From this start no place is found where all six distances hold.')
}

const no = (code: LinkageRefusal, sentence: string): Refusal<LinkageRefusal> =>
  new Refusal({ code, at: 'lengths', sentence, remedy: 'Check the six distances, or start nearer.' })

function advance(state: Float64Array, step: Float64Array, share: number): void {
  for (let i = 0; i < 3; i++) state[i]! += share * step[i]!
  const [x, y, z] = [0.5 * share * step[3]!, 0.5 * share * step[4]!, 0.5 * share * step[5]!]
  const [w, i, j, k] = [state[3]!, state[4]!, state[5]!, state[6]!]
  const q = [
    w - x * i - y * j - z * k,
    i + x * w + y * k - z * j,
    j + y * w + z * i - x * k,
    k + z * w + x * j - y * i,
  ]
  const norm = Math.hypot(...q)
  for (let n = 0; n < 4; n++) state[3 + n] = q[n]! / norm
}
