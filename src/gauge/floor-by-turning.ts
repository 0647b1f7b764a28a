import type { AxleEnd } from '../linkage/index.ts'
import { solveSymmetric } from '../measure/index.ts'
import type { Metre } from '../quantity/index.ts'
import { aboveZero, finiteReading, gaugeRefusal } from './gauge-refusal.ts'
import type { FloorMap, Inclinometer, WheelPlace } from './instruments.ts'

/**
 * The vehicle standing one way: which wheel on which pad, and what the gauge read there.
 *
 * @source definition
 */
export interface Standing {
  /** Pad under each axle's left and right wheel: `as marked` or left and right exchanged (vehicle turned round). */
  readonly axles: readonly {
    readonly axle: AxleEnd
    readonly pads: AxleEnd
    readonly turned: boolean
    readonly camber: { readonly left: number; readonly right: number }
  }[]
  /** Gauge along a sill or frame rail, + front of the vehicle up; whether the vehicle's front was on the front pads. */
  readonly rail?: { readonly reading: number; readonly turned: boolean } | undefined
}

/**
 * Heights of the pads without a level: the vehicle is its own level. Turned round, or with another axle on the same
 * pads, the floor's tilt changes sign in the readings and the vehicle's own angles do not.
 *
 *     left camber read = own − roll     right = own + roll     roll → −roll when turned round     (least squares)
 *     rail read = own + pitch           pitch → −pitch when turned round
 *
 * @param sizes track of the pads and wheelbase, m
 * @param gauge its reading errors give the spread; its zero drops out
 * @returns heights with the mean of all four at zero
 * @throws {Refusal} `too-few` when these standings leave a tilt undetermined; `not-positive`; `not-finite`
 * @source own derivation: docs/methods/floor.md
 */
export function floorByTurning(
  standings: readonly Standing[],
  { track, wheelbase }: { readonly track: Metre; readonly wheelbase: Metre },
  gauge: Pick<Inclinometer, 'resolution' | 'placing'>,
  { id, name }: { readonly id: string; readonly name: string },
): FloorMap {
  const u = Math.sqrt(gauge.placing ** 2 / 3 + gauge.resolution ** 2 / 12)
  const rows: { unknowns: Map<string, number>; value: number }[] = []
  for (const { axles, rail } of standings) {
    for (const { axle, pads, turned, camber } of axles)
      for (const side of ['left', 'right'] as const)
        rows.push({
          unknowns: new Map([
            [`${axle} ${side} camber`, 1],
            [`${pads} roll`, (side === 'left' ? -1 : 1) * (turned ? -1 : 1)],
          ]),
          value: finiteReading(camber[side], `${axle} ${side} camber`),
        })
    if (rail)
      rows.push({
        unknowns: new Map([
          ['rail', 1],
          ['pitch', rail.turned ? -1 : 1],
        ]),
        value: finiteReading(rail.reading, 'rail'),
      })
  }
  const { solution, variance } = leastSquares(rows, ['front roll', 'rear roll', 'pitch'])
  const halfTrack = aboveZero(track, 'track') / 2
  const halfBase = aboveZero(wheelbase, 'wheelbase') / 2
  const height = (axle: AxleEnd, side: 1 | -1) =>
    (side * solution[`${axle} roll`]! * halfTrack +
      (axle === 'front' ? 1 : -1) * solution['pitch']! * halfBase) as Metre
  // As boxes, independent from pad to pad, that give the roll and the pitch at least the spread they have.
  const rollSpread = (axle: AxleEnd) => Math.sqrt(3 * variance[`${axle} roll`]! * 2) * u * halfTrack
  const pitchSpread = Math.sqrt(3 * variance['pitch']!) * u * 2 * halfBase
  const spread = (axle: AxleEnd) => Math.max(rollSpread(axle), pitchSpread) as Metre
  const all = <T>(f: (axle: AxleEnd, side: 1 | -1) => T): Record<WheelPlace, T> => ({
    'front left': f('front', 1),
    'front right': f('front', -1),
    'rear left': f('rear', 1),
    'rear right': f('rear', -1),
  })
  return { id, name, heights: all(height), spread: all(spread), found: 'swap and turn' }
}

/** Solution of unit-weight rows, and the variances of the wanted unknowns. */
function leastSquares(
  rows: readonly { readonly unknowns: ReadonlyMap<string, number>; readonly value: number }[],
  wanted: readonly string[],
): { solution: Record<string, number>; variance: Record<string, number> } {
  const names = [...new Set(rows.flatMap(({ unknowns }) => [...unknowns.keys()]))]
  const missing = wanted.find((name) => !names.includes(name))
  const sum = (f: (row: (typeof rows)[number]) => number) => rows.reduce((total, row) => total + f(row), 0)
  const of = (row: (typeof rows)[number], name: string) => row.unknowns.get(name) ?? 0
  const matrix = names.map((a) => names.map((b) => sum((row) => of(row, a) * of(row, b))))
  if (missing !== undefined || !isSolvable(matrix))
    throw gaugeRefusal(
      'too-few',
      missing ?? 'standings',
      rows.length,
      `These standings do not tell the ${missing ?? 'tilt of both pairs of pads apart from the vehicle'}.`,
      'Read each axle on the same two pads both ways round, and a sill both ways round.',
    )
  const x = solveSymmetric(
    matrix,
    names.map((name) => sum((row) => of(row, name) * row.value)),
  )
  const variance = (name: string) => {
    const i = names.indexOf(name)
    return solveSymmetric(
      matrix,
      names.map((_, j) => (j === i ? 1 : 0)),
    )[i]!
  }
  return {
    solution: Object.fromEntries(names.map((name, i) => [name, x[i]!])),
    variance: Object.fromEntries(wanted.map((name) => [name, variance(name)])),
  }
}

/** Elimination leaves a pivot in every column. */
function isSolvable(matrix: readonly (readonly number[])[]): boolean {
  const a = matrix.map((row) => [...row])
  for (let j = 0; j < a.length; j++) {
    if (a[j]![j]! < 1e-9) return false
    for (let i = j + 1; i < a.length; i++) {
      const factor = a[i]![j]! / a[j]![j]!
      for (let k = j; k < a.length; k++) a[i]![k]! -= factor * a[j]![k]!
    }
  }
  return true
}
