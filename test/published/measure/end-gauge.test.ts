import {
  arcsine,
  budget,
  combine,
  effectiveDof,
  expandedUncertainty,
  type Measured,
  monteCarlo,
  normal,
  propagate,
  rectangular,
  standardUncertainty,
  studentQuantile,
} from '../../../src/measure/index.ts'
import { published } from '../../support/published.ts'

// Lengths in nm, temperatures in °C. A part from repeats: its uncertainty and degrees of freedom.
const fromRepeats = (effect: number, source: string, dof: number, value = 0): Measured => ({
  value,
  parts: [{ source, effect, shape: 'student', dof }],
})
const sum = (...ms: Measured[]) => combine(ms.map((of) => ({ of, times: 1 })))
const length = ([ls, d, dAlpha, theta, alpha, dTheta]: readonly number[]) =>
  ls! + d! - ls! * (dAlpha! * theta! + alpha! * dTheta!)
const d = sum(
  fromRepeats(5.8, 'repeats', 24, 215),
  fromRepeats(3.9, 'comparator, random', 5),
  fromRepeats(6.7, 'comparator, systematic', 8),
)
const theta = sum(normal(0.2, 'bed', -0.1), arcsine(0.5, 'cycle'))
const alpha = rectangular(2e-6, 'expansion', 11.5e-6)
const l = propagate(length, [
  fromRepeats(25, 'standard', 18, 50_000_623),
  d,
  fromRepeats(1e-6 / Math.sqrt(3), 'difference of expansion', 50),
  theta,
  alpha,
  fromRepeats(0.05 / Math.sqrt(3), 'difference of temperature', 2),
])
const bent = monteCarlo(
  length,
  [
    normal(25, 'standard', 50_000_623),
    sum(
      normal(5.8, 'repeats', 215),
      normal(3.9, 'comparator, random'),
      normal(6.7, 'comparator, systematic'),
    ),
    rectangular(1e-6, 'difference of expansion'),
    theta,
    alpha,
    rectangular(0.05, 'difference of temperature'),
  ],
  { draws: 200_000, seed: 20261125 },
)
const part = (source: string) => Math.abs(budget(l).find((line) => line.source === source)?.effect ?? 0)
const source = 'JCGM 100:2008, Annex H.1, Table H.1, H.1.6, H.1.7'

published('ME5 end-gauge calibration', [
  { id: 'gum.H1.l', got: l.value, want: 50_000_838, within: 0.5, source },
  { id: 'gum.H1.uc', got: standardUncertainty(l), want: 32, within: 0.5, source },
  // The source adds the squares of components printed to 0.1 nm and cuts: ± 2·25·0.05.
  { id: 'gum.H1.uc2', got: standardUncertainty(l) ** 2, want: 1002, within: 2.5, source },
  { id: 'gum.H1.nu', got: Math.floor(effectiveDof(l)), want: 16, within: 0.5, source },
  { id: 'gum.H1.k99', got: studentQuantile(0.995, 16), want: 2.92, within: 0.005, source },
  // The source multiplies the rounded 32 nm: ± 2.92 · 0.5 nm before rounding; its checks allow 1 nm.
  { id: 'gum.H1.U99', got: expandedUncertainty(l, 0.99), want: 93, within: 1, source },
  { id: 'gum.H1.u.ls', got: part('standard'), want: 25, within: 0.05, source },
  { id: 'gum.H1.u.d0', got: part('repeats'), want: 5.8, within: 0.05, source },
  { id: 'gum.H1.u.d1', got: part('comparator, random'), want: 3.9, within: 0.05, source },
  { id: 'gum.H1.u.d2', got: part('comparator, systematic'), want: 6.7, within: 0.05, source },
  { id: 'gum.H1.u.dAlpha', got: part('difference of expansion'), want: 2.9, within: 0.05, source },
  { id: 'gum.H1.u.dTheta', got: part('difference of temperature'), want: 16.6, within: 0.05, source },
  { id: 'gum.H1.second-order', got: bent.standardUncertainty, want: 34, within: 0.5, source },
])

published('ME10 effective degrees of freedom', [
  {
    id: 'welch',
    got: effectiveDof({
      value: 0,
      parts: [
        [25, 18],
        [5.8, 24],
        [3.9, 5],
        [6.7, 8],
        [2.887, 50],
        [16.599, 2],
      ].map(([effect, dof], i) => ({ source: `${i}`, effect: effect!, shape: 'student', dof: dof! })),
    }),
    want: 16.752,
    within: 0.0005,
    source: 'JCGM 100:2008, G.4.1 (G.2b), applied to H.1',
    basis: 'derived',
  },
  {
    id: 'gum.G4.1.nu',
    // 0.25 %, 0.57 %, 0.82 % from 10, 5 and 15 readings
    got: effectiveDof(sum(fromRepeats(0.25, 'a', 9), fromRepeats(0.57, 'b', 4), fromRepeats(0.82, 'c', 14))),
    want: 19,
    within: 0.05,
    source: 'JCGM 100:2008, G.4.1, example',
    basis: 'from memory',
  },
  {
    id: 'gum.G4.1.U95',
    got: expandedUncertainty(
      sum(fromRepeats(0.25, 'a', 9), fromRepeats(0.57, 'b', 4), fromRepeats(0.82, 'c', 14)),
    ),
    want: 2.2,
    within: 0.05,
    source: 'JCGM 100:2008, G.4.1, example',
    basis: 'from memory',
  },
])
