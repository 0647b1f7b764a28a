import { readFileSync } from 'node:fs'
import { levenbergMarquardt } from 'ml-levenberg-marquardt'
import { batchPoses, batchStride, type DoubleWishbone, mechanism, type Point } from '../src/linkage/index.ts'
import type { Finding } from './finding.ts'
import { interleaved } from './interleaved.ts'
import { wishbone } from './invented-corners.ts'
import { newtonBatch } from './newton-batch.ts'
import { quantile } from './quantile.ts'
import { posesPerBatch, sweep } from './sweep.ts'
import { timed } from './timed.ts'

/** How the general solver is set: sharp enough for 1e-9 m, and started from the pose before, as ours is. */
const settings = {
  damping: 1e-7,
  gradientDifference: 1e-7,
  errorTolerance: 1e-22,
  maxIterations: 50,
} as const
const theirPoses = 80
/** How far the general solver's answer may lie from ours, m, to count as the same. */
const samePlace = 1e-9

const packageFile = new URL('../node_modules/ml-levenberg-marquardt/package.json', import.meta.url)

/** Our Newton and closed form against a general least-squares solver on the same five constraints. */
export async function againstRootFinder(): Promise<Finding> {
  const { version } = JSON.parse(readFileSync(packageFile, 'utf8')) as { version: string }
  const m = mechanism(wishbone)
  const drives = sweep({ travel: 0.05, rack: 0.02 })
  const out = new Float64Array(batchStride * posesPerBatch)
  const room = new Float64Array(batchStride * posesPerBatch)
  const places = new Float64Array(3 * theirPoses)
  const iterations: number[] = []
  const theirs = () => generalBatch(wishbone, drives, places, iterations)
  const newton = newtonBatch(m, drives, room)
  const pieces = { ourPieces: posesPerBatch, theirPieces: theirPoses }
  const options = { warm: 20, rounds: 101 }
  const byNewton = await interleaved(
    { ours: () => timed(newton), theirs: () => timed(theirs), ...pieces },
    options,
  )
  const byClosed = await interleaved(
    { ours: () => timed(() => batchPoses(m, drives, out)), theirs: () => timed(theirs), ...pieces },
    options,
  )
  let apart = 0
  for (let i = 0; i < theirPoses; i++)
    for (let j = 0; j < 3; j++)
      apart = Math.max(apart, Math.abs(places[3 * i + j]! - out[batchStride * i + 4 + j]!))
  if (!(apart < samePlace)) throw new Error(`The general solver ends ${apart} m from our poses.`)
  const faster = 1 / byNewton.ratio
  return {
    id: 'root finder',
    what: 'Newton and closed form against a general solver from the registry, double wishbone',
    lines: [
      `ml-levenberg-marquardt ${version}, a general least-squares fitter (Levenberg–Marquardt, forward differences):`,
      `  damping ${settings.damping}, gradientDifference ${settings.gradientDifference}, errorTolerance ${settings.errorTolerance} m² (sum of squares), maxIterations ${settings.maxIterations}; five length errors, five unknowns, started from the pose before`,
      `it takes ${(byNewton.theirs / 1000).toFixed(0)} µs a pose (median ${quantile(iterations, 0.5)} iterations) and ends within ${apart.toExponential(1)} m of our wheel centres`,
      `Newton ${faster.toFixed(0)} times as fast (quartiles ${(1 / byNewton.high).toFixed(0)} to ${(1 / byNewton.low).toFixed(0)}), closed form with angles ${(1 / byClosed.ratio).toFixed(0)} times (${(1 / byClosed.high).toFixed(0)} to ${(1 / byClosed.low).toFixed(0)})`,
    ],
    value: faster,
    unit: 'times as fast',
    target: null,
    held: null,
    numbers: {
      version,
      ...settings,
      theirs_ns: byNewton.theirs,
      newton: 1 / byNewton.ratio,
      closed: 1 / byClosed.ratio,
      apart_m: apart,
    },
  }
}

/** The constraints as a person would write them: turn by rotation vector, five length errors. */
function generalBatch(
  points: DoubleWishbone,
  drives: Float64Array,
  places: Float64Array,
  iterations: number[],
): number {
  const { upperFrontInner, upperRearInner, lowerFrontInner, lowerRearInner, tieInner } = points
  const { upperOuter, lowerOuter, tieOuter, wheelCentre: home } = points
  const links: readonly (readonly [Point, Point])[] = [
    [upperFrontInner, upperOuter],
    [upperRearInner, upperOuter],
    [lowerFrontInner, lowerOuter],
    [lowerRearInner, lowerOuter],
    [tieInner, tieOuter],
  ]
  const lengths = links.map(([a, b]) => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]))
  const data = { x: [0, 1, 2, 3, 4], y: [0, 0, 0, 0, 0] }
  let guess = [home[0], home[1], 0, 0, 0]
  for (let i = 0; i < theirPoses; i++) {
    const height = home[2] + drives[2 * i]!
    const rack = drives[2 * i + 1]!
    const errors = ([x, y, a, b, c]: readonly number[]): ((which: number) => number) => {
      const turn = rotation(a!, b!, c!)
      return (which) => {
        const [inner, outer] = links[which]!
        const [px, py, pz] = turn(outer[0] - home[0], outer[1] - home[1], outer[2] - home[2])
        const dx = x! + px - inner[0]
        const dy = y! + py - inner[1] - (which === 4 ? rack : 0)
        const dz = height + pz - inner[2]
        return Math.sqrt(dx * dx + dy * dy + dz * dz) - lengths[which]!
      }
    }
    const found = levenbergMarquardt(data, errors, { ...settings, initialValues: guess })
    guess = [...found.parameterValues]
    places[3 * i] = guess[0]!
    places[3 * i + 1] = guess[1]!
    places[3 * i + 2] = height
    iterations.push(found.iterations)
  }
  return theirPoses
}

/** Rodrigues' formula for a rotation vector. */
function rotation(a: number, b: number, c: number): (x: number, y: number, z: number) => Point {
  const angle = Math.sqrt(a * a + b * b + c * c)
  const s = angle < 1e-9 ? 1 : Math.sin(angle) / angle
  const v = angle < 1e-9 ? 0.5 : (1 - Math.cos(angle)) / (angle * angle)
  return (x, y, z) => {
    const kx = b * z - c * y
    const ky = c * x - a * z
    const kz = a * y - b * x
    return [
      x + s * kx + v * (b * kz - c * ky),
      y + s * ky + v * (c * kx - a * kz),
      z + s * kz + v * (a * ky - b * kx),
    ]
  }
}
