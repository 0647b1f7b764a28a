import { batchStride, type Mechanism } from '../src/linkage/index.ts'
import { newtonKernel, newtonSettle, rackInner } from '../src/linkage/newton-kernel.ts'
import { posesPerBatch } from './sweep.ts'

/** The kernel alone, without angles: each pose from the one before, the first from the design pose. */
export function newtonBatch(m: Mechanism, drives: Float64Array, out: Float64Array): () => number {
  const kernel = newtonKernel(m)
  const inner = rackInner(kernel)
  const state = new Float64Array(7)
  const [homeX, homeY, homeZ] = m.home
  return () => {
    state.fill(0)
    state[0] = homeX
    state[1] = homeY
    state[3] = 1
    for (let i = 0; i < posesPerBatch; i++) {
      state[2] = homeZ + drives[2 * i]!
      if (!newtonSettle(kernel, state, inner + drives[2 * i + 1]!)) return i
      for (let j = 0; j < 7; j++) out[batchStride * i + j] = state[j]!
    }
    return posesPerBatch
  }
}
