import { useState } from 'react'
import { askKeeper } from '../../keep/keep-hand.ts'
import { saveFile } from '../../pages/jobs/save-file.ts'
import { makePaper } from '../../state/make-paper.ts'
import type { Plain, Units } from '../../state/messages.ts'
import type { PaperKind } from '../../state/paper-messages.ts'
import type { OpenJob } from '../../state/use-job.ts'

const papers: readonly (readonly [PaperKind, string])[] = [
  ['pdf', 'Proof sheet as PDF'],
  ['html', 'Proof sheet as a page'],
  ['ics', 'Follow-ups as a calendar'],
]

/** What is given away: the proof that anybody can verify, the sheet for people, and the days that are due. */
export function ProofButtons({ job, id, units }: { job: OpenJob; id: string; units: Units }) {
  const [busy, setBusy] = useState<string | null>(null)
  const [told, setTold] = useState('')
  const { row, edits } = job
  const make = async (
    words: string,
    work: () => Promise<{ name: string; bytes: Uint8Array; type?: string }>,
  ) => {
    if (busy) return
    setBusy(words)
    setTold('')
    try {
      const { name, bytes, type } = await work()
      saveFile(name, bytes, type)
      setTold(`${name} was handed to the browser’s downloads.`)
    } catch (why) {
      const { sentence, remedy } = why as Plain
      setTold(`${sentence} ${remedy}`)
    }
    setBusy(null)
  }
  const paper = async (as: PaperKind) => {
    const made = await makePaper({ as, job: id, version: row?.version ?? '', edits, units })
    if ('trouble' in made) throw made.trouble
    return made
  }
  const proof = async () => {
    const made = await askKeeper('carryOut', { job: id })
    localStorage.setItem(`axlewright/exported/${id}`, row?.version ?? '')
    return made
  }
  return (
    <>
      <div className="beside-do handover-do">
        {row?.kept && (
          <button type="button" aria-disabled={busy !== null} onClick={() => make('proof', proof)}>
            Export the proof file
          </button>
        )}
        {papers.map(([as, words]) => (
          <button
            key={as}
            type="button"
            aria-disabled={busy !== null}
            onClick={() => make(as, () => paper(as))}
          >
            {busy === as ? 'Making it …' : words}
          </button>
        ))}
        <button type="button" onClick={() => window.print()}>
          Print this sheet
        </button>
      </div>
      <p className="form-aside" role="status">
        {told}
      </p>
    </>
  )
}
