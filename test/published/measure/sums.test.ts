import {
  combine,
  expandedUncertainty,
  halfWidth,
  type Measured,
  monteCarlo,
  normal,
  propagate,
  rectangular,
  standardUncertainty,
} from '../../../src/measure/index.ts'
import { published } from '../../support/published.ts'

const sum = (ms: readonly Measured[]) => combine(ms.map((of) => ({ of, times: 1 })))
const box = (u: number, source: string) => rectangular(u * Math.sqrt(3), source)
const four = sum(['a', 'b', 'c', 'd'].map((s) => normal(1, s)))
const boxes = sum(['a', 'b', 'c', 'd'].map((s) => box(1, s)))
const wide = sum([...['a', 'b', 'c'].map((s) => box(1, s)), box(10, 'd')])
const additive = 'JCGM 101:2008, 9.2.2-9.2.4, Tables 2-4'

published('ME4 sums of boxes', [
  {
    id: '9.2.2.u',
    got: standardUncertainty(four),
    want: 2,
    within: 0.005,
    source: additive,
    basis: 'from memory',
  },
  { id: '9.2.2.95', got: halfWidth(four), want: 3.92, within: 0.005, source: additive, basis: 'from memory' },
  {
    id: '9.2.3.u',
    got: standardUncertainty(boxes),
    want: 2,
    within: 0.005,
    source: additive,
    basis: 'from memory',
  },
  {
    id: '9.2.3.95',
    got: halfWidth(boxes),
    want: 3.88,
    within: 0.005,
    source: additive,
    basis: 'from memory',
  },
  {
    id: '9.2.3.classical',
    got: expandedUncertainty(boxes),
    want: 3.92,
    within: 0.005,
    source: additive,
    basis: 'from memory',
  },
  {
    id: '9.2.4.u',
    got: standardUncertainty(wide),
    want: 10.1,
    within: 0.05,
    source: additive,
    basis: 'from memory',
  },
  { id: '9.2.4.95', got: halfWidth(wide), want: 17, within: 0.05, source: additive, basis: 'from memory' },
  {
    id: '9.2.4.classical',
    got: expandedUncertainty(wide),
    want: 19.9,
    within: 0.05,
    source: additive,
    basis: 'from memory',
  },
])

// Milligrams and kg/m³.
const difference = ([m, d, air, weight, reference]: readonly number[]) =>
  (m! + d!) * (1 + (air! - 1.2) * (1 / weight! - 1 / reference!)) - 100_000
const inputs = [
  normal(0.05, 'reference', 100_000),
  normal(0.02, 'added', 1.234),
  rectangular(0.1, 'air', 1.2),
  rectangular(1000, 'density of the weight', 8000),
  rectangular(50, 'density of the reference', 8000),
]
const straight = propagate(difference, inputs)
const drawn = monteCarlo(difference, inputs, { draws: 400_000, seed: 20261125 })
const mass = 'JCGM 101:2008, 9.3, Tables 5 and 6'
// Drawn limits: the standard error of a 2.5 % limit at 400,000 draws is √(p(1−p)/n)/f ≈ 0.0003 mg, a shortest
// interval wanders several times more along its flat bottom: 0.002 mg, as the source's own tolerance.
published('ME5 mass calibration', [
  { id: '9.3.dm', got: straight.value, want: 1.234, within: 0.0005, source: mass, basis: 'from memory' },
  {
    id: '9.3.u.first',
    got: standardUncertainty(straight),
    want: 0.0539,
    within: 0.00005,
    source: mass,
    basis: 'from memory',
  },
  {
    id: '9.3.low.first',
    got: straight.value - expandedUncertainty(straight),
    want: 1.1285,
    within: 0.0002,
    source: mass,
    basis: 'from memory',
  },
  {
    id: '9.3.high.first',
    got: straight.value + expandedUncertainty(straight),
    want: 1.3395,
    within: 0.0002,
    source: mass,
    basis: 'from memory',
  },
  { id: '9.3.dm.drawn', got: drawn.mean, want: 1.2341, within: 0.0004, source: mass, basis: 'from memory' },
  {
    id: '9.3.u.drawn',
    got: drawn.standardUncertainty,
    want: 0.0754,
    within: 0.0003,
    source: mass,
    basis: 'from memory',
  },
  {
    id: '9.3.low.drawn',
    got: drawn.shortest.low,
    want: 1.0834,
    within: 0.002,
    source: mass,
    basis: 'from memory',
  },
  {
    id: '9.3.high.drawn',
    got: drawn.shortest.high,
    want: 1.3825,
    within: 0.002,
    source: mass,
    basis: 'from memory',
  },
])
