import { ascent } from './ascent.ts'
import { instance } from './instance.ts'
import { laterCosts } from './later-costs.ts'
import { layeredSearch } from './layered-search.ts'
import type { OrderProblem } from './order-problem.ts'
import { searchedOrder } from './searched-order.ts'
import { treeBound } from './tree-bound.ts'

/** How far a search has come. @source definition */
export interface OrderProgress {
  /** Work done. A step is some tenths of a microsecond, but counted, not timed. */
  readonly steps: number
  /** Of the cheapest order so far. */
  readonly cost: number
  /** No allowed order costs less. */
  readonly lowerBound: number
}

/** How much may be done. @source definition */
export interface OrderEffort {
  /** Asked between two pieces of work, mostly a few milliseconds apart; false ends the search with what it has. */
  readonly keepGoing?: (progress: OrderProgress) => boolean
  /** Told whenever the order or the bound got better. */
  readonly onProgress?: (progress: OrderProgress) => void
  /** Most work, steps; ended by the budget, a search gives the same answer everywhere. */
  readonly budget?: number
  /** Most states kept of one place; it bounds the memory, to about 1 kB a state for 60 actions. */
  readonly widest?: number
  /** Of the shakes; a whole number, 0 … 2³² − 1. */
  readonly seed?: number
}

/** The cheapest order met, and how sure that is. @source definition */
export interface BestOrder {
  readonly order: readonly number[]
  readonly cost: number
  /** No allowed order costs less (by more than 10⁻⁹ of it). Equal to `cost` where that is proven. */
  readonly lowerBound: number
  readonly proven: boolean
  /** What ended it: the proof, the budget, `keepGoing`, or no wider layer being allowed. */
  readonly endedBy: 'proof' | 'budget' | 'asked' | 'width'
  readonly steps: number
}

// Own choices, by trial on public instances: see the method's page.
const firstWidth = 64
const widening = 8
const climbTurns = 40
const headStart = 3e5
const climbShare = 0.5
const searchShare = 0.1
/** Steps of the relaxed walk that take as long as one look of the layered search. */
const walkSteps = 22
/** Looks that take as long as one arc of a tree. */
const treeSteps = 0.3
const mostWalkStates = 4e6
const stages = ['climb', 2, 4, 'track', 'track', 5, 'track', 6, 'track', 'track', 'track', 'track'] as const

/**
 * The cheapest order of actions in which everything comes after what it waits for, with a bound that proves it or
 * says how far it may be off. Without clock: by the same budget the same answer.
 *
 * @param problem costs of going on from one action to another, ≥ 0, and which comes before which
 * @throws {Refusal} `circle` naming actions that wait for each other; `not-a-cost`, `wrong-size`, `no-such-action`
 * @assumes what a change costs depends on the two actions only, not on what was done before them
 * @source own derivation: docs/methods/order.md
 * @example bestOrder({ size: 3, cost: [0, 9, 1, 2, 0, 9, 9, 3, 0], before: [[0, 1]] }).order // [0, 2, 1]
 * @example bestOrder({ size: 2, cost: [0, 1, 1, 0], before: [[0, 1], [1, 0]] }).cost // throws circle
 */
export function bestOrder(
  problem: OrderProblem,
  {
    keepGoing = () => true,
    onProgress = () => {},
    budget = 1e9,
    widest = 2 ** 18,
    seed = 1,
  }: OrderEffort = {},
): BestOrder {
  const inst = instance(problem)
  const { size, step } = inst
  if (size === 0) return { order: [], cost: 0, lowerBound: 0, proven: true, endedBy: 'proof', steps: 0 }
  const found = searchedOrder(inst, seed)
  const spent = { search: 0, climb: 0, pass: 0 }
  let steps = 0
  let lowerBound = 0
  let endedBy: BestOrder['endedBy'] | null = null

  /** What an order must cost at the most to be cheaper than the one we have. */
  const limit = () =>
    step > 0 ? found.cost() - step * (1 - 1e-6) : found.cost() - 1e-9 * (found.cost() || 1)
  const progress = (): OrderProgress => ({ steps: Math.round(steps), cost: found.cost(), lowerBound })
  const spend = (on: keyof typeof spent, work: number): boolean => {
    spent[on] += work
    steps += work
    if (endedBy !== null) return false
    if (steps >= budget) endedBy = 'budget'
    else if (!keepGoing(progress())) endedBy = 'asked'
    return endedBy === null
  }
  const bounded = (bound: number): void => {
    const whole = step > 0 ? Math.ceil(bound / step - 1e-6) * step : bound
    const better = whole > limit() ? found.cost() : whole
    if (better > limit()) endedBy = 'proof'
    if (better <= lowerBound) return
    lowerBound = better
    onProgress(progress())
  }
  const search = (shakes: number): void => {
    const most = 20
    for (let left = shakes; left > 0 && endedBy === null; left -= most) {
      if (found.more(Math.min(most, left))) {
        onProgress(progress())
        bounded(lowerBound)
      }
      spend('search', (Math.min(most, left) * size * size) / 10)
    }
  }

  bounded(0)
  search(10 * size)
  const up = ascent(inst)
  const layered = layeredSearch(inst)
  let width = Math.min(firstWidth, widest)
  let stage = 0
  let climbed = false
  const climb = (): void => {
    const next = stages[stage++]
    if (next === 'track') up.track()
    else if (typeof next === 'number') up.grow(next)
    up.climb(climbTurns, limit(), (looked) => spend('climb', looked / walkSteps))
    bounded(up.bound())
    climbed = stage === stages.length || up.states() > mostWalkStates
  }
  while (endedBy === null) {
    while (endedBy === null && !climbed && (stage < 2 || spent.climb <= climbShare * spent.pass + headStart))
      climb()
    if (endedBy !== null) break
    const goOn = (looked: number) => spend('pass', looked)
    const pass = layered.pass(laterCosts(inst, up.footing()), { limit: limit(), width, goOn })
    if (pass.order) {
      found.offer(pass.order)
      onProgress(progress())
    }
    bounded(Math.min(pass.bound, found.cost()))
    if (endedBy !== null) break
    search(Math.ceil((10 * Math.max(0, searchShare * steps - spent.search)) / (size * size)))
    if (width === firstWidth)
      bounded(treeBound(inst, limit(), (nodes) => spend('climb', nodes * nodes * treeSteps)))
    if (endedBy !== null) break
    if (width === widest && climbed) endedBy ??= 'width'
    width = Math.min(widest, width * widening)
  }
  // Told apart here, since what ends a search may come together with the proof.
  const proven = lowerBound > limit()
  return {
    order: [...found.order()],
    cost: found.cost(),
    lowerBound: proven ? found.cost() : lowerBound,
    proven,
    endedBy: proven ? 'proof' : endedBy,
    steps: Math.round(steps),
  }
}
