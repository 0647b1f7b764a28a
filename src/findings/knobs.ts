import { type Adjuster, displacementByStroke, strokeOf } from '../adjust/index.ts'
import { adjustersOf, axleAdjustersOf, cornerPoints, isWholeAxle } from '../corner/index.ts'
import {
  type AnyCornerPoints,
  type AxleEnd,
  type Displacement,
  type Side,
  sumOfDisplacements,
} from '../linkage/index.ts'
import type { AxleWay, WholeWay } from './axle-model.ts'
import type { ExaminedAxle } from './findings-problem.ts'
import { markSpread } from './mark-spread.ts'
import { scaledDisplacement } from './scaled-displacement.ts'

/** One number that an adjuster may stand at: its stroke, or one of the two of an offset sleeve. */
export interface Knob {
  readonly end: AxleEnd
  readonly on: Side | 'both'
  readonly adjuster: Adjuster
  /** Per m or rad of stroke. */
  readonly way: AxleWay
  /** Stroke at which the model is looked at. */
  readonly at: number
  readonly half: number
  /** Where its ends lie, from `at`. */
  readonly low: number
  readonly high: number
  /** Standard uncertainty of `at` when its place was seen; null when nobody looked. */
  readonly known: number | null
  /** The displacement that stands in the model already, of the wheel's corner. */
  readonly standing: Partial<Readonly<Record<Side, Displacement>>>
}

/** All adjusters of an axle. @throws {Refusal} `setting-out-of-range`; `no-such-point` @source definition */
export function knobsOf(axle: ExaminedAxle): readonly Knob[] {
  const whole = isWholeAxle(axle.corner.layout)
  const points = whole ? null : cornerPoints(axle.corner)
  const own = adjustersOf(axle.corner)
  const shared = axleAdjustersOf(axle.corner)
  const places = [
    ...(['left', 'right'] as const).flatMap((on) => own.map((adjuster) => ({ on, adjuster }))),
    ...shared.map((adjuster) => ({ on: 'both' as const, adjuster })),
  ]
  return places.flatMap(({ on, adjuster }): Knob[] => {
    const setting = axle.settings[on]?.[adjuster.id] ?? null
    if (adjuster.kind === 'offset sleeve') return sleeve(axle.end, on as Side, adjuster, setting)
    const ends = adjuster.range.map((end) => strokeOf(adjuster, end))
    const [low, high] = [Math.min(...ends), Math.max(...ends)]
    const at = setting === null ? (low + high) / 2 : strokeOf(adjuster, setting)
    const common = { end: axle.end, on, adjuster, at, half: (high - low) / 2, low: low - at, high: high - at }
    const known = setting === null ? null : markSpread(adjuster, setting)
    if (!points) return [{ ...common, known, way: wholeWay(adjuster, on), standing: {} }]
    return [{ ...common, known, ...cornerWay(adjuster, on, points, at) }]
  })
}

const slopeStep = 1e-4

function cornerWay(
  adjuster: Adjuster,
  on: Side | 'both',
  points: AnyCornerPoints,
  at: number,
): Pick<Knob, 'way' | 'standing'> {
  const slope = sumOfDisplacements([
    scaledDisplacement(displacementByStroke(adjuster, points, at + slopeStep), 0.5 / slopeStep),
    scaledDisplacement(displacementByStroke(adjuster, points, at - slopeStep), -0.5 / slopeStep),
  ])
  const standing = displacementByStroke(adjuster, points, at)
  if (on !== 'both') return { way: { [on]: slope }, standing: { [on]: standing } }
  return {
    way: { left: slope, right: scaledDisplacement(slope, -1) },
    standing: { left: standing, right: scaledDisplacement(standing, -1) },
  }
}

function wholeWay(adjuster: Adjuster, on: Side | 'both'): AxleWay {
  if (adjuster.kind === 'wedge')
    return {
      whole: {
        shim: {
          [on]: { camber: adjuster.tilts === 'camber' ? 1 : 0, toe: adjuster.tilts === 'toe' ? 1 : 0 },
        },
      },
    }
  if (adjuster.kind !== 'thread') return {}
  if (adjuster.length === 'tie-rod') return { whole: { tieRod: 1 } }
  if (adjuster.length === 'drag-link') return { whole: { dragLink: 1 } }
  const links = [0, 0, 0, 0] as [number, number, number, number]
  links[Number(adjuster.length.slice(-1))] = 1
  return { whole: { links } }
}

/** A sleeve leans the kingpin anywhere on its circle: two numbers, each within the tilt. */
function sleeve(
  end: AxleEnd,
  on: Side,
  adjuster: Extract<Adjuster, { kind: 'offset sleeve' }>,
  setting: number | null,
): Knob[] {
  const { tilt } = adjuster
  const known = setting === null ? null : tilt * markSpread({ ...adjuster, tilt }, setting)
  return (['camber', 'caster'] as const).map((lean) => {
    const turned = lean === 'camber' ? Math.cos : Math.sin
    const at = setting === null ? 0 : tilt * turned(setting)
    const way: { readonly whole: WholeWay } = {
      whole: {
        tilt: { [on]: { camber: lean === 'camber' ? 1 : 0, caster: lean === 'caster' ? 1 : 0 } },
      },
    }
    return { end, on, adjuster, way, at, half: tilt, low: -tilt - at, high: tilt - at, known, standing: {} }
  })
}
