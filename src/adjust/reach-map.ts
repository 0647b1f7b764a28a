import { covarianceMatrix, type Measured } from '../measure/index.ts'
import { angleOrder, anglesAtStrokes, anglesNearStrokes } from './angles-at-strokes.ts'
import { checkAdjuster } from './check-adjuster.ts'
import { isForToe, jobOf } from './job-of.ts'
import type { WheelSetup } from './problem.ts'
import { responseSurface } from './response-surface.ts'
import { strokeOf } from './stroke-of.ts'

/** A place on the map: camber and caster, rad. @source definition */
export type MapPoint = readonly [number, number]

/** Camber and caster of one wheel, read or foreseen. @source definition */
export interface CamberCaster {
  readonly camber: Measured
  readonly caster: Measured
}

/** What a reach map is drawn from. @source definition */
export interface ReachTask {
  readonly wheel: WheelSetup
  readonly now: CamberCaster
  /** In the order in which they are made: settings by adjuster id. */
  readonly moves?: readonly { readonly id: string; readonly to: number; readonly label: string }[]
  /** What is foreseen after all moves of both wheels; its spread is drawn. Default: the end of the path, unspread. */
  readonly after?: CamberCaster
}

/** The reachable patch, and the way through it. @source definition */
export interface ReachMap {
  /** Closed outline (the last point joins the first). */
  readonly outline: readonly MapPoint[]
  readonly path: readonly {
    readonly at: MapPoint
    readonly label: string
    /** 95 % of what is plausible; null where nothing is stated. */
    readonly ellipse: readonly MapPoint[] | null
  }[]
}

/** Points along each edge of the outline, and around an ellipse. */
const alongEdge = 12
const aroundEllipse = 48
/** Two normal values lie together within √(−2 ln 0.05) standard deviations in 95 of 100 cases. @source definition (chi-squared, 2 degrees of freedom) */
const within95 = Math.sqrt(-2 * Math.log(0.05))

/**
 * The set of (camber, caster) that a wheel's adjusters can reach, from the present reading: all settings
 * with the tie rod held, as an outline, with the path of the moves through it.
 *
 * @returns null for a layout without caster
 * @throws {Refusal} `setting-out-of-range`; `bad-adjuster`; `no-such-point`
 * @assumes the outline is that of the edges of the settings' box: exact for two adjusters, close for more
 * @source own derivation: docs/methods/reach-map.md
 */
export function reachMap({ wheel, now, moves = [], after }: ReachTask): ReachMap | null {
  if (wheel.points.layout === 'five-link' || wheel.points.layout === 'semi-trailing arm') return null
  const present = wheel.adjusters.map((adjuster) => {
    checkAdjuster(adjuster)
    const setting = wheel.settings[adjuster.id]
    return strokeOf(adjuster, setting ?? (adjuster.range[0] + adjuster.range[1]) / 2)
  })
  const surface = responseSurface(anglesNearStrokes(wheel, present), present)
  const taught = (strokes: ArrayLike<number>, angle: 'camber' | 'caster') => {
    const { response, adjusters } = wheel
    const a = response?.angles.indexOf(angle) ?? -1
    if (!response || a < 0) return 0
    return response.adjusters.reduce((sum, id, c) => {
      const j = adjusters.findIndex((one) => one.id === id)
      return j < 0
        ? sum
        : sum + response.mean[a * response.adjusters.length + c]! * (strokes[j]! - present[j]!)
    }, 0)
  }
  const anglesAt = anglesAtStrokes(wheel)
  const at = (strokes: ArrayLike<number>): MapPoint => {
    const angles = anglesAt(strokes)
    const place = (angle: 'camber' | 'caster') => {
      const i = angleOrder.indexOf(angle)
      return now[angle].value + angles[i]! - surface.value[i]! + taught(strokes, angle)
    }
    return [place('camber'), place('caster')]
  }

  const strokes = present.slice()
  const path: ReachMap['path'][number][] = [
    { at: [now.camber.value, now.caster.value], label: 'now', ellipse: ellipseOf(now) },
  ]
  for (const { id, to, label } of moves) {
    const j = wheel.adjusters.findIndex((adjuster) => adjuster.id === id)
    if (j < 0) continue
    strokes[j] = strokeOf(wheel.adjusters[j]!, to)
    path.push({ at: at(strokes), label, ellipse: null })
  }
  if (after && path.length > 1) {
    const last = path.pop()!
    path.push({ at: [after.camber.value, after.caster.value], label: last.label, ellipse: ellipseOf(after) })
  }

  const slopesOf = (slope: Float64Array, j: number) =>
    angleOrder.map((_, a) => slope[a * wheel.adjusters.length + j]!)
  const turning = wheel.adjusters.flatMap((adjuster, j) =>
    isForToe(jobOf(adjuster, slopesOf(surface.slope, j), wheel.adjusters)) ? [] : [j],
  )
  return { outline: outlineOf(wheel, turning, present, surface.slope, at), path }
}

/**
 * Walks the edges of the settings' box in the order of the directions in which they move the map: of a
 * straight response this is the outline of its image (a zonotope).
 */
function outlineOf(
  wheel: WheelSetup,
  turning: readonly number[],
  present: readonly number[],
  slope: Float64Array,
  at: (strokes: ArrayLike<number>) => MapPoint,
): MapPoint[] {
  const n = wheel.adjusters.length
  const edges = turning.map((j) => {
    const adjuster = wheel.adjusters[j]!
    const [one, other] = [strokeOf(adjuster, adjuster.range[0]), strokeOf(adjuster, adjuster.range[1])]
    const ends = [Math.min(one, other), Math.max(one, other)] as const
    const camber = slope[angleOrder.indexOf('camber') * n + j]!
    const caster = slope[angleOrder.indexOf('caster') * n + j]!
    // every edge is walked first in the direction of growing caster
    const upward = caster > 0 || (caster === 0 && camber > 0)
    const [from, to] = upward ? ends : [ends[1], ends[0]]
    return { j, from, to, angle: Math.atan2(upward ? caster : -caster, upward ? camber : -camber) }
  })
  edges.sort((a, b) => a.angle - b.angle)
  const strokes = [...present]
  for (const { j, from } of edges) strokes[j] = from
  const outline: MapPoint[] = []
  const walk = (j: number, from: number, to: number) => {
    for (let k = 0; k < alongEdge; k++) {
      strokes[j] = from + ((to - from) * k) / alongEdge
      outline.push(at(strokes))
    }
    strokes[j] = to
  }
  for (const { j, from, to } of edges) walk(j, from, to)
  for (const { j, from, to } of edges) walk(j, to, from)
  return outline
}

function ellipseOf({ camber, caster }: CamberCaster): MapPoint[] {
  const cov = covarianceMatrix([camber, caster])
  const [xx, xy, yy] = [cov[0]![0]!, cov[0]![1]!, cov[1]![1]!]
  const a = Math.sqrt(xx)
  const b = a > 0 ? xy / a : 0
  const c = Math.sqrt(Math.max(0, yy - b * b))
  return Array.from({ length: aroundEllipse }, (_, k) => {
    const turn = (2 * Math.PI * k) / aroundEllipse
    const [x, y] = [within95 * Math.cos(turn), within95 * Math.sin(turn)]
    return [camber.value + a * x, caster.value + b * x + c * y]
  })
}
