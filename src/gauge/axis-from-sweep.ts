import { solveSymmetric } from '../measure/index.ts'
import type { Radian } from '../quantity/index.ts'
import { gaugeRefusal } from './gauge-refusal.ts'
import type { SweepReading } from './observation.ts'

/**
 * The steering axis as side and front view, rad.
 *
 * @source definition
 */
export interface AxisAngles {
  readonly caster: Radian
  readonly sai: Radian
}

const LEAST_TURN = 0.05

/**
 * The axis about which a wheel was turned, from two or more places of the turn. Whatever is fixed to the knuckle
 * keeps its angle to the axis: the gauge across the wheel gives one equation per pair of places, the gauge along
 * it another; both are linear in the tangents. Three places or the second gauge are needed unless SAI is given.
 *
 *     tan c·(sin p·cos g) − tan K·(cos p·cos g) − sin g  is the same at every place     (left wheel, p to the left)
 *     tan c·(cos f·cos q) + tan K·(cos f·sin q) − sin f  is the same at every place     q = p + asin(tan g·tan f)
 *
 * @param side right wheels are computed as their mirror
 * @param sai held at this value instead of solved for, rad
 * @throws {Refusal} `too-few`; `no-sweep` when too little was turned to tell
 * @source rigid rotation about the steering axis; method subject of SAE Technical Paper 850219; own derivation: docs/methods/steer-sweep.md
 */
export function axisFromSweep(
  places: readonly SweepReading[],
  { side, sai }: { readonly side: 'left' | 'right'; readonly sai?: number },
): AxisAngles {
  const rows = invariants(places, side === 'left' ? 1 : -1)
  const unknowns = sai === undefined ? 2 : 1
  if (rows.length < unknowns)
    throw gaugeRefusal(
      'too-few',
      'places',
      places.length,
      'One camber reading to each side tells caster only when SAI is known.',
      'Read the gauge along the wheel too, or straight ahead as well.',
    )
  const held = sai === undefined ? undefined : Math.tan(sai)
  const used = rows.map(([a, b, c]) => (held === undefined ? [a, b, c] : [a, 0, c - b * held]))
  const sum = (i: number, j: number) => used.reduce((total, row) => total + row[i]! * row[j]!, 0)
  if (sum(0, 0) < LEAST_TURN ** 2)
    throw gaugeRefusal(
      'no-sweep',
      'steer',
      places.map(({ steer }) => steer).join(', '),
      'The wheel was hardly turned between the readings, so they say nothing about its axis.',
      'Turn to both sides, ten to twenty degrees.',
    )
  if (held !== undefined) return { caster: Math.atan(sum(0, 2) / sum(0, 0)) as Radian, sai: sai as Radian }
  const [c, k] = solveSymmetric(
    [
      [sum(0, 0), sum(0, 1)],
      [sum(1, 0), sum(1, 1)],
    ],
    [sum(0, 2), sum(1, 2)],
  )
  return { caster: Math.atan(c!) as Radian, sai: Math.atan(k!) as Radian }
}

type Row = readonly [caster: number, sai: number, right: number]

/** Equations a·tan c + b·tan K = r, each place against the first. */
function invariants(places: readonly SweepReading[], mirror: 1 | -1): Row[] {
  const across: Row[] = []
  const along: Row[] = []
  for (const { steer, camber: g, tilt: f } of places) {
    const p = mirror * steer
    across.push([Math.sin(p) * Math.cos(g), -Math.cos(p) * Math.cos(g), Math.sin(g)])
    if (f === undefined) continue
    const q = p + Math.asin(Math.tan(g) * Math.tan(f))
    along.push([Math.cos(f) * Math.cos(q), Math.cos(f) * Math.sin(q), Math.sin(f)])
  }
  return [across, along].flatMap((rows) =>
    rows.slice(1).map((row): Row => [row[0] - rows[0]![0], row[1] - rows[0]![1], row[2] - rows[0]![2]]),
  )
}
