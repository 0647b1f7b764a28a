import { bad, good, type Reading } from '../../corner/index.ts'
import { type Entry, type Job, type JobState, readJob, withCorrection, writeJob } from '../../job/index.ts'
import type { RoundAsk } from '../../sheet/index.ts'
import type { Edit, RoundForm } from './messages.ts'

/** Members that belong to how the gauge is set up, and stay as they were until typed over. */
const setUp = /(^|\.)(wheelTurn|span|wheelbase|along|belowHub|levelled|radius|diameter)(\b|\[)/

/** A field of a round that is being read. */
interface PendingField {
  readonly path: string
  readonly before: string
  readonly kept: boolean
  /** How such a figure is written, where it was not read before. */
  readonly like?: string
}

/** A round that is being read: the first one, or one after moves. */
export interface PendingRound {
  readonly number: number
  readonly readings: readonly {
    readonly entry: number
    readonly title: string
    readonly fields: readonly PendingField[]
    /** Where it was not read before: the entry with empty places. */
    readonly ask?: RoundAsk
  }[]
  /** What was typed, by "entry path". */
  readonly texts: Map<string, string>
  /** Those of them that were not understood. */
  readonly wrong: Set<string>
}

/** The round to read next: the same gauges at the same wheels as in the last one; where there is none, what is asked. */
export function pendingRound(state: JobState, asks?: readonly RoundAsk[]): PendingRound {
  if (asks) return firstPending(asks)
  const last = state.rounds[state.rounds.length - 1]
  const heights = state.heights.filter((fact) => fact.when === 'settled' && fact.round === last?.number)
  return {
    number: (last?.number ?? 0) + 1,
    readings: [...heights, ...(last?.readings ?? [])].map((fact) => {
      const said = fact.observation as { method: string; wheel?: string; side?: string; axle?: string }
      const where = said.wheel ?? (said.side ? `front ${said.side}` : (said.axle ?? ''))
      return {
        entry: fact.entry,
        title: [said.method, where].filter(Boolean).join(', '),
        fields: fact.typings.map(({ path, text }) => ({ path, before: text, kept: setUp.test(path) })),
      }
    }),
    texts: new Map(),
    wrong: new Set(),
  }
}

/** An observation that does not stand in the log yet has a place before all that does. */
const firstPending = (asks: readonly RoundAsk[]): PendingRound => ({
  number: 1,
  readings: asks.map((ask, i) => ({
    entry: -1 - i,
    title: ask.title,
    fields: ask.fields.map(({ path, text, kept, like }) => ({ path, before: text, kept, like })),
    ask,
  })),
  texts: new Map(),
  wrong: new Set(),
})

/** Reads one field of a round by itself: whatever else of its entry is still empty. */
export function readAgain(
  job: Job,
  { readings }: PendingRound,
  { entry, path, text }: { readonly entry: number; readonly path: string; readonly text: string },
): Reading<Job> {
  const ask = readings.find((one) => one.entry === entry)?.ask
  if (!ask) return withCorrection(job, { entry, path, text })
  const made: Entry = { kind: ask.kind, data: withTexts(ask.data, [{ path, text }]) }
  const read = readJob(writeJob({ ...job, entries: [...job.entries, made] }))
  const wrong = read.ok ? [] : read.problems.filter(({ field }) => field.endsWith(`.data.${path}`))
  return wrong.length > 0 ? bad(wrong) : good(job)
}

/** An entry's data with texts at their paths. */
function withTexts(
  data: Readonly<Record<string, unknown>>,
  texts: readonly { readonly path: string; readonly text: string }[],
): Record<string, unknown> {
  const copy = structuredClone(data) as Record<string, unknown>
  for (const { path, text } of texts) {
    const steps = path.match(/[^.[\]]+/g) ?? []
    let place: Record<string, unknown> = copy
    for (const step of steps.slice(0, -1)) place = place[step] as Record<string, unknown>
    place[steps.at(-1) ?? ''] = text
  }
  return copy
}

const textOf = (
  pending: PendingRound,
  entry: number,
  field: { path: string; before: string; kept: boolean },
) => pending.texts.get(`${entry} ${field.path}`) ?? (field.kept ? field.before : '')

/** The pending round as a form: a gauge is complete when nothing that it reads is empty. */
export function roundForm(pending: PendingRound): RoundForm {
  return {
    number: pending.number,
    observations: pending.readings.map(({ entry, title, fields }) => {
      const filled = fields.map((field) => ({
        entry,
        path: field.path,
        label: field.path,
        before: field.before,
        kept: field.kept,
        ...(field.like === undefined ? {} : { like: field.like }),
        text: textOf(pending, entry, field),
      }))
      const complete = filled.every(
        ({ path, text }) => text.trim() !== '' && !pending.wrong.has(`${entry} ${path}`),
      )
      return { entry, title, fields: filled, complete }
    }),
  }
}

/** The entries of a round that is taken: the round, then each complete gauge. Empty ones were not read. */
export function takenRound(
  pending: PendingRound,
  job: Job,
  { at, settled, proving }: Extract<Edit, { kind: 'taken' }>,
): readonly Entry[] {
  const round: Entry = {
    kind: 'round',
    at,
    data: {
      number: pending.number,
      purpose: proving ? 'proving' : pending.number === 1 ? 'as found' : 'provisional',
      settled,
    },
  }
  const readings = roundForm(pending)
    .observations.filter(({ complete }) => complete)
    .map(({ entry, fields }): Entry => {
      const ask = pending.readings.find((one) => one.entry === entry)?.ask
      if (ask) return { kind: ask.kind, at, data: withTexts(ask.data, fields) }
      // Each text goes where the old one stood; the log's own way of correcting knows the paths.
      let copy: Job = { ...job, entries: job.entries.slice(0, entry + 1) }
      let data = copy.entries[entry]!.data
      for (const { path, text } of fields) {
        const next = withCorrection(copy, { entry, path, text })
        if (!next.ok) throw new Error(`"${text}" was understood before and is not now.`)
        const laid = (next.value.entries[next.value.entries.length - 1]!.data as { data: object }).data
        data = { ...data, ...laid }
        copy = { ...copy, entries: copy.entries.map((old, i) => (i === entry ? { ...old, data } : old)) }
      }
      return { kind: job.entries[entry]!.kind, at, data }
    })
  return [round, ...readings]
}
