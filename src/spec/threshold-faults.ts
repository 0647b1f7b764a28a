import { fieldPath, type Problem, readPart, typedShare } from '../corner/index.ts'

/** Below this a claim is as likely wrong as right. */
const LEAST = 0.5

/**
 * What is wrong with a probability from which on "inside" is called that: less than an even chance, or certainty,
 * which no gauge gives. What is no percentage at all has been told already.
 *
 * @param field where it stands in the file
 * @source definition
 * @example thresholdFaults('95 %', 'thresholds.inside') // []
 */
export function thresholdFaults(share: unknown, field: string): readonly Problem[] {
  const path = field.split('.')
  const read = share === undefined ? null : readPart(share, typedShare, path)
  if (!read?.ok || (read.value.value >= LEAST && read.value.value < 1)) return []
  return [
    {
      field: fieldPath(path),
      wrong: `“${read.value.text}” is no probability to decide by.`,
      right: 'at least 50 % and below 100 %, such as "95 %"',
    },
  ]
}
