import type { Problem } from '../corner/index.ts'
import { placeSteps } from './place-steps.ts'
import type { CsvTable } from './rows-of-csv.ts'

/** A place in a table, as people find it. @source definition */
export interface CellPlace {
  readonly line: number
  /** From 1. */
  readonly column: number
  readonly name: string
}

/** A member of a value, out of a cell. @source definition */
export interface TableMember {
  readonly path: readonly (string | number)[]
  readonly text: string
  readonly cell: CellPlace
}

/** Where a cell stands, in words. @source definition */
export const cellWords = ({ line, column, name }: CellPlace): string =>
  `line ${line}, column ${column} “${name}”`

/**
 * The members that the lines of a table say, with the unit of the column behind a number that has none.
 *
 * @param inPlace columns that say where a line belongs, and are no members
 * @source own derivation: docs/methods/carrying.md
 */
export function membersOfTable(
  { head, rows, separator }: CsvTable,
  inPlace: readonly string[],
): { readonly lines: readonly TableLineRead[]; readonly problems: readonly Problem[] } {
  const problems: Problem[] = []
  const lines = rows.map(({ line, cells }): TableLineRead => {
    const own = new Map(inPlace.map((name) => [name, (cells[head.indexOf(name)] ?? '').trim()]))
    const steps = placeSteps(own.get('place') ?? '')
    if (steps === null)
      problems.push({
        field: cellWords({ line, column: head.indexOf('place') + 1, name: 'place' }),
        wrong: `“${own.get('place')}” is no place.`,
        right: 'names with dots between them and list places in brackets, such as "readings[0]"',
      })
    const said = new Set<string>()
    const members = cells.flatMap((raw, i): TableMember[] => {
      const name = head[i]!
      const text = raw.trim()
      if (text === '' || inPlace.includes(name) || steps === null) return []
      const [, plain, unit] = /^(.*\S)\s*\(([^()]+)\)$/.exec(name) ?? [null, name, null]
      const cell = { line, column: i + 1, name }
      const wrong = separator === ';' && twoWays.test(text)
      if (wrong)
        problems.push({
          field: cellWords(cell),
          wrong: `“${text}” can be read in two ways.`,
          right: `“${text.replaceAll('.', '')}” or “${text.replace('.', ',')}”`,
        })
      if (said.has(plain!))
        problems.push({
          field: cellWords(cell),
          wrong: `“${plain}” is said twice in this line.`,
          right: 'one of the two',
        })
      said.add(plain!)
      const member = plain === 'value' ? steps : [...steps, plain!]
      return [{ path: member, text: withUnit(text, unit ?? null, separator), cell }]
    })
    return { line, own, steps: steps ?? [], members }
  })
  return { lines, problems }
}

/** A line of a table as it was read. @source definition */
export interface TableLineRead {
  readonly line: number
  readonly own: ReadonlyMap<string, string>
  readonly steps: readonly (string | number)[]
  readonly members: readonly TableMember[]
}

/** With semicolons a point before three digits may part thousands. */
const twoWays = /^[+\-−]?[1-9]\d{0,2}(\.\d{3})+$/

function withUnit(text: string, unit: string | null, separator: string): string {
  const isNumber = /^[+\-−]?\d+([.,]\d+)?$/.test(text)
  const number = isNumber && separator === ';' ? text.replace(',', '.') : text
  return isNumber && unit !== null ? `${number}${unit === '°' ? '' : ' '}${unit}` : number
}

/**
 * Members put together to a value; lists must have all their places, each once.
 *
 * @source own derivation: docs/methods/carrying.md
 */
export function valueOfMembers(members: readonly TableMember[]): {
  readonly value: Record<string, unknown>
  readonly problems: readonly Problem[]
} {
  const problems: Problem[] = []
  const root = new Map<string | number, unknown>()
  for (const { path, text, cell } of members) {
    let at = root
    path.forEach((step, i) => {
      const found = at.get(step)
      if (i === path.length - 1) {
        if (found !== undefined)
          problems.push({ field: cellWords(cell), wrong: 'This is said twice.', right: 'each place once' })
        at.set(step, text)
      } else if (found instanceof Map) at = found
      else {
        if (found !== undefined)
          problems.push({
            field: cellWords(cell),
            wrong: 'Something else stands at this place.',
            right: 'one of the two',
          })
        const next = new Map<string | number, unknown>()
        at.set(step, next)
        at = next
      }
    })
    if (path.length === 0)
      problems.push({
        field: cellWords(cell),
        wrong: 'A value alone has no place.',
        right: 'a place, such as "readings[0]"',
      })
  }
  const [first] = members
  const plain = (node: Map<string | number, unknown>, path: string): unknown => {
    const keys = [...node.keys()]
    const inner = (key: string | number) => {
      const one = node.get(key)
      return one instanceof Map
        ? plain(one, `${path}${typeof key === 'number' ? `[${key}]` : `.${key}`}`)
        : one
    }
    if (!keys.some((key) => typeof key === 'number'))
      return Object.fromEntries(keys.map((key) => [key, inner(key)]))
    const all = keys.every((key) => typeof key === 'number' && key < keys.length)
    if (!all)
      problems.push({
        field: first ? `line ${first.cell.line} and on` : 'the file',
        wrong: `The list ${path.replace(/^\./, '')} does not have its places 0 to ${keys.length - 1}.`,
        right: 'places counted from 0, without a gap',
      })
    return keys.sort((a, b) => Number(a) - Number(b)).map(inner)
  }
  return { value: plain(root, '') as Record<string, unknown>, problems }
}
