import { fieldPath, type Problem } from '../corner/index.ts'
import { cellWords, type TableMember } from './value-of-table.ts'

/**
 * What is wrong with a value, told at the cell that it came from; what is missing, at the line where it would stand.
 *
 * @param problems with fields of the value
 * @param before what stands before each member's own place in those fields
 * @source own derivation: docs/methods/carrying.md
 */
export function cellOfProblem(
  problems: readonly Problem[],
  members: readonly (TableMember & { readonly before?: string })[],
): readonly Problem[] {
  const placed = members.map(({ path, cell, before = '' }) => ({
    cell,
    field: before === '' ? fieldPath(path) : path.length === 0 ? before : `${before}.${fieldPath(path)}`,
  }))
  return problems.map((problem) => {
    const exact = placed.find(({ field }) => field === problem.field)
    if (exact) return { ...problem, field: cellWords(exact.cell) }
    // The nearest line: the longest beginning that the two places have in common.
    const shared = placed
      .map(({ field, cell }) => ({ cell, length: common(field, problem.field) }))
      .reduce<{ cell: TableMember['cell'] | null; length: number }>(
        (best, one) => (one.length > best.length ? one : best),
        { cell: null, length: 0 },
      )
    return shared.cell ? { ...problem, field: `line ${shared.cell.line}, ${problem.field}` } : problem
  })
}

function common(a: string, b: string): number {
  const [one, other] = [a.split(/[.[]/), b.split(/[.[]/)]
  let length = 0
  while (length < one.length && one[length] === other[length]) length++
  return length
}
