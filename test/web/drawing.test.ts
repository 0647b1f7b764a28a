import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { deg } from '../../src/quantity/index.ts'
import { seenAs } from '../../src/web/drawing/corner-view.ts'
import { degreeText } from '../../src/web/drawing/degree-text.ts'
import { glued } from '../../src/web/drawing/glued.ts'
import { outline } from '../../src/web/drawing/outline.ts'
import { placeBalloons } from '../../src/web/drawing/place-balloons.ts'
import { roundTicks, scaleOver } from '../../src/web/drawing/scale.ts'
import { tyre } from '../../src/web/drawing/tyre.ts'
import { law, near } from '../support/law.ts'

const finite = fc.double({ min: -1, max: 1, noNaN: true })

describe('numbers', () => {
  test('WE15 angles on axes: no plus, no long zero, the true minus', () => {
    const texts = [0, -0, 1e-9, -1e-9, deg(-1), deg(-0.5), deg(2.25), deg(0.3)].map(degreeText)
    expect(texts).toEqual(['0', '0', '0', '0', '−1', '−0.5', '2.25', '0.3'])
  })

  law(
    'WE15 no angle prints as a signed zero',
    finite,
    (angle) => !/^[+−]?0\.?0*$/.test(degreeText(angle)) || degreeText(angle) === '0',
  )

  test('numbers keep their sign and unit at the end of a line', () => {
    expect(glued('caster to ± 0.22° and 92 % at 3 mm')).toBe(
      'caster to ±\u00a00.22° and 92\u00a0% at 3\u00a0mm',
    )
    expect(glued('5 more')).toBe('5 more')
  })
})

describe('scales', () => {
  law(
    'ticks are inside the range, evenly apart and not many',
    fc.tuple(finite, fc.double({ min: 1e-3, max: 2, noNaN: true })),
    ([low, span]) => {
      const ticks = roundTicks(low, low + span, 5)
      if (ticks.length > 6) throw new Error(`${ticks.length} ticks`)
      for (const tick of ticks)
        if (tick < low - 1e-12 || tick > low + span + 1e-12) throw new Error(`tick ${tick}`)
      for (let i = 2; i < ticks.length; i++)
        near(ticks[i]! - ticks[i - 1]!, ticks[1]! - ticks[0]!, { abs: 1e-9 })
      return ticks.length > 0 || span === 0
    },
  )
  test('edges: nothing to mark, one value', () => {
    expect(roundTicks(1, 1, 5)).toEqual([])
    expect(roundTicks(Number.NaN, 1, 5)).toEqual([])
    expect(Number.isFinite(scaleOver([2, 2], 0, 100)(2))).toBe(true)
  })
})

describe('views', () => {
  test('WE16 front: the left of the vehicle is on the right; outside: the front of a left wheel is on the left', () => {
    const left = [0.1, 0.8, 0.3] as const
    expect(seenAs('front', 'left')(left)).toEqual([0.8, 0.3])
    expect(seenAs('side', 'left')(left)).toEqual([-0.1, 0.3])
    expect(seenAs('side', 'right')(left)).toEqual([0.1, 0.3])
    expect(seenAs('plan', 'left')(left)).toEqual([-0.8, 0.1])
  })

  test('an upright tyre is as wide and as high as it is, and shows its rim from outside only', () => {
    const wheel = { centre: [0, 0.8, 0.33], spinAxis: [0, 1, 0], radius: 0.33, width: 0.21 } as const
    const front = tyre(wheel, seenAs('front', 'left'))
    const xs = front.outline.map((p) => p[0])
    const zs = front.outline.map((p) => p[1])
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(0.21, 12)
    expect(Math.max(...zs) - Math.min(...zs)).toBeCloseTo(0.66, 12)
    expect(front.rim).toBeNull()
    const side = tyre(wheel, seenAs('side', 'left'))
    expect(side.rim).not.toBeNull()
    for (const [x, z] of side.outline) near(Math.hypot(x, z - 0.33), 0.33, { rel: 1e-9 })
  })

  law(
    'an outline has every point on or inside it',
    fc.array(fc.tuple(finite, finite), { minLength: 3, maxLength: 30 }),
    (points) => {
      const ring = outline(points)
      return points.every((p) =>
        ring.every((a, i) => {
          const b = ring[(i + 1) % ring.length]!
          return (b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]) >= -1e-12
        }),
      )
    },
  )

  test('WE17 balloons of a crowded corner stand clear of each other and inside', () => {
    const joints = [
      [60, 60],
      [66, 62],
      [140, 70],
      [142, 150],
      [60, 150],
      [64, 152],
      [130, 120],
      [66, 118],
    ].map(([x, y]) => ({ x: x!, y: y! }))
    const box = { width: 240, height: 220 }
    const lines = [
      [joints[0]!, joints[2]!],
      [joints[4]!, joints[3]!],
      [joints[2]!, joints[3]!],
    ] as const
    const places = placeBalloons(joints, lines, box)
    expect(places).toHaveLength(joints.length)
    places.forEach((p, i) => {
      expect(Math.min(p.x, p.y, box.width - p.x, box.height - p.y)).toBeGreaterThanOrEqual(13)
      for (const q of places.slice(i + 1)) expect(Math.hypot(p.x - q.x, p.y - q.y)).toBeGreaterThan(26)
    })
  })
})
