// How an invented vehicle truly stands, and the errors that its readings get.
export const DEGREE = Math.PI / 180
export const MM = 1e-3

/** mulberry32: small, seeded, good enough for reading errors. */
export function seeded(seed) {
  let a = seed
  return () => {
    a = (a + 0x6d2b79f5) | 0
    let t = Math.imul(a ^ (a >>> 15), 1 | a)
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
}

/** A number as its gauge's scale shows it. */
export const text = (value, step, unit) => {
  const places = Math.max(0, Math.ceil(-Math.log10(step) - 1e-9))
  const rounded = Math.round(value / step) * step
  return `${rounded.toFixed(places).replace(/^-(0(\.0+)?)$/, '$1')}${unit}`
}
