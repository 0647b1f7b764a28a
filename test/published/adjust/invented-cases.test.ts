// Rows worked out with a general-purpose numeric library on invented geometry, confirmed by a closed form and
// by 40-digit arithmetic that share no code with it.
import { describe, test } from 'vitest'
import { type Adjuster, displacementOf, type MovesProblem, moves } from '../../../src/adjust/index.ts'
import { type DoubleWishbone, mechanism, poseAt, sumOfDisplacements } from '../../../src/linkage/index.ts'
import { deg, inDegrees, metre, mm, type Radian, turn } from '../../../src/quantity/index.ts'
import { eccentric, longArms, tieRod, tiltedAxes } from '../../property/adjust/invented-corners.ts'
import { near } from '../../support/law.ts'
import { published } from '../../support/published.ts'

const source = 'invented geometry solved with a general numeric library, checked with 40 digits'
const angles = ['camber', 'caster', 'toe', 'sai'] as const
const still = { travel: metre(0), rack: metre(0) }

interface Inverse {
  readonly delta: { readonly camber: number; readonly caster: number; readonly toe: number }
  readonly front: number
  readonly rear: number
  /** m */
  readonly tie: number
}
interface Case {
  readonly id: string
  readonly corner: DoubleWishbone
  readonly front: Adjuster
  readonly rear: Adjuster
  /** Degrees per degree of washer, degrees per millimetre of tie rod; camber, caster, toe, sai. */
  readonly slopes: {
    readonly front: readonly number[]
    readonly rear: readonly number[]
    readonly tie: readonly number[]
  }
  readonly inverse: readonly Inverse[]
}

const cases: readonly Case[] = [
  {
    id: 'dw1-light-truck-long-arms',
    corner: longArms,
    front: eccentric('front', 'upperFrontInner', { throw: mm(7), along: [0.0, 1.0, 0.0] }),
    rear: eccentric('rear', 'upperRearInner', { throw: mm(7), along: [0.0, 1.0, 0.0] }),
    slopes: {
      front: [0.010382951282065974, 0.021147748189320408, -0.0037819444192624153, -0.009732708462231749],
      rear: [0.011145782483018748, -0.021051034154777788, -0.0026207053466392265, -0.01117269687255801],
      tie: [-0.03316554544397746, -0.0004703040446612493, 0.36734050974943705, -0.0022816440994505006],
    },
    inverse: [
      {
        delta: { camber: 0.3, caster: 0.4, toe: 0 },
        front: 25.0472655225197,
        rear: 5.3501821597036345,
        tie: 0.00028124287007950623,
      },
      {
        delta: { camber: -0.5, caster: 0, toe: 0.1 },
        front: -24.0616452520638,
        rear: -24.169317438626962,
        tie: -0.00013607161522992804,
      },
      {
        delta: { camber: 0.15, caster: -0.6, toe: -0.2 },
        front: -8.264782491845414,
        rear: 20.709303722120048,
        tie: -0.0004793102947390942,
      },
    ],
  },
  {
    id: 'dw3-tilted-axes-anti-dive',
    corner: tiltedAxes,
    front: eccentric('front', 'upperFrontInner', {
      throw: mm(6),
      along: [0.07918075824648958, 0.9897594780811197, -0.11877113736973437],
    }),
    rear: eccentric('rear', 'upperRearInner', {
      throw: mm(6),
      along: [-0.05923200129647006, 0.9872000216078344, 0.14808000324117515],
    }),
    slopes: {
      front: [0.008497384834679073, 0.014659992306154532, -0.003362526520214099, -0.007929126447351576],
      rear: [0.009369815606498964, -0.014476238455753696, -0.0033664723181258847, -0.009196358515850737],
      tie: [-0.043478034764023975, -0.0022873565104445117, 0.41414381841582976, -0.0018553052713105773],
    },
    inverse: [
      {
        delta: { camber: 0.35, caster: 0.5, toe: 0 },
        front: 42.32696028684715,
        rear: 4.390831995954364,
        tie: 0.0003395420642625278,
      },
      {
        delta: { camber: -0.45, caster: 0.2, toe: 0.1 },
        front: -18.49383058462592,
        rear: -34.160280003177135,
        tie: -0.00016313777644721375,
      },
      {
        delta: { camber: 0.2, caster: -0.55, toe: 0.15 },
        front: -7.132591984617592,
        rear: 32.470576481042194,
        tie: 0.0005594934081254562,
      },
    ],
  },
]

const read = (one: Case, front: number, rear: number, tie: number) => {
  const set = [
    displacementOf(one.front, one.corner, deg(front)),
    displacementOf(one.rear, one.corner, deg(rear)),
    displacementOf(tieRod(), one.corner, turn(tie / mm(1.5))),
  ]
  const pose = poseAt(mechanism(one.corner, sumOfDisplacements(set)), still)
  return angles.map((angle) => inDegrees(pose[angle]!))
}

describe('AD1', () => {
  for (const one of cases) {
    const slope = (h: number, at: (h: number) => number[], k: number) => {
      // fourth-order central difference
      const [a, b, c, d] = [at(-2 * h), at(-h), at(h), at(2 * h)]
      return (a![k]! - 8 * b![k]! + 8 * c![k]! - d![k]!) / (12 * h)
    }
    const turned = {
      front: (h: number) => read(one, h, 0, 0),
      rear: (h: number) => read(one, 0, h, 0),
      tie: (h: number) => read(one, 0, 0, mm(h)),
    }
    published(
      `${one.id}: sensitivities, height held`,
      (['front', 'rear', 'tie'] as const).flatMap((which) =>
        angles.map((angle, k) => ({
          id: `${which} ${angle}`,
          got: () => slope(which === 'tie' ? 0.2 : 0.5, turned[which], k),
          want: one.slopes[which][k]!,
          // rounding of poses (1e-12°) over a step of half a degree, and the fourth order
          within: 1e-9,
          source,
          basis: 'derived' as const,
        })),
      ),
    )
    published(
      `${one.id}: settings for given changes`,
      one.inverse.flatMap((row, r) => {
        const was = read(one, 0, 0, 0)
        const is = read(one, row.front, row.rear, row.tie)
        return (['camber', 'caster', 'toe'] as const).map((angle, k) => ({
          id: `row ${r + 1} ${angle}`,
          got: is[k]! - was[k]!,
          want: row.delta[angle],
          within: 1e-9,
          source,
          basis: 'derived' as const,
        }))
      }),
    )
  }
})

describe('AD6', () => {
  for (const one of cases)
    one.inverse.forEach((row, r) => {
      test(`AD6 ${one.id} row ${r + 1}: asked for these changes, the moves are these settings`, () => {
        const fine = <A extends Adjuster>(adjuster: A): A => ({ ...adjuster, step: 1e-6 as A['step'] })
        const wheel = {
          points: one.corner,
          drive: still,
          adjusters: [fine(one.front), fine(one.rear), fine(tieRod())],
          settings: { front: 0, rear: 0, 'tie rod': 0 },
        }
        const exact = (value: number) => ({ value: deg(value) as Radian, parts: [] })
        const target = (delta: number) => ({ low: deg(delta - 0.001), high: deg(delta + 0.001) })
        const problem: MovesProblem = {
          axles: [{ end: 'front', left: wheel, right: { ...wheel, adjusters: [] } }],
          readings: {
            'front left camber': exact(0),
            'front left caster': exact(0),
            'front left toe': exact(0),
          },
          limits: {
            'front left camber': target(row.delta.camber),
            'front left caster': target(row.delta.caster),
            'front left toe': target(row.delta.toe),
          },
        }
        const found = moves(problem, { draws: 100 })
        const to = (id: string) => found.moves.find((move) => move.adjuster.id === id)!.to
        // limits of ±0.001° leave a slack; the middle is preferred to 1e-6 of the half-width
        near(inDegrees(to('front')), row.front, { abs: 2e-4 })
        near(inDegrees(to('rear')), row.rear, { abs: 2e-4 })
        near(to('tie rod') * mm(1.5), row.tie, { abs: 2e-8 })
      })
    })
})
