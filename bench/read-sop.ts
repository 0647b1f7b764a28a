import type { OrderProblem } from '../src/plan/index.ts'

/**
 * Reads a sequential ordering problem written as TSPLIB 95 has it: a full matrix, −1 in row i of column j where j must
 * come before i, the first node at the start of every order and the last at its end. Both become costs of beginning and ending.
 */
export function readSop(text: string): OrderProblem {
  const field = (name: string) => new RegExp(`^${name}\\s*:\\s*(\\S+)`, 'm').exec(text)?.[1]
  const nodes = Number(field('DIMENSION'))
  if (field('TYPE') !== 'SOP' || field('EDGE_WEIGHT_FORMAT') !== 'FULL_MATRIX' || !(nodes > 2))
    throw new Error('This is no sequential ordering problem with a full matrix.')
  const numbers = (/EDGE_WEIGHT_SECTION\s+([-\d\s]*)/.exec(text)?.[1] ?? '').trim().split(/\s+/).map(Number)
  const weights = numbers.length === nodes * nodes + 1 ? numbers.slice(1) : numbers
  if (weights.length !== nodes * nodes || weights.some((w) => !Number.isFinite(w)))
    throw new Error(`The matrix has ${weights.length} numbers where ${nodes}² belong.`)
  const size = nodes - 2
  const weight = (i: number, j: number) => weights[(i + 1) * nodes + j + 1]!
  const actions = Array.from({ length: size }, (_, i) => i)
  // What must come after everything or before everything is told by the ends already.
  return {
    size,
    cost: actions.flatMap((i) => actions.map((j) => Math.max(0, weight(i, j)))),
    start: actions.map((j) => Math.max(0, weight(-1, j))),
    end: actions.map((i) => Math.max(0, weight(i, size))),
    before: actions.flatMap((i) =>
      actions.flatMap((j): [number, number][] => (i !== j && weight(i, j) === -1 ? [[j, i]] : [])),
    ),
  }
}
