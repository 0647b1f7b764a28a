/**
 * A member's place, as `fieldPath` writes it, taken apart; null where it is no such place.
 *
 * @returns names and list places, outermost first; none for the empty text
 * @source definition
 * @example placeSteps('wheels.front left.rear[1]') // ['wheels', 'front left', 'rear', 1]
 */
export function placeSteps(place: string): readonly (string | number)[] | null {
  const steps: (string | number)[] = []
  let rest = place.trim()
  while (rest !== '') {
    const part = /^(?:\[(\d{1,5})\]|\[("(?:[^"\\]|\\.)*")\]|\.?([\p{L}\p{N}_ -]+))/u.exec(rest)
    if (!part) return null
    const [whole, index, quoted, name] = part
    // Only what follows another has a point before it.
    if (name !== undefined && whole.startsWith('.') !== steps.length > 0) return null
    steps.push(
      index !== undefined ? Number(index) : quoted !== undefined ? (JSON.parse(quoted) as string) : name!,
    )
    rest = rest.slice(whole.length)
  }
  return steps
}
