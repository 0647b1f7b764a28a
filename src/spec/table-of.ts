import { fieldPath } from '../corner/index.ts'

/** A line of a table before it has columns: where it stands in the value, and its members as texts. @source definition */
export interface TableLine {
  /** As `fieldPath` writes it; empty for the value itself. */
  readonly place: string
  /** By the name of the column: "low (N·m)". */
  readonly cells: ReadonlyMap<string, string>
}

type Plain = string | number | boolean
const isPlain = (value: unknown): value is Plain => ['string', 'number', 'boolean'].includes(typeof value)

/**
 * A plain value as lines of a table: one for each object that has members with nothing below them, and one for each item
 * of a list of such. A text that is a plain number with a unit goes into the column of that unit, as a number.
 *
 * @source own derivation: docs/methods/carrying.md
 */
export function tableOf(value: Readonly<Record<string, unknown>>): readonly TableLine[] {
  return linesOf(value, [])
}

function linesOf(value: unknown, path: readonly (string | number)[]): readonly TableLine[] {
  if (isPlain(value)) return [line(path, [['value', value]])]
  const members = Object.entries(value as object)
  const plain = Array.isArray(value) ? [] : members.filter(([, one]) => isPlain(one))
  const below = members
    .filter(([, one]) => one !== undefined && one !== null && (Array.isArray(value) || !isPlain(one)))
    .flatMap(([name, one]) => linesOf(one, [...path, Array.isArray(value) ? Number(name) : name]))
  return plain.length > 0 ? [line(path, plain as [string, Plain][]), ...below] : below
}

const line = (
  path: readonly (string | number)[],
  members: readonly (readonly [string, Plain])[],
): TableLine => ({
  place: path.length === 0 ? '' : fieldPath(path),
  cells: new Map(members.map(([name, value]) => cell(name, String(value)))),
})

const quantity = /^([+-]?\d+(?:\.\d+)?)( ?)([^\d\s.,:;()'′″’/@-][^\d\s,;()@]*)$/

function cell(name: string, text: string): readonly [string, string] {
  const [, number, space, unit] = quantity.exec(text) ?? []
  return number !== undefined && unit !== undefined && (space === '') === (unit === '°')
    ? [`${name} (${unit})`, number]
    : [name, text]
}
