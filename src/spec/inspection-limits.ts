import { inch } from '../quantity/index.ts'
import type { DiameterRange, InspectionLimit } from './inspection-limit.ts'

const read = { basis: 'read in a public copy', steering: null, diameter: null } as const
const light = { weight: 'up to 10 000 lb', vehicles: 'gross weight rating up to 10 000 lb' } as const
const heavy = { weight: 'over 10 000 lb', vehicles: 'gross weight rating over 10 000 lb' } as const
const any = { weight: null, vehicles: null } as const

const atMost = (inches: number) => ({ kind: 'at most', length: inch(inches) }) as const
const condition = (rule: string) => ({ kind: 'condition', rule }) as const
const upTo = (of: DiameterRange['of'], inches: number): DiameterRange => ({
  of,
  from: null,
  to: inch(inches),
})
const exactly = (inches: number): DiameterRange => ({
  of: 'steering wheel',
  from: inch(inches),
  to: inch(inches),
})
const above = (of: DiameterRange['of'], inches: number): DiameterRange => ({
  of,
  from: inch(inches),
  fromExcluded: true,
  to: null,
})

const lash = { subject: 'steering-wheel free movement' } as const
const usLash = {
  ...read,
  ...light,
  ...lash,
  jurisdiction: 'US',
  measured: 'at the rim of the steering wheel, engine running where the steering is powered, wheels straight',
  source: '49 CFR 570.7(a)',
  clause: 'Table 1; procedure (a)(1)',
} as const
const usHeavyPlay = {
  ...read,
  ...heavy,
  jurisdiction: 'US',
  subject: 'steering linkage play at the tread',
  measured: 'front wheel, at the tread',
  source: '49 CFR 570.60(b)',
  clause: 'Table 3',
} as const

/**
 * Public inspection limits. They bound what may be on the road; they are not a maker's value and no target.
 *
 * @source each line's own `source` and `clause`
 */
export const inspectionLimits: readonly InspectionLimit[] = [
  { ...usLash, id: 'us.lash.16', value: atMost(2), diameter: upTo('steering wheel', 16) },
  { ...usLash, id: 'us.lash.18', value: atMost(2.25), diameter: exactly(18) },
  { ...usLash, id: 'us.lash.20', value: atMost(2.5), diameter: exactly(20) },
  { ...usLash, id: 'us.lash.22', value: atMost(2.75), diameter: exactly(22) },
  {
    ...read,
    ...light,
    id: 'us.play',
    jurisdiction: 'US',
    subject: 'steering linkage play at the tread',
    value: atMost(0.25),
    measured: 'at the tread, ball joints loaded, wheel bearings adjusted',
    source: '49 CFR 570.7(b)',
    clause: '(b)(1)',
  },
  {
    ...read,
    ...light,
    id: 'us.toe',
    jurisdiction: 'US',
    subject: 'toe',
    value: { kind: 'times the maker’s value', factor: 1.5 },
    measured: 'bar-type scuff gauge or other device',
    source: '49 CFR 570.7(d)',
    clause: '(d)(1)',
  },
  {
    ...read,
    ...any,
    id: 'us.suspension',
    jurisdiction: 'US',
    subject: 'suspension condition',
    value: condition(
      'seals of ball joints neither cut nor cracked; parts neither bent nor damaged; springs neither broken nor lengthened by spacers; mountings secure; rubber bushes neither cracked nor pushed out nor missing',
    ),
    measured: 'by looking; the rule has no number for a ball joint',
    source: '49 CFR 570.8 and 570.61',
    clause: '(a)',
  },
  {
    ...read,
    ...light,
    id: 'us.run-out',
    jurisdiction: 'US',
    subject: 'rim run-out',
    value: atMost(0.125),
    measured: 'lateral and radial, total reading at each bead area over one full turn',
    source: '49 CFR 570.10(b)',
    clause: 'Deformation',
  },
  {
    ...read,
    ...light,
    id: 'us.mounting',
    jurisdiction: 'US',
    subject: 'wheel mounting',
    value: condition('all wheel nuts and bolts in place and tight'),
    measured: 'by looking and by hand',
    source: '49 CFR 570.10(c)',
    clause: '(c)',
  },
  { ...usHeavyPlay, id: 'us.heavy-play.16', value: atMost(0.25), diameter: upTo('rim', 16) },
  {
    ...usHeavyPlay,
    id: 'us.heavy-play.18',
    value: atMost(0.375),
    diameter: { of: 'rim', from: inch(16), fromExcluded: true, to: inch(18) },
  },
  { ...usHeavyPlay, id: 'us.heavy-play.over-18', value: atMost(0.5), diameter: above('rim', 18) },
  {
    ...read,
    ...heavy,
    id: 'us.heavy-mounting',
    jurisdiction: 'US',
    subject: 'wheel mounting',
    value: condition(
      'no visible cracks, no bolt holes worn long, no repair by welding; all wheel nuts in place and tight',
    ),
    measured: 'by looking; the rule has no number for run-out',
    source: '49 CFR 570.63',
    clause: '(a)-(c)',
  },
  {
    ...read,
    ...any,
    id: 'us-md.bearing',
    jurisdiction: 'US-MD',
    subject: 'wheel bearing play at the sidewall',
    value: atMost(0.125),
    measured: 'at the tyre’s sidewall',
    source: 'Maryland COMAR 11.22.03.04',
    clause: 'B(1)',
  },
  ...(
    [
      ['us-md.lash.under-21', 3, { of: 'steering wheel', from: null, to: inch(21), toExcluded: true }],
      ['us-md.lash.21', 3.5, { of: 'steering wheel', from: inch(21), to: null }],
    ] as const
  ).map(
    ([id, most, diameter]): InspectionLimit => ({
      ...read,
      ...lash,
      id,
      jurisdiction: 'US-MD',
      weight: null,
      vehicles: 'heavy vehicles and passenger buses',
      value: atMost(most),
      diameter,
      measured: 'at the rim of the steering wheel',
      source: 'Maryland COMAR 11.22.03.04',
      clause: 'A(1)',
    }),
  ),
  ...(
    [
      ['us-mo', 'US-MO', 2, 3, 'Missouri 11 CSR 50-2.200', '(1)(B)1.B'],
      ['us-nc', 'US-NC', 3, 4, 'North Carolina 19A NCAC 03D .0535', '(b)(1)'],
    ] as const
  ).flatMap(([id, jurisdiction, small, large, source, clause]): InspectionLimit[] => {
    const row = {
      ...read,
      ...any,
      ...lash,
      jurisdiction,
      source,
      clause,
      measured: 'at the rim of the steering wheel',
    }
    return [
      { ...row, id: `${id}.lash.18`, value: atMost(small), diameter: upTo('steering wheel', 18) },
      { ...row, id: `${id}.lash.over-18`, value: atMost(large), diameter: above('steering wheel', 18) },
    ]
  }),
  {
    ...read,
    ...any,
    id: 'ca-qc.ball-joints',
    jurisdiction: 'CA-QC',
    subject: 'ball joints',
    value: condition('no play but what the maker allows'),
    measured: 'joints with a wear indicator are read with the wheels on the ground',
    source: 'Quebec C-24.2, r. 32',
    clause: 's. 112',
  },
  {
    ...read,
    ...any,
    id: 'eu.steering-condition',
    jurisdiction: 'EU',
    subject: 'steering condition',
    value: condition('judged without a number, as minor, major or dangerous'),
    measured: 'by looking and by hand: wear at joints, mountings, linkage',
    source: 'Directive 2014/45/EU',
    clause: 'Annex I, 2.1.1-2.1.4, 5.1.1-5.1.3, 5.3.x',
  },
  {
    ...any,
    ...lash,
    id: 'eu.lash',
    jurisdiction: 'EU',
    value: { kind: 'share of the steering wheel', share: 0.2 },
    steering: null,
    diameter: null,
    measured: 'at the rim of the steering wheel',
    source: 'Directive 2014/45/EU',
    clause: 'Annex I, 2.3(a)',
    basis: 'from memory',
  },
]
