import { topics } from '../../../src/cli/sums/topics.ts'
import { published } from '../../support/published.ts'

/** A number of a sum's answer, by the function that the command calls. */
function numberOf(
  question: string,
  words: Readonly<Record<string, string>>,
  name: string,
  unit?: string,
): number {
  const sum = topics.find((topic) => topic.name === question)!.work(new Map(Object.entries(words)))
  const found = sum.numbers.find((one) => one.name === name && (unit === undefined || one.unit === unit))
  if (!found) throw new Error(`${question} says nothing of ${name}.`)
  return found.value
}

// id, caster, SAI, heading to each side, camber at left and right turn, caster by the sine form; degrees, left wheel
const sweeps = [
  ['castersweep.c3.k12.cam0.th10', 3, 12, 10, 0.707333499, -0.336187409, 3.004699],
  ['castersweep.c3.k12.cam0.th15', 3, 12, 15, 1.194617502, -0.36194414, 3.007046],
  ['castersweep.c3.k12.cam0.th20', 3, 12, 20, 1.766689903, -0.29237894, 3.010157],
  ['castersweep.c6.k13.cam-1.th20', 6, 13, 20, 1.861222151, -2.253264127, 6.014977],
  ['castersweep.c8.k14.cam-1.th15', 8, 14, 15, 1.573367578, -2.584197898, 8.0318],
  ['castersweep.c-1.k6.cam0.5.th20', -1, 6, 20, 0.521137679, 1.206259388, -1.001581],
  ['castersweep.c4.k10.cam-2.th15', 4, 10, 15, -0.624037574, -2.687576443, 3.986451],
] as const
const turn =
  'rigid rotation of the spindle about the steering axis (invariant k·s); method subject of SAE Technical Paper 850219 (1985)'
// camber is printed to 1e-9°, the sine form to 1e-6°
const close = { within: 1e-6, source: turn, basis: 'derived' } as const

published(
  'CM8 sum caster',
  sweeps.flatMap(([id, caster, sai, heading, left, right, sine]) => {
    const words = { sai: `${sai}°` }
    const at = (camber: number) => `${heading}° ${camber}°`
    const onLeft = { ...words, side: 'left', left: at(left), right: at(right) }
    // the right wheel is the mirror; and a minus at the right end says the same
    const onRight = { ...words, side: 'right', left: at(right), right: `-${at(left)}` }
    return [
      { id: `${id}.left`, got: numberOf('caster', onLeft, 'caster'), want: caster, ...close },
      { id: `${id}.right`, got: numberOf('caster', onRight, 'caster'), want: caster, ...close },
      { id: `${id}.sine`, got: numberOf('caster', onLeft, 'caster by the factor'), want: sine, ...close },
    ]
  }),
)

const factor = (to: string) =>
  numberOf('caster', { side: 'left', left: `${to}° 1°`, right: `${to}° -1°` }, 'sweep factor')
const table = 'trade table of this project, computed from the sine form 1/(2 sin θ)'
published(
  'CM8 sum caster: sweep factors',
  (
    [
      ['10', 2.879],
      ['15', 1.932],
      ['20', 1.462],
      ['25', 1.183],
    ] as const
  ).map(([to, want]) => ({
    id: `factor.${to}`,
    got: factor(to),
    want,
    within: 0.0005,
    source: table,
    basis: 'derived' as const,
  })),
)

const fourier = 'discrete Fourier first harmonic; SAE J2133 uses the first harmonic of run-out'
// id, places in degrees, readings, amplitude, phase of the highest in degrees
const runOuts = [
  ['runout.3x120', [0, 120, 240], [0.12, -0.31, 0.43], 0.429107601, 275.348689],
  ['runout.4x90', [0, 90, 180, 270], [0.25, 0.1, -0.05, 0.1], 0.15, 0],
  [
    'runout.8x45',
    [0, 45, 90, 135, 180, 225, 270, 315],
    [0.3149, 0.3494, 0.2964, 0.1869, 0.0851, 0.0506, 0.1036, 0.2131],
    0.149978231,
    39.992609,
  ],
] as const
published(
  'CM8 sum run-out',
  runOuts.flatMap(([id, places, readings, amplitude, phase]) => {
    const words = {
      readings: places.map((at, i) => `${at}°: ${readings[i]} mm`).join(', '),
      diameter: '400 mm',
    }
    // the source prints amplitude and phase to 1e-6; the total is twice the amplitude
    const shared = { within: 2e-6, source: fourier }
    const at = numberOf('run-out', words, 'highest at')
    return [
      { id: `${id}.total`, got: numberOf('run-out', words, 'total'), want: 2 * amplitude, ...shared },
      { id: `${id}.phase`, got: ((at + 180) % 360) - 180, want: ((phase + 180) % 360) - 180, ...shared },
      {
        id: `${id}.angle`,
        got: numberOf('run-out', words, 'angle'),
        want: ((2 * amplitude) / 400 / Math.PI) * 180,
        // total over diameter is the small-angle form of 2·atan(amplitude/diameter): a millionth here
        within: 2e-6,
        source: 'total over diameter, common practice, no source',
        basis: 'derived' as const,
      },
    ]
  }),
)

const TM = 'geometry; definition "toe-in = rear minus front" in US Army TM 5-3810-293'
const toes = [
  [
    'toe.length.read',
    '24 in',
    '0.15°',
    0.062832,
    'in',
    'a public web page restating the relation x = D sin(toe)',
  ],
  ['toe.length.400.0.1', '400 mm', '0.1°', 0.698131, 'mm', TM],
  ['toe.length.381.0.2', '381 mm', '0.2°', 1.329938, 'mm', TM],
  ['toe.length.406.4.0.05', '406.4 mm', '0.05°', 0.354651, 'mm', TM],
  ['toe.length.650.0.25', '650 mm', '0.25°', 2.836151, 'mm', TM],
] as const
published(
  'CM8 sum toe, both ways',
  toes.flatMap(([id, diameter, angle, length, unit, source]) => [
    { id, got: numberOf('toe', { diameter, angle }, 'toe', unit), want: length, within: 1e-6, source },
    {
      id: `${id}.back`,
      got: numberOf('toe', { diameter, length: `${length} ${unit}` }, 'toe', '°'),
      want: Number.parseFloat(angle),
      // the length is printed to 1e-6 mm or in, over the diameter below 2e-6°
      within: 2e-6,
      source,
    },
  ]),
)

const army = 'US Army TM 1-1500-204-23-9, fig. 8-16 (a)'
const trade = 'trade table of this project'
const off = { off: '3° left', ratio: '16', pitch: '1.5 mm', arm: '130 mm' }
published('CM8 sum adapter, steering wheel, thrust', [
  {
    id: 'tm1-1500.lengthen',
    got: numberOf('adapter', { torque: '300 lbf·in', reach: '10 in', offset: '4 in' }, 'setting', 'lbf·in'),
    want: 214,
    within: 0.5,
    source: army,
  },
  {
    id: 'centre.wheels',
    got: numberOf('steering-wheel', off, 'each front wheel'),
    want: 0.19,
    within: 0.005,
    source: trade,
    basis: 'derived',
  },
  {
    id: 'centre.turns',
    got: numberOf('steering-wheel', off, 'each tie rod'),
    want: 0.28,
    within: 0.005,
    source: trade,
    basis: 'derived',
  },
  {
    id: 'centre.turns.sleeve',
    got: numberOf('steering-wheel', { ...off, sleeve: 'double' }, 'each tie rod'),
    want: 0.14,
    within: 0.005,
    source: `${trade}: a left-and-right sleeve doubles it`,
    basis: 'derived',
  },
  {
    id: 'thrust.16',
    got: numberOf('thrust', { angle: '0.25° right', ratio: '16:1' }, 'steering wheel'),
    want: 4,
    within: 1e-9,
    source: trade,
    basis: 'derived',
  },
])
