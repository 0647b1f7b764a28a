import { type AxleReading, axleReadings, type ReadingName, type WheelReading } from '../linkage/index.ts'
import { combine, exact, type Measured } from '../measure/index.ts'
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

/** A reading, or where the steering wheel stands when the vehicle runs straight. */
export type RowName = ReadingName | 'steering wheel'

/** One reading with the wheel angles it is made of and, where there is one, its limit. */
export interface ReadingRow {
  readonly name: RowName
  readonly now: Measured
  readonly limit: Required<Limit> | null
  readonly terms: readonly RowTerm[]
}

/**
 * The readings of a problem as rows: those that were read, and those with a limit that follow from them
 * (total toe from two wheels). A limit whose reading is missing is named, not guessed.
 *
 * @throws {Refusal} `bad-limit` when a limit is empty, not finite, or its preferred value lies outside
 * @throws {Refusal} `bad-option` for a steering ratio that is not above 0
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
  const wheel = steeringRow(problem)
  if (wheel) rows.push(wheel)
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

/** Null where toe of all four wheels was not read, nor the thrust line. */
function steeringRow(problem: MovesProblem): ReadingRow | null {
  const { steering, readings } = problem
  if (!steering) return null
  const { ratio, held = exact(0), limit } = steering
  if (!(ratio > 0 && Number.isFinite(ratio)))
    throw new Refusal<AdjustRefusal>({
      code: 'bad-option',
      at: 'steering.ratio',
      given: String(ratio),
      sentence: `The steering ratio is ${ratio}; it must be above 0.`,
      remedy: 'Give how many degrees the steering wheel turns per degree of the road wheels.',
    })
  const parts = [
    { of: readingOf(readings, 'front left toe'), times: ratio / 2 },
    { of: readingOf(readings, 'front right toe'), times: -ratio / 2 },
    { of: readingOf(readings, 'thrust'), times: -ratio },
    { of: held, times: 1 },
  ]
  if (parts.some(({ of }) => !of)) return null
  const toes = parts.slice(0, 3).flatMap(({ times }, k) =>
    termsOf((['front left toe', 'front right toe', 'thrust'] as const)[k]!, problem).map((term) => ({
      ...term,
      by: term.by * times,
    })),
  )
  return {
    name: 'steering wheel',
    now: combine(parts.map(({ of, times }) => ({ of: of!, times }))),
    limit: limit ? checked('steering wheel', limit) : null,
    terms: toes,
  }
}

function checked(name: RowName, { low, high, preferred }: Limit): Required<Limit> {
  const wanted = preferred ?? (low + high) / 2
  if (!(Number.isFinite(low) && Number.isFinite(high) && low < high && wanted >= low && wanted <= high))
    throw new Refusal<AdjustRefusal>({
      code: 'bad-limit',
      at: name === 'steering wheel' ? 'steering.limit' : `limits.${name}`,
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
