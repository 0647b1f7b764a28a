import { describe, expect, test } from 'vitest'
import { parseThread, strengthOf, strengths, threadLoads } from '../../../src/fasten/index.ts'
import { inInches, inMillimetres } from '../../../src/quantity/index.ts'
import { type PublishedRow, published } from '../../support/published.ts'

const MM2 = 1e6
const IN2 = 1 / 0.0254 ** 2
const MPA = 1e-6
const KSI = 1 / ((1000 * 0.45359237 * 9.80665) / 0.0254 ** 2)
const LBF = 1 / (0.45359237 * 9.80665)
const areas = 'ISO 898-1:2013, tables 4–7 (nominal stress area), read in a public copy'
const dimensions = 'ISO 724:1993, table 1 (d2, D1); ISO 68-1 (d3 = d − 1.226869 P)'
const unified = 'ASME B1.1, table of thread areas, read in a public copy'
const proofs = 'ISO 898-1, proof loads, ISO metric coarse pitch, read in a public copy'
const ultimates = 'ISO 898-1, minimum ultimate tensile loads, coarse pitch, read in a public copy'
const classes = 'ISO 898-1:2013, table 3'
const j429 = 'SAE J429, proof load and tensile strength requirements, read in a public copy'
const grades =
  'SAE J429 as tabulated by Shigley & Mischke, Mechanical Engineering Design, 5th ed. (1989), p. 341, read in a public copy'

/** Designation; area as printed, mm²; half its last digit; then d2, D1, d3 in mm and the area by formula, mm². */
const metric = [
  ['M6x1', 20.1, 0.05, 5.35, 4.917, 4.773, 20.1234, true],
  ['M8x1.25', 36.6, 0.05, 7.188, 6.647, 6.466, 36.6085, true],
  ['M8x1', 39.2, 0.05, 7.35, 6.917, 6.773, 39.1671, true],
  ['M10x1.5', 58, 0.05, 9.026, 8.376, 8.16, 57.9896, true],
  ['M10x1.25', 61.2, 0.05, 9.188, 8.647, 8.466, 61.1986, true],
  ['M10x1', 64.5, 0.05, 9.35, 8.917, 8.773, 64.494, false],
  ['M12x1.75', 84.3, 0.05, 10.863, 10.106, 9.853, 84.2665, true],
  ['M12x1.5', 88.1, 0.05, 11.026, 10.376, 10.16, 88.126, false],
  ['M12x1.25', 92.1, 0.05, 11.188, 10.647, 10.466, 92.0718, true],
  ['M14x2', 115, 0.5, 12.701, 11.835, 11.546, 115.4394, true],
  ['M14x1.5', 125, 0.5, 13.026, 12.376, 12.16, 124.5456, true],
  ['M16x2', 157, 0.5, 14.701, 13.835, 13.546, 156.6684, true],
  ['M16x1.5', 167, 0.5, 15.026, 14.376, 14.16, 167.2483, true],
  ['M18x2.5', 192, 0.5, 16.376, 15.294, 14.933, 192.4727, true],
  ['M18x1.5', 216, 0.5, 17.026, 16.376, 16.16, 216.2342, false],
  ['M20x2.5', 245, 0.5, 18.376, 17.294, 16.933, 244.7944, true],
  ['M20x1.5', 272, 0.5, 19.026, 18.376, 18.16, 271.5034, true],
  ['M22x2.5', 303, 0.5, 20.376, 19.294, 18.933, 303.3993, true],
  ['M22x1.5', 333, 0.5, 21.026, 20.376, 20.16, 333.0557, false],
  ['M24x3', 353, 0.5, 22.051, 20.752, 20.319, 352.5039, true],
  ['M24x2', 384, 0.5, 22.701, 21.835, 21.546, 384.4164, true],
] as const

/** As written; printed area in² (as copied: three or four decimals), half its last digit; area by formula, pitch diameter. */
const un = [
  ['1/4-20 UNC', 0.0318, 0.00005, 0.03182, 0.2175],
  ['5/16-18 UNC', 0.0524, 0.00005, 0.05243, 0.2764],
  ['3/8-16 UNC', 0.0775, 0.00005, 0.07749, 0.3344],
  ['7/16-14 UNC', 0.1063, 0.00005, 0.10631, 0.3911],
  ['1/2-13 UNC', 0.1419, 0.00005, 0.1419, 0.45],
  ['9/16-12 UNC', 0.182, 0.0005, 0.18194, 0.5084],
  ['5/8-11 UNC', 0.226, 0.0005, 0.226, 0.566],
  ['3/4-10 UNC', 0.334, 0.0005, 0.33446, 0.685],
  ['7/8-9 UNC', 0.462, 0.0005, 0.46173, 0.8028],
  ['1-8 UNC', 0.606, 0.0005, 0.60574, 0.9188],
  ['1/4-28 UNF', 0.0364, 0.00005, 0.03637, 0.2268],
  ['5/16-24 UNF', 0.058, 0.0005, 0.05807, 0.2854],
  ['3/8-24 UNF', 0.0878, 0.00005, 0.08783, 0.3479],
  ['7/16-20 UNF', 0.1187, 0.00005, 0.11872, 0.405],
  ['1/2-20 UNF', 0.1599, 0.00005, 0.15995, 0.4675],
  ['9/16-18 UNF', 0.203, 0.0005, 0.20298, 0.5264],
  ['5/8-18 UNF', 0.256, 0.0005, 0.25596, 0.5889],
  ['3/4-16 UNF', 0.373, 0.0005, 0.37296, 0.7094],
  ['7/8-14 UNF', 0.509, 0.0005, 0.50947, 0.8286],
  ['1-12 UNF', 0.663, 0.0005, 0.66304, 0.9459],
] as const

// The standard rounds the area to three figures before it multiplies, and the load to three figures after it:
// half the area's last digit times the stress, and half the load's last digit.
const proofLoads = [
  ['M6', '8.8', 11600, 0.05 * 580 + 50],
  ['M6', '10.9', 16700, 0.05 * 830 + 50],
  ['M6', '12.9', 19500, 0.05 * 970 + 50],
  ['M8', '8.8', 21200, 0.05 * 580 + 50],
  ['M8', '10.9', 30400, 0.05 * 830 + 50],
  ['M8', '12.9', 35500, 0.05 * 970 + 50],
  ['M10', '8.8', 33700, 0.05 * 580 + 50],
  ['M10', '10.9', 48100, 0.05 * 830 + 50],
  ['M10', '12.9', 56300, 0.05 * 970 + 50],
  ['M12', '8.8', 48900, 0.05 * 580 + 50],
  ['M12', '10.9', 70000, 0.05 * 830 + 50],
  ['M12', '12.9', 81800, 0.05 * 970 + 50],
  ['M14', '8.8', 66700, 0.5 * 580 + 50],
  ['M14', '10.9', 95500, 0.5 * 830 + 50],
  ['M14', '12.9', 112000, 0.5 * 970 + 500],
  ['M16', '8.8', 91000, 0.5 * 580 + 50],
  ['M16', '10.9', 130000, 0.5 * 830 + 500],
  ['M16', '12.9', 152000, 0.5 * 970 + 500],
  ['M18', '8.8', 115000, 0.5 * 600 + 500],
  ['M18', '10.9', 159000, 0.5 * 830 + 500],
  ['M18', '12.9', 186000, 0.5 * 970 + 500],
  ['M20', '8.8', 147000, 0.5 * 600 + 500],
  ['M20', '10.9', 203000, 0.5 * 830 + 500],
  ['M20', '12.9', 238000, 0.5 * 970 + 500],
  ['M22', '8.8', 182000, 0.5 * 600 + 500],
  ['M22', '10.9', 252000, 0.5 * 830 + 500],
  ['M22', '12.9', 294000, 0.5 * 970 + 500],
  ['M24', '8.8', 212000, 0.5 * 600 + 500],
  ['M24', '10.9', 293000, 0.5 * 830 + 500],
  ['M24', '12.9', 342000, 0.5 * 970 + 500],
] as const

const ultimateLoads = [
  ['M8', '8.8', 29200, 0.05 * 800 + 50],
  ['M8', '10.9', 38100, 0.05 * 1040 + 50],
  ['M8', '12.9', 44600, 0.05 * 1220 + 50],
  ['M10', '8.8', 46400, 0.05 * 800 + 50],
  ['M10', '10.9', 60300, 0.05 * 1040 + 50],
  ['M10', '12.9', 70800, 0.05 * 1220 + 50],
  ['M12', '8.8', 67400, 0.05 * 800 + 50],
  ['M12', '10.9', 87700, 0.05 * 1040 + 50],
  ['M12', '12.9', 103000, 0.05 * 1220 + 500],
  ['M14', '8.8', 92000, 0.5 * 800 + 50],
  ['M14', '10.9', 120000, 0.5 * 1040 + 500],
  ['M14', '12.9', 140000, 0.5 * 1220 + 500],
  ['M16', '8.8', 125000, 0.5 * 800 + 500],
  ['M16', '10.9', 163000, 0.5 * 1040 + 500],
  ['M16', '12.9', 192000, 0.5 * 1220 + 500],
  ['M20', '8.8', 203000, 0.5 * 830 + 500],
  ['M20', '10.9', 255000, 0.5 * 1040 + 500],
  ['M20', '12.9', 299000, 0.5 * 1220 + 500],
  ['M24', '8.8', 293000, 0.5 * 830 + 500],
  ['M24', '10.9', 367000, 0.5 * 1040 + 500],
  ['M24', '12.9', 431000, 0.5 * 1220 + 500],
] as const

const metricAreas: PublishedRow[] = metric
  .filter((row) => row[7])
  .map(([name, area, within]) => ({
    id: `stress area ${name}`,
    got: parseThread(name).stressArea * MM2,
    want: area,
    within,
    source: areas,
  }))
const loadRows = (
  what: 'proof' | 'ultimate',
  rows: readonly (readonly [string, string, number, number])[],
  source: string,
): PublishedRow[] =>
  rows.map(([name, mark, want, within]) => ({
    id: `${what} load ${name}, ${mark}`,
    got: threadLoads(parseThread(name), mark)[what],
    want,
    within,
    source,
  }))
/** All rows hold; only so many count as published, threads being many. */
const counted = 12
const countedUltimate = 8

describe('FA1 dimensions and areas follow the standards', () => {
  published('metric stress areas', metricAreas)
  published(
    'metric dimensions, by formula',
    metric.flatMap(([name, , , d2, d1, d3, area]) => {
      const thread = parseThread(name)
      // printed to 1 µm, and rounded once more where a table is rounded down: 1 µm
      const basis = 'derived' as const
      return [
        {
          id: `${name} d2`,
          got: inMillimetres(thread.pitchDiameter),
          want: d2,
          within: 0.001,
          source: dimensions,
          basis,
        },
        {
          id: `${name} D1`,
          got: inMillimetres(thread.minorDiameter),
          want: d1,
          within: 0.001,
          source: dimensions,
          basis,
        },
        {
          id: `${name} d3`,
          got: inMillimetres(thread.rootDiameter!),
          want: d3,
          within: 0.001,
          source: dimensions,
          basis,
        },
        {
          id: `${name} area`,
          got: thread.stressArea * MM2,
          want: area,
          within: 0.00005 * area,
          source: 'ISO 898-1, 9.1.6.1: As = π/4·(d − 0.938194 P)²',
          basis,
        },
      ]
    }),
  )
  const areaRow = ([name, area, within]: (typeof un)[number]): PublishedRow => ({
    id: `stress area ${name}`,
    got: parseThread(name).stressArea * IN2,
    want: area,
    within,
    source: unified,
  })
  published('unified stress areas', un.slice(0, counted).map(areaRow))
  test('FA1 the rest of the unified table, its formula and pitch diameters', () => {
    // some printed areas are cut, not rounded (1/2-20: 0.15995 stands as 0.1599): a whole last digit
    for (const row of un) {
      const { got, want, within } = areaRow(row)
      expect(Math.abs((got as number) - want), row[0]).toBeLessThanOrEqual(2 * within)
      const thread = parseThread(row[0])
      expect(thread.stressArea * IN2, row[0]).toBeCloseTo(row[3], 5)
      expect(Math.abs(inInches(thread.pitchDiameter) - row[4]), row[0]).toBeLessThanOrEqual(0.0001)
    }
  })
})

describe('FA2 classes and the loads of bolts', () => {
  published(
    'proof loads',
    loadRows('proof', proofLoads.filter((_, i) => i % 3 !== 1).slice(0, counted), proofs),
  )
  published('ultimate loads', loadRows('ultimate', ultimateLoads.slice(-countedUltimate), ultimates))
  test('FA2 the rest of both tables', () => {
    for (const row of [
      ...loadRows('proof', proofLoads, proofs),
      ...loadRows('ultimate', ultimateLoads, ultimates),
    ])
      expect(Math.abs((row.got as number) - row.want), row.id).toBeLessThanOrEqual(row.within)
    expect(proofLoads.length + ultimateLoads.length).toBeGreaterThan(50)
  })
  published(
    'proof stresses read',
    (
      [
        ['8.8', 'M16', 580],
        ['8.8', 'M18', 600],
        ['10.9', 'M12', 830],
        ['12.9', 'M12', 970],
      ] as const
    ).map(([mark, name, want]) => ({
      id: `${mark}, ${name}`,
      got: strengthOf(mark, parseThread(name)).proof * MPA,
      want,
      within: 0.5,
      source: `${classes}, read in a public copy`,
    })),
  )
  published(
    'classes remembered',
    (
      [
        ['4.6', 225, 240, 400],
        ['4.8', 310, 340, 420],
        ['5.6', 280, 300, 500],
        ['5.8', 380, 420, 520],
        ['6.8', 440, 480, 600],
        ['9.8', 650, 720, 900],
      ] as const
    ).flatMap(([mark, proof, flow, ultimate]) => {
      const row = strengthOf(mark, parseThread('M10'))
      const basis = 'from memory' as const
      return [
        { id: `${mark} proof`, got: row.proof * MPA, want: proof, within: 0.5, source: classes, basis },
        { id: `${mark} yield`, got: row.yield * MPA, want: flow, within: 0.5, source: classes, basis },
        {
          id: `${mark} ultimate`,
          got: row.ultimate * MPA,
          want: ultimate,
          within: 0.5,
          source: classes,
          basis,
        },
      ]
    }),
  )
  const sae = [
    ['grade 1', '1/4-20 UNC', 33, 36, 60],
    ['grade 2', '1/4-20 UNC', 55, 57, 74],
    ['grade 2', '7/8-9 UNC', 33, 36, 60],
    ['grade 4', '1/4-20 UNC', 65, 100, 115],
    ['grade 5', '1/4-20 UNC', 85, 92, 120],
    ['grade 5.2', '1/4-20 UNC', 85, 92, 120],
    ['grade 7', '1/4-20 UNC', 105, 115, 133],
    ['grade 8', '1/4-20 UNC', 120, 130, 150],
    ['grade 8.2', '1/4-20 UNC', 120, 130, 150],
  ] as const
  test('FA2 every grade of the table read', () => {
    for (const [grade, name, proof, flow, ultimate] of sae) {
      const row = strengthOf(grade, parseThread(name))
      expect(row.proof * KSI, grades).toBeCloseTo(proof, 6)
      expect(row.yield * KSI, grades).toBeCloseTo(flow, 6)
      expect(row.ultimate * KSI, grades).toBeCloseTo(ultimate, 6)
    }
    // read in the same table, above the sizes of the thread table
    const thick = strengths.filter(({ mark }) => mark === 'grade 5').at(-1)!
    expect([thick.proof, thick.yield, thick.ultimate].map((stress) => Math.round(stress * KSI))).toEqual([
      74, 81, 105,
    ])
  })
  published(
    'SAE J429 loads',
    (
      [
        ['1/4-20 UNC', 'grade 5', 'proof', 2700, 5e-5 * 85000 + 50],
        ['3/8-16 UNC', 'grade 5', 'proof', 6600, 5e-5 * 85000 + 50],
        ['5/8-11 UNC', 'grade 5', 'proof', 19200, 0.0005 * 85000 + 50],
        ['3/4-10 UNC', 'grade 5', 'proof', 28400, 0.0005 * 85000 + 50],
        ['5/8-11 UNC', 'grade 8', 'ultimate', 33900, 0.0005 * 150000 + 50],
        ['3/4-10 UNC', 'grade 8', 'ultimate', 50100, 0.0005 * 150000 + 50],
      ] as const
    ).map(([name, grade, what, want, within]) => ({
      id: `${what} load ${name}, ${grade}`,
      got: threadLoads(parseThread(name), grade)[what] * LBF,
      want,
      within,
      source: j429,
    })),
  )
})
