/** A column so many times over. @source definition */
export function scaledColumn(column: Float64Array, k: number): Float64Array {
  const out = new Float64Array(column.length)
  for (let i = 0; i < out.length; i++) out[i] = k * column[i]!
  return out
}
