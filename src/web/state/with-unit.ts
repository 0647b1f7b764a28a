const bare = /^\s*[+\-−]?\d+(?:[.,]\d+)?\s*$/
const oneNumber = /^\s*[+\-−]?\d+(?:[.,]\d+)?(\s*[^\d\s.,+\-−][^\d]*)$/

/**
 * A bare number with the unit of what stood in its field before; anything else as it is. The person sees it.
 *
 * @example withUnit('-0.9', '-1.00°') // '-0.9°'
 */
export function withUnit(text: string, before: string): string {
  const unit = bare.test(text) ? oneNumber.exec(before)?.[1] : undefined
  return unit === undefined ? text : `${text.trim()}${unit.trimEnd()}`
}
