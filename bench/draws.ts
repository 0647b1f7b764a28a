import { batchPoints, batchStride, mechanism } from '../src/linkage/index.ts'
import { metre, mm } from '../src/quantity/index.ts'
import type { Finding } from './finding.ts'
import { wishbone } from './invented-corners.ts'
import { repeated } from './repeated.ts'

const draws = 100_000
const target = 200

/** Draws of hard-point errors through the door: every point shifted, lengths follow, pose with angles at a travel. */
export function hardPointDraws(): Finding {
  const m = mechanism(wishbone)
  const out = new Float64Array(batchStride * draws)
  const job = { drive: { travel: metre(0.02), rack: metre(0.005) }, spread: mm(2), draws }
  let [answered, sum, seed] = [0, 0, 0]
  const run = (): void => {
    answered = batchPoints(m, { ...job, seed: seed++ }, out)
    if (answered < 0.99 * draws) throw new Error(`Only ${answered} of ${draws} draws were answered.`)
    sum += out[0]! + out[batchStride * draws - 7]!
  }
  const times = repeated(run, { warm: 3, runs: 15 })
  return {
    id: 'draws',
    what: `${draws.toLocaleString('en')} draws of hard-point errors, double wishbone, every coordinate ± 2 mm (1 σ)`,
    lines: [
      `${times.median.toFixed(0)} ms (quartiles ${times.low.toFixed(0)} to ${times.high.toFixed(0)} of ${times.runs} runs; ${times.processor.toFixed(0)} ms on the processor), ${((1e6 * times.median) / draws).toFixed(0)} ns a draw, ${answered} answered in the last`,
      `spread of toe ${spreadOf(out, 1).toFixed(3)}°, of camber ${spreadOf(out, 0).toFixed(3)}°; checksum ${sum.toFixed(6)}`,
    ],
    value: times.median,
    unit: 'ms',
    target,
    held: times.median < target,
    numbers: { ...times, answered, checksum: sum },
  }
}

/** Standard deviation of one angle over the answered draws, degrees. */
function spreadOf(out: Float64Array, which: number): number {
  let [count, mean, squares] = [0, 0, 0]
  for (let i = 0; i < draws; i++) {
    if (out[batchStride * i + 7] !== 0) continue
    count++
    const x = out[batchStride * i + which]!
    const off = x - mean
    mean += off / count
    squares += off * (x - mean)
  }
  return (Math.sqrt(squares / count) * 180) / Math.PI
}
