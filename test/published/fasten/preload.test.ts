import { describe } from 'vitest'
import {
  forceLever,
  nutFactors,
  parseThread,
  preloadByNutFactor,
  preloadOf,
  scattered,
  scatterOf,
  type TighteningMethod,
  threadLoads,
  tighteningFactor,
  torqueByNutFactor,
  torqueFor,
  turnForPreload,
  yieldPreload,
} from '../../../src/fasten/index.ts'
import { exact, standardUncertainty } from '../../../src/measure/index.ts'
import { inch, lbfIn, metre, mm, Nm, newton, pascal } from '../../../src/quantity/index.ts'
import { type PublishedRow, published } from '../../support/published.ts'

const LBF = 0.45359237 * 9.80665
const KSI = (1000 * LBF) / 0.0254 ** 2
const inLbfIn = (torque: number) => torque / lbfIn(1)
const same = (mu: number) => ({ low: mu, high: mu })

describe('FA3 the long form', () => {
  const thread = parseThread('1/2-13 UNC')
  const preload = 0.55 * 150 * KSI * thread.stressArea
  // equation (24) puts 1.156 μ d for threads and head together: 0.531 for the threads, 0.625 for a head of 1.25 d
  const torque = torqueFor(newton(preload), {
    thread,
    threadFriction: same(0.15),
    bearing: { low: inch(0.625), high: inch(0.625) },
  })
  const handbook = "Machinery's Handbook, 31st ed., p. 1665"
  // It puts 0.531·d for the threads, a mean diameter of 0.92 d; this thread has d2 = 0.9 d. The difference, in lbf·in:
  const meanDiameter = (0.531 * 0.5 - 0.577 * 0.45) * 0.15 * 11_707
  published('Machinery’s Handbook', [
    {
      id: 'mh.1665 preload, lbf',
      got: preload / LBF,
      want: 11_707,
      within: 0.0005 * 11_707,
      source: `${handbook}, example`,
    },
    {
      id: 'mh.1665 torque, lbf·in',
      got: inLbfIn(torque.value),
      want: 1158,
      within: meanDiameter + 0.5 + 0.001 * 1158,
      source: `${handbook}, equation (24)`,
    },
    {
      id: 'mh.1665 torque, lbf·ft',
      got: inLbfIn(torque.value) / 12,
      want: 96.5,
      within: meanDiameter / 12 + 0.05 + 0.001 * 96.5,
      source: `${handbook}, equation (24)`,
    },
    {
      id: 'mh.eq23, its own coefficients',
      got: inLbfIn(
        preload *
          forceLever({
            // a mean thread diameter that makes 0.577·d2 its 0.531·d
            thread: { pitch: inch(1 / 13), pitchDiameter: inch((0.531 * 0.5) / 0.577) },
            threadFriction: 0.15,
            bearingFriction: 0.15,
            bearingDiameter: inch(0.625),
          }),
      ),
      want: 1158.2,
      within: 0.001 * 1158.2, // its 0.159 and 0.531 have three digits
      source: `${handbook}, equation (23)`,
    },
  ])
  const iso = 'ISO 16047:2005: T = F[P/(2π) + 1.154 μ_th d2/2 + μ_b D_b/2]'
  published(
    'torque per force, M10, D_b 13.1 mm',
    (
      [
        [0.12, 0.12, 1.649673],
        [0.1, 0.14, 1.676517],
        [0.15, 0.15, 2.002409],
      ] as const
    ).map(([threadFriction, bearingFriction, want]) => ({
      id: `μ ${threadFriction}, ${bearingFriction}`,
      got:
        forceLever({
          thread: parseThread('M10'),
          threadFriction,
          bearingFriction,
          bearingDiameter: mm(13.1),
        }) * 1000,
      want,
      within: 1e-5 * want,
      source: iso,
      basis: 'from memory' as const,
    })),
  )
  const shigley = parseThread('3/4-16 UNF')
  published('exact form on a 3/4-16 UNF', [
    {
      id: 'shigley.8-3, T = 3551 lbf·in',
      got: inLbfIn(
        25_000 *
          LBF *
          forceLever({
            thread: shigley,
            threadFriction: 0.15,
            bearingFriction: 0.15,
            bearingDiameter: inch(1.25 * 0.75),
          }),
      ),
      want: 3551,
      // it divides the threads' part, 1793, by 1 − μ·tan λ/cos 30° = 1 − 0.0049, which the long form leaves out (8.7),
      // 0.577 cuts 1/(2 cos 30°) (0.9), and it is printed to 1 (0.5)
      within: 8.7 + 0.9 + 0.5,
      source: "Shigley's Mechanical Engineering Design, example 8-3, equation (8-26)",
      basis: 'from memory',
    },
    {
      id: 'shigley.8-3, T = 3750 lbf·in',
      got: inLbfIn(torqueByNutFactor({ factor: 0.2, diameter: inch(0.75), preload: newton(25_000 * LBF) })),
      want: 3750,
      within: 0.5,
      source: "Shigley's Mechanical Engineering Design, example 8-3, equation (8-27)",
      basis: 'from memory',
    },
    {
      id: 'shigley.8-3.stress, preload in % of proof',
      got: (25_000 * LBF * 100) / threadLoads(shigley, 'grade 5').proof,
      want: 78.8,
      within: 0.1, // area printed 0.373: 0.13 % of 78.8
      source: "Shigley's Mechanical Engineering Design, example 8-3 (a)",
      basis: 'from memory',
    },
    {
      id: 'turn-of-nut, degrees',
      got:
        (turnForPreload({
          preload: newton(25_000 * LBF),
          pitch: inch(1 / 16),
          boltStiffness: (6.5e6 * LBF) / 0.0254,
          partsStiffness: (13.8e6 * LBF) / 0.0254,
        }) *
          180) /
        Math.PI,
      want: 32.59,
      within: 0.005,
      source: "Shigley's Mechanical Engineering Design, turn-of-the-nut relation on example 8-3",
      basis: 'derived',
    },
  ])
})

describe('FA4 the nut factor', () => {
  const speck = 'Mechanical Fastening, Joining, and Assembly (Speck), 2nd ed., p. 85'
  published(
    'T = K·d·F',
    (
      [
        [0.3, 72.7],
        [0.25, 60.6],
        [0.2, 48.5],
        [0.15, 36.3],
        [0.1, 24.2],
      ] as const
    ).map(([factor, want]) => ({
      id: `K ${factor}`,
      got: inLbfIn(torqueByNutFactor({ factor, diameter: inch(0.19), preload: newton(1275 * LBF) })),
      want,
      within: 0.0501, // half the last digit; 60.5625 and 36.3375 sit close to it
      source: speck,
    })),
  )
  published(
    'table of factors',
    (
      [
        ['nonplated, black finish', 0.3],
        ['zinc-plated', 0.2],
        ['lubricated', 0.18],
        ['cadmium-plated', 0.16],
        ['with an anti-seize compound', 0.12],
        ['with proprietary low-friction nuts', 0.09],
      ] as const
    ).map(([condition, want]) => ({
      id: condition,
      // through the formula: the preload of 1 N·m on a bolt of 1 m is 1/K
      got:
        1 /
        preloadByNutFactor({
          factor: nutFactors.find((one) => one.condition === condition)!.factor,
          diameter: metre(1),
          torque: Nm(1),
        }),
      want,
      within: 0.0005,
      source: "Shigley's Mechanical Engineering Design, table 8-15, read in a public copy",
    })),
  )
})

describe('FA5 scatter by method', () => {
  const vdi = 'VDI 2230 (1986 edition), table of tightening factors, read in a public copy'
  const rows: readonly (readonly [TighteningMethod, readonly [number, number], readonly [number, number]])[] =
    [
      ['yield-controlled', [5, 12], [1.11, 1.27]],
      ['angle-controlled', [5, 12], [1.11, 1.27]],
      ['hydraulic', [9, 23], [1.2, 1.6]],
      ['torque wrench, torque found by test on the joint', [17, 23], [1.41, 1.6]],
      ['torque wrench, friction estimated', [23, 28], [1.6, 1.78]],
      ['precision torque screwdriver', [26, 43], [1.7, 2.51]],
    ]
  published(
    'half-width in percent and factor',
    rows.flatMap(([method, [low, high], [alphaLow, alphaHigh]]): PublishedRow[] => {
      const { low: a, high: b } = scatterOf(method)
      // p is printed to 1 %: dα = 2 dp/(1 − p)², and α to 0.01 (1.2 and 1.6 are copied as printed)
      const room = (p: number) => (2 * 0.005) / (1 - p) ** 2 + 0.005
      return [
        { id: `${method}, low`, got: a * 100, want: low, within: 0.5, source: vdi },
        { id: `${method}, high`, got: b * 100, want: high, within: 0.5, source: vdi },
        { id: `${method}, α low`, got: tighteningFactor(a), want: alphaLow, within: room(a), source: vdi },
        { id: `${method}, α high`, got: tighteningFactor(b), want: alphaHigh, within: room(b), source: vdi },
      ]
    }),
  )
  published('from largest to least preload, and the wrench in it', [
    {
      id: 'vdi2230.example, 41.9 kN / 1.8',
      // α = 1.8 belongs to p = (α − 1)/(α + 1)
      got: 41.9 / tighteningFactor(0.8 / 2.8),
      want: 23.3,
      within: 0.05,
      source: 'VDI 2230 (2015) as applied in a fastener handbook example, step 4, read in a public copy',
    },
    {
      id: 'scatter.pm30',
      got: scatterOf('common torque wrench').high * 100,
      want: 30,
      within: 0.5,
      source: 'fastener glossary, “Preload accuracy”, read in a public copy',
    },
    {
      id: '±30 % with a ±4 % wrench',
      got: standardUncertainty(scattered('common torque wrench', 0.04)) * Math.sqrt(3) * 100,
      want: 30.3,
      within: 0.05,
      source: 'root of the sum of squares, √(30² + 4²)',
      basis: 'derived',
    },
  ])
})

describe('FA6 stretched and twisted at once', () => {
  const rows = [
    ['M8', 0.1, 19.103, 21.62, 10.3],
    ['M8', 0.12, 18.627, 24.56, 10.3],
    ['M8', 0.14, 18.132, 27.28, 10.3],
    ['M10', 0.1, 30.35, 42.6, 12.8],
    ['M10', 0.12, 29.603, 48.44, 12.8],
    ['M10', 0.14, 28.823, 53.87, 12.8],
    ['M14x1.5', 0.1, 66.401, 124.37, 17.55],
    ['M14x1.5', 0.12, 64.9, 142.75, 17.55],
    ['M14x1.5', 0.14, 63.306, 159.92, 17.55],
    ['M16', 0.1, 82.918, 180.15, 20],
    ['M16', 0.12, 80.974, 205.93, 20],
    ['M16', 0.14, 78.924, 229.96, 20],
  ] as const
  const preloadAt = (name: string, threadFriction: number) =>
    yieldPreload({ thread: parseThread(name), yield: pascal(640e6), threadFriction, share: 0.9 })
  const torqueAt = (name: string, mu: number, ring: number) =>
    torqueFor(preloadAt(name, mu), {
      thread: parseThread(name),
      threadFriction: same(mu),
      bearing: { low: mm(ring), high: mm(ring) },
    }).value
  const tables = 'VDI 2230 Part 1, tables A1, M12, 8.8, μ = 0.14, read in a public copy'
  published('the table', [
    {
      id: 'M12 8.8 preload, kN',
      got: preloadAt('M12', 0.14) / 1000,
      want: 41.9,
      within: 0.1,
      source: `${tables}; areas of the table are rounded: 0.2 % more than half a digit`,
    },
    { id: 'M12 8.8 torque, N·m', got: torqueAt('M12', 0.14, 15.05), want: 93, within: 0.5, source: tables },
  ])
  published(
    'its formula',
    rows.flatMap(([name, mu, preload, torque, ring]): PublishedRow[] => {
      const { pitch, pitchDiameter } = parseThread(name)
      // VDI rounds 1/2π to 0.16 and 1/(2 cos 30°) up to 0.58; ISO 16047, and we, have 0.577
      const rounding =
        preload * 1000 * ((0.16 - 1 / (2 * Math.PI)) * pitch + (0.58 - 0.577) * pitchDiameter * mu)
      const source = 'VDI 2230 Part 1, formula of tables A1'
      const basis = 'derived' as const
      return [
        {
          id: `${name} μ ${mu} kN`,
          got: preloadAt(name, mu) / 1000,
          want: preload,
          within: 1e-4 * preload,
          source,
          basis,
        },
        {
          id: `${name} μ ${mu} N·m`,
          got: torqueAt(name, mu, ring),
          want: torque,
          within: rounding + 1e-4 * torque + 0.005,
          source,
          basis,
        },
      ]
    }),
  )
  published('and back', [
    {
      id: 'M12: 93 N·m at μ 0.14 pulls 41.9 kN',
      got:
        preloadOf(exact(93), {
          thread: parseThread('M12'),
          threadFriction: same(0.14),
          bearing: { low: mm(15.05), high: mm(15.05) },
        }).preload.value / 1000,
      want: 41.9,
      within: (0.5 / 93) * 41.9 + 0.05, // 93 is printed to 1 N·m
      source: tables,
      basis: 'derived', // the same pair as above, the other way round
    },
  ])
})
