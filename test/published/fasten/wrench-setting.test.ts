import { describe } from 'vitest'
import { torqueThrough, type WrenchClass, wrenchDeviation, wrenchSetting } from '../../../src/fasten/index.ts'
import { deg, inch, lbfIn, mm, Nm } from '../../../src/quantity/index.ts'
import { published } from '../../support/published.ts'

describe('FA8 adapters', () => {
  published('FA8 adapter in line with the wrench', [
    {
      id: 'tm1-1500.lengthen',
      got: wrenchSetting({ torque: lbfIn(300), reach: inch(10), offset: inch(4), angle: deg(0) }),
      want: lbfIn(214),
      within: lbfIn(0.5), // printed to 1 lbf·in
      source: 'US Army TM 1-1500-204-23-9, fig. 8-16 and para (a), read in a public copy',
    },
    {
      id: 'tm9-254.straight',
      got: torqueThrough({ setting: lbfIn(60), reach: inch(12), offset: inch(2), angle: deg(0) }),
      want: lbfIn(70),
      within: lbfIn(0.5),
      source: 'US Army TM 9-254, fig. 4-5, example, read in a public copy',
    },
  ])
  published(
    'FA8 any angle',
    (
      [
        [0, 88.888889],
        [30, 90.23209],
        [45, 91.87897],
        [60, 94.117647],
        [90, 100],
        [120, 106.666667],
        [180, 114.285714],
      ] as const
    ).map(([angle, want]) => ({
      id: `adapter.angle${angle}`,
      got: wrenchSetting({ torque: Nm(100), reach: mm(400), offset: mm(50), angle: deg(angle) }),
      want,
      within: 5e-6, // the coarsest is printed to five decimals
      source: 'formula of US Army TM 9-254, fig. 4-6',
      basis: 'derived' as const,
    })),
  )
})

describe('FA10 wrench classes', () => {
  const rows: readonly (readonly [WrenchClass, number, number])[] = [
    ['I A', 6, 6],
    ['I B', 6, 4],
    ['I C', 6, 4],
    ['I D', 6, 6],
    ['I E', 6, 4],
    ['II A', 6, 4],
    ['II B', 6, 4],
    ['II C', 6, 4],
    ['II D', 6, 6],
    ['II E', 6, 6],
    ['II F', 6, 6],
    ['II G', 6, 6],
  ]
  published(
    'largest deviation, percent',
    rows.flatMap(([kind, small, large]) =>
      (
        [
          [10, small],
          [10.1, large],
        ] as const
      ).map(([most, want]) => ({
        id: `${kind}, up to ${most} N·m`,
        got: wrenchDeviation(kind, Nm(most)) * 100,
        want,
        within: 0.5,
        source: 'ISO 6789-1:2017, 5.1.5',
        basis: 'from memory' as const,
      })),
    ),
  )
})
