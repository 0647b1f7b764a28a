import { inch, mm } from '../quantity/index.ts'
import { type Thread, threadOf } from './thread.ts'

// Data. Diameter and pitches in mm, coarse first: ISO 261:1998, table 2 (choice of M5–M24), from memory;
// dimensions follow from ISO 724 and are checked against it where a copy was read.
const METRIC: readonly (readonly [number, ...number[]])[] = [
  [5, 0.8, 0.5],
  [6, 1, 0.75],
  [7, 1, 0.75],
  [8, 1.25, 1, 0.75],
  [10, 1.5, 1.25, 1, 0.75],
  [12, 1.75, 1.5, 1.25, 1],
  [14, 2, 1.5, 1.25, 1],
  [16, 2, 1.5, 1],
  [18, 2.5, 2, 1.5, 1],
  [20, 2.5, 2, 1.5, 1],
  [22, 2.5, 2, 1.5, 1],
  [24, 3, 2, 1.5, 1],
]

// Data. Diameter as written, in inches, threads per inch UNC and UNF: ASME B1.1, table of thread areas, read in a public copy.
const UNIFIED: readonly (readonly [string, number, number, number])[] = [
  ['1/4', 1 / 4, 20, 28],
  ['5/16', 5 / 16, 18, 24],
  ['3/8', 3 / 8, 16, 24],
  ['7/16', 7 / 16, 14, 20],
  ['1/2', 1 / 2, 13, 20],
  ['9/16', 9 / 16, 12, 18],
  ['5/8', 5 / 8, 11, 18],
  ['3/4', 3 / 4, 10, 16],
  ['7/8', 7 / 8, 9, 14],
  ['1', 1, 8, 12],
]

/**
 * The threads this room knows: metric coarse and fine M5–M24, UNC and UNF ¼–1 in; right-hand.
 *
 * @source ISO 261:1998, table 2 (which pitches: from memory); ISO 724:1993, table 1; ISO 898-1:2013, 9.1.6.1 (stress area); ASME B1.1, table of thread areas
 * @example threadTable.length // 60
 */
export const threadTable: readonly Thread[] = [
  ...METRIC.flatMap(([d, ...pitches]) =>
    pitches.map((p, i) =>
      threadOf({
        designation: i === 0 ? `M${d}` : `M${d}x${p}`,
        system: 'metric',
        series: i === 0 ? 'coarse' : 'fine',
        hand: 'right',
        diameter: mm(d),
        pitch: mm(p),
      }),
    ),
  ),
  ...UNIFIED.flatMap(([name, d, coarse, fine]) =>
    [coarse, fine].map((n, i) =>
      threadOf({
        designation: `${name}-${n} ${i === 0 ? 'UNC' : 'UNF'}`,
        system: 'unified',
        series: i === 0 ? 'coarse' : 'fine',
        hand: 'right',
        diameter: inch(d),
        pitch: inch(1 / n),
      }),
    ),
  ),
]
