import { batchPoints, batchStride, mechanism } from '../src/linkage/index.ts'
import { metre, mm } from '../src/quantity/index.ts'
import type { Finding } from './finding.ts'
import { quantile, timed } from './interleaved.ts'
import { wishbone } from './invented-corners.ts'

const draws = 100_000
const target = 200
const rounds = 15

/** Draws of hard-point errors through the door: every point shifted, lengths follow, pose with angles at a travel. */
export function hardPointDraws(): Finding {
  const m = mechanism(wishbone)
  const out = new Float64Array(batchStride * draws)
  const job = { drive: { travel: metre(0.02), rack: metre(0.005) }, spread: mm(2), draws }
  let answered = 0
  let sum = 0
  const times: number[] = []
  for (let seed = 1; seed <= rounds + 3; seed++) {
    const ms = timed(() => {
      answered = batchPoints(m, { ...job, seed }, out)
    })
    if (answered < 0.99 * draws) throw new Error(`Only ${answered} of ${draws} draws were answered.`)
    sum += out[0]! + out[batchStride * draws - 7]!
    if (seed > 3) times.push(ms / 1e6)
  }
  const value = quantile(times, 0.5)
  return {
    id: 'draws',
    what: `${draws.toLocaleString('en')} draws of hard-point errors, double wishbone, every coordinate ± 2 mm (1 σ)`,
    lines: [
      `${value.toFixed(0)} ms (quartiles ${quantile(times, 0.25).toFixed(0)} to ${quantile(times, 0.75).toFixed(0)} of ${rounds} runs), ${((1e6 * value) / draws).toFixed(0)} ns a draw, ${answered} answered in the last`,
      `spread of toe ${spreadOf(out, 1).toFixed(3)}°, of camber ${spreadOf(out, 0).toFixed(3)}°; checksum ${sum.toFixed(6)}`,
    ],
    value,
    unit: 'ms',
    target,
    held: value < target,
    numbers: { median_ms: value, answered, checksum: sum },
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
