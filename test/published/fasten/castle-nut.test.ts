import { describe } from 'vitest'
import { axialAdvance, castleNut, largestAdvance, parseThread } from '../../../src/fasten/index.ts'
import { deg, inDegrees, inMillimetres, mm } from '../../../src/quantity/index.ts'
import { type PublishedRow, published } from '../../support/published.ts'

describe('FA13 castle nuts', () => {
  const din = 'DIN 935-1 (grades A and B), dimension table, read in a public copy'
  const pins = 'DIN 935-1, column “Split pin as in DIN EN ISO 1234”, read in a public copy'
  const rows = [
    ['M6', 2, 10, 1.6, 14],
    ['M8', 2.5, 13, 2, 16],
    ['M10', 2.8, 16, 2.5, 20],
    ['M12', 3.5, 18, 3.2, 22],
    ['M14', 3.5, 21, 3.2, 25],
    ['M16', 4.5, 24, 4, 28],
    ['M18', 4.5, 27, 4, 32],
    ['M20', 4.5, 30, 4, 36],
    ['M22', 5.5, 34, 5, 36],
  ] as const
  published(
    'slot, flats, pin',
    rows.flatMap(([name, slot, flats, pin, length]): PublishedRow[] => {
      const nut = castleNut(parseThread(name))!
      return [
        {
          id: `${name} slot width`,
          got: inMillimetres(nut.slotWidth),
          want: slot,
          within: 0.05,
          source: din,
        },
        {
          id: `${name} across flats`,
          got: inMillimetres(nut.acrossFlats),
          want: flats,
          within: 0.5,
          source: din,
        },
        {
          id: `${name} pin diameter`,
          got: inMillimetres(nut.pin.diameter),
          want: pin,
          within: 0.05,
          source: pins,
        },
        {
          id: `${name} pin length`,
          got: inMillimetres(nut.pin.length),
          want: length,
          within: 0.5,
          source: pins,
        },
      ]
    }),
  )
  published('slots', [
    {
      id: 'slots.rule',
      got: castleNut(parseThread('M22'))!.slots,
      want: 6,
      within: 0.5,
      source: 'DIN 937, note under the table (same series): 6 from M6 to M39, read in a public copy',
    },
  ])
  published(
    'largest advance to the next alignment',
    (
      [
        [6, [0], 60],
        [6, [0, 90], 30],
        [8, [0], 45],
        [8, [0, 90], 45],
        [10, [0], 36],
      ] as const
    ).map(([slots, holes, want]) => ({
      id: `align.${slots}slots.${holes.length}hole`,
      got: inDegrees(largestAdvance({ slots, holes: holes.map(deg) })),
      want,
      within: 1e-9,
      source: 'geometry: slots equally spaced; a through hole meets two opposite slots',
      basis: 'derived' as const,
    })),
  )
  published(
    'along the thread, one slot of six',
    (
      [
        ['M10x1.25', 1.25 / 6],
        ['M12x1.5', 0.25],
        ['M14x1.5', 0.25],
        ['M14', 1 / 3],
        ['M16x1.5', 0.25],
      ] as const
    ).map(([name, want]) => ({
      id: `advance.${name}`,
      got: inMillimetres(axialAdvance({ pitch: parseThread(name).pitch, angle: deg(60) })),
      want,
      within: 1e-9 * want,
      source: 'geometry: P·θ/360',
      basis: 'derived' as const,
    })),
  )
  published('a pitch is one turn', [
    {
      id: '360° of 1.5 mm',
      got: axialAdvance({ pitch: mm(1.5), angle: deg(360) }) * 1000,
      want: 1.5,
      within: 1e-12,
      source: 'definition of pitch, ISO 5408',
      basis: 'derived',
    },
  ])
})
