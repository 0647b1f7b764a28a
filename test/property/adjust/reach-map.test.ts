import { describe, expect, test } from 'vitest'
import {
  type Adjuster,
  displacementOf,
  type MapPoint,
  moves,
  priorResponse,
  reachMap,
  type WheelSetup,
} from '../../../src/adjust/index.ts'
import { mechanism, poseAt, sumOfDisplacements } from '../../../src/linkage/index.ts'
import { covarianceMatrix, seededRandom } from '../../../src/measure/index.ts'
import { deg, mm } from '../../../src/quantity/index.ts'
import { near, refuses } from '../../support/law.ts'
import { axle, read, readings, sheet, still, wheel } from './axle-problem.ts'
import { eccentric, rearLinks } from './invented-corners.ts'

const now = { camber: read(-1.18, 0.06, 'camber', 0.02), caster: read(2.2, 0.16, 'caster', 0.02) }
const start = wheel({ front: deg(20), rear: deg(-10), 'tie rod': 0.5 })

function at(setup: WheelSetup, settings: Record<string, number>): MapPoint {
  const pose = (set: Record<string, number>) =>
    poseAt(
      mechanism(
        setup.points,
        sumOfDisplacements(setup.adjusters.map((one) => displacementOf(one, setup.points, set[one.id]!))),
      ),
      setup.drive,
    )
  const [was, is] = [pose(setup.settings as Record<string, number>), pose(settings)]
  return [now.camber.value + is.camber - was.camber, now.caster.value + is.caster! - was.caster!]
}

function holds(outline: readonly MapPoint[], [x, y]: MapPoint): boolean {
  let inside = false
  outline.forEach(([x1, y1], i) => {
    const [x2, y2] = outline[(i + 1) % outline.length]!
    if (y1 > y !== y2 > y && x < ((x2 - x1) * (y - y1)) / (y2 - y1) + x1) inside = !inside
  })
  return inside
}

describe('AD18 reach map', () => {
  const map = reachMap({ wheel: start, now })!
  test('AD18 every setting inside the range lies inside the outline', () => {
    const random = seededRandom(3)
    for (let k = 0; k < 200; k++) {
      // a chord between two points of the outline cuts a curve by less than this share of the range
      const settings = {
        front: deg(88) * (2 * random() - 1),
        rear: deg(88) * (2 * random() - 1),
        'tie rod': 0.5,
      }
      expect(holds(map.outline, at(start, settings)), JSON.stringify(settings)).toBe(true)
    }
  })
  test('AD18 the outline goes through the four corners of the settings, and encloses no more', () => {
    for (const front of [-90, 90])
      for (const rear of [-90, 90]) {
        const corner = at(start, { front: deg(front), rear: deg(rear), 'tie rod': 0.5 })
        const nearest = Math.min(...map.outline.map(([x, y]) => Math.hypot(x - corner[0], y - corner[1])))
        near(nearest, 0, { abs: 1e-9 })
      }
    // area of the outline against the area of the settings' image, by a fine grid of quadrilaterals
    const area = (ring: readonly MapPoint[]) =>
      Math.abs(
        ring.reduce((sum, [x, y], i) => {
          const [u, v] = ring[(i + 1) % ring.length]!
          return sum + (x * v - u * y) / 2
        }, 0),
      )
    let image = 0
    const stroke = (k: number) => Math.asin(-1 + k / 8)
    for (let i = 0; i < 16; i++)
      for (let j = 0; j < 16; j++)
        image += area(
          [
            [i, j],
            [i + 1, j],
            [i + 1, j + 1],
            [i, j + 1],
          ].map(([a, b]) => at(start, { front: stroke(a!), rear: stroke(b!), 'tie rod': 0.5 })),
        )
    near(area(map.outline), image, { rel: 0.002 })
  })
  test('AD18 the path starts at the reading and follows the moves', () => {
    const path = reachMap({
      wheel: start,
      now,
      moves: [
        { id: 'rear', to: deg(30), label: '1' },
        { id: 'front', to: deg(60), label: '2' },
      ],
    })!.path
    expect(path.map((one) => one.label)).toEqual(['now', '1', '2'])
    const second = at(start, { front: deg(60), rear: deg(30), 'tie rod': 0.5 })
    near(path[2]!.at[0], second[0], { abs: 1e-12 })
    near(path[2]!.at[1], second[1], { abs: 1e-12 })
    expect(path[1]!.ellipse).toBeNull()
  })
  test('AD18 three adjusters: the outline still holds every setting and turns one way only', () => {
    const shims: Adjuster = {
      kind: 'shims',
      id: 'shims',
      name: 'upper shims',
      moves: ['upperFrontInner', 'upperRearInner'],
      along: [0, 1, 0],
      sizes: [mm(1)],
      range: [mm(0), mm(6)],
      step: mm(1),
      play: mm(0),
      asDrawn: mm(3),
    }
    const three: WheelSetup = {
      ...start,
      adjusters: [shims, ...start.adjusters],
      settings: { ...start.settings, shims: mm(3) },
    }
    const { outline } = reachMap({ wheel: three, now })!
    const random = seededRandom(8)
    for (let k = 0; k < 100; k++) {
      const settings = {
        front: deg(85) * (2 * random() - 1),
        rear: deg(85) * (2 * random() - 1),
        shims: mm(0.1) + mm(5.8) * random(),
        'tie rod': 0.5,
      }
      expect(holds(outline, at(three, settings)), JSON.stringify(settings)).toBe(true)
    }
    const turns = outline.map((p, i) => {
      const [q, r] = [outline[(i + 12) % outline.length]!, outline[(i + 24) % outline.length]!]
      return (q[0] - p[0]) * (r[1] - q[1]) - (q[1] - p[1]) * (r[0] - q[0])
    })
    expect(turns.every((turn) => turn > 0)).toBe(true)
  })
  test.each([false, true])(
    'AD18 the path of the moves ends where they are foreseen (learned: %s)',
    (learned) => {
      const prior = priorResponse(start, { known: 'typical', source: 'x' })
      const taught = { ...prior, mean: prior.mean.map((_, i) => 0.2 + 0.1 * i) }
      const setup = learned ? { ...start, response: taught } : start
      const problem = {
        axles: [axle(setup, setup)],
        readings: readings([-1.3, 3.2, 0.1, -0.5, 3.2, 0.1]),
        limits: sheet,
      }
      const found = moves(problem)
      const foreseen = (angle: string) => found.foreseen.find((one) => one.name === `front left ${angle}`)!
      const left = found.moves.filter((move) => move.side === 'left')
      const map = reachMap({
        wheel: setup,
        now: { camber: foreseen('camber').now, caster: foreseen('caster').now },
        moves: left.map((move) => ({ id: move.adjuster.id, to: move.to, label: String(move.order) })),
      })!
      near(map.path.at(-1)!.at[0], foreseen('camber').after.value, { abs: 1e-12 })
      near(map.path.at(-1)!.at[1], foreseen('caster').after.value, { abs: 1e-12 })
      const ended = reachMap({
        wheel: setup,
        now: { camber: foreseen('camber').now, caster: foreseen('caster').now },
        moves: left.map((move) => ({ id: move.adjuster.id, to: move.to, label: String(move.order) })),
        after: { camber: foreseen('camber').after, caster: foreseen('caster').after },
      })!
      expect(ended.path.at(-1)!.ellipse).toHaveLength(48)
    },
  )
  test('AD18 the ellipse holds 95 % of two normal values with their covariance', () => {
    const cov = covarianceMatrix([now.camber, now.caster])
    const det = cov[0]![0]! * cov[1]![1]! - cov[0]![1]! ** 2
    for (const [x, y] of map.path[0]!.ellipse!) {
      const [dx, dy] = [x - now.camber.value, y - now.caster.value]
      const distance = (cov[1]![1]! * dx * dx - 2 * cov[0]![1]! * dx * dy + cov[0]![0]! * dy * dy) / det
      // chi-squared with 2 degrees of freedom, 95 %: 5.9915
      near(distance, 5.9915, { abs: 1e-4 })
    }
  })
  test('AD18 a layout without caster has no map, one washer has a line', () => {
    const rear: WheelSetup = { points: rearLinks, drive: still, adjusters: [], settings: {} }
    expect(reachMap({ wheel: rear, now })).toBeNull()
    const one: WheelSetup = { ...start, adjusters: [eccentric('front', 'upperFrontInner', { throw: mm(5) })] }
    const line = reachMap({ wheel: one, now })!.outline
    near(line[6]![0], line[18]![0], { abs: 1e-4 })
    expect(reachMap({ wheel: { ...start, adjusters: [] }, now })!.outline).toEqual([])
  })
  refuses(
    'setting-out-of-range',
    () => reachMap({ wheel: start, now, moves: [{ id: 'front', to: 3, label: '' }] }),
    'front',
  )
  refuses('bad-adjuster', () => {
    const bad = eccentric('front', 'upperFrontInner', { throw: mm(-5) })
    return reachMap({ wheel: { ...start, adjusters: [bad] }, now })
  })
  refuses(
    'no-such-point',
    () => reachMap({ wheel: { ...start, adjusters: [eccentric('front', 'nowhere')] }, now }),
    'front',
  )
})
