import { angleOrder } from './angles-at-strokes.ts'
import type { Axis } from './axis.ts'
import type { Judge } from './judge.ts'
import type { OnSteps } from './on-steps.ts'
import { rowChanges } from './row-changes.ts'
import type { SearchSpace } from './search-space.ts'
import { settingNoise } from './setting-noise.ts'

/** A random change that several readings share: a washer's slip, an uncertain response. */
export interface NamedNoise {
  readonly source: string
  /** One value per draw. */
  readonly draw: () => Float64Array
  /** Effect on each row per unit of it. */
  readonly effect: Float64Array
  /** Standard deviation of what was drawn. */
  readonly spread: number
}

/**
 * The errors that a set of moves adds: where each touched adjuster really ends, and what its response really
 * is. Effects are per row of the space.
 *
 * @source own derivation: docs/methods/moves.md
 */
export function moveNoises(space: SearchSpace, judge: Judge, made: OnSteps): NamedNoise[] {
  const count = space.axes.length
  const touched = space.axes.map((_, j) => j).filter((j) => made.settings[j] !== space.axes[j]!.base)
  if (touched.length === 0) return []
  const { slope } = rowChanges(space, made.strokes, new Float64Array(angleOrder.length * space.wheels.length))
  const noises: NamedNoise[] = []
  for (const j of touched) {
    const axis = space.axes[j]!
    const { draw, times, spread } = settingNoise(axis, made.settings[j]!, judge.axes[j]!)
    if (!(spread > 0)) continue
    const effect = new Float64Array(space.rows.length)
    for (let i = 0; i < effect.length; i++) effect[i] = times * slope[i * count + j]!
    noises.push({
      source: `setting of ${nameOf(axis, space)}`,
      draw,
      effect,
      spread: times === 0 ? 0 : spread / Math.abs(times),
    })
  }
  for (const [source, { root, units }] of judge.responses) {
    const perSlope = slopeEffects(space, source, root.length, made.strokes)
    units.forEach((drawn, c) => {
      const effect = new Float64Array(space.rows.length)
      for (let e = 0; e < perSlope.length; e++)
        for (let i = 0; i < effect.length; i++) effect[i]! += perSlope[e]![i]! * root[e]![c]!
      if (effect.some((x) => x !== 0))
        noises.push({ source: `response of ${source}, ${c + 1}`, draw: () => drawn, effect, spread: 1 })
    })
  }
  return noises
}

/** What one unit of each slope of a response does to each row: the strokes moved, with the row's signs. */
function slopeEffects(
  space: SearchSpace,
  source: string,
  slopes: number,
  strokes: Float64Array,
): Float64Array[] {
  const effects = Array.from({ length: slopes }, () => new Float64Array(space.rows.length))
  space.rows.forEach((row, i) => {
    for (const { wheel, angle, by } of row.terms) {
      const { response } = space.wheels[wheel]!
      if (response?.source !== source) continue
      const a = response.angles.indexOf(angleOrder[angle]!)
      if (a < 0) continue
      response.adjusters.forEach((id, column) => {
        const side = wheel % 2 === 0 ? 'left' : 'right'
        const j = space.axes.findIndex(
          (axis) => axis.axle === wheel >> 1 && axis.on === side && axis.adjuster.id === id,
        )
        if (j < 0) return
        effects[a * response.adjusters.length + column]![i]! += by * (strokes[j]! - space.axes[j]!.baseStroke)
      })
    }
  })
  return effects
}

const nameOf = (axis: Axis, space: SearchSpace) => `${space.ends[axis.axle]} ${axis.on} ${axis.adjuster.id}`
