import { readFileSync } from 'node:fs'
import { readGeometry } from '../../../src/cli/poses/read-geometry.ts'
import type { CornerPoints, Displacement } from '../../../src/linkage/index.ts'

/** One value or triple of an `out`. */
type Out = Readonly<Record<string, number | null | readonly [number, number, number]>>
type Row = Readonly<{ travel: number; rack: number; out: Out }>
type Angles = Readonly<Record<'camber' | 'caster' | 'toe' | 'sai', number>>
type Eccentric = Readonly<{ e: number; slot: readonly [number, number, number] }>

/** A case of the file of poses. */
export interface PoseCase {
  readonly id: string
  readonly geometry: Readonly<Record<string, unknown>> & {
    readonly adjusters?: Readonly<{ front: Eccentric; rear: Eccentric }>
  }
  readonly poses: readonly Row[]
  readonly adjusted_poses?: readonly (Row &
    Readonly<{ theta_front_deg: number; theta_rear_deg: number; tie_delta: number }>)[]
  readonly sensitivities?: Readonly<
    Record<'theta_front_deg_per_deg' | 'theta_rear_deg_per_deg' | 'tie_deg_per_mm', Angles>
  >
  readonly inverse?: readonly Readonly<{
    target_delta: Angles
    solution: Readonly<{ theta_front_deg: number; theta_rear_deg: number; tie_delta: number }>
  }>[]
  readonly travel_limit_rack0: Readonly<{ up: number; down: number }>
}

const json = (name: string): unknown => JSON.parse(readFileSync(new URL(name, import.meta.url), 'utf8'))

/** The pose cases: basis derived. */
export const poseCases = json('pose-cases.json') as Readonly<{ source: string; cases: readonly PoseCase[] }>
/** The cases that must be refused, or answered near a limit. */
export const badCases = json('bad-cases.json') as Readonly<{
  source: string
  bad: readonly Readonly<{ id: string; error: string | null; out?: Out }>[]
}>
/** Any other data file beside this one. */
export const dataFile = json

/** Points of a case. */
export const pointsOf = (c: PoseCase): CornerPoints => readGeometry(c.geometry).points

/** What turned adjusters do to a case. */
export function turnedBy(
  c: PoseCase,
  {
    theta_front_deg,
    theta_rear_deg,
    tie_delta,
  }: { theta_front_deg: number; theta_rear_deg: number; tie_delta: number },
): Displacement {
  const { front, rear } = c.geometry.adjusters!
  const shift = ({ e, slot }: Eccentric, angle: number) => {
    const by = e * Math.sin((angle * Math.PI) / 180)
    return [by * slot[0], by * slot[1], by * slot[2]] as const
  }
  return {
    body: { upperFrontInner: shift(front, theta_front_deg), upperRearInner: shift(rear, theta_rear_deg) },
    length: { tie: tie_delta },
  }
}
