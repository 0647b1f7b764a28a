import { runOutFit } from '../../../src/gauge/index.ts'
import { deg, inDegrees } from '../../../src/quantity/index.ts'
import { published } from '../../support/published.ts'

const source = 'discrete Fourier first harmonic; SAE J2133 uses the first harmonic of run-out'
const sine = (degrees: readonly number[], readings: readonly number[]) =>
  runOutFit(degrees.map((at, i) => ({ wheelTurn: deg(at), reading: readings[i]! })))
const rows = [
  ['3x120', sine([0, 120, 240], [0.12, -0.31, 0.43]), [0.08, 0.04, -0.427239199, 0.429107601, 275.348689]],
  ['4x90', sine([0, 90, 180, 270], [0.25, 0.1, -0.05, 0.1]), [0.1, 0.15, 0, 0.15, 0]],
  [
    '8x45',
    sine(
      [0, 45, 90, 135, 180, 225, 270, 315],
      [0.3149, 0.3494, 0.2964, 0.1869, 0.0851, 0.0506, 0.1036, 0.2131],
    ),
    [0.2, 0.114902426, 0.096389327, 0.149978231, 39.992609],
  ],
] as const

published(
  'GA4 run-out as a sine',
  rows.flatMap(([id, got, [mean, cos, sin, amplitude, phase]]) => {
    const row = (what: string, value: number, want: number) => ({
      id: `runout.${id}.${what}`,
      got: value,
      want,
      within: 1e-6,
      source,
    })
    return [
      row('a0', got.mean, mean),
      row('a1', got.cos, cos),
      row('b1', got.sin, sin),
      row('amplitude', got.amplitude, amplitude),
      row('phase', ((inDegrees(got.phase) + 180) % 360) - 180, ((phase + 180) % 360) - 180),
    ]
  }),
)
