import { startTransition, useCallback, useEffect, useMemo, useRef, useState } from 'react'
import type { BoltSheet, Sheet } from '../../sheet/index.ts'
import { howOf } from './how-of.ts'
import { keepEdits, keptEdits } from './kept-edits.ts'
import type { Answer, BoltAnswer, Edit, JobRow, Plain, RoundForm, Told, Units } from './messages.ts'
import { momentOf } from './moment-of.ts'
import { type Undoable, undoableOf } from './undoable.ts'
import { useCalm } from './use-calm.ts'
import type { KeptRows } from './use-kept-rows.ts'
import { useSealing } from './use-sealing.ts'
import { type RoundHow, withHow } from './with-how.ts'
import { withTyped } from './with-typed.ts'
import { type Question, type WorkerHand, workerHand } from './worker-hand.ts'

/** Long enough to take a burst of letters as one question, short enough not to be felt. */
const pause = 60

/** A text that is still being typed is not yet called wrong. */
const thought = 800

/** Which field of which log entry. */
interface Place {
  readonly entry: number
  readonly path: string
}

/** What a field can do with a job. */
export interface JobHand {
  /** What stands in a field: as typed, even when it was not understood. */
  textOf(input: Place & { readonly text: string }): string
  refusalOf(input: Place): Plain | null
  type(input: Place & { readonly label: string }, text: string): void
}

/** A job on the page. */
export interface OpenJob {
  readonly rows: readonly JobRow[]
  readonly sheet: Sheet | null
  readonly edits: readonly Edit[]
  /** Not every text was understood, or nothing could be worked out: the sheet is the last good one. */
  readonly stale: boolean
  /** The sheet shown is not, or not yet, of everything that was typed: nothing may be noted as made from it. */
  readonly behind: boolean
  readonly working: boolean
  readonly trouble: Plain | null
  /** False when this device refuses to keep anything. */
  readonly kept: boolean
  readonly hand: JobHand
  /** The same for the fields of the round that is being read. */
  readonly again: JobHand
  readonly form: RoundForm | null
  /** The moves that the sheet shows are made already. */
  readonly made: boolean
  /** The bolt book; null until it is there. */
  readonly bolts: BoltSheet | null
  /** The bolt book shown is that of everything that was done. */
  readonly boltsCurrent: boolean
  /** What of the edits, by their place, was not taken in. */
  readonly refused: Told['refused']
  /** Appends what was done at a joint. */
  readonly done: (done: Omit<Extract<Edit, { kind: 'done' }>, 'kind' | 'at'>) => void
  readonly how: RoundHow
  setHow(how: RoundHow): void
  taken(): void
  turned(sheet: Sheet): void
  /** What undo would take back; null where there is nothing. */
  readonly undoable: Undoable | null
  undo(): void
  /** Notes something in the log: one fact, in as many entries as it takes. */
  /** What of the edits was not understood; null while they are not read. */
  readonly told: Told['refused'] | null
  /** Takes one edit out again. */
  drop(edit: number): void
  note(
    label: string,
    entries: readonly { readonly kind: string; readonly data: Readonly<Record<string, unknown>> }[],
  ): void
  /** The job's row; null while it is not read, or where there is none of that name. */
  readonly row: JobRow | null
  /** Which jobs there are is known. */
  readonly isRead: boolean
  /** Why what was noted is not sealed; null while all is well. */
  readonly sealing: Plain | null
  update(row: JobRow): void
  startAgain(): void
}

const nothing: readonly Edit[] = []

/** Holds a job open: its edits kept on this device, what is shown of it worked out in the worker as the person types. */
export function useJob(
  job: string,
  {
    units,
    onBolts,
    kept: keptRows,
  }: { readonly units: Units; readonly onBolts: boolean; readonly kept: KeptRows },
): OpenJob {
  const [came, setCame] = useState<readonly JobRow[] | null>(null)
  const [byJob, setByJob] = useState<Readonly<Record<string, readonly Edit[]>>>({})
  const [heard, setHeard] = useState<(Question & { told: Told }) | null>(null)
  const [answered, setAnswered] = useState<(Question & { answer: Answer }) | null>(null)
  const [booked, setBooked] = useState<(Question & { answer: BoltAnswer }) | null>(null)
  const [good, setGood] = useState<{ job: string; sheet: Sheet } | null>(null)
  const [broken, setBroken] = useState<Plain | null>(null)
  const [kept, setKept] = useState(true)
  const worker = useRef<WorkerHand | null>(null)
  const sheetOf = useRef('')
  // Only the worker has read the files: until it has said which log a job has, nothing is laid on it.
  const rows = useMemo(() => [...(keptRows.rows ?? []), ...(came ?? [])], [keptRows.rows, came])
  const row = rows.find(({ id }) => id === job) ?? null
  const isRead = came !== null && keptRows.rows !== null
  const mark = row?.mark ?? (isRead ? '' : null)
  const version = row?.version ?? ''
  const day = row?.day ?? null
  const edits = useMemo(
    () => byJob[job] ?? (mark === null ? nothing : keptEdits({ job, mark })),
    [byJob, job, mark],
  )

  useEffect(() => {
    const hand = workerHand({
      jobs: setCame,
      told: (asked, told) => setHeard({ ...asked, told }),
      bolts: (asked, answer) => setBooked({ ...asked, answer }),
      answer: (asked, answer) => {
        if (!answer) return
        sheetOf.current = asked.job
        // Drawing a sheet anew gives way to the next letter.
        startTransition(() => {
          setAnswered({ ...asked, answer })
          if (answer.sheet) setGood({ job: asked.job, sheet: answer.sheet })
        })
      },
      broken: (reason) =>
        setBroken({
          sentence: `The part of this page that works things out has stopped${reason ? ` (${reason})` : ''}.`,
          remedy: 'Load the page again; what was typed is kept.',
        }),
    })
    worker.current = hand
    return () => hand.end()
  }, [])

  useEffect(() => {
    if (mark === null) return
    // Beside the bolt book the angles are worked out once, for the stages and the title.
    const ask = () =>
      worker.current?.ask({
        job,
        version,
        edits,
        units,
        bolts: onBolts,
        sheet: !onBolts || sheetOf.current !== job,
      })
    const timer = setTimeout(ask, edits.length === 0 || onBolts ? 0 : pause)
    return () => clearTimeout(timer)
  }, [job, version, edits, mark, units, onBolts])

  const change = useCallback(
    (next: readonly Edit[]) => {
      if (mark === null) return
      setByJob((all) => ({ ...all, [job]: next }))
      setKept(keepEdits({ job, mark }, next))
    },
    [job, mark],
  )

  const sealing = useSealing(row, edits, {
    row: keptRows.update,
    edits: (from) => {
      if (mark === null) return
      setByJob((all) => {
        const next = from(all[job] ?? keptEdits({ job, mark }))
        keepEdits({ job, mark }, next)
        return { ...all, [job]: next }
      })
    },
  })

  // Another tab of the same browser may have the same job open.
  useEffect(() => {
    const look = () => setByJob({})
    window.addEventListener('storage', look)
    return () => window.removeEventListener('storage', look)
  }, [])

  const calm = useCalm(edits, thought)
  const current = answered?.job === job ? answered : null
  const read = heard?.job === job ? heard : null
  const lastIn = (kind: 'typed' | 'again', { entry, path }: Place) => {
    for (let i = edits.length - 1; i >= 0; i--) {
      const edit = edits[i]!
      // A round that was taken, or opened anew, begins with empty fields.
      if (kind === 'again' && (edit.kind === 'taken' || edit.kind === 'turned')) return -1
      if (edit.kind === kind && edit.entry === entry && edit.path === path) return i
    }
    return -1
  }
  const refusedAt = (i: number) =>
    i < 0 ? null : (read?.told.refused.find(({ edit }) => edit === i && edits[i] === read.edits[i]) ?? null)
  const handFor = (kind: 'typed' | 'again'): JobHand => ({
    textOf: (input) => {
      const edit = edits[lastIn(kind, input)]
      return edit?.kind === kind ? edit.text : input.text
    },
    refusalOf: (input) => (calm ? refusedAt(lastIn(kind, input)) : null),
    type: (input, text) => change(withTyped(edits, kind, input, text)),
  })
  const sheet = good?.job === job ? good.sheet : null
  const book = booked?.job === job ? booked : null
  const open = edits.some(
    (edit, i) => edit.kind === 'typed' && refusedAt(i) !== null && lastIn('typed', edit) === i,
  )
  const isNow = <A extends Question>(answer: A | null): answer is A =>
    answer?.edits === edits && answer.version === version && answer.units === units
  const how = howOf(edits)
  const note: OpenJob['note'] = (label, entries) =>
    change([...edits, { kind: 'noted', at: momentOf(day), label, entries }])
  const sealedLast = read && isNow(read) ? read.told.last : null
  const undoable = undoableOf(edits, sealedLast)
  return {
    rows,
    sheet,
    edits,
    stale: (calm && open) || (current !== null && current.answer.sheet === null),
    behind: open || !isNow(current) || current.answer.sheet === null,
    working: !isNow(onBolts ? book : current),
    trouble: broken ?? keptRows.trouble ?? (onBolts ? book : current)?.answer.trouble ?? null,
    sealing,
    row,
    isRead,
    update: keptRows.update,
    kept,
    hand: handFor('typed'),
    again: handFor('again'),
    form: read?.told.form ?? null,
    made: read?.told.made ?? false,
    bolts: book?.answer.bolts ?? null,
    boltsCurrent: isNow(book),
    refused: read?.edits === edits ? read.told.refused : [],
    done: (what) => change([...edits, { kind: 'done', at: momentOf(day), ...what }]),
    turned: (done) =>
      change([
        ...edits,
        {
          kind: 'turned',
          at: momentOf(day),
          // The button's own words: who presses it says that every joint is final.
          proving: done.next.act === 'prove',
          ...(done.first ? { asks: done.first } : {}),
          // Moves that the log already has as made are not noted a second time.
          moves: (read?.told.made ? [] : done.moves.moves).map(
            ({ adjuster, kind, wheel, side, from, to }) => ({
              adjuster,
              kind,
              wheel,
              side,
              from,
              to,
            }),
          ),
        },
      ]),
    how,
    setHow: (next) => change(withHow(edits, next)),
    taken: () => change([...edits, { kind: 'taken', at: momentOf(day), ...how }]),
    undoable,
    undo: () => {
      if (edits.length > 0) change(edits.slice(0, -1))
      else if (sealedLast)
        note(
          `taken back: ${sealedLast.label}`,
          sealedLast.entries.map((of) => ({ kind: 'taken back', data: { of } })),
        )
    },
    note,
    told: read?.edits === edits ? read.told.refused : null,
    drop: (at) => change(edits.filter((_, i) => i !== at)),
    startAgain: () => change(nothing),
  }
}
