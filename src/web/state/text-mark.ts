const start = 0x811c9dc5
const prime = 0x01000193

/** A short mark that changes when a text does. @source FNV-1a, 32 bit (IETF draft-eastlake-fnv) */
export function textMark(text: string): string {
  let mark = start
  for (let i = 0; i < text.length; i++) mark = Math.imul(mark ^ text.charCodeAt(i), prime)
  return (mark >>> 0).toString(16).padStart(8, '0')
}
