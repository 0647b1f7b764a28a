/**
 * Solves five rows of six (five unknowns, right side) by elimination without exchange. Timed: no loops, no arrays
 * but the two given.
 *
 * @param rows 30 numbers, kept
 * @param out the five unknowns
 * @returns the determinant; its smallness, or NaN, says that the order of rows does not suit
 */
export function solveFive(rows: Float64Array, out: Float64Array): number {
  const a00 = rows[0]!
  const a01 = rows[1]!
  const a02 = rows[2]!
  const a03 = rows[3]!
  const a04 = rows[4]!
  const a05 = rows[5]!
  const i0 = 1 / a00
  let f = rows[6]! * i0
  const a11 = rows[7]! - f * a01
  const a12 = rows[8]! - f * a02
  const a13 = rows[9]! - f * a03
  const a14 = rows[10]! - f * a04
  const a15 = rows[11]! - f * a05
  f = rows[12]! * i0
  const b21 = rows[13]! - f * a01
  const b22 = rows[14]! - f * a02
  const b23 = rows[15]! - f * a03
  const b24 = rows[16]! - f * a04
  const b25 = rows[17]! - f * a05
  f = rows[18]! * i0
  const b31 = rows[19]! - f * a01
  const b32 = rows[20]! - f * a02
  const b33 = rows[21]! - f * a03
  const b34 = rows[22]! - f * a04
  const b35 = rows[23]! - f * a05
  f = rows[24]! * i0
  const b41 = rows[25]! - f * a01
  const b42 = rows[26]! - f * a02
  const b43 = rows[27]! - f * a03
  const b44 = rows[28]! - f * a04
  const b45 = rows[29]! - f * a05
  const i1 = 1 / a11
  f = b21 * i1
  const a22 = b22 - f * a12
  const a23 = b23 - f * a13
  const a24 = b24 - f * a14
  const a25 = b25 - f * a15
  f = b31 * i1
  const c32 = b32 - f * a12
  const c33 = b33 - f * a13
  const c34 = b34 - f * a14
  const c35 = b35 - f * a15
  f = b41 * i1
  const c42 = b42 - f * a12
  const c43 = b43 - f * a13
  const c44 = b44 - f * a14
  const c45 = b45 - f * a15
  const i2 = 1 / a22
  f = c32 * i2
  const a33 = c33 - f * a23
  const a34 = c34 - f * a24
  const a35 = c35 - f * a25
  f = c42 * i2
  const d43 = c43 - f * a23
  const d44 = c44 - f * a24
  const d45 = c45 - f * a25
  const i3 = 1 / a33
  f = d43 * i3
  const a44 = d44 - f * a34
  const x4 = (d45 - f * a35) / a44
  const x3 = (a35 - a34 * x4) * i3
  const x2 = (a25 - a23 * x3 - a24 * x4) * i2
  const x1 = (a15 - a12 * x2 - a13 * x3 - a14 * x4) * i1
  out[0] = (a05 - a01 * x1 - a02 * x2 - a03 * x3 - a04 * x4) * i0
  out[1] = x1
  out[2] = x2
  out[3] = x3
  out[4] = x4
  return a00 * a11 * a22 * a33 * a44
}
