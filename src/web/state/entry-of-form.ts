interface FormEntry {
  readonly kind: string
  readonly data: Readonly<Record<string, unknown>>
}

/**
 * What a filled form says, as an entry of the log: a new one, or a correction that adds to one that is there.
 *
 * @param of how the entry that is added to is named; null where there is none yet
 * @param filled texts by their paths: "depths.outer"
 * @example entryOfForm({ kind: 'tyre', of: null, filled: { 'depths.outer': '5 mm' } }).data // { depths: { outer: '5 mm' } }
 */
export function entryOfForm({
  kind,
  of,
  filled,
  with: base = {},
}: {
  readonly kind: string
  readonly of: number | string | null
  readonly filled: Readonly<Record<string, unknown>>
  /** What a new entry holds beside its texts. */
  readonly with?: Readonly<Record<string, unknown>>
}): FormEntry {
  const data = Object.entries(filled).reduce<Nested>(
    (all, [path, text]) => laid(all, path.split('.'), text),
    {},
  )
  return of === null ? { kind, data: { ...base, ...data } } : { kind: 'correction', data: { of, data } }
}

type Nested = Readonly<Record<string, unknown>>

const laid = (on: Nested, [step, ...rest]: readonly string[], text: unknown): Nested => ({
  ...on,
  [step!]: rest.length === 0 ? text : laid((on[step!] ?? {}) as Nested, rest, text),
})
