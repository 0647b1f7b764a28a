/** Bytes as small hexadecimal digits. @source definition */
export const toHex = (bytes: Uint8Array): string =>
  Array.from(bytes, (b) => b.toString(16).padStart(2, '0')).join('')

/**
 * Bytes out of small hexadecimal digits; null where the text is anything else.
 *
 * @source definition
 */
export function fromHex(text: string): Uint8Array<ArrayBuffer> | null {
  if (!/^([0-9a-f]{2})*$/.test(text)) return null
  const bytes = new Uint8Array(text.length / 2)
  for (let i = 0; i < bytes.length; i++) bytes[i] = Number.parseInt(text.slice(2 * i, 2 * i + 2), 16)
  return bytes
}
