import { angleOrder, anglesAtStrokes, anglesNearStrokes } from './angles-at-strokes.ts'
import { anglesOfAxle } from './angles-of-axle.ts'
import type { Axis } from './axis.ts'
import { axleSettingsByInputs } from './axle-settings-by-inputs.ts'
import { inputCount } from './inputs-of.ts'
import type { AxleSetup, CornersSetup, WheelSetup, WholeAxleSetup } from './problem.ts'
import { type ResponseSurface, responseSurface } from './response-surface.ts'

/** Wheels whose angles hang on one another, with their response: one wheel of its own, or both of a whole axle. */
export interface ResponseGroup {
  /** First of its wheels, 2 · axle + (0 left, 1 right). */
  readonly wheel: number
  /** Axes that move it. */
  readonly axes: readonly number[]
  /** Places of its inputs among those of the space. */
  readonly inputs: readonly number[]
  /** Sign of each: a sub-frame that goes to the left goes inward on the right. */
  readonly signs: readonly number[]
  readonly anglesAt: (inputs: Float64Array) => Float64Array
  readonly surface: ResponseSurface
  /** Correction of the slopes that recorded moves have taught, [angle · inputs + input]. */
  readonly taught: Float64Array
}

/**
 * The groups of one axle, with their response at the present inputs.
 *
 * @param axes of the whole space
 * @param now inputs of the whole space
 * @source own derivation: docs/methods/moves.md
 */
export function responseGroups(
  setup: AxleSetup,
  axle: number,
  axes: readonly Axis[],
  now: Float64Array,
): readonly ResponseGroup[] {
  const own = [...axes.keys()].filter((j) => axes[j]!.axle === axle)
  if ('axle' in setup) return [wholeGroup(setup, axle, { axes, own, now })]
  return (['left', 'right'] as const).map((side) => {
    const mine = own.filter((j) => axes[j]!.on === side || axes[j]!.on === 'both')
    return cornerGroup(setup, side, { axle, axes, mine, now })
  })
}

function cornerGroup(
  setup: CornersSetup,
  side: 'left' | 'right',
  {
    axle,
    axes,
    mine,
    now,
  }: {
    readonly axle: number
    readonly axes: readonly Axis[]
    readonly mine: readonly number[]
    readonly now: Float64Array
  },
): ResponseGroup {
  const wheel = setup[side]
  const inputs = mine.map((j) => axes[j]!.input)
  const signs = mine.map((j) => (axes[j]!.on === 'both' && side === 'right' ? -1 : 1))
  const anglesAt = anglesAtStrokes(wheel, setup.both?.adjusters)
  const at = inputs.map((i, k) => signs[k]! * now[i]!)
  return {
    wheel: 2 * axle + (side === 'left' ? 0 : 1),
    axes: mine,
    inputs,
    signs,
    anglesAt,
    surface: responseSurface(anglesNearStrokes(wheel, at, setup.both?.adjusters), at),
    taught: taughtSlopes(wheel, inputs.length),
  }
}

function wholeGroup(
  setup: WholeAxleSetup,
  axle: number,
  {
    axes,
    own,
    now,
  }: { readonly axes: readonly Axis[]; readonly own: readonly number[]; readonly now: Float64Array },
): ResponseGroup {
  const inputs = own.flatMap((j) => {
    const { input, adjuster } = axes[j]!
    return Array.from({ length: inputCount(adjuster) }, (_, k) => input + k)
  })
  const parts = own.map((j) => {
    const { adjuster, on, input } = axes[j]!
    return { adjuster, on, at: inputs.indexOf(input) }
  })
  const anglesAt = (x: Float64Array) => anglesOfAxle(setup, axleSettingsByInputs(parts, x))
  const at = inputs.map((i) => now[i]!)
  return {
    wheel: 2 * axle,
    axes: own,
    inputs,
    signs: inputs.map(() => 1),
    anglesAt,
    surface: responseSurface(anglesAt, at),
    taught: new Float64Array(2 * angleOrder.length * inputs.length),
  }
}

function taughtSlopes(wheel: WheelSetup, n: number): Float64Array {
  const slopes = new Float64Array(angleOrder.length * n)
  const response = wheel.response
  if (response)
    response.angles.forEach((angle, a) => {
      response.adjusters.forEach((id, j) => {
        const column = wheel.adjusters.findIndex((adjuster) => adjuster.id === id)
        if (column >= 0)
          slopes[angleOrder.indexOf(angle) * n + column] = response.mean[a * response.adjusters.length + j]!
      })
    })
  return slopes
}
