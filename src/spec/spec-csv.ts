import { bad, type Reading } from '../corner/index.ts'
import { cellOfProblem } from './cell-of-problem.ts'
import { type CsvStyle, csvOfRows } from './csv-of-rows.ts'
import { readSpec } from './read-spec.ts'
import { rowsOfCsv } from './rows-of-csv.ts'
import type { Spec, SpecFile } from './spec-schema.ts'
import { columnsOf } from './table-columns.ts'
import { tableOf } from './table-of.ts'
import { membersOfTable, valueOfMembers } from './value-of-table.ts'
import { writeSpec } from './write-spec.ts'

/**
 * A spec sheet as a table: what it says of itself in the first line, then one line for each limit, height, tightening.
 *
 * @source own derivation: docs/methods/carrying.md
 */
export function specCsv(spec: Spec, style: CsvStyle): string {
  const { $schema: _, ...file } = writeSpec(spec) as SpecFile & { $schema?: string }
  const lines = tableOf(file)
  const columns = columnsOf(lines.map(({ cells }) => cells))
  return csvOfRows(
    [
      ['place', ...columns],
      ...lines.map(({ place, cells }) => [place, ...columns.map((name) => cells.get(name) ?? '')]),
    ],
    style,
  )
}

/**
 * A spec sheet out of a table, or everything that is wrong with it at its line and column; nothing of it is taken in then.
 *
 * @source own derivation: docs/methods/carrying.md
 */
export function readSpecCsv(text: string): Reading<Spec> {
  const table = rowsOfCsv(text)
  if (!table.ok) return table
  if (!table.value.head.includes('place'))
    return bad([{ field: 'line 1', wrong: 'There is no column “place”.', right: 'a column "place"' }])
  const { lines, problems } = membersOfTable(table.value, ['place'])
  const members = lines.flatMap((line) => line.members)
  const { value, problems: misplaced } = valueOfMembers(members)
  if (problems.length + misplaced.length > 0) return bad([...problems, ...misplaced])
  const read = readSpec(meant(value))
  return read.ok ? read : bad(cellOfProblem(read.problems, members))
}

/** What is no text in a sheet. */
function meant(value: unknown, name = ''): unknown {
  if (Array.isArray(value)) return value.map((one) => meant(one))
  if (typeof value === 'object' && value !== null)
    return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, meant(one, key)]))
  if (name === 'format' && /^\d+$/.test(String(value))) return Number(value)
  if (name === 'secondCheck' && /^(true|yes)$/i.test(String(value))) return true
  if (name === 'secondCheck' && /^(false|no)$/i.test(String(value))) return false
  return value
}
