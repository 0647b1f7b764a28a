/** Where a value stands in a file: names and places from its top. */
export type FilePath = readonly (string | number)[]

/** What stands at a place of a file; undefined where there is nothing. */
export const textAt = (file: unknown, path: FilePath): string => {
  const found = valueAt(file, path)
  return typeof found === 'string' ? found : ''
}

/** Whatever stands at a place of a file. */
export const valueAt = (file: unknown, path: FilePath): unknown =>
  path.reduce<unknown>(
    (value, step) =>
      typeof value === 'object' && value !== null ? (value as Record<string, unknown>)[step] : undefined,
    file,
  )

/** The file with another value at a place; undefined takes it out, and what is empty then goes with it. */
export function withValue(file: unknown, path: FilePath, value: unknown): unknown {
  const [step, ...rest] = path
  if (step === undefined) return value
  const inner = withValue(
    typeof file === 'object' && file !== null ? (file as Record<string, unknown>)[step] : undefined,
    rest,
    value,
  )
  if (typeof step === 'number') {
    const list = Array.isArray(file) ? [...file] : []
    list[step] = inner ?? ''
    return list
  }
  const others = Object.entries((file ?? {}) as object).filter(([name]) => name !== step)
  if (inner === undefined) return others.length > 0 ? Object.fromEntries(others) : undefined
  const before = Object.keys((file ?? {}) as object)
  const whole = { ...(file as object), [step]: inner }
  return before.includes(step) ? whole : Object.fromEntries([...others, [step, inner]])
}

/** A path as the faults of a file are told: "limits.front camber.low", "wrenches.long.range[0]". */
export const fieldOf = (path: FilePath): string =>
  path.map((step, i) => (typeof step === 'number' ? `[${step}]` : i === 0 ? step : `.${step}`)).join('')
