import { seededRandom } from '../src/measure/index.ts'
import type { OrderProblem } from '../src/plan/index.ts'

/** What one invented action asks for. Both sides have the same actions. */
interface Action {
  readonly side: 0 | 1
  readonly station: number
  readonly tool: number
  readonly place: number
}

/** What a change costs, seconds: invented. */
const seconds = { station: 150, tool: 12, place: 8, side: 15 } as const

/**
 * Invented two-sided work of the kind a plan has: on the ground, hanging, on stands, at ride height, on the ground again; taking
 * apart and its mirror image, loosely ordered, each side by itself; the vehicle is lifted and lowered for both.
 *
 * @param actions on both sides together, a multiple of 4
 */
export function inventedWork({ actions, seed }: { actions: number; seed: number }): OrderProblem {
  const random = seededRandom(seed)
  const below = (n: number) => Math.floor(random() * n)
  const half = actions / 4
  const strip: Omit<Action, 'side'>[] = []
  const needs: (readonly [number, number])[] = []
  for (let k = 0; k < half; k++) {
    // A few on the ground, the more hanging, the last on stands under the arm.
    const station = k < half * 0.2 ? 0 : k < half * 0.7 ? 1 : 2
    strip.push({ station, tool: below(6), place: below(3) })
    const known = new Set<number>()
    for (let n = 0; n < 2 && k > 0; n++) known.add(Math.max(0, k - 1 - below(4)))
    for (const a of known) needs.push([a, k])
  }
  const all: Action[] = []
  const before: [number, number][] = []
  for (const side of [0, 1] as const) {
    const first = all.length
    for (const a of strip) all.push({ ...a, side })
    // Refit: the mirror image; what was done on the ground first is done at ride height last.
    for (const a of [...strip].reverse())
      all.push({
        ...a,
        side,
        station: a.station === 0 ? 3 : a.station,
        tool: a.station === 0 ? 6 + a.tool : a.tool,
      })
    for (const [a, b] of needs) {
      before.push([first + a, first + b])
      before.push([first + 2 * half - 1 - b, first + 2 * half - 1 - a])
    }
    // Nothing goes back before all that hangs on it is off.
    for (let k = 0; k < half; k++) before.push([first + k, first + 2 * half - 1 - k])
    before.push([first + half - 1, first + half])
  }
  const size = all.length
  const cost = new Float64Array(size * size)
  for (let i = 0; i < size; i++)
    for (let j = 0; j < size; j++) {
      const [a, b] = [all[i]!, all[j]!]
      if (a.station !== b.station) cost[i * size + j]! += seconds.station * Math.abs(a.station - b.station)
      if (a.tool !== b.tool) cost[i * size + j]! += seconds.tool
      if (a.place !== b.place) cost[i * size + j]! += seconds.place
      if (a.side !== b.side) cost[i * size + j]! += seconds.side
    }
  return { size, cost, start: all.map((a) => seconds.station * a.station), before }
}
