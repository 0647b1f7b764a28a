import { Refusal } from '../../quantity/index.ts'
import type { OrderRefusal } from './order-refusal.ts'
import { precedence } from './precedence.ts'

/** One action with its time, in any unit that all share, and its variance in that unit squared. @source definition */
export interface TimedAction {
  readonly name: string
  readonly time: number
  /** 0 when left out. */
  readonly variance?: number
  /** Names of the actions it waits for. */
  readonly after: readonly string[]
}

/** When an action may run, in the unit of the times, from the beginning of all. @source definition */
export interface ActionTimes {
  readonly name: string
  readonly earliestStart: number
  readonly earliestFinish: number
  readonly latestStart: number
  readonly latestFinish: number
  /** By how much it may begin later without the end being later. */
  readonly slack: number
  /** By how much it may begin later without any other action beginning later. */
  readonly freeSlack: number
}

/** What decides how long it takes with as many hands as there is work. @source definition */
export interface CriticalPath {
  readonly duration: number
  /** Of the path's duration; times are taken as independent. */
  readonly variance: number
  /** Without slack, in order; of several the one with the largest variance. */
  readonly path: readonly string[]
  readonly actions: readonly ActionTimes[]
}

/** Sums of the same times in another order differ by less, relative. */
const sameTime = 1e-12

/**
 * The shortest time in which actions can be done when any number may run at once, and which of them decide it.
 *
 * @throws {Refusal} `circle`; `no-such-action` for a name that none has, `twice` for one that two have; `not-a-time`
 * @assumes nothing else limits how many actions run at once
 * @source Kelley and Walker 1959, Critical-path planning and scheduling: forward and backward pass
 * @example criticalPath([{ name: 'a', time: 2, after: [] }, { name: 'b', time: 3, after: ['a'] }]).duration // 5
 */
export function criticalPath(actions: readonly TimedAction[]): CriticalPath {
  const size = actions.length
  const numbers = new Map(actions.map(({ name }, i) => [name, i]))
  for (const [i, { name, time, variance = 0, after }] of actions.entries()) {
    if (numbers.get(name) !== i) refuse('twice', name, name, 'Two actions have this name.')
    if (!(Number.isFinite(time) && time >= 0))
      refuse('not-a-time', name, String(time), 'Its time is not a finite number of 0 or more.')
    if (!(Number.isFinite(variance) && variance >= 0))
      refuse(
        'not-a-time',
        name,
        String(variance),
        'The variance of its time is not a finite number of 0 or more.',
      )
    for (const other of after)
      if (!numbers.has(other))
        refuse('no-such-action', name, other, `It waits for "${other}", which no action is called.`)
  }
  const waits = actions.map(({ after }) => after.map((name) => numbers.get(name)!))
  const before = waits.flatMap((all, b) => all.map((a): readonly [number, number] => [a, b]))
  const { earlierCount } = precedence({ size, before, names: actions.map(({ name }) => name) })
  // What waits for an action waits for all that this one waits for, and for it: the counts rise along every path.
  const inOrder = actions.map((_, i) => i).sort((a, b) => earlierCount[a]! - earlierCount[b]! || a - b)
  const start = new Float64Array(size)
  const finish = new Float64Array(size)
  const spread = new Float64Array(size)
  const from = new Int32Array(size).fill(-1)
  for (const b of inOrder) {
    for (const a of waits[b]!) if (finish[a]! > start[b]!) start[b] = finish[a]!
    for (const a of waits[b]!) {
      if (start[b]! - finish[a]! > sameTime * start[b]!) continue
      if (from[b]! < 0 || spread[a]! > spread[from[b]!]!) from[b] = a
    }
    finish[b] = start[b]! + actions[b]!.time
    spread[b] = (from[b]! < 0 ? 0 : spread[from[b]!]!) + (actions[b]!.variance ?? 0)
  }
  const duration = finish.reduce((a, b) => Math.max(a, b), 0)
  const latest = new Float64Array(size).fill(duration)
  const nextStart = new Float64Array(size).fill(duration)
  for (const b of inOrder.toReversed())
    for (const a of waits[b]!) {
      latest[a] = Math.min(latest[a]!, latest[b]! - actions[b]!.time)
      nextStart[a] = Math.min(nextStart[a]!, start[b]!)
    }
  let last = -1
  for (let i = 0; i < size; i++)
    if (duration - finish[i]! <= sameTime * duration && (last < 0 || spread[i]! > spread[last]!)) last = i
  const path: string[] = []
  const variance = last < 0 ? 0 : spread[last]!
  for (; last >= 0; last = from[last]!) path.unshift(actions[last]!.name)
  return {
    duration,
    variance,
    path,
    actions: actions.map(({ name, time }, i) => ({
      name,
      earliestStart: start[i]!,
      earliestFinish: finish[i]!,
      latestStart: latest[i]! - time,
      latestFinish: latest[i]!,
      slack: rounded(latest[i]! - finish[i]!, duration),
      freeSlack: rounded(nextStart[i]! - finish[i]!, duration),
    })),
  }
}

/** What rounding leaves of a slack that is none. */
const rounded = (slack: number, duration: number) => (slack <= sameTime * duration ? 0 : slack)

function refuse(code: OrderRefusal, at: string, given: string, sentence: string): never {
  throw new Refusal<OrderRefusal>({
    code,
    at,
    given,
    sentence: `${at}: ${sentence}`,
    remedy: 'Correct this action.',
  })
}
