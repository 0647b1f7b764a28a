import { describe, expect, test } from 'vitest'
import { drawnVehicle } from '../../../bench/drawn-vehicle.ts'
import { moveOf, onVehicle, taken } from '../../../bench/twelve-measurements.ts'
import { type Adjuster, displacementOf } from '../../../src/adjust/index.ts'
import {
  adjustersOf,
  angleRead,
  type Corner,
  type CornerMeasurement,
  changeByMove,
  changeOf,
  cornerPoints,
  distanceBetween,
  type FittedCorner,
  fitCorner,
  foreseenOf,
  isWholeAxle,
  type Observable,
  offsetOf,
  otherWheelTurned,
  slopeOf,
  workshopMeasurements,
} from '../../../src/corner/index.ts'
import { mechanism, poseAt, sumOfDisplacements } from '../../../src/linkage/index.ts'
import {
  combine,
  covariance,
  type Measured,
  normal,
  seededRandom,
  standardUncertainty,
} from '../../../src/measure/index.ts'
import { deg, metre, mm, rad } from '../../../src/quantity/index.ts'
import { near } from '../../support/law.ts'
import { cornerOf, startingCorners as corners } from './starting-corners.ts'

const seed = 20261125
const byCorner = [...corners.keys()].filter((id) => !isWholeAxle(cornerOf(id).layout))

/** The corner with every coordinate, camber and toe moved. */
function moved(corner: Corner, names: readonly string[], way: readonly number[], by: number): Corner {
  const points = { ...corner.points }
  names.forEach((name, i) => {
    const [x, y, z] = points[name]!.at
    const shift = (k: number) => way[3 * i + k]! * by
    points[name] = { ...points[name]!, at: [metre(x + shift(0)), metre(y + shift(1)), metre(z + shift(2))] }
  })
  const turned = (angle: number, k: number) => rad(angle + way[3 * names.length + k]! * by)
  const { camber, toe } = corner.wheel
  return { ...corner, points, wheel: { ...corner.wheel, camber: turned(camber, 0), toe: turned(toe, 1) } }
}

/** Slopes by unknown, got out through an answer's errors with all unknowns uncertain by a little, each by itself. */
function slopesOf(fit: FittedCorner, of: Observable): number[] {
  const little = fit.covariance.map((row, a) => row.map((_, b) => (a === b ? 1e-12 : 0)))
  const { parts } = foreseenOf({ ...fit, covariance: little }, of, 'f')
  return fit.values.map((_, i) => 1e6 * (parts.find(({ source }) => source === `f, ${i + 1}`)?.effect ?? 0))
}

/** What no layout to start from has: wedges, and a bolt that turns the stub, both already away from where they are drawn. */
function handMade(corner: Corner): readonly Observable[] {
  if (isWholeAxle(corner.layout)) return []
  const common = { id: 'made', name: 'made', step: rad(0.001), play: rad(0), seenFrom: 'front' } as const
  const range = [rad(-0.05), rad(0.05)] as const
  const sizes = [deg(0.5), deg(1)]
  const moves: readonly Adjuster[] = [
    { ...common, kind: 'wedge', tilts: 'camber', sizes, range },
    { ...common, kind: 'wedge', tilts: 'toe', sizes, range },
    {
      ...common,
      kind: 'slotted bolt',
      turns: 'stub',
      pivot: [0.02, 0.6, 0.3],
      axis: [-0.8, 0.6, 0],
      boltSpacing: mm(55),
      range: [mm(-3), mm(3)],
      step: mm(0.1),
      play: mm(0),
    },
  ]
  const made = moves.map((adjuster) => ({
    adjuster,
    from: adjuster.range[1] / 3,
    to: adjuster.range[1],
    standing: 0,
    travel: mm(25),
  }))
  return (['camber', 'toe'] as const).flatMap((angle) => [
    ...made.map((move) => changeByMove(angle, move)),
    changeByMove(angle, made[0]!, made[2]!),
  ])
}

describe('CO27 slopes are what differences give, for everything that can be measured', () => {
  for (const [id, typical] of corners)
    test(id, () => {
      const random = seededRandom(seed)
      const corner = drawnVehicle(typical, random)
      const fit = fitCorner({ corner, measurements: [] })
      const { points, count } = fit.unknowns
      const list = workshopMeasurements(corner).map(({ of }) => of)
      const h = 2e-5
      const ways = Array.from({ length: 4 }, () => Array.from({ length: count }, () => random.normal()))
      const around = ways.map((way) =>
        [2 * h, h, -h, -2 * h].map((by) => onVehicle(moved(corner, points, way, by))),
      )
      // distances are many and all alike
      const some = [
        ...handMade(corner),
        ...list.filter((of, i) => of.says.includes('change') || of.says.includes('turn') || i % 7 === 0),
      ]
      for (const of of some) {
        const stated = slopesOf(fit, of)
        const scale = Math.hypot(...stated)
        ways.forEach((way, w) => {
          const [a, b, c, d] = around[w]!.map((on) => on(of)) as [number, number, number, number]
          const difference = (8 * (b - c) - (a - d)) / (12 * h)
          near(
            stated.reduce((sum, slope, i) => sum + slope * way[i]!, 0),
            difference,
            { abs: 1e-7 * scale + 1e-8 },
          )
        })
      }
      expect(some.length).toBeGreaterThan(0)
    }, 60_000)
})

describe('CO28 what is measured is what the linkage itself computes', () => {
  for (const id of byCorner)
    test(id, () => {
      const corner = drawnVehicle(cornerOf(id), seededRandom(7))
      const on = onVehicle(corner)
      const m = mechanism(cornerPoints(corner))
      const ride = poseAt(m, { travel: metre(0), rack: metre(0) })
      for (const angle of ['camber', 'toe', 'caster', 'sai'] as const) {
        if (ride[angle] === null) continue
        near(on(angleRead(angle)), ride[angle], { abs: 1e-12 })
        const up = poseAt(m, { travel: mm(35), rack: metre(0) })
        near(on(angleRead(angle, { travel: mm(35) })), up[angle]!, { abs: 1e-12 })
        const rise = changeOf(angleRead(angle), angleRead(angle, { travel: mm(35) }))
        near(on(rise), up[angle]! - ride[angle], { abs: 1e-12 })
      }
      for (const adjuster of adjustersOf(corner)) {
        const [low, high] = adjuster.range
        const [from, to] = [low + 0.3 * (high - low), low + 0.8 * (high - low)]
        // as drawn: stroke 0, which lies in the middle of the range but for shims
        const standing = adjuster.kind === 'shims' ? (adjuster.asDrawn ?? 0) : 0
        const posed = (setting: number) =>
          poseAt(mechanism(cornerPoints(corner), displacementOf(adjuster, cornerPoints(corner), setting)), {
            travel: metre(0),
            rack: metre(0),
          })
        near(on(changeByMove('toe', { adjuster, from, to, standing })), posed(to).toe - posed(from).toe, {
          abs: 1e-11,
        })
      }
      const all = adjustersOf(corner).map((adjuster) => {
        const [low, high] = adjuster.range
        return {
          adjuster,
          from: low + 0.4 * (high - low),
          to: low + 0.7 * (high - low),
          standing: adjuster.kind === 'shims' ? (adjuster.asDrawn ?? 0) : 0,
        }
      })
      const posedAll = (end: 'from' | 'to') => {
        const points = cornerPoints(corner)
        const by = sumOfDisplacements(all.map((move) => displacementOf(move.adjuster, points, move[end])))
        return poseAt(mechanism(points, by), { travel: metre(0), rack: metre(0) })
      }
      near(on(changeByMove('camber', ...all)), posedAll('to').camber - posedAll('from').camber, {
        abs: 1e-11,
      })
      const names = Object.keys(corner.points)
      const [a, b] = ['wheel-centre', names.find((name) => /inner|pivot/.test(name))!]
      const [p, q] = [corner.points[a]!.at, corner.points[b]!.at]
      near(on(distanceBetween(a, b)), Math.hypot(p[0] - q[0], p[1] - q[1], p[2] - q[2]), { abs: 1e-12 })
      near(on(offsetOf({ point: a, way: 'up' })), p[2], { abs: 1e-12 })
      near(on(offsetOf({ point: a, way: 'across', from: b })), p[1] - q[1], { abs: 1e-12 })
      near(on(slopeOf({ from: b, to: a, seen: 'front' })), Math.atan2(p[2] - q[2], Math.abs(p[1] - q[1])), {
        abs: 1e-12,
      })
      near(
        on(slopeOf({ from: b, to: a })),
        Math.asin((p[2] - q[2]) / Math.hypot(...p.map((x, i) => x - q[i]!))),
        {
          abs: 1e-12,
        },
      )
    })

  test('the outer wheel of a turn is the mirror image of the inner one on the same rack', () => {
    for (const id of ['wishbone-coil-lower', 'strut-front']) {
      const corner = cornerOf(id)
      const m = mechanism(cornerPoints(corner))
      const toe = (rack: number) => poseAt(m, { travel: metre(0), rack: metre(rack) }).toe
      // the rack that turns this wheel 20° outward, by halving
      let [low, high] = [-0.09, 0.09]
      const rising = toe(0.01) > toe(-0.01)
      for (let i = 0; i < 60; i++) {
        const middle = (low + high) / 2
        if (toe(middle) - toe(0) > -deg(20) === rising) high = middle
        else low = middle
      }
      const outer = toe(-(low + high) / 2) - toe(0)
      near(onVehicle(corner)(otherWheelTurned(deg(20))), outer, { abs: 1e-9 })
      near(onVehicle(corner)(angleRead('toe', { outward: deg(20) })), toe(0) - deg(20), { abs: 1e-9 })
    }
  })
})

describe('CO29 measuring what is already so changes nothing; measuring all of it exactly finds the vehicle', () => {
  for (const id of corners.keys())
    test(id, () => {
      const corner = cornerOf(id)
      const on = onVehicle(corner)
      const all = workshopMeasurements(corner)
      const same = fitCorner({
        corner,
        measurements: all.slice(0, 30).map((one, i) => taken(one, on(one.of), i)),
      })
      for (const { off } of same.residuals) near(off, 0, { abs: 1e-9 })
      for (const name of same.unknowns.points)
        for (const k of [0, 1, 2])
          near(same.corner.points[name]!.at[k]!, corner.points[name]!.at[k]!, { abs: 1e-9 })

      const vehicle = drawnVehicle(corner, seededRandom(3))
      const truly = onVehicle(vehicle)
      const exact = all.map((one, i) => taken({ ...one, spread: one.spread / 1000 }, truly(one.of), i))
      const found = fitCorner({ corner, measurements: exact })
      for (const { measurement, fitted } of found.residuals)
        near(fitted, truly(measurement.of), { abs: measurement.of.unit === 'm' ? 1e-5 : 2e-5 })
    })
})

/** The spread without what the curve of the answer adds, which is looked at in a few places only. */
const straightSpread = ({ parts }: Measured): number =>
  Math.hypot(...parts.filter(({ source }) => !source.includes('curve')).map(({ effect }) => effect))

describe('CO30 what is added never makes it worse, and order does not count', () => {
  for (const id of ['wishbone-torsion-bar', 'strut-front', 'semi-trailing-rear'])
    test(id, () => {
      const corner = cornerOf(id)
      const on = onVehicle(corner)
      const { question } = moveOf(corner, adjustersOf(corner)[0]!)
      const list = workshopMeasurements(corner)
        .filter((_, i) => i % 5 === 0)
        .map((one, i) => taken(one, on(one.of), i))
      let before = Number.POSITIVE_INFINITY
      for (let n = 0; n <= list.length; n++) {
        const now = straightSpread(
          foreseenOf(fitCorner({ corner, measurements: list.slice(0, n) }), question),
        )
        expect(now).toBeLessThanOrEqual(before * (1 + 1e-9))
        before = now
      }
      const back = fitCorner({ corner, measurements: [...list].reverse() })
      near(straightSpread(foreseenOf(back, question)), before, { rel: 1e-6 })
    })

  test('two readings with one zero between them count as that', () => {
    const corner = cornerOf('strut-front')
    const on = onVehicle(corner)
    const zero = normal(deg(0.5), 'zero of the gauge')
    const own = (i: number) => normal(deg(0.02), `reading ${i}`)
    const at = [angleRead('camber'), angleRead('camber', { travel: mm(40) })]
    const together = at.map((of, i) => ({
      of,
      read: combine(
        [
          { of: zero, times: 1 },
          { of: own(i), times: 1 },
        ],
        on(of),
      ),
    }))
    const change = changeOf(at[0]!, at[1]!)
    const asChange = { of: change, read: { ...normal(deg(0.02) * Math.SQRT2, 'both'), value: on(change) } }
    const spread = (measurements: readonly CornerMeasurement[]) =>
      standardUncertainty(foreseenOf(fitCorner({ corner, measurements }), change))
    near(spread(together), spread([asChange]), { rel: 0.02 })
    expect(covariance(together[0]!.read, together[1]!.read)).toBeGreaterThan(0)
  })
})
