import { useEffect, useRef, useState } from 'react'
import type { Edit, Told } from './messages.ts'
import type { OpenJob } from './use-job.ts'

type Entries = Parameters<OpenJob['note']>[1]

/** A form that notes something in the log. */
export interface NoteHand {
  /** Notes it; `done` is called once it was understood. */
  note(label: string, entries: Entries, done?: () => void): void
  /** What was not understood, and in which field: it stays in the form, and nothing of it was noted. */
  readonly refusal: Told['refused'][number] | null
  /** It was noted and is not read yet. */
  readonly busy: boolean
  forget(): void
}

/**
 * Notes a form as a whole: either all of it is understood and stands in the log, or nothing of it, and the form says
 * which field it was.
 */
export function useNote(job: OpenJob): NoteHand {
  const [refusal, setRefusal] = useState<NoteHand['refusal']>(null)
  const [waits, setWaits] = useState<{
    label: string
    entries: Entries
    done?: (() => void) | undefined
  } | null>(null)
  const sent = useRef(false)
  const place = waits ? job.edits.findLastIndex((edit) => isOf(edit, waits)) : -1
  const { told } = job
  useEffect(() => {
    if (!waits) return
    if (place >= 0) sent.current = true
    // Sealed already: what is sealed was understood.
    if (place < 0 && !sent.current) return
    if (place >= 0 && !told) return
    const why = place >= 0 ? told?.find(({ edit }) => edit === place) : undefined
    setWaits(null)
    sent.current = false
    if (why) {
      setRefusal(why)
      job.drop(place)
    } else waits.done?.()
  }, [waits, place, told, job])
  return {
    note: (label, entries, done) => {
      setRefusal(null)
      sent.current = false
      setWaits({ label, entries, done })
      job.note(label, entries)
    },
    refusal,
    busy: waits !== null,
    forget: () => setRefusal(null),
  }
}

const isOf = (edit: Edit, { label, entries }: { label: string; entries: Entries }) =>
  edit.kind === 'noted' && edit.label === label && edit.entries === entries
