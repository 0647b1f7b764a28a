import { Refusal } from '../quantity/index.ts'
import { checkFinite } from './check-points.ts'
import { partsOf } from './layout-parts.ts'
import type { LinkageRefusal } from './linkage-refusal.ts'
import { displaced, type Mechanism } from './mechanism.ts'
import type { Displacement, Drive, Point } from './points.ts'
import type { Pose } from './pose.ts'
import { poseAt } from './pose-at.ts'
import { ratesAt } from './rates-at.ts'
import { solveLinear } from './solve-linear.ts'
import { sumOfDisplacements } from './sum-of-displacements.ts'
import type { WheelAngle } from './wheel-angles.ts'

/** One scalar setting: what it does to the points, and between which bounds it may stand. @source definition */
export interface Setting {
  readonly name: string
  readonly displacement: (setting: number) => Displacement
  /** Open bounds. */
  readonly range: readonly [number, number]
  /** Where it stands now; default 0. */
  readonly from?: number
}

/** Settings that were found, and what they bring. @source definition */
export interface Settled {
  readonly settings: readonly number[]
  readonly pose: Pose
  /** Largest angle left between the target and the pose, rad. */
  readonly miss: number
}

/**
 * The settings that change the wheel's angles by given amounts from where the settings stand now, height held:
 * Newton on the exact response, damped so that it stays on the branch and inside the ranges.
 *
 * @param m the corner without these settings
 * @param settings as many as there are changes
 * @param changes wanted, rad
 * @throws {Refusal} `not-finite`; `bad-input` when the counts differ; `not-for-this-layout` for caster or SAI of a
 *   five-link or trailing arm; `singular` when the settings all do the same; `unreachable` when no settings inside the ranges do it
 * @source own derivation: docs/methods/pose-of-a-corner.md
 */
export function settingsFor(
  m: Mechanism,
  drive: Drive,
  {
    settings,
    changes,
  }: {
    readonly settings: readonly Setting[]
    readonly changes: Readonly<Partial<Record<WheelAngle, number>>>
  },
): Settled {
  checkFinite(changes, '')
  const angles = (['camber', 'caster', 'toe', 'sai'] as const).filter((a) => changes[a] !== undefined)
  const n = settings.length
  if (n !== angles.length || n === 0)
    throw no(
      'bad-input',
      'changes',
      `${n} settings cannot bring exactly ${angles.length} changes.`,
      'Ask for as many changes as there are settings.',
    )
  if (partsOf(m.points.layout).axis === null && angles.some((a) => a === 'caster' || a === 'sai'))
    throw no(
      'not-for-this-layout',
      'changes',
      `A ${m.points.layout} corner has no joint axis, so it has no caster or SAI to change.`,
      'Ask for camber and toe.',
    )
  let x = settings.map((s) => s.from ?? 0)
  const at = (y: readonly number[]): { m: Mechanism; pose: Pose } => {
    const moved = displaced(
      m,
      sumOfDisplacements([m.displacement, ...settings.map((s, i) => s.displacement(y[i]!))]),
    )
    return { m: moved, pose: poseAt(moved, drive) }
  }
  let here = at(x)
  const target = angles.map((a) => here.pose[a]! + changes[a]!)
  const missOf = (pose: Pose): number[] => angles.map((a, i) => around(target[i]! - pose[a]!))
  let miss = missOf(here.pose)
  for (let turn = 0; turn < 60; turn++) {
    if (largest(miss) < 1e-15) break
    const rates = ratesAt(here.m, here.pose)
    const columns = settings.map((s, i) => rates(slopeOf(s, x[i]!)))
    const a = new Float64Array(n * n)
    for (const [i, angle] of angles.entries()) for (let j = 0; j < n; j++) a[n * i + j] = columns[j]![angle]!
    const step = Float64Array.from(miss)
    if (isFlat(a, n) || solveLinear(a, step, n) === 0)
      throw no(
        'singular',
        'settings',
        'Two of the settings change the angles in the same way here, so they cannot be told apart.',
        'Leave one of them out, or start from other settings.',
      )
    let share = 1
    for (const [i, { range }] of settings.entries()) {
      const bound = step[i]! > 0 ? range[1] : range[0]
      const room = (bound - x[i]!) / step[i]!
      if (room <= share) share = 0.9 * room
    }
    const next = closer(share)
    if (!next) {
      if (largest(miss) < 1e-12) break
      throw tooFar()
    }
    const gained = largest(miss) - largest(next.miss)
    x = next.x
    here = next.here
    miss = next.miss
    if (gained <= 0 && largest(miss) < 1e-12) break
    if (turn === 59) throw tooFar()

    /** The longest part of the step that stays on the branch and comes closer. */
    function closer(most: number): { x: number[]; here: typeof here; miss: number[] } | null {
      for (let part = most; part > 1e-6; part /= 2) {
        const y = x.map((value, i) => value + part * step[i]!)
        try {
          const there = at(y)
          const left = missOf(there.pose)
          if (square(left) < square(miss) || largest(left) < 1e-14) return { x: y, here: there, miss: left }
        } catch (error) {
          if (!(error instanceof Refusal)) throw error
        }
      }
      return null
    }
  }
  return { settings: x, pose: here.pose, miss: largest(miss) }
}

const no = (code: LinkageRefusal, at: string, sentence: string, remedy: string): Refusal<LinkageRefusal> =>
  new Refusal<LinkageRefusal>({ code, at, sentence, remedy })
const tooFar = (): Refusal<LinkageRefusal> =>
  no(
    'unreachable',
    'changes',
    'No settings inside their ranges bring these changes.',
    'Ask for less, or look for what has moved the wheel this far.',
  )

const largest = (v: readonly number[]): number => Math.max(...v.map(Math.abs))
const square = (v: readonly number[]): number => v.reduce((sum, e) => sum + e * e, 0)
/** An angle between −π and π. */
const around = (angle: number): number => angle - 2 * Math.PI * Math.round(angle / (2 * Math.PI))

/** Columns that are parallel to rounding. */
function isFlat(a: Float64Array, n: number): boolean {
  const scaled = Float64Array.from(a)
  for (let j = 0; j < n; j++) {
    let size = 0
    for (let i = 0; i < n; i++) size += a[n * i + j]! ** 2
    if (size === 0) return true
    for (let i = 0; i < n; i++) scaled[n * i + j] = a[n * i + j]! / Math.sqrt(size)
  }
  return Math.abs(solveLinear(scaled, new Float64Array(n), n)) < 1e-10
}

/** Slope of a setting's displacement, by central difference. */
function slopeOf(setting: Setting, x: number): Displacement {
  const room = Math.min(1, x - setting.range[0], setting.range[1] - x)
  const h = 1e-4 * Math.max(room, 1e-6)
  const [before, after] = [setting.displacement(x - h), setting.displacement(x + h)]
  return sumOfDisplacements([scaled(after, 0.5 / h), scaled(before, -0.5 / h)])
}

function scaled(d: Displacement, by: number): Displacement {
  const each = (group: Readonly<Record<string, Point>> | undefined): Record<string, Point> =>
    Object.fromEntries(
      Object.entries(group ?? {}).map(([k, [x, y, z]]) => [k, [by * x, by * y, by * z] as const]),
    )
  return {
    body: each(d.body),
    knuckle: each(d.knuckle),
    length: Object.fromEntries(Object.entries(d.length ?? {}).map(([k, x]) => [k, by * x])),
    ...(d.spin && { spin: [by * d.spin[0], by * d.spin[1], by * d.spin[2]] as const }),
  }
}
