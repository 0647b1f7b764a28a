const table = Uint32Array.from({ length: 256 }, (_, n) => {
  let c = n
  for (let bit = 0; bit < 8; bit++) c = c & 1 ? 0xedb88320 ^ (c >>> 1) : c >>> 1
  return c
})

/**
 * The checksum that ZIP and PNG put beside their bytes.
 *
 * @returns 32 bits, without a sign
 * @source W3C Portable Network Graphics (third edition), annex D; APPNOTE.TXT (ZIP), 4.4.7
 * @example crc32(new TextEncoder().encode('123456789')).toString(16) // 'cbf43926'
 */
export function crc32(bytes: Uint8Array): number {
  let c = 0xffffffff
  for (let i = 0; i < bytes.length; i++) c = table[(c ^ bytes[i]!) & 255]! ^ (c >>> 8)
  return ~c >>> 0
}
