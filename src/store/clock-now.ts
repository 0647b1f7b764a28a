/** The device's clock, and its offset from UTC. @source RFC 3339, 5.6 (form) */
export function clockNow(): { readonly at: string; readonly offset: string } {
  const now = new Date()
  const minutes = -now.getTimezoneOffset()
  const two = (n: number) => String(n).padStart(2, '0')
  const offset = `${minutes < 0 ? '-' : '+'}${two(Math.floor(Math.abs(minutes) / 60))}:${two(Math.abs(minutes) % 60)}`
  return { at: now.toISOString().replace(/\.\d+Z$/, 'Z'), offset }
}
