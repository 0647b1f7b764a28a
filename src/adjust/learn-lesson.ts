import type { Drive, WheelAngle } from '../linkage/index.ts'
import type { Measured } from '../measure/index.ts'
import { angleOrder, anglesAtStrokes, anglesNearStrokes } from './angles-at-strokes.ts'
import type { WheelSetup } from './problem.ts'
import { responseSurface } from './response-surface.ts'
import { setByEye } from './set-by-eye.ts'
import { strokeOf } from './stroke-of.ts'

/**
 * One move as it was recorded on one wheel: settings before and after, and what the readings did.
 *
 * @source definition
 */
export interface RecordedMove {
  /** Settings by adjuster id; those not named did not move. */
  readonly from: Readonly<Record<string, number>>
  readonly to: Readonly<Record<string, number>>
  /** After minus before, so that errors common to both readings are gone already. */
  readonly change: Readonly<Partial<Record<WheelAngle, Measured>>>
  /** Where the wheel stood when it was read again. Default: as before. */
  readonly standing?: Drive
}

/** What a recorded move says beside what the points say. @source definition */
export interface Lesson {
  /** Strokes, m or rad, one per adjuster of the wheel. */
  readonly moved: readonly number[]
  /** Angles that were read before and after. */
  readonly seen: readonly WheelAngle[]
  /** What the points foresee of each, rad. */
  readonly foreseen: readonly number[]
  /** What play and half a step at one end of the move do to each of them, one standard deviation, [adjuster][angle]. */
  readonly setting: readonly (readonly number[])[]
}

/**
 * Holds a recorded move against the exact poses of a wheel's points, at the heights at which it was read.
 *
 * @param angles those to look at
 * @throws {Refusal} `setting-out-of-range` when a recorded setting lies outside its adjuster's range
 * @source own derivation: docs/methods/learned-response.md
 */
export function lessonOf(wheel: WheelSetup, move: RecordedMove, angles: readonly WheelAngle[]): Lesson {
  const strokes = (settings: Readonly<Record<string, number>>) =>
    wheel.adjusters.map((adjuster) => {
      const resting = wheel.settings[adjuster.id] ?? (adjuster.range[0] + adjuster.range[1]) / 2
      return strokeOf(adjuster, settings[adjuster.id] ?? move.from[adjuster.id] ?? resting)
    })
  const before = strokes(move.from)
  const after = strokes({ ...move.from, ...move.to })
  const moved = after.map((stroke, j) => stroke - before[j]!)
  const seen = angles.filter((angle) => move.change[angle] !== undefined)
  if (seen.length === 0 || moved.every((by) => by === 0)) return { moved, seen, foreseen: [], setting: [] }
  const start = anglesAtStrokes(wheel)(before)
  const end = anglesAtStrokes({ ...wheel, drive: move.standing ?? wheel.drive })(after)
  const n = wheel.adjusters.length
  const { slope } = responseSurface(anglesNearStrokes(wheel, after), after)
  return {
    moved,
    seen,
    foreseen: seen.map((angle) => end[angleOrder.indexOf(angle)]! - start[angleOrder.indexOf(angle)]!),
    setting: wheel.adjusters.map((adjuster, j) => {
      if (moved[j] === 0) return seen.map(() => 0)
      const turned = (move.to[adjuster.id] ?? 0) - (move.from[adjuster.id] ?? 0)
      const perSetting = Math.abs(moved[j]! / (turned || 1))
      // set by hand; rectangular
      const slack = perSetting * Math.sqrt((adjuster.play ** 2 + setByEye(adjuster) ** 2) / 3)
      return seen.map((angle) => slope[angleOrder.indexOf(angle) * n + j]! * slack)
    }),
  }
}
