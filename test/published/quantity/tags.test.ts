import { deg, inch } from '../../../src/quantity/index.ts'
import { published } from '../../support/published.ts'

published('QU1 exact conversion factors', [
  {
    id: 'unit.in',
    got: inch(1) * 1000,
    want: 25.4,
    within: 1e-12,
    source: 'NIST SP 811 (2008), B.8 (exact)',
  },
  {
    id: 'unit.deg',
    got: deg(1),
    want: 1.745329e-2,
    within: 5e-9,
    source: 'NIST SP 811 (2008), B.8',
    basis: 'from memory',
  },
])
