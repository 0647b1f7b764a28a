import { seededRandom } from '../measure/index.ts'
import type { Axis } from './axis.ts'
import { setByEye } from './set-by-eye.ts'
import { strokeMeant } from './stroke-meant.ts'

/** What one axis may do beside what it is told, drawn once. */
export interface AxisDraws {
  /** Play and half a step together, in the unit of the setting, one per draw. */
  readonly slip: Float64Array
  readonly slipSpread: number
  /** 0 … 1: where in its range an axis of unknown setting may stand. */
  readonly place: Float64Array
}

/** An error of a stroke: how to draw it, how much of the draws, and their standard deviation, m. */
export interface StrokeNoise {
  readonly draw: () => Float64Array
  readonly times: number
  readonly spread: number
}

/**
 * Draws what an axis may do beside what it is told: its play when it is tightened and half a step where it
 * is set by eye, both rectangular.
 *
 * @source own derivation: docs/methods/moves.md
 */
export function axisDraws(
  axis: Axis,
  { draws, seed }: { readonly draws: number; readonly seed: number },
): AxisDraws {
  const random = seededRandom(seed)
  const { play } = axis.adjuster
  const half = setByEye(axis.adjuster)
  const slip = new Float64Array(draws)
  if (play > 0 || half > 0)
    for (let k = 0; k < draws; k++) slip[k] = play * (2 * random() - 1) + half * (2 * random() - 1)
  const place = new Float64Array(axis.known ? 0 : draws)
  for (let k = 0; k < place.length; k++) place[k] = random()
  return { slip, slipSpread: Math.sqrt((play ** 2 + half ** 2) / 3), place }
}

/**
 * How far off the expected stroke a touched adjuster ends: its slip, and, where an eccentric's present
 * setting is not known, what the same turn would have done from any other place in its range.
 *
 * @param setting where it is set to
 * @source own derivation: docs/methods/moves.md
 */
export function settingNoise(
  axis: Axis,
  setting: number,
  { slip, slipSpread, place }: AxisDraws,
): StrokeNoise {
  const { adjuster } = axis
  const rate = strokeRate(axis, setting)
  if (axis.known || adjuster.kind !== 'eccentric')
    return { draw: () => slip, times: rate, spread: Math.abs(rate) * slipSpread }
  const [low, high] = adjuster.range
  const turned = setting - axis.base
  const a = Math.max(low, low - turned)
  const b = Math.min(high, high - turned)
  const meant = strokeMeant(axis, setting) - axis.baseStroke
  // the same turn moves the point by 2 · throw · sin(Δ/2) · cos(place + Δ/2)
  const chord = 2 * adjuster.throw * Math.sin(turned / 2)
  const done = chord ** 2 * meanSquareCosine(a + turned / 2, b + turned / 2) - meant ** 2
  const slipped = (adjuster.throw * slipSpread) ** 2 * meanSquareCosine(a + turned, b + turned)
  const sign = adjuster.fitted === 'turned round' ? -1 : 1
  let drawn: Float64Array | null = null
  const draw = () => {
    if (drawn) return drawn
    drawn = new Float64Array(place.length)
    for (let k = 0; k < drawn.length; k++) {
      const from = a + (b - a) * place[k]!
      const moved = chord * Math.cos(from + turned / 2)
      drawn[k] = sign * (moved + adjuster.throw * Math.cos(from + turned) * slip[k]!) - meant
    }
    return drawn
  }
  return {
    draw,
    times: 1,
    spread: Math.sqrt(Math.max(0, done) + slipped),
  }
}

/** Mean of cos² between two angles. */
const meanSquareCosine = (from: number, to: number) =>
  (1 + (Math.sin(2 * to) - Math.sin(2 * from)) / (2 * (to - from))) / 2

/** Stroke per unit of setting: m per rad, turn or m; 1 where they are the same. */
function strokeRate({ adjuster }: Axis, setting: number): number {
  switch (adjuster.kind) {
    case 'eccentric':
      return (adjuster.fitted === 'turned round' ? -1 : 1) * adjuster.throw * Math.cos(setting)
    case 'thread':
      return (adjuster.sleeve ? 2 : 1) * adjuster.pitch
    case 'shims':
    case 'slotted bolt':
    case 'slide':
    case 'top plate':
    case 'offset sleeve':
    case 'wedge':
    case 'sub-frame shift':
      return 1
  }
}
