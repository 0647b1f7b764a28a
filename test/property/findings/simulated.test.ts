import { beforeAll, describe, expect, test } from 'vitest'
import { rankSuspects, type SuspectKind } from '../../../src/findings/index.ts'
import { covariance } from '../../../src/measure/index.ts'
import { byPrior } from '../../support/fault-jobs/by-prior.ts'
import { byTable } from '../../support/fault-jobs/by-table.ts'
import { chance } from '../../support/fault-jobs/chance.ts'
import { faultJob } from '../../support/fault-jobs/fault-job.ts'
import { faultsOf } from '../../support/fault-jobs/faults-of.ts'
import { run } from '../../support/fault-jobs/run.ts'
import { isTruth, logScoreOf, type Scored, summaryOf } from '../../support/fault-jobs/score.ts'
import { readingsOf, type TrueVehicle, travels } from '../../support/fault-jobs/true-vehicle.ts'

const degree = Math.PI / 180

/** What a fault of the left front corner does to its readings, in degrees. */
function effectOf(
  vehicle: TrueVehicle,
  kind: string,
  { at = null, size, seed = 1 }: { at?: string | null; size: number; seed?: number },
): Record<'camber' | 'caster' | 'sai' | 'toe', number> {
  const fault = faultsOf(vehicle).find(
    ({ suspect }) => suspect.kind === kind && suspect.side === 'left' && suspect.at === at,
  )!
  const [before, after] = [vehicle, fault.apply(vehicle, size, chance(seed))].map(readingsOf)
  const by = (angle: string): number =>
    (after!.angles[`front left ${angle}` as 'front left camber']! -
      before!.angles[`front left ${angle}` as 'front left camber']!) /
    degree
  return { camber: by('camber'), caster: by('caster'), sai: by('sai'), toe: by('toe') }
}

function bothToes(vehicle: TrueVehicle, kind: string, size: number): { left: number; right: number } {
  const fault = faultsOf(vehicle).find(({ suspect }) => suspect.kind === kind)!
  const [before, after] = [vehicle, fault.apply(vehicle, size, chance(1))].map(readingsOf)
  const by = (name: 'front left toe' | 'front right toe'): number =>
    after!.angles[name]! - before!.angles[name]!
  return { left: by('front left toe'), right: by('front right toe') }
}

describe('the generator of simulated faults', () => {
  test('FD20 one seed, one job', () => {
    expect(faultJob(41).problem).toEqual(faultJob(41).problem)
    expect(faultJob(41).problem).not.toEqual(faultJob(42).problem)
  })

  // common practice, no source: a part between the joints leaves the included angle, the knuckle leaves SAI
  test('FD20 its parts move SAI, camber and included angle as the trade says', () => {
    for (const layout of ['wishbone-coil-lower', 'wishbone-coil-upper', 'wishbone-torsion-bar']) {
      const { vehicle } = faultJob(7, { layout, fault: 'healthy' })
      for (const [kind, at] of [
        ['bent lower arm', null],
        ['bent upper arm', null],
      ] as const) {
        const { camber, sai } = effectOf(vehicle, kind, { at, size: 0.008, seed: 3 })
        // not nothing: its toe went as well, and a steered wheel leans with its caster
        expect(Math.abs(camber + sai), `${layout} ${kind}`).toBeLessThan(0.25)
        expect(camber * sai, `${layout} ${kind}`).toBeLessThan(0)
      }
      const { sai, camber } = effectOf(vehicle, 'bent knuckle', { size: 0.02 })
      expect(Math.abs(sai)).toBeLessThan(0.01)
      expect(Math.abs(camber)).toBeGreaterThan(0.5)
    }
    const { vehicle } = faultJob(7, { layout: 'strut-front', fault: 'healthy' })
    const tube = effectOf(vehicle, 'bent strut tube', { size: 0.02 })
    expect(Math.abs(tube.sai)).toBeLessThan(0.05)
    expect(Math.abs(tube.camber)).toBeGreaterThan(0.3)
    const tower = effectOf(vehicle, 'shifted tower', { size: 0.01, seed: 3 })
    expect(Math.abs(tower.sai + tower.camber)).toBeLessThan(0.25)
  })

  // own derivation: the load stands outside the lower joint and tips the knuckle's top inward against what holds it
  test('FD20 whatever wears lets the wheel lean its top in', () => {
    const { vehicle } = faultJob(7, { layout: 'wishbone-coil-lower', fault: 'healthy' })
    for (const [kind, at] of [
      ['worn ball joint', 'lower-ball-joint-stud'],
      ['worn ball joint', 'upper-ball-joint-stud'],
      ['collapsed bush', 'lower-front-bolt'],
      ['collapsed bush', 'upper-front-bush-nut'],
      ['collapsed bush', 'upper-rear-bush-nut'],
      ['loose wheel bearing', null],
    ] as const)
      expect(effectOf(vehicle, kind, { at, size: 0.003 }).camber, `${kind} ${at}`).toBeLessThan(-0.05)
    // rolling drags it to toe-out
    expect(effectOf(vehicle, 'worn ball joint', { at: 'tie-rod-end-stud', size: 0.002 }).toe).toBeLessThan(
      -0.3,
    )
    // a rack beside its middle: one wheel in, the other out, as signs.md has it
    const { left, right } = bothToes(vehicle, 'rack off centre', 0.003)
    expect(left * right).toBeLessThan(0)
  })

  test('FD20 a rigid body on a flat floor shares a short spring between all four wheels', () => {
    const springs = { 'front left': 0.02, 'front right': 0, 'rear left': 0, 'rear right': 0 }
    const at = travels(springs)
    expect(at['front left']).toBeCloseTo(0.015, 12)
    expect(at['front right']).toBeCloseTo(0.005, 12)
    expect(at['rear left']).toBeCloseTo(0.005, 12)
    expect(at['rear right']).toBeCloseTo(-0.005, 12)
    // the tyres stand on one plane
    expect(at['front left'] - at['front right']).toBeCloseTo(at['rear left'] - at['rear right'], 12)
  })

  test('FD20 a solid axle keeps its camber to the floor when a spring sags', () => {
    const { vehicle } = faultJob(5, { layout: 'solid-axle-coil-rear', fault: 'healthy' })
    const sag = faultsOf(vehicle).find(
      ({ suspect }) => suspect.kind === 'sagged spring' && suspect.axle === 'rear',
    )!
    const before = readingsOf(vehicle).angles['rear left camber']!
    const after = readingsOf(sag.apply(vehicle, 0.03, chance(1))).angles['rear left camber']!
    expect(Math.abs(after - before)).toBeLessThan(0.05 * degree)
  })

  test('FD20 errors are as large as their budgets say, and shared ones are shared', () => {
    let [sum, count, cross, crossed] = [0, 0, 0, 0]
    for (let seed = 1; seed <= 80; seed++) {
      const { problem, vehicle } = faultJob(seed)
      const truth = readingsOf(vehicle).angles
      const error = (name: keyof typeof truth): number => problem.readings[name]!.value - truth[name]!
      for (const name of Object.keys(problem.readings) as (keyof typeof truth)[]) {
        const read = problem.readings[name]!
        sum += error(name) ** 2 / covariance(read, read)
        count++
      }
      const [left, right] = [problem.readings['front left caster'], problem.readings['front right caster']]
      if (!left || !right) continue
      cross += error('front left caster') * error('front right caster') - covariance(left, right)
      crossed += Math.sqrt(covariance(left, left) * covariance(right, right))
    }
    expect(sum / count).toBeGreaterThan(0.88)
    expect(sum / count).toBeLessThan(1.12)
    expect(Math.abs(cross / crossed)).toBeLessThan(0.25)
  })
})

test('FD20 what an adjuster can take back is not visible, what none can is', () => {
  const far = (fault: SuspectKind, layout: string): number[] =>
    Array.from({ length: 8 }, (_, i) => faultJob(600 + i, { fault, layout }))
      .filter(({ problem, truth }) => {
        const at = truth !== 'healthy' && truth.axle === 'rear'
        return !at && Object.keys(problem.turns).length === 0 && problem.setBack === null
      })
      .map(({ distance, size }) => distance / Math.max(1, size / 0.01))
  for (const d of far('bent steering arm or tie rod', 'wishbone-coil-lower')) expect(d).toBeLessThan(1)
  for (const d of far('tyre pulls', 'strut-front')) expect(d).toBe(0)
  expect(Math.max(...far('bent knuckle', 'wishbone-coil-lower'))).toBeGreaterThan(2)
})

// 300 jobs: about 75 visible faults and 60 healthy vehicles; each bound is the target less two standard errors of it
describe('the findings held against 300 simulated jobs', () => {
  let list: readonly Scored[] = []
  let summary = {} as ReturnType<typeof summaryOf>
  beforeAll(() => {
    list = run(rankSuspects, { n: 300, seed: 900_000 })
    summary = summaryOf(list)
  })

  test('FD21 the true part is in the first group of most visible faults, and nearly always in the first three', () => {
    expect(summary.visible).toBeGreaterThan(50)
    expect(summary.first).toBeGreaterThan(0.6)
    expect(summary.firstThree).toBeGreaterThan(0.86)
    expect(summary.sizeVisible).toBeLessThanOrEqual(3.3)
  })

  test('FD22 what is stated comes true as often as it is stated', () => {
    // ten bins of 30: honest answers alone miss by about 0.06 here
    expect(summary.calibration.error).toBeLessThan(0.05 + summary.calibration.chance)
    expect(Math.abs(summary.overConfident)).toBeLessThan(3)
  })

  test('FD22 belief goes to the truth more than by frequencies alone, or by the classical table', () => {
    const of = (by: typeof byPrior): number =>
      logScoreOf(
        list.map(({ job }) =>
          by(job).reduce((sum, { suspect, belief }) => sum + (isTruth(job.truth, suspect) ? belief : 0), 0),
        ),
      )
    expect(summary.logScore).toBeGreaterThan(of(byPrior))
    expect(summary.logScore).toBeGreaterThan(of(byTable))
  })

  test('FD23 a sound vehicle seldom gets a finding', () => {
    expect(summary.falseHealthy).toBeLessThan(0.11)
  })

  test('FD22 with every spread halved the same jobs are answered too surely', () => {
    const same = summaryOf(list.slice(0, 200))
    const worse = summaryOf(run(rankSuspects, { n: 200, seed: 900_000, spreads: 0.5 }))
    // the bounds that the run above keeps
    expect(worse.calibration.error).toBeGreaterThan(0.05 + worse.calibration.chance)
    expect(worse.falseHealthy).toBeGreaterThan(0.11)
    expect(worse.overConfident).toBeGreaterThan(6)
    expect(worse.logScore).toBeLessThan(same.logScore)
  })
})
