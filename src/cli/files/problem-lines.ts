import type { Problem, Reading } from '../../corner/index.ts'
import { BadInput } from './outcome.ts'

/** Every fault of a file as one line each: where, what is wrong, what would be right. */
export const problemLines = (path: string, problems: readonly Problem[]): readonly string[] =>
  problems.map((p) => `${path}, ${p.field}: ${p.wrong} Right would be ${p.right}.`)

/** The value of a reading, or every fault at once as bad input. */
export function wholeOf<T>(path: string, reading: Reading<T>): T {
  if (reading.ok) return reading.value
  throw new BadInput(problemLines(path, reading.problems))
}
