/**
 * A correction laid over what it corrects: given members replace, objects are gone into, null takes a
 * member out, a list is replaced whole.
 *
 * @source RFC 7396, 2 (the algorithm)
 * @example mergePatch({ a: 1, b: { c: 2, d: 3 } }, { b: { c: null } }) // { a: 1, b: { d: 3 } }
 */
export function mergePatch(target: unknown, patch: unknown): unknown {
  if (!isObject(patch)) return patch
  const merged = new Map(isObject(target) ? Object.entries(target) : [])
  for (const [name, value] of Object.entries(patch))
    if (value === null) merged.delete(name)
    else merged.set(name, mergePatch(merged.get(name), value))
  return Object.fromEntries(merged)
}

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)
