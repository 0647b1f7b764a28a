/**
 * The double wishbone in closed form, driven by the angle of its lower arm: the upper outer point by circle and
 * sphere, the tie rod's outer point by circle and sphere about the steering axis. Timed: straight-line doubles.
 *
 *     lower outer = centre + cos φ · radius u + sin φ · radius v
 *
 * @param k numbers of `closedNumbers`
 * @param rack m, to the left
 * @param out 0…2 wheel centre, 3…5 spin axis, 6…8 steering axis (lower to upper), 9…11 lower outer, 12…14 e2,
 *   15 rate of wheel height, m/rad, 16 least relative room to a dead centre (0 at one)
 * @returns false where the arms or the tie rod do not close
 * @source own derivation: docs/methods/pose-of-a-corner.md
 */
export function wishboneClosed(k: Float64Array, phi: number, rack: number, out: Float64Array): boolean {
  const cos = Math.cos(phi)
  const sin = Math.sin(phi)
  const lx = k[0]! + cos * k[3]! + sin * k[6]!
  const ly = k[1]! + cos * k[4]! + sin * k[7]!
  const lz = k[2]! + cos * k[5]! + sin * k[8]!
  // upper outer point: circle about the upper axis, sphere about the lower outer point
  const wx = lx - k[14]!
  const wy = ly - k[15]!
  const wz = lz - k[16]!
  const r = k[23]!
  const al = wx * k[17]! + wy * k[18]! + wz * k[19]!
  const be = wx * k[20]! + wy * k[21]! + wz * k[22]!
  const ga = (wx * wx + wy * wy + wz * wz + r * r - k[24]!) / (2 * r)
  const ab = al * al + be * be
  const room1 = ab - ga * ga
  if (!(room1 >= 0)) return false
  const root1 = k[26]! * Math.sqrt(room1)
  const c = (al * ga - be * root1) / ab
  const s = (be * ga + al * root1) / ab
  const d = 1 / k[25]!
  const e1x = (r * (c * k[17]! + s * k[20]!) - wx) * d
  const e1y = (r * (c * k[18]! + s * k[21]!) - wy) * d
  const e1z = (r * (c * k[19]! + s * k[22]!) - wz) * d
  // tie rod's outer point: circle about the steering axis, sphere about the tie inner point
  const t1 = k[27]!
  const t2 = k[28]!
  const gx = k[9]! - lx - t1 * e1x
  const gy = k[10]! + rack - ly - t1 * e1y
  const gz = k[11]! - lz - t1 * e1z
  const g1 = gx * e1x + gy * e1y + gz * e1z
  const px = gx - g1 * e1x
  const py = gy - g1 * e1y
  const pz = gz - g1 * e1z
  const h = px * px + py * py + pz * pz
  const q = (h + g1 * g1 + t2 * t2 - k[12]!) / (2 * t2)
  const room2 = h - q * q
  if (!(room2 >= 0)) return false
  const root2 = k[13]! * Math.sqrt(room2)
  const ih = 1 / h
  const e2x = (q * px + root2 * (e1y * pz - e1z * py)) * ih
  const e2y = (q * py + root2 * (e1z * px - e1x * pz)) * ih
  const e2z = (q * pz + root2 * (e1x * py - e1y * px)) * ih
  const e3x = e1y * e2z - e1z * e2y
  const e3y = e1z * e2x - e1x * e2z
  const e3z = e1x * e2y - e1y * e2x
  const hx = k[29]! * e1x + k[30]! * e2x + k[31]! * e3x
  const hy = k[29]! * e1y + k[30]! * e2y + k[31]! * e3y
  const hz = k[29]! * e1z + k[30]! * e2z + k[31]! * e3z
  out[0] = lx + hx
  out[1] = ly + hy
  out[2] = lz + hz
  out[3] = k[32]! * e1x + k[33]! * e2x + k[34]! * e3x
  out[4] = k[32]! * e1y + k[33]! * e2y + k[34]! * e3y
  out[5] = k[32]! * e1z + k[33]! * e2z + k[34]! * e3z
  out[6] = e1x
  out[7] = e1y
  out[8] = e1z
  out[9] = lx
  out[10] = ly
  out[11] = lz
  out[12] = e2x
  out[13] = e2y
  out[14] = e2z
  // rates per radian of the lower arm
  const dx = cos * k[6]! - sin * k[3]!
  const dy = cos * k[7]! - sin * k[4]!
  const dz = cos * k[8]! - sin * k[5]!
  const tx = c * k[20]! - s * k[17]!
  const ty = c * k[21]! - s * k[18]!
  const tz = c * k[22]! - s * k[19]!
  const psi = (e1x * dx + e1y * dy + e1z * dz) / (e1x * tx + e1y * ty + e1z * tz)
  const fx = (psi * tx - dx) * d
  const fy = (psi * ty - dy) * d
  const fz = (psi * tz - dz) * d
  const ox = e1y * fz - e1z * fy
  const oy = e1z * fx - e1x * fz
  const oz = e1x * fy - e1y * fx
  const ax = t1 * e1x + t2 * e2x
  const ay = t1 * e1y + t2 * e2y
  const az = t1 * e1z + t2 * e2z
  const mx = lx + ax - k[9]!
  const my = ly + ay - k[10]! - rack
  const mz = lz + az - k[11]!
  const push = mx * (dx + oy * az - oz * ay) + my * (dy + oz * ax - ox * az) + mz * (dz + ox * ay - oy * ax)
  const turn = -push / (t2 * (mx * e3x + my * e3y + mz * e3z))
  out[15] = dz + (ox + turn * e1x) * hy - (oy + turn * e1y) * hx
  const free1 = room1 / ab
  const free2 = room2 / h
  out[16] = Math.min(free1, free2)
  return true
}
