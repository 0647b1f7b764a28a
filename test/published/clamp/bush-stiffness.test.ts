import { describe } from 'vitest'
import { bushShearStress, bushStiffness, type RubberRing } from '../../../src/clamp/index.ts'
import { deg, inDegrees, mm, pascal } from '../../../src/quantity/index.ts'
import { published } from '../../support/published.ts'

const source =
  'cylindrical torsion spring in rubber: τ = 2T/(π L d²), θ = T(1/d² − 1/D²)/(π L G); G 0.3–1.2 MPa, τ 0.2–0.4 MPa; read in a public copy, numbers recomputed'

/** Diameters and length in mm, modulus in MPa; the relation is published, the numbers are worked out from it. */
const rows = [
  {
    id: '16/32 × 40, 0.7',
    sizes: [16, 32, 40, 0.7],
    stiffness: 30.0252482,
    torque15: 7.86059,
    stress15: 0.48869,
    angles: [6.139, 12.278],
  },
  {
    id: '14/30 × 45, 0.9',
    sizes: [14, 30, 45, 0.9],
    stiffness: 31.8809179,
    torque15: 8.3464,
    stress15: 0.60244,
    angles: [4.98, 9.96],
  },
  {
    id: '20/36 × 50, 1.0',
    sizes: [20, 36, 50, 1],
    stiffness: 90.8817875,
    torque15: 23.7928,
    stress15: 0.75735,
    angles: [3.961, 7.922],
  },
] as const

describe('CL1', () => {
  published(
    'bonded bush in torsion',
    rows.flatMap(({ id, sizes, stiffness, torque15, stress15, angles }) => {
      const ring: RubberRing = {
        inner: mm(sizes[0]),
        outer: mm(sizes[1]),
        length: mm(sizes[2]),
        shear: pascal(sizes[3] * 1e6),
      }
      const basis = 'derived' as const
      // angle at which the inner sleeve reaches a stress: the stress is proportional to it
      const angleAt = (stress: number) => inDegrees((stress / bushShearStress(ring, deg(15))) * deg(15))
      return [
        { id: `${id}: stiffness`, got: bushStiffness(ring), want: stiffness, within: 5e-7, source, basis },
        {
          id: `${id}: torque at 15°`,
          got: bushStiffness(ring) * deg(15),
          want: torque15,
          within: 5e-5,
          source,
          basis,
        },
        {
          id: `${id}: stress at 15°`,
          got: bushShearStress(ring, deg(15)) / 1e6,
          want: stress15,
          within: 5e-6,
          source,
          basis,
        },
        { id: `${id}: angle at 0.2 MPa`, got: angleAt(2e5), want: angles[0], within: 5e-4, source, basis },
        { id: `${id}: angle at 0.4 MPa`, got: angleAt(4e5), want: angles[1], within: 5e-4, source, basis },
      ]
    }),
  )
  published('jacking tilts the body', [
    {
      id: '10 mm across 1.5 m',
      got: inDegrees(Math.atan(mm(10) / mm(1500))),
      want: 0.4,
      within: 0.05,
      source: 'trade figure, recomputed',
      basis: 'derived',
    },
  ])
})
