// The classical table of SAI, camber and included angle, read off the left wheel against the right one. It must come out
// of the geometry; no line of it stands in the code. Source of every row: common practice, no source (the table is
// taught in this form; no public document with it was found), from memory.
import { describe, expect, test } from 'vitest'
import { type Findings, rankSuspects, type SuspectKind } from '../../../src/findings/index.ts'
import { type Displacement, sumOfDisplacements } from '../../../src/linkage/index.ts'
import {
  anglesOf,
  coilLower,
  problemOf,
  strut,
  torsionBar,
} from '../../property/findings/invented-problem.ts'

const degree = Math.PI / 180
type Sense = 'low' | 'right' | 'high'

/** The same with its toe set back by the tie rod: the table speaks of wheels that point straight ahead. */
function toeSet(corner: typeof strut, displaced: Displacement): Displacement {
  const { toe } = anglesOf(corner, {})
  const at = (tie: number): Displacement => sumOfDisplacements([displaced, { length: { tie } }])
  let [low, high] = [-0.02, 0.02]
  const missing = (tie: number): number => anglesOf(corner, at(tie)).toe - toe
  const rising = missing(high) > missing(low)
  for (let k = 0; k < 60; k++) {
    const middle = (low + high) / 2
    if (missing(middle) > 0 === rising) high = middle
    else low = middle
  }
  return at((low + high) / 2)
}

/** Camber, SAI and included angle of a displaced corner against the design. */
function senses(corner: typeof strut, displaced: Displacement): Record<'camber' | 'sai' | 'included', Sense> {
  const [design, now] = [anglesOf(corner, {}), anglesOf(corner, toeSet(corner, displaced))]
  const camber = now.camber - design.camber
  const sai = now.sai - design.sai
  // a tenth of the larger change counts as right
  const least = 0.1 * Math.max(Math.abs(camber), Math.abs(sai))
  const sense = (x: number): Sense => (Math.abs(x) <= least ? 'right' : x < 0 ? 'low' : 'high')
  return { camber: sense(camber), sai: sense(sai), included: sense(camber + sai) }
}

/** Kinds at the left front wheel that the first group names. */
function blamed({ groups }: Findings): readonly SuspectKind[] {
  return groups[0]!.suspects
    .filter(({ suspect }) => suspect.side === 'left')
    .map(({ suspect }) => suspect.kind)
}

const inward = (arm: 'lower' | 'upper', by: number): Displacement => ({
  length: { [`${arm}Front`]: -by, [`${arm}Rear`]: -by },
})

interface Row {
  readonly table: string
  readonly corner: typeof strut
  readonly cause: Displacement
  readonly sai: Sense
  readonly camber: Sense
  readonly included: Sense
  readonly kind: SuspectKind
}

const bent = 1.5 * degree
const tube: Displacement = (() => {
  // the tube bends above its clamp, about x through the lower end of the strut's line
  const z = strut.points['strut-top']!.at[2] - strut.points['strut-lower']!.at[2]
  return { knuckle: { strutTop: [0, -bent * z, 0] } }
})()

const rows: readonly Row[] = [
  {
    table: 'double arm: SAI low, camber high, included angle right',
    corner: coilLower,
    cause: inward('lower', 0.009),
    sai: 'low',
    camber: 'high',
    included: 'right',
    kind: 'bent lower arm',
  },
  {
    table: 'double arm: SAI high, camber low, included angle right',
    corner: coilLower,
    cause: inward('upper', 0.009),
    sai: 'high',
    camber: 'low',
    included: 'right',
    kind: 'bent upper arm',
  },
  {
    table: 'double arm: SAI right, included angle wrong',
    corner: coilLower,
    cause: { spin: [-bent, 0, 0] },
    sai: 'right',
    camber: 'high',
    included: 'high',
    kind: 'bent knuckle',
  },
  {
    table: 'torsion bar: SAI low, camber high, included angle right',
    corner: torsionBar,
    cause: inward('lower', 0.012),
    sai: 'low',
    camber: 'high',
    included: 'right',
    kind: 'bent lower arm',
  },
  {
    table: 'strut: SAI low, camber high, included angle right: lower arm',
    corner: strut,
    cause: inward('lower', 0.014),
    sai: 'low',
    camber: 'high',
    included: 'right',
    kind: 'bent lower arm',
  },
  {
    table: 'strut: SAI low, camber high, included angle right: tower out',
    corner: strut,
    cause: { body: { topMount: [0, 0.016, 0] } },
    sai: 'low',
    camber: 'high',
    included: 'right',
    kind: 'shifted tower',
  },
  {
    table: 'strut: SAI high, camber low, included angle right: tower in',
    corner: strut,
    cause: { body: { topMount: [0, -0.016, 0] } },
    sai: 'high',
    camber: 'low',
    included: 'right',
    kind: 'shifted tower',
  },
  {
    table: 'strut: SAI right, included angle wrong: strut tube',
    corner: strut,
    cause: tube,
    sai: 'right',
    camber: 'high',
    included: 'high',
    kind: 'bent strut tube',
  },
  {
    table: 'strut: SAI right, included angle wrong: stub',
    corner: strut,
    cause: { spin: [-bent, 0, 0] },
    sai: 'right',
    camber: 'high',
    included: 'high',
    kind: 'bent knuckle',
  },
]

describe('FI2 the classical table comes out as a consequence', () => {
  for (const { table, corner, cause, kind, ...wanted } of rows) {
    test(`FI2 ${table}, by the geometry`, () => {
      expect(senses(corner, cause)).toEqual(wanted)
    })
    test(`FI2 ${table}, by the ranking`, () => {
      // adjusters seen in the middle of their range: an adjuster has not done it
      const middle = Object.fromEntries(
        Object.entries(corner.adjusters).map(([id, { range }]) => [id, (range[0] + range[1]) / 2]),
      )
      const answer = rankSuspects(
        problemOf(corner, { left: cause, settings: { left: middle, right: middle, both: middle } }),
      )
      expect(blamed(answer)).toContain(kind)
    })
  }
})
