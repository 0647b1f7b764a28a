/**
 * A member's place in a file as a person writes it: names with dots, list places in brackets, and quotes
 * around a name that holds anything but letters, digits, `-` and `_` (spaces are kept as they are).
 *
 * @param path names and list places, outermost first
 * @source definition
 * @example fieldPath(['points', 'lower-outer', 'at', 1]) // 'points.lower-outer.at[1]'
 */
export function fieldPath(path: readonly PropertyKey[]): string {
  let text = ''
  for (const step of path)
    if (typeof step === 'number') text += `[${step}]`
    else if (/^[\p{L}\p{N}_ -]+$/u.test(String(step))) text += text === '' ? String(step) : `.${String(step)}`
    else text += `[${JSON.stringify(String(step))}]`
  return text === '' ? 'the file' : text
}
