import { type GaugeContext, type GaugeReading, isAngleName, readingOf } from '../gauge/index.ts'
import type { ReadingFact, Round } from '../job/index.ts'
import { type AxleReading, axleReadings, type ReadingName } from '../linkage/index.ts'
import { combine, type Measured, standardUncertainty } from '../measure/index.ts'
import { Refusal } from '../quantity/index.ts'
import { inputsFor } from './inputs-for.ts'
import type { SheetInput } from './sheet.ts'

/** A reading of a round with how it came about. */
export interface RoundReading {
  readonly measured: Measured
  readonly corrections: readonly GaugeReading['corrections'][number][]
  readonly notes: readonly string[]
  readonly formula: string
  readonly source: string
  readonly inputs: readonly SheetInput[]
}

/** What a round's gauges say. */
export interface RoundReadings {
  readonly readings: Readonly<Partial<Record<ReadingName, RoundReading>>>
  /** Observations that gave nothing, each in a plain sentence. */
  readonly troubles: readonly string[]
}

/**
 * Every reading of a round: what each observation says, repeats of one reading weighted by their spread, and
 * the axle readings that follow from the wheels'.
 *
 * @source own derivation: docs/methods/uncertainty.md
 */
export function readRound(round: Round, context: GaugeContext): RoundReadings {
  const found = new Map<ReadingName, RoundReading[]>()
  const troubles: string[] = []
  for (const fact of round.readings)
    try {
      for (const reading of readingOf(fact.observation, context))
        if (isAngleName(reading.name)) {
          const { name, ...rest } = reading
          found.set(name, [...(found.get(name) ?? []), { ...rest, inputs: inputsFor(fact, name) }])
        }
    } catch (error) {
      if (!(error instanceof Refusal)) throw error
      troubles.push(`${whatOf(fact)}: ${error.sentence} ${error.remedy}`)
    }
  const readings: Partial<Record<ReadingName, RoundReading>> = {}
  for (const [name, many] of found) readings[name] = together(many)
  for (const name of Object.keys(axleReadings) as AxleReading[]) {
    const made = readings[name] ?? fromWheels(name, readings)
    if (made) readings[name] = made
  }
  return { readings, troubles }
}

function whatOf({ observation }: ReadingFact): string {
  const of = 'wheel' in observation ? observation.wheel : 'side' in observation ? observation.side : ''
  return [observation.method, of].filter(Boolean).join(', ')
}

/** Several observations of one reading: weights of inverse variance; shared errors stay shared. */
function together(many: readonly RoundReading[]): RoundReading {
  const [first] = many
  if (many.length === 1) return first!
  const weights = many.map(({ measured }) => 1 / Math.max(standardUncertainty(measured) ** 2, 1e-18))
  const sum = weights.reduce((a, b) => a + b, 0)
  return {
    ...first!,
    measured: combine(many.map(({ measured }, i) => ({ of: measured, times: weights[i]! / sum }))),
    corrections: many.flatMap((one) => one.corrections),
    notes: [...new Set(many.flatMap((one) => one.notes))],
    formula: `weighted mean of ${many.length} observations: ${first!.formula}`,
    inputs: many.flatMap((one) => one.inputs),
  }
}

function fromWheels(
  name: AxleReading,
  readings: Readonly<Partial<Record<ReadingName, RoundReading>>>,
): RoundReading | null {
  const terms = axleReadings[name].map(([wheel, times]) => ({ wheel, times, reading: readings[wheel] }))
  if (terms.some(({ reading }) => reading === undefined)) return null
  return {
    measured: combine(terms.map(({ reading, times }) => ({ of: reading!.measured, times }))),
    corrections: [],
    notes: [],
    formula: terms
      .map(({ wheel, times }) => `${times < 0 ? '− ' : '+ '}${Math.abs(times) === 1 ? '' : '½ '}${wheel}`)
      .join(' ')
      .replace(/^\+ /, ''),
    source: 'docs/methods/signs.md',
    inputs: [],
  }
}
