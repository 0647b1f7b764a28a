import { bad, good, type Problem, type Reading } from '../corner/index.ts'
import {
  type CsvStyle,
  cellOfProblem,
  columnsOf,
  csvOfRows,
  membersOfTable,
  rowsOfCsv,
  type TableMember,
  tableOf,
  valueOfMembers,
} from '../spec/index.ts'
import { inCausalOrder } from './causal-order.ts'
import { effectiveData } from './effective-data.ts'
import type { Entry } from './entry.ts'
import { foldJob } from './fold-job.ts'
import { numbered } from './numbered.ts'
import { readEntry } from './read-entry.ts'

/** What is read with a gauge or a rule, by kind of entry. */
const kinds = ['reading', 'ride height', 'play', 'measured']
const inPlace = ['entry', 'kind', 'at', 'round', 'place']

/** What was read first, then with what and from where, then the values. */
const order = [
  ...['method', 'what', 'wheel', 'side', 'axle', 'angle', 'joint', 'when', 'direction', 'moves'],
  ...['point', 'from', 'to', 'way', 'seen', 'travel', 'outward', 'inner'],
  ...['gauge', 'steerGauge', 'rule', 'strings', 'tape'],
  ...['wheelTurn', 'steer', 'reading', 'camber', 'tilt', 'value', 'spread', 'span'],
  ...['front left', 'front right', 'rear left', 'rear right'],
  ...['arm', 'diameter', 'wheelbase', 'belowHub', 'levelled', 'radius', 'remark'],
]
const counted = (place: string) => place.replace(/\d+/g, (digits) => digits.padStart(6, '0'))

/**
 * All readings of a job as a table, one line each, as they read after corrections: what was set aside is not among them.
 * What is said of all readings of an entry stands in each of its lines.
 *
 * @source own derivation: docs/methods/carrying.md
 */
export function readingsCsv(entries: readonly Entry[], style: CsvStyle): string {
  const log = numbered(inCausalOrder(entries))
  const state = foldJob(log)
  const told = [
    ...state.heights,
    ...state.play,
    ...state.measured,
    ...state.rounds.flatMap((r) => r.readings),
  ]
  const round = new Map(told.map((fact) => [fact.entry, fact.round]))
  const lines = effectiveData(log).flatMap(({ data }, i) => {
    if (!round.has(i)) return []
    const parts = tableOf(data)
    const own = parts.find(({ place }) => place === '')?.cells ?? new Map<string, string>()
    const below = parts
      .filter(({ place }) => place !== '')
      .sort((a, b) => (counted(a.place) < counted(b.place) ? -1 : 1))
    return (below.length > 0 ? below : [{ place: '', cells: new Map() }]).map(({ place, cells }) => ({
      where: [String(i), log[i]!.kind, log[i]!.at ?? '', String(round.get(i)), place],
      cells: new Map([...own, ...cells]),
    }))
  })
  const columns = columnsOf(lines.map(({ cells }) => cells))
    .map((name) => ({ name, rank: order.indexOf(name.replace(/ \([^()]+\)$/, '')) }))
    .sort((a, b) => a.rank - b.rank || (a.name < b.name ? -1 : 1))
    .map(({ name }) => name)
  return csvOfRows(
    [
      [...inPlace, ...columns],
      ...lines.map(({ where, cells }) => [...where, ...columns.map((name) => cells.get(name) ?? '')]),
    ],
    style,
  )
}

/** Readings out of a table. @source definition */
export interface TakenReadings {
  readonly entries: readonly Entry[]
  /** Problems of these entries (`entries[0].data.gauge`), told at the cells that they came from. */
  readonly atCells: (problems: readonly Problem[]) => readonly Problem[]
}

/**
 * Bare entries with the readings of a table, or everything that is wrong with it at its line and column; nothing of it is
 * taken in then. Lines with one number under `entry` and one kind are one entry.
 *
 * @param round in which they will count; a line that says another one is a fault
 * @source own derivation: docs/methods/carrying.md
 */
export function readReadingsCsv(text: string, round: number): Reading<TakenReadings> {
  const table = rowsOfCsv(text)
  if (!table.ok) return table
  const { head } = table.value
  const lacking = ['entry', 'kind', 'place'].filter((name) => !head.includes(name))
  if (lacking.length > 0)
    return bad(
      lacking.map((name) => ({
        field: 'line 1',
        wrong: `There is no column “${name}”.`,
        right: `a column "${name}"`,
      })),
    )
  const { lines, problems } = membersOfTable(table.value, inPlace)
  const found: Problem[] = [...problems]
  const groups = new Map<string, typeof lines>()
  for (const line of lines) {
    const own = (name: string) => line.own.get(name) ?? ''
    const key = `${own('entry')} ${own('kind')}`
    groups.set(key, [...(groups.get(key) ?? []), line])
    const at = (name: string) => `line ${line.line}, column ${head.indexOf(name) + 1} “${name}”`
    if (own('entry') === '')
      found.push({
        field: at('entry'),
        wrong: 'It is empty.',
        right: 'a number, the same one in all lines of what was read in one go',
      })
    if (!kinds.includes(own('kind')))
      found.push({
        field: at('kind'),
        wrong: `“${own('kind')}” is nothing that is read.`,
        right: kinds.map((kind) => `"${kind}"`).join(', '),
      })
    if (own('round') !== '' && own('round') !== String(round))
      found.push({
        field: at('round'),
        wrong: `This line says round ${own('round')}, and what is taken in now counts in round ${round}.`,
        right: `"${round}", or nothing`,
      })
  }
  const all: (TableMember & { readonly before: string })[] = []
  const entries = [...groups.values()].map((group, i): Entry => {
    const members = group.flatMap((line) => line.members.map((member) => placed(member, line.steps.length)))
    const mine = members.map((member) => ({ ...member, before: `entries[${i}].data` }))
    all.push(...mine)
    const once = members.filter(
      ({ path, text }, at) =>
        path.length > 1 || !members.slice(0, at).some((m) => samePath(m.path, path) && m.text === text),
    )
    const { value, problems: misplaced } = valueOfMembers(once)
    found.push(...misplaced)
    const kind = group[0]!.own.get('kind') ?? ''
    const moments = new Set(group.map(({ own }) => own.get('at') ?? '').filter(Boolean))
    if (moments.size > 1)
      found.push({
        field: `line ${group[0]!.line}, column ${head.indexOf('at') + 1} “at”`,
        wrong: `The lines of this entry say different times: ${[...moments].join(', ')}.`,
        right: 'one time for all of them, or another number under “entry”',
      })
    const read = kinds.includes(kind) ? readEntry(kind, value, ['entries', i, 'data']) : null
    if (read?.kind === 'faulty') found.push(...cellOfProblem(read.problems, mine))
    const [moment] = moments
    return { kind, data: value, ...(moment === undefined ? {} : { at: moment }) }
  })
  if (entries.length === 0)
    found.push({ field: 'line 2', wrong: 'There is no reading.', right: 'one line each' })
  return found.length > 0 ? bad(found) : good({ entries, atCells: (wrong) => cellOfProblem(wrong, all) })
}

/** Members of readings one by one; all others are said of the whole entry, and stand in each of its lines. */
const ofOne = ['value', 'wheelTurn', 'reading', 'steer', 'camber', 'tilt', 'front', 'rear', 'span']
const wheels = ['front left', 'front right', 'rear left', 'rear right']

function placed(member: TableMember, depth: number): TableMember {
  const name = String(member.path.at(-1))
  const isOfOne = member.path.length === depth || ofOne.includes(name) || wheels.includes(name)
  return isOfOne ? member : { ...member, path: [name] }
}

const samePath = (a: readonly (string | number)[], b: readonly (string | number)[]) =>
  a.length === b.length && a.every((step, i) => step === b[i])
