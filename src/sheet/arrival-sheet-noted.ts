import { commitmentIn, type Entry, isSealed, type Told } from '../job/index.ts'
import type { ArrivalNoted, ArrivalOptions } from './arrival-sheet.ts'

/**
 * Where something stands in the log, since when and by whom, with all its texts as they were typed.
 *
 * @source definition
 */
export function arrivalNoted(
  fact: Told,
  entries: readonly Entry[],
  { offset = '+00:00', today }: ArrivalOptions,
): ArrivalNoted {
  const { entry, at: _at, round: _round, typings: _typings, correctedBy, ...said } = fact
  const written = entries[entry]!
  // Whoever corrected it last has said it as it stands.
  const last = entries[correctedBy.at(-1) ?? entry]!
  return {
    entry,
    of: isSealed(written) ? written.id : entry,
    words: notedWords(last, written !== last, { offset, ...(today === undefined ? {} : { today }) }),
    texts: Object.fromEntries(textsOf(said)),
  }
}

const notedWords = (
  entry: Entry,
  corrected: boolean,
  { offset, today }: { readonly offset: string; readonly today?: string },
): string => {
  const named = entry.data['hand']
  const person = typeof named === 'string' ? named : isSealed(entry) ? entry.person : null
  const by = person === null || person === 'not said' ? '' : ` by ${person}`
  const time =
    entry.at === undefined ? '' : ` ${timeOf(entry.at, isSealed(entry) ? entry.offset : offset, today)}`
  return `${corrected ? 'corrected' : 'noted'}${time}${by}`
}

/** The clock on the wall where it was written; with its day, where that is not today. */
function timeOf(at: string, offset: string, today: string | undefined): string {
  const own = /[+-]\d\d:\d\d$/.exec(at)?.[0] ?? offset
  const [, sign, hours, minutes] = /^([+-])(\d\d):(\d\d)$/.exec(own) ?? ['', '+', '0', '0']
  const away = (Number(hours) * 60 + Number(minutes)) * (sign === '-' ? -1 : 1)
  const there = new Date(new Date(at).getTime() + away * 60_000).toISOString()
  const [day, time] = [there.slice(0, 10), there.slice(11, 16)]
  return day === today ? time : `${day} ${time}`
}

/** Every text that a person typed, by its path; what was erased is said to be. */
function textsOf(value: unknown, path = ''): readonly (readonly [string, string])[] {
  if (typeof value === 'string') return [[path, commitmentIn(value) === null ? value : 'erased']]
  if (typeof value !== 'object' || value === null) return []
  const { text } = value as { text?: unknown }
  if (typeof text === 'string' && 'value' in value) return [[path, text]]
  return Array.isArray(value)
    ? value.flatMap((inner, i) => textsOf(inner, `${path}[${i}]`))
    : Object.entries(value).flatMap(([name, inner]) => textsOf(inner, path === '' ? name : `${path}.${name}`))
}
