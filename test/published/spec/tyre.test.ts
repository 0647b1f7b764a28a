import { inMillimetres, mm } from '../../../src/quantity/index.ts'
import { loadOfIndex, parseTyre, rollingCircumference, speedOfSymbol } from '../../../src/spec/index.ts'
import { published } from '../../support/published.ts'

const source = 'ISO 4000-1 / ETRTO metric designation, D = d + 2 H, H = 0.01 S Ra'
const rows = [
  ['205/55R16', 112.75, 631.9, 315.95, 'published'],
  ['215/65R17', 139.75, 711.3, 355.65, 'published'],
  ['225/60R17', 135.0, 701.8, 350.9, 'published'],
  ['185/65R15', 120.25, 621.5, 310.75, 'derived'],
  ['245/40R18', 98.0, 653.2, 326.6, 'derived'],
] as const

// Widths in whole mm, shares in whole percent, rims in whole inches: the arithmetic is exact to 0.01 mm.
const within = 0.005

published(
  'SP11 what a designation makes of a tyre',
  rows.flatMap(([designation, height, diameter, radius, basis]) => [
    {
      id: `tyre.${designation}.height`,
      got: () => inMillimetres(parseTyre(designation).sectionHeight),
      want: height,
      within,
      source,
      basis,
    },
    {
      id: `tyre.${designation}.diameter`,
      got: () => inMillimetres(parseTyre(designation).diameter),
      want: diameter,
      within,
      source,
      basis,
    },
    {
      id: `tyre.${designation}.radius`,
      got: () => inMillimetres(parseTyre(designation).diameter) / 2,
      want: radius,
      within,
      source,
      basis,
    },
  ]),
)

published('SP11 rolling circumference', [
  {
    id: 'tyre.rolling',
    got: () => inMillimetres(rollingCircumference({ diameter: mm(631.9), construction: 'radial' })!),
    want: 1927.3,
    within: 0.05,
    source: 'ETRTO design guide, Cr = F D, F = 3.05 for radial tyres',
    basis: 'from memory',
  },
])

const web = 'a tyre dealer’s public table of load indices and speed symbols'
published('SP11 load indices', [
  ...(
    [
      [81, 462],
      [82, 475],
      [85, 515],
      [86, 530],
      [87, 545],
      [90, 600],
      [92, 630],
      [95, 690],
      [96, 710],
      [112, 1120],
    ] as const
  ).map(([index, want]) => ({
    id: `load-index.${index}`,
    got: () => loadOfIndex(index),
    want,
    within: 0.5,
    source: web,
  })),
])
published(
  'SP11 speed symbols',
  (
    [
      ['N', 140],
      ['Q', 160],
      ['S', 180],
      ['T', 190],
      ['H', 210],
      ['V', 240],
      ['W', 270],
      ['Y', 300],
    ] as const
  ).map(([symbol, want]) => ({
    id: `speed-symbol.${symbol}`,
    got: () => speedOfSymbol(symbol)!,
    want,
    within: 0.5,
    source: web,
  })),
)
