import { type Kilogram, kilogram } from '../quantity/index.ts'
import { specRefusal } from './spec-refusal.ts'

const FIRST = 60
/** Kilograms from index 60 on. */
const loads = [
  250, 257, 265, 272, 280, 290, 300, 307, 315, 325, 335, 345, 355, 365, 375, 387, 400, 412, 425, 437, 450,
  462, 475, 487, 500, 515, 530, 545, 560, 580, 600, 615, 630, 650, 670, 690, 710, 730, 750, 775, 800, 825,
  850, 875, 900, 925, 950, 975, 1000, 1030, 1060, 1090, 1120, 1150, 1180, 1215, 1250, 1285, 1320, 1360, 1400,
  1450, 1500, 1550, 1600, 1650, 1700,
] as const

/**
 * The load that a tyre of this index carries at the speed of its symbol, for one wheel.
 *
 * @param index 60 to 126
 * @returns kg
 * @throws {Refusal} `unknown-load-index`
 * @source from memory: ISO 4000-1 and UN R30, table of load indices; 68 to 123 read in public copies
 * @example loadOfIndex(109) // 1030
 */
export function loadOfIndex(index: number): Kilogram {
  const load = loads[index - FIRST]
  if (load === undefined)
    throw specRefusal({
      code: 'unknown-load-index',
      at: 'load index',
      given: String(index),
      sentence: `The load index ${index} is not in the table, which goes from ${FIRST} to ${FIRST + loads.length - 1}.`,
      remedy: 'Read the tyre again, or take the load from its sidewall.',
    })
  return kilogram(load)
}
