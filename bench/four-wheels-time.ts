import { levenbergMarquardt } from 'ml-levenberg-marquardt'
import { type CornersSetup, displacementOf, type MovesProblem, moves } from '../src/adjust/index.ts'
import { mechanism, poseAt, sumOfDisplacements } from '../src/linkage/index.ts'
import type { Finding } from './finding.ts'
import { fourWheels } from './four-wheels.ts'
import { quantile } from './quantile.ts'
import { repeated } from './repeated.ts'
import { timed } from './timed.ts'

const target = 20
const sets = 12
/** Settings to a thousandth of their range, and damping with which it settles on these sets. */
const settings = { damping: 1e-2, gradientDifference: 1e-3, maxIterations: 30, errorTolerance: 1e-9 }

/**
 * Moves for four wheels with two adjusters each, against a general least-squares fitter that only looks for the
 * eight settings nearest to the preferred values: no steps, no fewest, no chances.
 */
export function fourWheelsTime(): Finding {
  const problems = Array.from({ length: sets }, (_, i) => fourWheels(i + 1))
  for (const problem of problems) {
    moves(problem)
    nearest(problem)
  }
  const ours: number[] = []
  const theirs: number[] = []
  const ratios: number[] = []
  let processor = 0
  let made = 0
  let [ourCost, theirCost] = [0, 0]
  problems.forEach((problem) => {
    const rival = () => nearest(problem)
    const own = () => moves(problem)
    const pairs = Array.from({ length: 5 }, (_, round) => {
      const first = round % 2 === 0
      const [a, b] = first ? [timed(own), timed(rival)] : [timed(rival), timed(own)]
      return first ? { own: a / 1e6, rival: b / 1e6 } : { own: b / 1e6, rival: a / 1e6 }
    })
    ours.push(
      quantile(
        pairs.map((pair) => pair.own),
        0.5,
      ),
    )
    theirs.push(
      quantile(
        pairs.map((pair) => pair.rival),
        0.5,
      ),
    )
    ratios.push(
      quantile(
        pairs.map((pair) => pair.rival / pair.own),
        0.5,
      ),
    )
    processor = Math.max(processor, repeated(own, { warm: 1, runs: 5 }).processor)
    const found = moves(problem)
    made += found.moves.length
    const to: Record<string, number> = {}
    for (const move of found.moves) to[`${move.end} ${move.side} ${move.adjuster.id}`] = move.to
    ourCost += costOf(problem, valuesAt(problem, to))
    theirCost += costOf(problem, valuesAt(problem, nearest(problem)))
  })
  const value = Math.max(...ours)
  return {
    id: 'four wheels',
    what: `Moves for four wheels (eight adjusters, twelve readings and sums with limits), ${sets} invented sets of readings`,
    lines: [
      `${quantile(ours, 0.5).toFixed(1)} ms (median set; slowest ${value.toFixed(1)}, at most ${processor.toFixed(1)} on the processor; each the median of 5 runs), ${(made / sets).toFixed(1)} moves on average`,
      `a general fitter in the same run, looking only for the eight settings nearest to the preferred values: ${quantile(theirs, 0.5).toFixed(0)} ms, ${quantile(ratios, 0.5).toFixed(1)} times as long`,
      `mean square distance from the preferred values in half-widths: ours ${(ourCost / sets).toFixed(2)} with ${(made / sets).toFixed(1)} adjusters on whole steps, the fitter's ${(theirCost / sets).toFixed(2)} with all eight anywhere`,
    ],
    value,
    unit: 'ms, slowest set',
    target,
    held: value < target,
    numbers: {
      ...settings,
      median_ms: quantile(ours, 0.5),
      slowest_ms: value,
      processor_ms: processor,
      rival_ms: quantile(theirs, 0.5),
      ratio: quantile(ratios, 0.5),
      moves: made / sets,
      cost: ourCost / sets,
      rival_cost: theirCost / sets,
    },
  }
}

type Settings = Readonly<Record<string, number>>
const sides = ['left', 'right'] as const

/** All adjusters by "end side id", with where they stand. */
const adjustersOf = (problem: MovesProblem) =>
  (problem.axles as readonly CornersSetup[]).flatMap((setup) =>
    sides.flatMap((side) =>
      setup[side].adjusters.map((adjuster) => ({
        key: `${setup.end} ${side} ${adjuster.id}`,
        adjuster,
        now: setup[side].settings[adjuster.id] ?? 0,
      })),
    ),
  )

/** What each limited reading would be at settings, by exact poses. */
function valuesAt(problem: MovesProblem, to: Settings): ReadonlyMap<string, number> {
  const angles = new Map<string, number>()
  for (const setup of problem.axles as readonly CornersSetup[])
    for (const side of sides) {
      const { points, drive, adjusters, settings } = setup[side]
      const pose = (at: (id: string) => number) =>
        poseAt(
          mechanism(
            points,
            sumOfDisplacements(adjusters.map((one) => displacementOf(one, points, at(one.id)))),
          ),
          drive,
        )
      const was = pose((id) => settings[id] ?? 0)
      const will = pose((id) => to[`${setup.end} ${side} ${id}`] ?? settings[id] ?? 0)
      for (const angle of ['camber', 'toe'] as const) {
        const name = `${setup.end} ${side} ${angle}` as const
        angles.set(name, problem.readings[name]!.value + will[angle] - was[angle])
      }
    }
  const of = (name: string) => angles.get(name)!
  const thrust = (of('rear left toe') - of('rear right toe')) / 2
  angles.set('thrust', thrust)
  angles.set('front cross camber', of('front left camber') - of('front right camber'))
  angles.set('front total toe', of('front left toe') + of('front right toe'))
  angles.set('front left toe to thrust', of('front left toe') - thrust)
  angles.set('front right toe to thrust', of('front right toe') + thrust)
  return angles
}

const limitsOf = (problem: MovesProblem) =>
  Object.entries(problem.limits).map(([name, { low, high, preferred }]) => ({
    name,
    preferred: preferred ?? (low + high) / 2,
    half: (high - low) / 2,
  }))

const costOf = (problem: MovesProblem, values: ReadonlyMap<string, number>): number =>
  limitsOf(problem).reduce((sum, { name, preferred, half }, _, all) => {
    return sum + ((values.get(name)! - preferred) / half) ** 2 / all.length
  }, 0)

/** The settings nearest to the preferred values, by the fitter: one parameter per adjuster, as a share of its range. */
function nearest(problem: MovesProblem): Settings {
  const adjusters = adjustersOf(problem)
  const limits = limitsOf(problem)
  const at = (parameters: readonly number[]): Settings =>
    Object.fromEntries(
      adjusters.map(({ key, adjuster: { range } }, j) => [
        key,
        Math.min(range[1], Math.max(range[0], range[0] + parameters[j]! * (range[1] - range[0]))),
      ]),
    )
  const { parameterValues } = levenbergMarquardt(
    { x: limits.map((_, i) => i), y: limits.map(() => 0) },
    (parameters: readonly number[]) => {
      const values = valuesAt(problem, at(parameters))
      return (which: number) => {
        const { name, preferred, half } = limits[which]!
        return (values.get(name)! - preferred) / half
      }
    },
    {
      ...settings,
      initialValues: adjusters.map(
        ({ adjuster: { range }, now }) => (now - range[0]) / (range[1] - range[0]),
      ),
      minValues: adjusters.map(() => 0),
      maxValues: adjusters.map(() => 1),
    },
  )
  return at([...parameterValues])
}
