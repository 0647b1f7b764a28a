import { useEffect, useRef, useState } from 'react'
import { askKeeper } from '../keep/keep-hand.ts'
import { afterSealing } from './after-sealing.ts'
import type { Edit, JobRow, Plain } from './messages.ts'
import { firstHand } from './use-hand.ts'

/** How long the hand rests before what it noted is sealed, ms. A fact that was said whole waits less. */
const rest = { typed: 2500, said: 400 }

/**
 * Seals what is noted on a kept job as soon as the hand rests, and when the page is left. Drafts are forgotten only once
 * their entries are on disk.
 *
 * @returns why the last sealing did not succeed; null while all is well
 */
export function useSealing(
  row: JobRow | null,
  edits: readonly Edit[],
  on: {
    readonly row: (row: JobRow) => void
    readonly edits: (change: (now: readonly Edit[]) => readonly Edit[]) => void
  },
): Plain | null {
  const [trouble, setTrouble] = useState<Plain | null>(null)
  /** Drafts that cannot be sealed yet: not asked about again until something is added. */
  const left = useRef<readonly Edit[] | null>(null)
  const busy = useRef(false)
  const latest = useRef({ row, edits, on })
  latest.current = { row, edits, on }
  const job = row?.kept ? row.id : null

  useEffect(() => {
    if (job === null || edits.length === 0 || edits === left.current) return
    const seal = () => {
      const { row: now, edits: sent } = latest.current
      if (!now?.kept || sent.length === 0 || sent === left.current || busy.current) return
      busy.current = true
      askKeeper('seal', { job: now.id, edits: sent, hand: firstHand() ?? 'not said' })
        .then(
          (back) => {
            setTrouble(null)
            latest.current.on.row(back.row)
            latest.current.on.edits((all) => {
              const next = afterSealing(all, sent, back.rest)
              if (next.length === back.rest.length) left.current = next
              return next
            })
          },
          (why: Plain) => setTrouble(why),
        )
        .finally(() => {
          busy.current = false
        })
    }
    const last = edits[edits.length - 1]!.kind
    const timer = setTimeout(seal, last === 'typed' || last === 'again' ? rest.typed : rest.said)
    document.addEventListener('visibilitychange', seal)
    return () => {
      clearTimeout(timer)
      document.removeEventListener('visibilitychange', seal)
    }
  }, [job, edits])
  return trouble
}
