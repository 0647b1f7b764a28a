/**
 * The strut corner in closed form, driven by the angle of its lower arm: the strut's length by line and sphere, the
 * tie rod's outer point by circle and sphere about the steering axis. Timed: straight-line doubles.
 *
 * @param k numbers of `closedNumbers`
 * @param rack m, to the left
 * @param out as `wishboneClosed`; the steering axis is the unit vector from the lower outer point to the top mount
 * @returns false where the strut or the tie rod does not close
 * @source own derivation: docs/methods/pose-of-a-corner.md
 */
export function strutClosed(k: Float64Array, phi: number, rack: number, out: Float64Array): boolean {
  const cos = Math.cos(phi)
  const sin = Math.sin(phi)
  const lx = k[0]! + cos * k[3]! + sin * k[6]!
  const ly = k[1]! + cos * k[4]! + sin * k[7]!
  const lz = k[2]! + cos * k[5]! + sin * k[8]!
  // strut: place of the top mount on the strut's line, in the knuckle
  const nx = k[14]! - lx
  const ny = k[15]! - ly
  const nz = k[16]! - lz
  const dd = nx * nx + ny * ny + nz * nz
  const sx = k[20]!
  const sy = k[21]!
  const sz = k[22]!
  const se = sx * k[17]! + sy * k[18]! + sz * k[19]!
  const room1 = se * se - sx * sx - sy * sy - sz * sz + dd
  if (!(room1 >= 0)) return false
  const root1 = k[23]! * Math.sqrt(room1)
  const t = root1 - se
  const d = 1 / Math.sqrt(dd)
  const e1x = nx * d
  const e1y = ny * d
  const e1z = nz * d
  const i1x = (sx + t * k[17]!) * d
  const i1y = (sy + t * k[18]!) * d
  const i1z = (sz + t * k[19]!) * d
  const t1 = k[24]! * i1x + k[25]! * i1y + k[26]! * i1z
  const ux = k[24]! - t1 * i1x
  const uy = k[25]! - t1 * i1y
  const uz = k[26]! - t1 * i1z
  const t2 = Math.sqrt(ux * ux + uy * uy + uz * uz)
  const it2 = 1 / t2
  const i2x = ux * it2
  const i2y = uy * it2
  const i2z = uz * it2
  const i3x = i1y * i2z - i1z * i2y
  const i3y = i1z * i2x - i1x * i2z
  const i3z = i1x * i2y - i1y * i2x
  // tie rod's outer point: circle about the steering axis, sphere about the tie inner point
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
  const w1 = k[27]! * i1x + k[28]! * i1y + k[29]! * i1z
  const w2 = k[27]! * i2x + k[28]! * i2y + k[29]! * i2z
  const w3 = k[27]! * i3x + k[28]! * i3y + k[29]! * i3z
  const hx = w1 * e1x + w2 * e2x + w3 * e3x
  const hy = w1 * e1y + w2 * e2y + w3 * e3y
  const hz = w1 * e1z + w2 * e2z + w3 * e3z
  out[0] = lx + hx
  out[1] = ly + hy
  out[2] = lz + hz
  const s1 = k[30]! * i1x + k[31]! * i1y + k[32]! * i1z
  const s2 = k[30]! * i2x + k[31]! * i2y + k[32]! * i2z
  const s3 = k[30]! * i3x + k[31]! * i3y + k[32]! * i3z
  out[3] = s1 * e1x + s2 * e2x + s3 * e3x
  out[4] = s1 * e1y + s2 * e2y + s3 * e3y
  out[5] = s1 * e1z + s2 * e2z + s3 * e3z
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
  const slide = -(nx * dx + ny * dy + nz * dz) / root1
  const l1 = k[17]! * i1x + k[18]! * i1y + k[19]! * i1z
  const l2 = k[17]! * i2x + k[18]! * i2y + k[19]! * i2z
  const l3 = k[17]! * i3x + k[18]! * i3y + k[19]! * i3z
  const fx = (-dx - slide * (l1 * e1x + l2 * e2x + l3 * e3x)) * d
  const fy = (-dy - slide * (l1 * e1y + l2 * e2y + l3 * e3y)) * d
  const fz = (-dz - slide * (l1 * e1z + l2 * e2z + l3 * e3z)) * d
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
  const free1 = room1 / dd
  const free2 = room2 / h
  out[16] = Math.min(free1, free2)
  return true
}
