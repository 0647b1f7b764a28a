import { Refusal } from '../../quantity/index.ts'
import type { OrderProblem } from './order-problem.ts'
import type { OrderRefusal } from './order-refusal.ts'

/** What must lie before and after each action, followed through: bit sets of `words` 32-bit words an action. */
export interface Precedence {
  readonly words: number
  readonly earlier: Uint32Array
  readonly later: Uint32Array
  readonly earlierCount: Int32Array
  readonly laterCount: Int32Array
}

/** Follows the pairs of a problem through; refuses a circle, which it names. */
export function precedence({
  size,
  before,
  names,
}: Pick<OrderProblem, 'size' | 'before' | 'names'>): Precedence {
  const words = Math.max(1, Math.ceil(size / 32))
  const after: number[][] = Array.from({ length: size }, () => [])
  for (const [a, b] of before) after[a]!.push(b)
  const waits = new Int32Array(size)
  for (const [, b] of before) waits[b]!++
  const topological: number[] = []
  for (let i = 0; i < size; i++) if (waits[i] === 0) topological.push(i)
  for (let at = 0; at < topological.length; at++)
    for (const b of after[topological[at]!]!) if (--waits[b]! === 0) topological.push(b)
  if (topological.length < size) refuseCircle(before, waits, names)

  const earlier = new Uint32Array(size * words)
  const later = new Uint32Array(size * words)
  for (const a of topological)
    for (const b of after[a]!) {
      for (let w = 0; w < words; w++) earlier[b * words + w]! |= earlier[a * words + w]!
      earlier[b * words + (a >>> 5)]! |= 1 << (a & 31)
    }
  const earlierCount = new Int32Array(size)
  const laterCount = new Int32Array(size)
  for (let b = 0; b < size; b++)
    for (let a = 0; a < size; a++)
      if ((earlier[b * words + (a >>> 5)]! >>> (a & 31)) & 1) {
        later[a * words + (b >>> 5)]! |= 1 << (b & 31)
        earlierCount[b]!++
        laterCount[a]!++
      }
  return { words, earlier, later, earlierCount, laterCount }
}

/** Walks back from an action that waits for ever until one comes round again. */
function refuseCircle(
  before: OrderProblem['before'],
  waits: Int32Array,
  names: readonly string[] | undefined,
): never {
  const from = new Map<number, number>()
  for (const [a, b] of before) if (waits[a]! > 0 && waits[b]! > 0 && !from.has(b)) from.set(b, a)
  const walked: number[] = []
  let at = waits.findIndex((count) => count > 0)
  // Every action that still waits, waits for one that still waits.
  while (!walked.includes(at)) {
    walked.push(at)
    at = from.get(at)!
  }
  const circle = [at, ...walked.slice(walked.indexOf(at)).reverse()]
  const told = circle.map((i) => names?.[i] ?? String(i)).join(' → ')
  throw new Refusal<OrderRefusal>({
    code: 'circle',
    at: 'before',
    given: circle.join(' → '),
    sentence: `These actions wait for each other in a circle, so none of them can be first: ${told}.`,
    remedy: 'Take one of these conditions away, or do one of the actions twice.',
  })
}
