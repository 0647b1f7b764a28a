import type { Foreseen } from '../adjust/index.ts'
import { atHeight } from '../gauge/index.ts'
import type { ReadingName } from '../linkage/index.ts'
import { decide } from '../measure/index.ts'
import type { UnitChoice } from '../quantity/index.ts'
import type { Limit } from '../spec/index.ts'
import { predictedNumber } from './moves-of-sheet.ts'
import type { RoundReading } from './read-round.ts'
import { readingOrder, readingWords } from './reading-words.ts'
import type { SheetReading } from './sheet.ts'
import { sheetNumber } from './sheet-number.ts'
import { whyOf } from './why-of.ts'

/** What the rows of readings are made from. */
export interface RowsTask {
  readonly readings: Readonly<Partial<Record<ReadingName, RoundReading>>>
  readonly limits: Readonly<Partial<Record<ReadingName, Limit>>>
  readonly limitSource: string
  readonly foreseen: readonly Foreseen[]
  readonly threshold: number
  readonly units: UnitChoice
  /** How a reading follows ride height, where it was read at another than the sheet's. */
  readonly heights: Readonly<Partial<Record<ReadingName, Parameters<typeof atHeight>[1]>>>
}

/** The readings of the sheet in the order in which they are set, each with its verdict. */
export function readingRows(task: RowsTask): readonly SheetReading[] {
  return readingOrder.flatMap((name): SheetReading[] => {
    const reading = task.readings[name]
    return reading && isShown(name, task) ? [row(name, reading, task)] : []
  })
}

/** Toe to the centre line gives way to toe to the thrust line; a difference without a limit says nothing new. */
function isShown(name: ReadingName, { readings, limits }: RowsTask): boolean {
  if (limits[name]) return true
  if (name === 'front left toe' || name === 'front right toe')
    return readings[`${name} to thrust` as ReadingName] === undefined
  return !name.includes('cross')
}

function row(name: ReadingName, reading: RoundReading, task: RowsTask): SheetReading {
  const { units, threshold } = task
  const angle = { kind: 'angle', unit: units.angle } as const
  const limit = task.limits[name]
  const decision = limit ? decide(reading.measured, limit, { threshold }) : null
  const height = task.heights[name]
  return {
    ...sheetNumber(reading.measured, angle),
    name,
    ...readingWords(name),
    unit: 'angle',
    limit: limit ? { ...limit, source: task.limitSource } : null,
    probability: decision?.probability ?? null,
    verdict: decision?.verdict ?? 'no limit',
    provable: decision?.provable ?? null,
    predicted: predictedNumber(
      task.foreseen.find((one) => one.name === name),
      units,
    ),
    atSheetHeight: height ? sheetNumber(atHeight(reading.measured, height), angle) : null,
    inputs: reading.inputs,
    why: whyOf(reading, units),
  }
}
