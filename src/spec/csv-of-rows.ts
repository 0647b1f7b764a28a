/** Where tables with a decimal comma are at home, cells are parted by semicolons. @source definition */
export interface CsvStyle {
  readonly separator: ',' | ';'
}

const number = /^[+-]?\d+(\.\d+)?$/

/**
 * A table as a CSV file. A cell that is no number and that a spreadsheet would take for a formula gets an apostrophe before
 * it. With semicolons numbers have a decimal comma, and are read so again.
 *
 * @param rows the head first
 * @source RFC 4180, 2; OWASP, CSV injection (which beginnings are taken for formulas)
 * @example csvOfRows([['a', 'b'], ['-1.5', '=x']], { separator: ';' }) // "a;b\r\n-1,5;'=x\r\n"
 */
export function csvOfRows(rows: readonly (readonly string[])[], { separator }: CsvStyle): string {
  const cell = (text: string): string => {
    if (number.test(text)) return separator === ';' ? text.replace('.', ',') : text
    const guarded = /^'*[=+\-@\t\r]/.test(text) ? `'${text}` : text
    return new RegExp(`[${separator}"\\r\\n]`).test(guarded) ? `"${guarded.replaceAll('"', '""')}"` : guarded
  }
  return rows.map((cells) => `${cells.map(cell).join(separator)}\r\n`).join('')
}
