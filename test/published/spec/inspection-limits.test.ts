import { inch, inDegrees, inInches, inMillimetres, type Metre, mm } from '../../../src/quantity/index.ts'
import {
  type InspectionLimit,
  type InspectionQuestion,
  inspectionLength,
  inspectionLimits,
  inspectionLimitsFor,
  playAsToe,
} from '../../../src/spec/index.ts'
import { published } from '../../support/published.ts'

const only = (question: InspectionQuestion): InspectionLimit => {
  const [answer, ...more] = inspectionLimitsFor(question)
  if (!answer || more.length > 0) throw new Error(`${more.length + 1} lines`)
  return answer.limit
}
const length = (question: InspectionQuestion): Metre => {
  const { value } = only(question)
  if (value.kind !== 'at most') throw new Error(value.kind)
  return value.length
}
const light = { weight: 'up to 10 000 lb' } as const
const heavy = { weight: 'over 10 000 lb' } as const
const lash = (jurisdiction: InspectionQuestion['jurisdiction'], wheel: number): number =>
  inInches(length({ jurisdiction, subject: 'steering-wheel free movement', steeringWheel: inch(wheel) }))
const usLash = { jurisdiction: 'US', ...light, subject: 'steering-wheel free movement' } as const
const play = { jurisdiction: 'US', subject: 'steering linkage play at the tread' } as const

// Printed in whole, half, quarter or eighth inches: exact, so within a rounding error of the conversion.
const exact = 1e-9

published('SP8 free movement of the steering wheel, United States, light vehicles', [
  ...(
    [
      [16, 2, 50.8],
      [18, 2.25, 57.15],
      [20, 2.5, 63.5],
      [22, 2.75, 69.85],
    ] as const
  ).flatMap(([wheel, inches, millimetres]) => [
    {
      id: `cfr570.7a.${wheel}`,
      got: () => lash('US', wheel),
      want: inches,
      within: exact,
      source: '49 CFR 570.7(a), Table 1',
    },
    {
      id: `cfr570.7a.${wheel}.mm`,
      got: () => inMillimetres(length({ ...usLash, steeringWheel: inch(wheel) })),
      want: millimetres,
      within: exact,
      source: '49 CFR 570.7(a), Table 1, in mm',
      basis: 'derived' as const,
    },
    {
      id: `cfr570.7a.${wheel}.angle`,
      got: () =>
        inDegrees(inspectionLength(only({ ...usLash, steeringWheel: inch(wheel) }), inch(wheel)).angle),
      want: 14.324,
      within: 0.0005,
      source: '49 CFR 570.7(a), Table 1: every line is an eighth of its diameter',
      basis: 'derived' as const,
    },
  ]),
])

published('SP8 play, run-out and toe, United States', [
  {
    id: 'cfr570.7b',
    got: () => inInches(length({ ...play, ...light })),
    want: 0.25,
    within: exact,
    source: '49 CFR 570.7(b)(1)',
  },
  {
    id: 'cfr570.7d',
    got: () => {
      const { value } = only({ jurisdiction: 'US', subject: 'toe' })
      return value.kind === 'times the maker’s value' ? value.factor : Number.NaN
    },
    want: 1.5,
    within: exact,
    source: '49 CFR 570.7(d)(1)',
  },
  {
    id: 'cfr570.10b',
    got: () => inInches(length({ jurisdiction: 'US', subject: 'rim run-out', ...light })),
    want: 0.125,
    within: exact,
    source: '49 CFR 570.10(b)',
  },
  ...(
    [
      [16, 0.25],
      [16.5, 0.375],
      [18, 0.375],
      [19.5, 0.5],
    ] as const
  ).map(([rim, inches]) => ({
    id: `cfr570.60b.${rim}`,
    got: () => inInches(length({ ...play, ...heavy, rim: inch(rim) })),
    want: inches,
    within: exact,
    source: '49 CFR 570.60(b), Table 3 (16 or less; 16.01-18.00; 18.01 or more)',
  })),
])

published('SP8 the same limit elsewhere', [
  {
    id: 'md.wheelbearing',
    got: () => inInches(length({ jurisdiction: 'US-MD', subject: 'wheel bearing play at the sidewall' })),
    want: 0.125,
    within: exact,
    source: 'Maryland COMAR 11.22.03.04 B(1)',
  },
  ...(
    [
      ['md.lash', 'US-MD', 20, 3, 'Maryland COMAR 11.22.03.04 A(1)'],
      ['md.lash', 'US-MD', 21, 3.5, 'Maryland COMAR 11.22.03.04 A(1)'],
      ['mo.lash', 'US-MO', 18, 2, 'Missouri 11 CSR 50-2.200 (1)(B)1.B'],
      ['mo.lash', 'US-MO', 19, 3, 'Missouri 11 CSR 50-2.200 (1)(B)1.B'],
      ['nc.lash', 'US-NC', 18, 3, 'North Carolina 19A NCAC 03D .0535 (b)(1)'],
      ['nc.lash', 'US-NC', 19, 4, 'North Carolina 19A NCAC 03D .0535 (b)(1)'],
    ] as const
  ).map(([id, jurisdiction, wheel, want, source]) => ({
    id: `${id}.${wheel}`,
    got: () => lash(jurisdiction, wheel),
    want,
    within: exact,
    source,
  })),
  {
    id: 'eu.2014-45.2.3',
    got: () =>
      inMillimetres(
        inspectionLength(only({ jurisdiction: 'EU', subject: 'steering-wheel free movement' }), mm(380))
          .length,
      ),
    want: 76,
    within: exact,
    source: 'Directive 2014/45/EU, Annex I, 2.3(a)',
    basis: 'from memory',
  },
  {
    id: 'eu.2014-45.2.3.angle',
    got: () =>
      inDegrees(
        inspectionLength(only({ jurisdiction: 'EU', subject: 'steering-wheel free movement' }), mm(380))
          .angle,
      ),
    want: 22.918,
    within: 0.0005,
    source: 'Directive 2014/45/EU, Annex I, 2.3(a)',
    basis: 'from memory',
  },
])

// Rules without a number: how many lines there are, and that none of them has one.
const inWords = (jurisdiction: string, subject: string) =>
  inspectionLimits.filter(
    (l) => l.jurisdiction === jurisdiction && l.subject === subject && l.value.kind === 'condition',
  ).length
published(
  'SP8 rules that give no number are held in words',
  (
    [
      ['cfr570.8', 'US', 'suspension condition', 1, '49 CFR 570.8 and 570.61 (a)'],
      ['cfr570.10c and 570.63', 'US', 'wheel mounting', 2, '49 CFR 570.10(c); 49 CFR 570.63 (a)-(c)'],
      ['qc.balljoint', 'CA-QC', 'ball joints', 1, 'Quebec C-24.2, r. 32, s. 112'],
      ['eu.2014-45.2.1', 'EU', 'steering condition', 1, 'Directive 2014/45/EU, Annex I, 2.1 and 5.1'],
    ] as const
  ).map(([id, jurisdiction, subject, want, source]) => ({
    id,
    got: inWords(jurisdiction, subject),
    want,
    within: exact,
    source,
  })),
)

published('SP10 a quarter of an inch at the tread', [
  {
    id: 'play.quarter-inch',
    // Tyres of 632 to 711 mm give 1.15° to 1.02°; a tyre of 26 in stands for them.
    got: () => inDegrees(playAsToe({ play: inch(0.25), tyre: inch(26) })),
    want: 1.1,
    within: 0.05,
    source: '49 CFR 570.7(b) with the tyre’s own radius as lever',
    basis: 'derived',
  },
])
