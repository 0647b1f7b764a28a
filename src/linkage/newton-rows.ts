// Timed. Straight-line arithmetic on doubles. A row is six numbers: against wheel centre x, y and turn x, y, z, then
// minus the error. Numbers of a corner come packed in the order in which elimination needs no exchange:
//   links: seven each: knuckle point against the wheel centre, body point, length squared
//   strut: in place of the first two links: strutLower, two directions across the strut, top mount

/** Numbers of one packed link. */
export const perLink = 7
/** Numbers of a packed corner. */
export const packedSize = 35

/** Rows of the links from the packed place `from` on. */
export function linkRows(packed: Float64Array, state: Float64Array, from: number, rows: Float64Array): void {
  const cx = state[0]!
  const cy = state[1]!
  const cz = state[2]!
  const w = state[3]!
  const x = state[4]!
  const y = state[5]!
  const z = state[6]!
  const x2 = x + x
  const y2 = y + y
  const z2 = z + z
  const m00 = 1 - y * y2 - z * z2
  const m01 = x * y2 - w * z2
  const m02 = x * z2 + w * y2
  const m10 = x * y2 + w * z2
  const m11 = 1 - x * x2 - z * z2
  const m12 = y * z2 - w * x2
  const m20 = x * z2 - w * y2
  const m21 = y * z2 + w * x2
  const m22 = 1 - x * x2 - y * y2
  for (let i = from; i < 5; i++) {
    const p = 7 * i
    const at = 6 * i
    const qx = packed[p]!
    const qy = packed[p + 1]!
    const qz = packed[p + 2]!
    const rx = m00 * qx + m01 * qy + m02 * qz
    const ry = m10 * qx + m11 * qy + m12 * qz
    const rz = m20 * qx + m21 * qy + m22 * qz
    const dx = cx + rx - packed[p + 3]!
    const dy = cy + ry - packed[p + 4]!
    const dz = cz + rz - packed[p + 5]!
    rows[at] = dx
    rows[at + 1] = dy
    rows[at + 2] = ry * dz - rz * dy
    rows[at + 3] = rz * dx - rx * dz
    rows[at + 4] = rx * dy - ry * dx
    rows[at + 5] = 0.5 * (packed[p + 6]! - dx * dx - dy * dy - dz * dz)
  }
}

/** The two rows of a strut: (T − P) · N for the two directions across it. */
export function strutRows(packed: Float64Array, state: Float64Array, rows: Float64Array): void {
  const w = state[3]!
  const x = state[4]!
  const y = state[5]!
  const z = state[6]!
  const tx = packed[9]! - state[0]!
  const ty = packed[10]! - state[1]!
  const tz = packed[11]! - state[2]!
  for (let j = 0; j < 2; j++) {
    const kx = packed[3 + 3 * j]!
    const ky = packed[4 + 3 * j]!
    const kz = packed[5 + 3 * j]!
    const nx = kx - 2 * (y * y + z * z) * kx + 2 * (x * y - w * z) * ky + 2 * (x * z + w * y) * kz
    const ny = ky - 2 * (x * x + z * z) * ky + 2 * (x * y + w * z) * kx + 2 * (y * z - w * x) * kz
    const nz = kz - 2 * (x * x + y * y) * kz + 2 * (x * z - w * y) * kx + 2 * (y * z + w * x) * ky
    const at = 6 * j
    rows[at] = -nx
    rows[at + 1] = -ny
    rows[at + 2] = tz * ny - ty * nz
    rows[at + 3] = tx * nz - tz * nx
    rows[at + 4] = ty * nx - tx * ny
    rows[at + 5] = packed[0]! * kx + packed[1]! * ky + packed[2]! * kz - (tx * nx + ty * ny + tz * nz)
  }
}
