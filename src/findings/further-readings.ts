import type { AxleEnd, ReadingName } from '../linkage/index.ts'
import { readingMinutes } from './check-minutes.ts'
import type { EvidenceRow } from './evidence-rows.ts'
import type { FindingsProblem } from './findings-problem.ts'
import { rowMaker } from './row-maker.ts'
import { heightAt, vehicleNumbers } from './vehicle-vector.ts'

/** Something that could still be read, and the differences that it would give. */
export interface FurtherReading {
  readonly check: string
  readonly at: string
  readonly minutes: number
  readonly rows: readonly (EvidenceRow & { readonly spread: number })[]
}

/**
 * What could still be read of the axles that are modelled, or read again: the differences between the sides (and the
 * sum of toe), which no unknown of the model hides.
 *
 * @source own choice
 */
export function furtherReadings(problem: FindingsProblem, numbers: Float64Array): readonly FurtherReading[] {
  const rowOf = rowMaker(problem, numbers)
  const list: FurtherReading[] = []
  const put = (
    what: keyof typeof readingMinutes,
    at: string,
    done: boolean,
    rows: readonly (Float64Array | null)[],
  ): void => {
    const { minutes, spread } = readingMinutes[what]
    const known = rows.flatMap((of) => (of ? [{ name: what, value: 0, of, spread }] : []))
    if (known.length > 0)
      list.push({ check: `read ${what}${done ? ' again' : ''}`, at, minutes, rows: known })
  }
  for (const { end } of problem.axles) {
    const both = (angle: string): boolean =>
      (['left', 'right'] as const).every((side) => problem.readings[`${end} ${side} ${angle}` as ReadingName])
    const cross = (angle: string) => difference(rowOf.reading, end, angle, -1)
    put('camber', end, both('camber'), [cross('camber')])
    if (end === 'front')
      put('caster and SAI by a sweep', end, both('caster'), [cross('caster'), cross('sai')])
    put('toe', end, both('toe'), [difference(rowOf.reading, end, 'toe', 1), cross('toe')])
    const seen = problem.heights[`${end} left`] && problem.heights[`${end} right`]
    const level = new Float64Array(vehicleNumbers)
    level[heightAt(`${end} left`)] = 1
    level[heightAt(`${end} right`)] = -1
    put('ride height', end, seen !== undefined, [level])
  }
  if (problem.axles.some(({ end }) => end === 'front'))
    put('set-back', 'front', problem.setBack !== null, [rowOf.setBack()])
  return list
}

/** Left reading plus or minus the right one. */
function difference(
  reading: (name: ReadingName) => Float64Array | null,
  end: AxleEnd,
  angle: string,
  sign: 1 | -1,
): Float64Array | null {
  const [left, right] = (['left', 'right'] as const).map((side) =>
    reading(`${end} ${side} ${angle}` as ReadingName),
  )
  return left && right ? left.map((x, i) => x + sign * right[i]!) : null
}
