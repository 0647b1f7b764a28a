// Invented fleets whose slopes are drawn level by level, sharing no code with what learns from them; for tests only.
import type { PastResponse, WheelSetup } from '../../../src/adjust/index.ts'
import { type SeededRandom, seededRandom } from '../../../src/measure/index.ts'
import { wheel } from './axle-problem.ts'

/** Shares of the variance: layout, model, vehicle, visit. */
export type Shares = readonly [number, number, number, number]

/** Where the roles stand among the adjusters of the drawn wheel. */
const roles = [
  'eccentric: upperFrontInner, across',
  'eccentric: upperRearInner, across',
  'thread: tie',
] as const
export const drawn: WheelSetup = wheel()
export const layout = 'double wishbone, typical'

/** Shares drawn evenly from all that add to 1, a fiftieth kept for the visit. */
function anyShares(random: SeededRandom): Shares {
  const [a, b] = [random(), random()].sort((p, q) => p - q)
  return [a! * 0.98, (b! - a!) * 0.98, (1 - b!) * 0.98, 0.02]
}

/** A fleet of one layout: what it is asked for is drawn once and stays. */
export function fleet(seed: number, shares?: Shares) {
  const random = seededRandom(seed)
  const split = shares ?? anyShares(random)
  const drawnOnce = new Map<string, readonly number[]>()
  const below = (name: string, above: readonly number[], variance: number) => {
    const made = drawnOnce.get(name) ?? above.map((x) => x + Math.sqrt(variance) * random.normal())
    drawnOnce.set(name, made)
    return made
  }
  /** Slopes of one visit, in standard deviations of the prior, one a role. */
  const visit = (model: string, vehicle: string, job: string) => {
    const all = below('', [0, 0, 0], split[0])
    const ofModel = below(model, all, split[1])
    const ofVehicle = below(`${model}/${vehicle}`, ofModel, split[2])
    return below(`${model}/${vehicle}/${job}`, ofVehicle, split[3])
  }
  /** What a job notes of camber: some moves, read with an error a tenth of what the prior leaves open. */
  const job = (model: string, vehicle: string, name: string, off = 0): PastResponse => {
    const z = visit(model, vehicle, name)
    const error = 1e-3
    const moves = Array.from({ length: 1 + Math.floor(3 * random()) }, () => {
      const weights = roles.map(() => (random() < 0.6 ? 20 * error * (random() - 0.5) : 0))
      const seen = weights.reduce((sum, w, j) => sum + w * (z[j]! + off), 0) + error * random.normal()
      return { side: 'left' as const, turned: ['one'], foreseen: 0.01, seen: 0.01 + seen, weights }
    })
    return {
      job: name,
      vehicle: `${model}/${vehicle}`,
      model,
      layout,
      when: null,
      angle: 'camber',
      roles,
      moves,
      noise: moves.flatMap((_, i) => moves.map((__, j) => (i === j ? error ** 2 : 0))),
    }
  }
  return { random, visit, job, split }
}
