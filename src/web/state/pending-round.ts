import { type Entry, type Job, type JobState, withCorrection } from '../../job/index.ts'
import type { Edit, RoundForm } from './messages.ts'

/** Members that belong to how the gauge is set up, and stay as they were until typed over. */
const setUp = /(^|\.)(wheelTurn|span|wheelbase|along|belowHub|levelled|radius|diameter)(\b|\[)/

/** A round after moves that is being read. */
export interface PendingRound {
  readonly number: number
  readonly readings: readonly {
    readonly entry: number
    readonly title: string
    readonly fields: readonly { readonly path: string; readonly before: string; readonly kept: boolean }[]
  }[]
  /** What was typed, by "entry path". */
  readonly texts: Map<string, string>
  /** Those of them that were not understood. */
  readonly wrong: Set<string>
}

/** The round to read next: the same gauges at the same wheels as in the last one. */
export function pendingRound(state: JobState): PendingRound {
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
    data: { number: pending.number, purpose: proving ? 'proving' : 'provisional', settled },
  }
  const readings = roundForm(pending)
    .observations.filter(({ complete }) => complete)
    .map(({ entry, fields }): Entry => {
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
