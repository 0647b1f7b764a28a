import type { ReactNode } from 'react'
import type { Plain } from '../state/messages.ts'

/** The frame of a stage: what stands above, why there is no sheet or not yet one, the sheet, what stands below. */
export function StageFrame({
  head,
  foot,
  trouble,
  wait,
  children,
}: {
  head: ReactNode
  foot: ReactNode
  trouble: Plain | null
  /** What is done until the sheet is there; null once it is. */
  wait: string | null
  children: ReactNode
}) {
  return (
    <main className="page-sheet" id="sheet" tabIndex={-1}>
      {head}
      <p className={`stale${trouble ? '' : ' unseen'}`} role="status" aria-live="polite">
        {trouble && `${trouble.sentence} ${trouble.remedy}`}
      </p>
      {wait !== null && !trouble && <p className="page-wait">{wait}</p>}
      {children}
      {foot}
    </main>
  )
}
