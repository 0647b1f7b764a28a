import { bad, good, type Problem, type Reading } from '../corner/index.ts'

/** A line of a table. @source definition */
interface CsvRow {
  /** Where it begins in the file, from 1. */
  readonly line: number
  readonly cells: readonly string[]
}

/** A table out of a file. @source definition */
export interface CsvTable {
  readonly separator: ',' | ';' | '\t'
  readonly head: readonly string[]
  readonly rows: readonly CsvRow[]
}

const mostRows = 20_000

/**
 * The table in a CSV file: a head, and rows of as many cells. Lines may end as any system ends them; cells are parted by
 * commas, or as a spreadsheet with decimal commas writes it by semicolons, or by tabs, as the head says. What was put
 * before a cell so that no spreadsheet takes it for a formula is taken off again.
 *
 * @source RFC 4180, 2
 * @example rowsOfCsv('a,b\r\n"1,5","say ""x"""\r\n').ok // true
 */
export function rowsOfCsv(text: string): Reading<CsvTable> {
  const plain = text.replace(/^\uFEFF/, '')
  const separator = separatorOf(plain)
  const { rows, problems } = cut(plain, separator)
  const [first, ...rest] = rows
  const head = first?.cells.map((cell) => cell.trim()) ?? []
  const found = [...problems]
  if (!first || head.every((name) => name === ''))
    found.push({ field: 'line 1', wrong: 'There is no head.', right: 'the names of the columns' })
  head.forEach((name, i) => {
    const where = `line 1, column ${i + 1}`
    if (name === '')
      found.push({ field: where, wrong: 'This column has no name.', right: 'a name, or no column' })
    else if (head.indexOf(name) < i)
      found.push({ field: where, wrong: `“${name}” stands there twice.`, right: 'each column once' })
  })
  if (rest.length > mostRows)
    found.push({ field: 'the file', wrong: `It has ${rest.length} lines.`, right: `at most ${mostRows}` })
  for (const { line, cells } of rest)
    if (cells.length !== head.length)
      found.push({
        field: `line ${line}`,
        wrong: `It has ${cells.length} cells, and the head has ${head.length}.`,
        right: 'as many cells as the head, with quotes around one that holds the separator',
      })
  return found.length > 0 ? bad(found) : good({ separator, head, rows: rest })
}

/** By the head: names of columns hold none of them, unless in quotes. */
function separatorOf(text: string): CsvTable['separator'] {
  const head = (/^[^\r\n]*/.exec(text)?.[0] ?? '').replace(/"[^"]*"/g, '')
  return head.includes(';') ? ';' : head.includes('\t') && !head.includes(',') ? '\t' : ','
}

function cut(text: string, separator: string): { rows: readonly CsvRow[]; problems: readonly Problem[] } {
  const rows: CsvRow[] = []
  const problems: Problem[] = []
  let [at, line] = [0, 1]
  while (at < text.length) {
    const begins = line
    const cells: string[] = []
    for (let isOpen = true; isOpen; ) {
      const where = `line ${line}, column ${cells.length + 1}`
      let cell = ''
      if (text[at] === '"') {
        const close = closing(text, at)
        cell = text.slice(at + 1, close ?? text.length).replaceAll('""', '"')
        line += cell.split(/\r\n|\r|\n/).length - 1
        if (close === null)
          problems.push({
            field: where,
            wrong: 'A quote is opened and not closed.',
            right: 'a quote at its end',
          })
        at = close === null ? text.length : close + 1
        const after = upTo(text, at, separator)
        if (after > at)
          problems.push({
            field: where,
            wrong: `“${text.slice(at, after)}” stands behind the closing quote.`,
            right: 'a quote within quotes written twice',
          })
        at = after
      } else {
        const to = upTo(text, at, separator)
        cell = text.slice(at, to)
        if (cell.includes('"'))
          problems.push({
            field: where,
            wrong: 'There is a quote in it, and none around it.',
            right: 'quotes around the cell, and a quote within written twice',
          })
        at = to
      }
      cells.push(unguarded(cell))
      isOpen = text[at] === separator
      if (isOpen) at++
    }
    if (text[at] === '\r' && text[at + 1] === '\n') at++
    at++
    line++
    // A spreadsheet leaves empty lines at the end.
    if (cells.some((cell) => cell !== '')) rows.push({ line: begins, cells })
  }
  return { rows, problems }
}

function closing(text: string, open: number): number | null {
  for (let at = text.indexOf('"', open + 1); at >= 0; at = text.indexOf('"', at + 2))
    if (text[at + 1] !== '"') return at
  return null
}

function upTo(text: string, from: number, separator: string): number {
  let at = from
  while (at < text.length && text[at] !== separator && text[at] !== '\n' && text[at] !== '\r') at++
  return at
}

const unguarded = (cell: string): string => (/^'+[=+\-@\t\r]/.test(cell) ? cell.slice(1) : cell)
