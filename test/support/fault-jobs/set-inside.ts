import { settingAt, strokeOf } from '../../../src/adjust/index.ts'
import type { ReadingName } from '../../../src/linkage/index.ts'
import { bounded } from './bounded.ts'
import type { Chance } from './chance.ts'
import { type AxleState, sides, type TrueAxle, wheelsInBody } from './true-axle.ts'
import { halfRange, inRange, type Knob, knobsOf, middleOf, settingOf, withSettings } from './turn-knobs.ts'

/** What a sheet asks of an angle. */
export interface Target {
  readonly middle: number
  readonly within: number
}

/**
 * What a person does who sets an axle by the sheet, as far as its adjusters go: near the preferred values, with no more
 * turning than is needed.
 *
 * @param travel where it stands
 */
export function setInside(
  axle: TrueAxle,
  state: AxleState,
  {
    targets,
    travel,
    luck,
  }: {
    readonly targets: Readonly<Partial<Record<ReadingName, Target>>>
    readonly travel: { readonly left: number; readonly right: number }
    readonly luck: Chance
  },
): AxleState {
  const { end } = axle
  const wanted = sides.flatMap((side) =>
    (['camber', 'caster', 'toe'] as const).flatMap((angle) => {
      const target = targets[`${end} ${side} ${angle}`]
      if (!target) return []
      const middle = target.middle + (target.within / 3) * luck.normal(1)
      return [{ side, angle, middle, within: target.within }]
    }),
  )
  const misses = (at: AxleState): number[] => {
    const both = wheelsInBody(axle, at, { travel, steer: 0 })
    return wanted.map(({ side, angle, middle, within }) => ((both[side][angle] ?? middle) - middle) / within)
  }
  let now = state
  const free = (knob: Knob): boolean =>
    knob.adjuster.kind !== 'offset sleeve' && knob.adjuster.kind !== 'sub-frame shift'
  const knobs = knobsOf(axle)
  for (const knob of knobs.filter((one) => one.adjuster.kind === 'offset sleeve'))
    now = bestSleeve(now, knob, misses)
  const turned = knobs.filter(free)
  const scale = turned.map(strokeRange)
  const start = turned.map((knob) => strokeOf(knob.adjuster, settingOf(now, knob)))
  const at = (strokes: readonly number[]): AxleState =>
    withSettings(
      now,
      turned,
      turned.map((knob, i) => inRange(knob, settingAt(knob.adjuster, strokes[i]! * scale[i]!.half))),
    )
  let x = start.map((stroke, i) => stroke / scale[i]!.half)
  for (let round = 0; round < 3; round++) {
    const here = misses(at(x))
    const step = 0.01
    const columns = x.map((xi, k) => {
      const by = xi + step > scale[k]!.high ? -step : step
      const there = misses(at(x.map((other, j) => (j === k ? other + by : other))))
      return there.map((miss, i) => (miss - here[i]!) / by)
    })
    const linear = here.map((miss, i) => -miss + columns.reduce((sum, c, k) => sum + c[i]! * x[k]!, 0))
    x = bounded({
      columns,
      want: linear,
      low: scale.map((s) => s.low),
      high: scale.map((s) => s.high),
      ridge: 0.02,
    })
  }
  return at(x)
}

/** Ends of an adjuster's stroke as shares of half of it. */
function strokeRange(knob: Knob): { half: number; low: number; high: number } {
  const a = strokeOf(knob.adjuster, knob.adjuster.range[0])
  const b = strokeOf(knob.adjuster, knob.adjuster.range[1])
  const half = Math.abs(b - a) / 2
  return { half, low: Math.min(a, b) / half, high: Math.max(a, b) / half }
}

function bestSleeve(state: AxleState, knob: Knob, misses: (at: AxleState) => number[]): AxleState {
  let best = { cost: Number.POSITIVE_INFINITY, state }
  for (let k = -12; k < 12; k++) {
    const there = withSettings(state, [knob], [(k * Math.PI) / 12])
    const cost = misses(there).reduce((sum, miss) => sum + Math.min(miss * miss, 25), 0)
    if (cost < best.cost) best = { cost, state: there }
  }
  return best.state
}

/** Somewhere in the given share of half its range, for adjusters that nobody ever set. */
export function setAnywhere(axle: TrueAxle, state: AxleState, share: number, luck: Chance): AxleState {
  const knobs = knobsOf(axle).filter(({ adjuster }) => adjuster.kind !== 'sub-frame shift')
  return withSettings(
    state,
    knobs,
    knobs.map((knob) => inRange(knob, middleOf(knob) + share * halfRange(knob) * luck.between(-1, 1))),
  )
}
