/**
 * Whether bytes hold these characters, one byte each, at a place.
 *
 * @source definition
 * @example holds(new Uint8Array([0x52, 0x49]), 'RI') // true
 */
export const holds = (bytes: Uint8Array, text: string, at = 0): boolean =>
  [...text].every((c, i) => bytes[at + i] === c.charCodeAt(0))
