/**
 * Actions 0 … size − 1, each to be done once, and what it costs to go from one straight to the next.
 * Costs are in any one unit, finite and ≥ 0; what an action costs by itself belongs to every order alike and is left out.
 *
 * @source definition
 */
export interface OrderProblem {
  readonly size: number
  /** Row by row: `cost[size * i + j]` for j straight after i. The diagonal is not read. */
  readonly cost: ArrayLike<number>
  /** Cost of beginning with an action, and of ending with one; 0 when left out. */
  readonly start?: ArrayLike<number>
  readonly end?: ArrayLike<number>
  /** Pairs [a, b]: a somewhere before b. */
  readonly before: readonly (readonly [number, number])[]
  /** What a refusal calls the actions; their numbers when left out. */
  readonly names?: readonly string[]
}
