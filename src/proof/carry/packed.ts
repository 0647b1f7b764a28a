import { deflateSync, Inflate } from 'fflate'

/**
 * Bytes packed, always in the same way.
 *
 * @source RFC 1951
 */
export const packed = (bytes: Uint8Array): Uint8Array => deflateSync(bytes, { level: 6 })

/**
 * Packed bytes unpacked, no further than they say they go.
 *
 * @param size how many there should be
 * @returns null where they are more or fewer, or cannot be unpacked
 * @source RFC 1951
 */
export function unpacked(bytes: Uint8Array, size: number): Uint8Array | null {
  const all = new Uint8Array(size)
  let at = 0
  let isTooMuch = false
  const take = new Inflate((part) => {
    if (at + part.length > size) isTooMuch = true
    else all.set(part, at)
    at += part.length
  })
  try {
    // Little at a time, so that what unpacks to very much is found before it does.
    for (let from = 0; from < bytes.length && !isTooMuch; from += step)
      take.push(bytes.subarray(from, from + step), from + step >= bytes.length)
  } catch {
    return null
  }
  return isTooMuch || at !== size ? null : all
}

const step = 16 * 1024
