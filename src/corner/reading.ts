/** One thing that is wrong in a file or a form: where, what, and what would be right. @source definition */
export interface Problem {
  /** Path of the member: `points.lower-outer.at[1]`; for broken JSON the line and column. */
  readonly field: string
  /** `"12" has no unit.` */
  readonly wrong: string
  /** `a length with its unit, such as "352 mm"` */
  readonly right: string
}

/** What comes out of a file: the value, or everything that is wrong with it at once. Never half of each. @source definition */
export type Reading<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly Problem[] }

/**
 * The reading of a file without a fault.
 *
 * @source definition
 * @example good(3).ok // true
 */
export const good = <T>(value: T): Reading<T> => ({ ok: true, value })

/**
 * The reading of a file with faults. An empty list would be a lie, so it is our own mistake.
 *
 * @source definition
 * @example bad([{ field: 'id', wrong: 'It is missing.', right: 'a short name' }]).ok // false
 */
export function bad(problems: readonly Problem[]): Reading<never> {
  if (problems.length === 0) throw new Error('A reading without a value needs at least one problem.')
  return { ok: false, problems }
}
