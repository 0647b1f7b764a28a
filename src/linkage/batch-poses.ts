import { metre, Refusal } from '../quantity/index.ts'
import { axisPlaces, batchFlag, batchStride, writeAngles, writeState } from './batch-row.ts'
import { closedAngle, closedKernel } from './closed-kernel.ts'
import type { LinkageRefusal } from './linkage-refusal.ts'
import type { Mechanism } from './mechanism.ts'
import { newtonKernel, newtonSettle, rackInner } from './newton-kernel.ts'
import { followTo } from './pose-at.ts'

/**
 * Many poses of one corner without allocation: in closed form where there is one, else by Newton from the pose
 * before. What neither can do is followed from the design pose. Instead of throwing, an answer carries a flag.
 *
 * @param drives travel and rack in turn, m
 * @param out per pose `batchStride` numbers: camber, toe, caster, SAI, wheel centre x, y, z, and 0 or 1 = unreachable
 * @returns how many were answered
 * @throws {Refusal} `bad-input` when the arrays do not fit together
 * @source own derivation: docs/methods/pose-of-a-corner.md
 * @example batchPoses(m, Float64Array.of(0, 0, 0.01, 0), out) // 2
 */
export function batchPoses(m: Mechanism, drives: Float64Array, out: Float64Array): number {
  const count = drives.length / 2
  if (!Number.isInteger(count) || out.length < count * batchStride)
    throw new Refusal<LinkageRefusal>({
      code: 'bad-input',
      at: 'out',
      given: `${drives.length} and ${out.length} numbers`,
      sentence: `${count} drives need ${count * batchStride} numbers of room.`,
      remedy: 'Give travel and rack in turn, and room for every answer.',
    })
  const closed = closedKernel(m)
  const newton = newtonKernel(m)
  const inner = rackInner(newton)
  const axis = axisPlaces(m)
  const spin = Float64Array.from(m.spin)
  const { form, home } = m
  const state = new Float64Array(7)
  let warm = false
  let phi = 0
  let answered = 0
  for (let i = 0; i < count; i++) {
    const travel = drives[2 * i]!
    const rack = drives[2 * i + 1]!
    const at = batchStride * i
    if (closed !== null) {
      phi = closedAngle(closed, travel, rack, warm ? phi : travel / closed.rate)
      warm = !Number.isNaN(phi)
      if (warm) {
        const c = closed.out
        writeAngles(out, at, c[3]!, c[4]!, c[5]!, c[6]!, c[7]!, c[8]!)
        out[at + 4] = c[0]!
        out[at + 5] = c[1]!
        out[at + 6] = c[2]!
        out[at + 7] = batchFlag.answered
        answered++
        continue
      }
    } else {
      if (!warm) {
        state[0] = home[0]
        state[1] = home[1]
        state[3] = 1
        state[4] = 0
        state[5] = 0
        state[6] = 0
      }
      state[2] = home[2] + travel
      warm = newtonSettle(newton, state, inner + rack)
      if (warm) {
        writeState(out, at, state, form, spin, axis)
        answered++
        continue
      }
    }
    const found = followTo(m, { travel: metre(travel), rack: metre(rack) })
    if (found.arrived) {
      writeState(out, at, found.state, form, spin, axis)
      answered++
    } else {
      for (let j = 0; j < batchStride; j++) out[at + j] = 0
      out[at + 7] = batchFlag.unreachable
    }
  }
  return answered
}
