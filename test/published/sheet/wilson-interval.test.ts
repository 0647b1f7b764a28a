import { wilsonInterval } from '../../../src/sheet/wilson-interval.ts'
import { published } from '../../support/published.ts'

const newcombe =
  'Newcombe: Two-sided confidence intervals for the single proportion, Statistics in Medicine 17 (1998), table I, score method without continuity correction'

// [seen, of, low, high], printed to four places
const rows = [
  [81, 263, 0.2553, 0.3662],
  [15, 148, 0.0624, 0.1605],
  [0, 20, 0, 0.1611],
  [1, 29, 0.0061, 0.1718],
] as const

published(
  'SH62 Wilson interval',
  rows.flatMap(([count, of, low, high]) => [
    {
      id: `wilson.${count}-of-${of}.low`,
      got: wilsonInterval(count, of).low,
      want: low,
      within: 0.00005,
      source: newcombe,
      basis: 'from memory' as const,
    },
    {
      id: `wilson.${count}-of-${of}.high`,
      got: wilsonInterval(count, of).high,
      want: high,
      within: 0.00005,
      source: newcombe,
      basis: 'from memory' as const,
    },
  ]),
)
