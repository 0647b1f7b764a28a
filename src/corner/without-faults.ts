/**
 * A copy of a file's value without the members that a schema found fault with, so that what is sound can
 * still be looked at. A faulty member's name stays (its value becomes absent); an unknown member goes.
 *
 * @param issues where the faults are: `path`, and `keys` for unknown members
 * @source definition
 * @example withoutFaults({ a: 1, b: 2 }, [{ code: 'custom', path: ['b'] }]) // { a: 1, b: undefined }
 */
export function withoutFaults(
  json: unknown,
  issues: readonly {
    readonly code?: string
    readonly path: readonly PropertyKey[]
    readonly keys?: readonly string[]
  }[],
): unknown {
  const copy = structured(json)
  for (const issue of issues) {
    // When the discriminator of a choice is wrong, nothing beside it was looked at.
    const path = issue.code === 'invalid_union' ? issue.path.slice(0, -1) : issue.path
    if (issue.keys) for (const key of issue.keys) drop(copy, [...path, key], true)
    else if (issue.code === 'invalid_key') drop(copy, path, true)
    else drop(copy, path, false)
  }
  return copy
}

function structured(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(structured)
  if (typeof value !== 'object' || value === null) return value
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, structured(inner)]))
}

function drop(root: unknown, path: readonly PropertyKey[], whole: boolean): void {
  let there = root as Record<PropertyKey, unknown> | undefined
  for (const step of path.slice(0, -1)) {
    const inner = there?.[step]
    if (typeof inner !== 'object' || inner === null) return
    there = inner as Record<PropertyKey, unknown>
  }
  const last = path.at(-1)
  if (there === undefined || last === undefined) return
  if (whole && !Array.isArray(there)) delete there[last]
  else there[last] = undefined
}
