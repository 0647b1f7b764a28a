import { vinCheck, vinCheckOfValues, vinHints } from '../../../src/spec/index.ts'
import { published } from '../../support/published.ts'

// Sums are whole numbers.
const within = 1e-9
const code = (digit: string) => (digit === 'X' ? 10 : Number(digit))

published('SP9 check digit from assigned values', [
  ...(
    [
      [
        'vin.values.cfr-sample',
        [1, 7, 4, 1, 8, 5, 9, 8, 0, 5, 7, 1, 1, 8, 3, 4, 1],
        411,
        4,
        '49 CFR 565.15(c)(4), sample calculation, as assigned values',
      ],
      [
        'vin.values.outline',
        [1, 1, 9, 9, 7, 1, 1, 3, 0, 1, 1, 6, 4, 4, 3, 4, 5],
        314,
        6,
        'US agency’s outline for new makers’ information, as assigned values; 49 CFR 565.15(c)(4)',
      ],
    ] as const
  ).flatMap(([id, values, sum, digit, source]) => [
    { id: `${id}.sum`, got: () => vinCheckOfValues(values, '').sum, want: sum, within, source },
    { id: `${id}.digit`, got: () => code(vinCheckOfValues(values, '').digit), want: digit, within, source },
  ]),
])

// Strings begin with 0, which is no maker's region, so that none of them can be a vehicle's.
published(
  'SP9 check digit of whole strings',
  (
    [
      ['11111111111111111', 89, '1', 'published', 'encyclopaedia text on VIN check digits: 89 mod 11 = 1'],
      ['00000000000000000', 0, '0'],
      ['000000000A0000001', 11, '0'],
      ['000000009B1234567', 130, '9'],
      ['000000008C7654321', 195, '8'],
      ['00000000600000017', 17, '6'],
      ['00000000800000052', 19, '8'],
      ['0AA0BC0D400000000', 70, '4'],
      ['0AA0BC0D4A0000001', 81, '4'],
      ['0AA0BC0DX00000017', 87, 'X'],
      ['0ZZTEST0X00000000', 164, 'X'],
      ['0ZZTEST0XA0000001', 175, 'X'],
    ] as readonly (readonly [string, number, string, ('published' | 'derived')?, string?])[]
  ).flatMap(([vin, sum, digit, basis = 'derived', source = '49 CFR 565.15(c), Tables III and IV']) => [
    { id: `vin.${vin}.sum`, got: () => vinCheck(vin).sum, want: sum, within, source, basis },
    {
      id: `vin.${vin}.digit`,
      got: () => code(vinCheck(vin).digit),
      want: code(digit),
      within,
      source,
      basis,
    },
    {
      id: `vin.${vin}.agrees`,
      got: () => (vinHints(vin).check?.agrees ? 1 : 0),
      want: 1,
      within,
      source,
      basis,
    },
  ]),
)

const values: Readonly<Record<string, number>> = {
  ...{ A: 1, B: 2, C: 3, D: 4, E: 5, F: 6, G: 7, H: 8 },
  ...{ J: 1, K: 2, L: 3, M: 4, N: 5, P: 7, R: 9 },
  ...{ S: 2, T: 3, U: 4, V: 5, W: 6, X: 7, Y: 8, Z: 9 },
}
const weights = [8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2]
const zeros = '0'.repeat(17)
const withAt = (place: number, character: string) =>
  zeros.slice(0, place) + character + zeros.slice(place + 1)

published('SP9 letter values and weights', [
  ...Object.entries(values).map(([letter, value]) => ({
    id: `vin.tables.value.${letter}`,
    // The last place weighs 2.
    got: () => vinCheck(withAt(16, letter)).sum / 2,
    want: value,
    within,
    source: '49 CFR 565.15, Table III',
  })),
  ...weights.map((weight, place) => ({
    id: `vin.tables.weight.${place + 1}`,
    got: () => vinCheck(withAt(place, '1')).sum,
    want: weight,
    within,
    source: '49 CFR 565.15, Table IV',
  })),
])

// A string whose sum is the remainder itself: 2 k at the last place, or 9 at the tenth.
const ofRemainder = (remainder: number) =>
  vinCheck(
    remainder === 9
      ? withAt(9, '1')
      : withAt(16, String(remainder % 2 === 0 ? remainder / 2 : (remainder + 11) / 2)),
  )
published(
  'SP9 remainders as decimals',
  [0, 0.091, 0.182, 0.273, 0.364, 0.455, 0.545, 0.634, 0.727, 0.818, 0.909].map((printed, remainder) => ({
    id: `vin.tables.remainder.${remainder}`,
    got: () => ofRemainder(remainder).remainder / 11,
    want: printed,
    // Printed to three places; the copy read has .634 for 7/11, which is .636.
    within: remainder === 7 ? 0.0025 : 0.0005,
    source: '49 CFR 565.15, Table V',
  })),
)
