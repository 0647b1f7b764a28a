import type { Entry } from './entry.ts'
import { personalMembers } from './personal-members-schema.ts'
import { isSealed } from './sealed-entry.ts'

/** Where a personal value stands. @source definition */
export interface PersonalPlace {
  /** Place in the log. */
  readonly entry: number
  /** The kind that declares it, which of a correction is that of what it corrects. */
  readonly kind: string
  /** "consent.by" */
  readonly member: string
}

/**
 * A log with everything personal in it said otherwise: in entries that have such a member, and in corrections of them.
 *
 * @param log in causal order
 * @param said what stands there instead; the same text leaves the entry as it is
 * @source own derivation: docs/methods/record.md
 * @example withPersonal([{ kind: 'arrival', data: { asked: 'pulls', vin: 'X1' } }], () => 'erased')[0].data.vin // 'erased'
 */
export function withPersonal(
  log: readonly Entry[],
  said: (text: string, place: PersonalPlace) => string,
): readonly Entry[] {
  const placeOf = new Map(log.flatMap((one, i) => (isSealed(one) ? [[one.id, i] as const] : [])))
  const targets: Target[] = []
  return log.map((entry, i) => {
    const target = targetOf(entry, i, placeOf, targets)
    targets.push(target)
    let data: unknown = entry.data
    for (const path of personalMembers(target.kind))
      data = withText(data, [...target.within, ...path], (text) =>
        said(text, { entry: i, kind: target.kind, member: path.join('.') }),
      )
    return data === entry.data ? entry : { ...entry, data: data as Entry['data'] }
  })
}

/** Of which kind what an entry says is, and how deep in its data that stands. */
interface Target {
  readonly kind: string
  readonly within: readonly string[]
}

function targetOf(
  { kind, data }: Entry,
  at: number,
  placeOf: ReadonlyMap<string, number>,
  before: readonly Target[],
): Target {
  if (kind !== 'correction') return { kind, within: [] }
  const { of } = data
  const place = typeof of === 'string' ? placeOf.get(of) : of
  const corrected = typeof place === 'number' && place < at ? before[place] : undefined
  return corrected ? { kind: corrected.kind, within: ['data', ...corrected.within] } : { kind, within: [] }
}

/** A copy with another text at the path; the same value where no text stands there or it stays as it is. */
function withText(
  there: unknown,
  [step, ...rest]: readonly string[],
  said: (text: string) => string,
): unknown {
  if (step === undefined) return typeof there === 'string' ? said(there) : there
  if (typeof there !== 'object' || there === null || Array.isArray(there) || !Object.hasOwn(there, step))
    return there
  const old = (there as Readonly<Record<string, unknown>>)[step]
  const changed = withText(old, rest, said)
  return changed === old ? there : { ...there, [step]: changed }
}
