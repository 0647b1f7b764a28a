import { type AxleReading, axleReadings, type ReadingName, type WheelReading } from '../linkage/index.ts'
import type { Measured } from '../measure/index.ts'
import { Refusal } from '../quantity/index.ts'
import type { AdjustRefusal } from './adjuster.ts'
import { angleOrder } from './angles-at-strokes.ts'
import type { Limit, MovesProblem } from './problem.ts'
import { readingOf } from './reading-of.ts'

/** What one wheel's angle adds to a reading. */
interface RowTerm {
  /** 2 · axle + (0 left, 1 right), in the problem's order of axles. */
  readonly wheel: number
  /** Place in `angleOrder`. */
  readonly angle: number
  readonly by: number
}

/** One reading with the wheel angles it is made of and, where there is one, its limit. */
export interface ReadingRow {
  readonly name: ReadingName
  readonly now: Measured
  readonly limit: Required<Limit> | null
  readonly terms: readonly RowTerm[]
}

/**
 * The readings of a problem as rows: those that were read, and those with a limit that follow from them
 * (total toe from two wheels). A limit whose reading is missing is named, not guessed.
 *
 * @throws {Refusal} `bad-limit` when a limit is empty, not finite, or its preferred value lies outside
 * @throws {Refusal} `no-reading` when there is nothing at all to judge
 * @source definition
 */
export function readingRows(problem: MovesProblem): { rows: readonly ReadingRow[]; notRead: ReadingName[] } {
  const names = [
    ...new Set([
      ...(Object.keys(problem.limits) as ReadingName[]),
      ...(Object.keys(problem.readings) as ReadingName[]),
    ]),
  ]
  const rows: ReadingRow[] = []
  const notRead: ReadingName[] = []
  for (const name of names) {
    const limit = problem.limits[name]
    const full = limit ? checked(name, limit) : null
    const now = readingOf(problem.readings, name)
    if (now) rows.push({ name, now, limit: full, terms: termsOf(name, problem) })
    else notRead.push(name)
  }
  if (!rows.some((row) => row.limit))
    throw new Refusal<AdjustRefusal>({
      code: 'no-reading',
      at: 'readings',
      given: `${Object.keys(problem.readings).length} readings, ${Object.keys(problem.limits).length} limits`,
      sentence: 'No reading has a limit, so there is nothing to bring inside.',
      remedy: 'Read at least one angle that the sheet has limits for, or type the limits.',
    })
  return { rows, notRead }
}

function checked(name: ReadingName, { low, high, preferred }: Limit): Required<Limit> {
  const wanted = preferred ?? (low + high) / 2
  if (!(Number.isFinite(low) && Number.isFinite(high) && low < high && wanted >= low && wanted <= high))
    throw new Refusal<AdjustRefusal>({
      code: 'bad-limit',
      at: `limits.${name}`,
      given: `${low} … ${high}, preferred ${wanted}`,
      sentence: `The limits of ${name} do not hold together: low must be below high, with the preferred value between them.`,
      remedy: 'Type low, high and preferred again from your service information.',
    })
  return { low, high, preferred: wanted }
}

/** A wheel reading is a sum of itself. */
function sumOf(name: ReadingName): readonly (readonly [WheelReading, number])[] {
  return name in axleReadings ? axleReadings[name as AxleReading] : [[name as WheelReading, 1]]
}

function termsOf(name: ReadingName, problem: MovesProblem): RowTerm[] {
  const terms: RowTerm[] = []
  for (const [reading, by] of sumOf(name)) {
    const [end, side, angle] = reading.split(' ')
    const axle = problem.axles.findIndex((one) => one.end === end)
    if (axle >= 0)
      terms.push({
        wheel: 2 * axle + (side === 'left' ? 0 : 1),
        angle: angleOrder.indexOf(angle as never),
        by,
      })
  }
  return terms
}
