import {
  normalQuantile,
  rectangular,
  resolution,
  solveSymmetric,
  standardUncertainty,
} from '../../../src/measure/index.ts'
import { published } from '../../support/published.ts'

const boxOf = 'JCGM 100:2008, 4.3.7, example 1'

// Thermometer: correction against temperature, straight line by least squares about 20 °C.
const reading = [21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.01, 26.511]
const correction = [-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.16]
const sumOf = (f: (i: number) => number) => reading.reduce((sum, _, i) => sum + f(i), 0)
const by = (i: number) => reading[i]! - 20
const matrix = [
  [reading.length, sumOf(by)],
  [sumOf(by), sumOf((i) => by(i) ** 2)],
]
const [y1, y2] = solveSymmetric(matrix, [sumOf((i) => correction[i]!), sumOf((i) => by(i) * correction[i]!)])
const s2 = sumOf((i) => (correction[i]! - y1! - y2! * by(i)) ** 2) / (reading.length - 2)
const inverse = [solveSymmetric(matrix, [1, 0]), solveSymmetric(matrix, [0, 1])]
const thermometer = 'JCGM 100:2008, H.3, Table H.6, H.3.3'

published('ME16 single errors and means', [
  {
    id: 'gum.4.3.7.copper',
    got: standardUncertainty(rectangular(0.4, 'copper')),
    want: 0.23,
    within: 0.005,
    source: boxOf,
    basis: 'from memory',
  },
  {
    id: 'gum.4.3.5.evens',
    got: 0.04 / normalQuantile(0.75),
    want: 0.06,
    within: 0.005,
    source: 'JCGM 100:2008, 4.3.5, example',
    basis: 'from memory',
  },
  {
    id: 'gum.F.2.2.1.step',
    got: standardUncertainty(resolution(1, 'display')),
    want: 0.29,
    within: 0.005,
    source: 'JCGM 100:2008, F.2.2.1 (u = 0.29 δx)',
    basis: 'from memory',
  },
  { id: 'gum.H3.y1', got: y1!, want: -0.1712, within: 0.00005, source: thermometer, basis: 'from memory' },
  { id: 'gum.H3.y2', got: y2!, want: 0.00218, within: 0.000005, source: thermometer, basis: 'from memory' },
  {
    id: 'gum.H3.s',
    got: Math.sqrt(s2),
    want: 0.0035,
    within: 0.00005,
    source: thermometer,
    basis: 'from memory',
  },
  {
    id: 'gum.H3.sy1',
    got: Math.sqrt(s2 * inverse[0]![0]!),
    want: 0.0029,
    within: 0.00005,
    source: thermometer,
    basis: 'from memory',
  },
  {
    id: 'gum.H3.sy2',
    got: Math.sqrt(s2 * inverse[1]![1]!),
    want: 0.00067,
    within: 0.000005,
    source: thermometer,
    basis: 'from memory',
  },
  {
    id: 'gum.H3.r',
    got: inverse[0]![1]! / Math.sqrt(inverse[0]![0]! * inverse[1]![1]!),
    want: -0.93,
    within: 0.0005,
    source: thermometer,
    basis: 'from memory',
  },
])
