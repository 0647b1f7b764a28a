import {
  deg,
  inch,
  inDegrees,
  inInches,
  inMillimetres,
  mm,
  parseToe,
  toeAsLength,
} from '../../../src/quantity/index.ts'
import { published } from '../../support/published.ts'

const definition =
  'length = D · sin toe; "toe-in = rear minus front" in US Army TM 5-3810-293, toe-in measurement steps'

// Six decimals printed: half the last digit.
const within = 0.5e-6

/** Millimetres of toe at a diameter in millimetres. */
const atMillimetres = (diameter: number, toe: number) =>
  inMillimetres(toeAsLength({ toe: deg(toe), diameter: mm(diameter) }))

published('QU6 toe of one wheel as a length at a diameter', [
  {
    id: 'toe.length.read',
    got: inInches(toeAsLength({ toe: deg(0.15), diameter: inch(24) })),
    want: 0.062832,
    within,
    source:
      'a public web page restating x = D sin(toe), worked example; the axle total is the sum of both sides',
  },
  ...(
    [
      [400, 0.1, 0.698131],
      [381, 0.2, 1.329938],
      [406.4, 0.05, 0.354651],
      [650, 0.25, 2.836151],
    ] as const
  ).map(([diameter, toe, want]) => ({
    id: `toe.length.${diameter}.${toe}`,
    got: atMillimetres(diameter, toe),
    want,
    within,
    source: definition,
    basis: 'derived' as const,
  })),
  {
    id: 'toe.length.650.0.25 back, as text',
    got: () => inDegrees(parseToe('2.836151 mm @ 650 mm')),
    want: 0.25,
    within: 0.5e-7, // half a digit of the length is 4.4e-8 degrees at this diameter
    source: definition,
    basis: 'derived',
  },
])
