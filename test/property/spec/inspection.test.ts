import fc from 'fast-check'
import { expect, test } from 'vitest'
import { inch, inDegrees, metre, mm } from '../../../src/quantity/index.ts'
import {
  inspectionLength,
  inspectionLimits,
  inspectionLimitsFor,
  type Jurisdiction,
  loadOfIndex,
  parseTyre,
  playAsToe,
  rollingCircumference,
  speedOfSymbol,
  vinCheck,
  vinCheckOfValues,
  vinHints,
} from '../../../src/spec/index.ts'
import { law, refuses } from '../../support/law.ts'

const limit = (id: string) => inspectionLimits.find((l) => l.id === id)!

test('SP8 each line says whose it is, where it stands and whether it was read', () => {
  expect(inspectionLimits.length).toBeGreaterThanOrEqual(20)
  expect(new Set(inspectionLimits.map((l) => l.id)).size).toBe(inspectionLimits.length)
  for (const l of inspectionLimits) {
    expect(l.source.length, l.id).toBeGreaterThan(5)
    expect(l.clause.length, l.id).toBeGreaterThan(2)
    expect(l.measured.length, l.id).toBeGreaterThan(5)
  }
  expect(inspectionLimits.filter((l) => l.basis === 'from memory').map((l) => l.id)).toEqual(['eu.lash'])
})

law(
  'SP8 for every steering wheel each table with diameters gives exactly one line',
  fc.tuple(
    fc.constantFrom<Jurisdiction>('US', 'US-MD', 'US-MO', 'US-NC'),
    fc.integer({ min: 2500, max: 6500 }),
  ),
  ([jurisdiction, tenths]) =>
    inspectionLimitsFor({
      jurisdiction,
      subject: 'steering-wheel free movement',
      steeringWheel: mm(tenths / 10),
    }).length === 1,
)

test('SP8 a diameter that the rule does not name is given the next smaller line, and says so', () => {
  const at = (inches: number) =>
    inspectionLimitsFor({
      jurisdiction: 'US',
      subject: 'steering-wheel free movement',
      steeringWheel: inch(inches),
    }).map(({ limit: { id }, named }) => [id, named])
  expect(at(14)).toEqual([['us.lash.16', true]])
  expect(at(16)).toEqual([['us.lash.16', true]])
  expect(at(17)).toEqual([['us.lash.16', false]])
  expect(at(18)).toEqual([['us.lash.18', true]])
  expect(at(19.9)).toEqual([['us.lash.18', false]])
  expect(at(24)).toEqual([['us.lash.22', false]])
  // 457 mm read with a rule is the 18 in wheel (457.2 mm).
  expect(
    inspectionLimitsFor({
      jurisdiction: 'US',
      subject: 'steering-wheel free movement',
      steeringWheel: mm(457),
    })[0]!.limit.id,
  ).toBe('us.lash.18')
})

test('SP8 the edges of a line belong to it as the rule says', () => {
  const at = (jurisdiction: Jurisdiction, inches: number) =>
    inspectionLimitsFor({
      jurisdiction,
      subject: 'steering-wheel free movement',
      steeringWheel: inch(inches),
    }).map(({ limit: { id } }) => id)
  expect(at('US-MD', 20.9)).toEqual(['us-md.lash.under-21'])
  expect(at('US-MD', 21)).toEqual(['us-md.lash.21'])
  expect(at('US-MO', 18)).toEqual(['us-mo.lash.18'])
  expect(at('US-MO', 18.1)).toEqual(['us-mo.lash.over-18'])
})

test('SP8 without a diameter every line is given; with a rim only the lines of that rim', () => {
  const play = { jurisdiction: 'US', subject: 'steering linkage play at the tread' } as const
  expect(inspectionLimitsFor(play).map(({ limit: { id } }) => id)).toEqual([
    'us.play',
    'us.heavy-play.16',
    'us.heavy-play.18',
    'us.heavy-play.over-18',
  ])
  expect(
    inspectionLimitsFor({ ...play, weight: 'over 10 000 lb', rim: inch(17.5) }).map(
      ({ limit: { id } }) => id,
    ),
  ).toEqual(['us.heavy-play.18'])
  expect(inspectionLimitsFor({ jurisdiction: 'EU', subject: 'toe' })).toEqual([])
  // A rule that says nothing of weight holds for every vehicle.
  expect(inspectionLimitsFor({ jurisdiction: 'US-MO', weight: 'up to 10 000 lb' })).toHaveLength(2)
  expect(
    inspectionLimitsFor({ jurisdiction: 'US', subject: 'toe', steering: 'rack' }).map(
      ({ limit: { id } }) => id,
    ),
  ).toEqual(['us.toe'])
})

law(
  'SP10 play as toe is felt twice as much by twice the play, for small play',
  fc.tuple(fc.double({ min: 1e-4, max: 5e-3, noNaN: true }), fc.double({ min: 0.4, max: 1, noNaN: true })),
  ([play, tyre]) => {
    const one = playAsToe({ play: metre(play), tyre: metre(tyre) })
    const two = playAsToe({ play: metre(2 * play), tyre: metre(tyre) })
    return Math.abs(two / one - 2) < 2e-3 && Math.abs(Math.sin(one) * (tyre / 2) - play) < 1e-12
  },
)
test('SP10 no play is no toe, and play of the whole lever a quarter turn', () => {
  expect(playAsToe({ play: mm(0), tyre: mm(650) })).toBe(0)
  expect(inDegrees(playAsToe({ play: mm(325), tyre: mm(650) }))).toBeCloseTo(90, 9)
})

const characters = '0123456789ABCDEFGHJKLMNPRSTUVWXYZ'
const anyVin = fc
  .array(fc.constantFrom(...characters), { minLength: 16, maxLength: 16 })
  .map((rest) => `0${rest.join('')}`)
const withDigit = (vin: string) => vin.slice(0, 8) + vinCheck(vin).digit + vin.slice(9)

law(
  'SP9 one figure misread is always seen by the check digit',
  fc.tuple(anyVin, fc.nat(16), fc.nat(9)),
  ([vin, place, figure]) => {
    const right = withDigit(vin)
    const was = right[place]!
    if (!/\d/.test(was) || was === String(figure) || place === 8) return true
    const misread = right.slice(0, place) + figure + right.slice(place + 1)
    return vinCheck(right).agrees && !vinCheck(misread).agrees
  },
)
law(
  'SP9 the ninth place does not weigh',
  fc.tuple(anyVin, fc.constantFrom(...characters)),
  ([vin, ninth]) => {
    return vinCheck(vin).sum === vinCheck(vin.slice(0, 8) + ninth + vin.slice(9)).sum
  },
)
law('SP9 spaces, hyphens and small letters change nothing', anyVin, (vin) => {
  const typed = `${vin.slice(0, 3).toLowerCase()} ${vin.slice(3, 9)}-${vin.slice(9)}`
  return vinHints(typed).vin === vin && vinHints(typed).fits
})
test('SP9 a VIN that does not fit is a hint, never a refusal', () => {
  expect(vinHints('000000009B1234567').hints).toEqual([])
  expect(vinHints('000000008B1234567').hints).toHaveLength(1)
  expect(vinHints('0000').hints[0]).toContain('4 characters')
  expect(vinHints('0000').check).toBeNull()
  expect(vinHints('0000000O9B1234567').hints[0]).toContain('“O”')
  expect(vinHints('').hints).toHaveLength(1)
})

test('SP11 the forms in which a designation is written', () => {
  expect(parseTyre('215/70R15 109S')).toMatchObject({
    service: null,
    aspect: 0.7,
    construction: 'radial',
    load: { single: 109, twin: null, singleMass: 1030, twinMass: null },
    speed: { symbol: 'S', kmh: 180 },
    reinforced: false,
  })
  expect(parseTyre('P215/65R17 98T').service).toBe('P')
  expect(parseTyre('LT245/75R16 120/116Q E')).toMatchObject({
    service: 'LT',
    load: { single: 120, twin: 116, singleMass: 1400, twinMass: 1250 },
    loadRange: 'E',
  })
  expect(parseTyre('215/70 R 15 C 109/107 S')).toMatchObject({ service: 'C', load: { twin: 107 } })
  expect(parseTyre('205/55ZR16 94W XL')).toMatchObject({ aboveSpeed240: true, reinforced: true })
  expect(parseTyre('205/55zr16 (91 w)')).toMatchObject({ load: { single: 91 }, speed: { kmh: 270 } })
  expect(parseTyre('225/75B15').construction).toBe('bias-belted')
  expect(parseTyre('225/75D15').construction).toBe('diagonal')
  expect(parseTyre('225/75-15').construction).toBe('diagonal')
  expect(parseTyre('265/70R19.5 140/138M'.replace('140/138M', '')).rim).toBeCloseTo(0.4953, 12)
  expect(parseTyre('185/65R15').load).toBeNull()
  expect(rollingCircumference(parseTyre('225/75B15'))).toBeNull()
})
law(
  'SP11 a wider or higher section makes a larger tyre, by twice the section',
  fc.record({
    width: fc.integer({ min: 135, max: 355 }),
    share: fc.integer({ min: 25, max: 90 }),
    rim: fc.integer({ min: 12, max: 22 }),
  }),
  ({ width, share, rim }) => {
    const tyre = parseTyre(`${width}/${share}R${rim}`)
    return (
      Math.abs(tyre.diameter - tyre.rim - 2 * tyre.sectionHeight) < 1e-12 &&
      parseTyre(`${width + 10}/${share}R${rim}`).diameter > tyre.diameter
    )
  },
)
test('SP11 load indices rise, and follow their own geometric series to two parts in a hundred', () => {
  for (let index = 61; index <= 126; index++) {
    expect(loadOfIndex(index)).toBeGreaterThan(loadOfIndex(index - 1))
    // Eighty steps to a factor of ten, from 45 kg at index 0.
    expect(Math.abs(loadOfIndex(index) / (45 * 10 ** (index / 80)) - 1)).toBeLessThan(0.02)
  }
  expect(speedOfSymbol('I')).toBeNull()
})

refuses(
  'unknown-jurisdiction',
  () => inspectionLimitsFor({ jurisdiction: 'XX' as Jurisdiction }),
  'jurisdiction',
)
refuses(
  'out-of-range',
  () => inspectionLimitsFor({ jurisdiction: 'US', steeringWheel: mm(0) }),
  'steeringWheel',
)
refuses('out-of-range', () => inspectionLimitsFor({ jurisdiction: 'US', rim: metre(Number.NaN) }), 'rim')
refuses('needs-diameter', () => inspectionLength(limit('eu.lash'), mm(-380)), 'steeringWheel')
refuses('needs-diameter', () => inspectionLength(limit('eu.lash'), metre(Number.POSITIVE_INFINITY)))
refuses('not-a-number-of-this-rule', () => inspectionLength(limit('us.toe'), mm(380)), 'us.toe')
refuses('out-of-range', () => playAsToe({ play: mm(-1), tyre: mm(650) }), 'play')
refuses('out-of-range', () => playAsToe({ play: mm(326), tyre: mm(650) }), 'play')
refuses('out-of-range', () => playAsToe({ play: mm(1), tyre: mm(0) }), 'play')
refuses('out-of-range', () => playAsToe({ play: metre(Number.NaN), tyre: mm(650) }), 'play')
refuses('not-a-vin', () => vinCheck('0000000000000000'), 'vin')
refuses('not-a-vin', () => vinCheck('0000000O000000000'), 'vin')
refuses('not-a-vin', () => vinCheckOfValues([1, 2, 3], '0'), 'values')
refuses('not-a-vin', () => vinCheckOfValues(new Array(17).fill(Number.NaN), '0'), 'values')
refuses('not-a-tyre', () => parseTyre('a tyre'), 'tyre')
refuses('not-a-tyre', () => parseTyre('215/70R15 109I'), 'tyre')
refuses('not-a-tyre', () => parseTyre('215/10R15'), 'tyre')
refuses('not-a-tyre', () => parseTyre('100/70R15'), 'tyre')
refuses('not-a-tyre', () => parseTyre('465/70R15'), 'tyre')
refuses('not-a-tyre', () => parseTyre('215/70R30'), 'tyre')
refuses('unknown-load-index', () => parseTyre('215/70R15 127S'), 'load index')
refuses('unknown-load-index', () => loadOfIndex(59))
refuses('unknown-load-index', () => loadOfIndex(61.5))
