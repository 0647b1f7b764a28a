import { Refusal } from '../../quantity/index.ts'
import type { OrderProblem } from './order-problem.ts'
import type { OrderRefusal } from './order-refusal.ts'
import { type Precedence, precedence } from './precedence.ts'

/** A problem as the searches want it: checked, followed through, in typed arrays. */
export interface Instance extends Precedence {
  readonly size: number
  /** Row by row; what cannot stand straight after is not marked here but in `follows`. */
  readonly cost: Float64Array
  readonly start: Float64Array
  readonly end: Float64Array
  /** 1 where j may come straight after i: not to be before it, and nothing that must lie between. */
  readonly follows: Uint8Array
  /** Every order costs a whole multiple of it; 0 when no such step is known. */
  readonly step: number
}

/** Checks a problem and readies it. */
export function instance(problem: OrderProblem): Instance {
  const { size, before } = problem
  if (!(Number.isInteger(size) && size >= 0))
    refuse('wrong-size', 'size', String(size), 'The number of actions is not a whole number.')
  const cost = checked(problem.cost, size * size, 'cost', size)
  const start = checked(problem.start ?? new Float64Array(size), size, 'start')
  const end = checked(problem.end ?? new Float64Array(size), size, 'end')
  for (const [k, pair] of before.entries())
    for (const i of pair)
      if (!(Number.isInteger(i) && i >= 0 && i < size))
        refuse('no-such-action', `before[${k}]`, String(i), `There is no action ${i} among ${size}.`)
  const known = precedence(problem)
  const { words, earlier, later, earlierCount, laterCount } = known
  const follows = new Uint8Array(size * size)
  for (let i = 0; i < size; i++)
    for (let j = 0; j < size; j++) {
      if (i === j || (earlier[i * words + (j >>> 5)]! >>> (j & 31)) & 1) continue
      let between = 0
      for (let w = 0; w < words; w++) between |= later[i * words + w]! & earlier[j * words + w]!
      if (between === 0) follows[i * size + j] = 1
    }
  const used: number[] = []
  for (let i = 0; i < size; i++) {
    if (earlierCount[i] === 0) used.push(start[i]!)
    if (laterCount[i] === 0) used.push(end[i]!)
    for (let j = 0; j < size; j++) if (follows[i * size + j]) used.push(cost[i * size + j]!)
  }
  return { size, cost, start, end, follows, step: commonStep(used), ...known }
}

function checked(given: ArrayLike<number>, length: number, at: string, row?: number): Float64Array {
  if (given.length !== length)
    refuse('wrong-size', at, String(given.length), `There are ${given.length} costs where ${length} belong.`)
  const out = Float64Array.from(given)
  for (let k = 0; k < length; k++) {
    if (row !== undefined && Math.floor(k / row) === k % row) out[k] = 0
    else if (!(Number.isFinite(out[k]) && out[k]! >= 0))
      refuse('not-a-cost', `${at}[${k}]`, String(out[k]), 'A cost is not a finite number of 0 or more.')
  }
  return out
}

function refuse(code: OrderRefusal, at: string, given: string, sentence: string): never {
  throw new Refusal<OrderRefusal>({ code, at, given, sentence, remedy: 'Give it again, whole.' })
}

/** The largest number of which all are whole multiples, sought down to thousandths; 0 when there is none. */
function commonStep(used: readonly number[]): number {
  for (const scale of [1, 10, 100, 1000]) {
    let common = 0
    for (const value of used) {
      const whole = Math.round(value * scale)
      if (!(whole < 2 ** 40) || Math.abs(value * scale - whole) > 1e-9 * Math.max(1, whole)) {
        common = Number.NaN
        break
      }
      common = greatestCommonDivisor(common, whole)
    }
    if (common > 0) return common / scale
  }
  return 0
}

function greatestCommonDivisor(a: number, b: number): number {
  while (b !== 0) [a, b] = [b, a % b]
  return a
}
