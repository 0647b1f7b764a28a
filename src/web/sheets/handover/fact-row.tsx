import type { ReactNode } from 'react'
import type { HandoverFact } from '../../../sheet/index.ts'

/** Something noted, on one line: what, how it stands, since when; what can be done about it below. */
export function FactRow({
  fact,
  state,
  children,
}: {
  fact: HandoverFact
  state: string
  children?: ReactNode
}) {
  return (
    <li className="handover-fact">
      <p>
        <strong>{fact.what}</strong> <span className="handover-state">{state}</span>
      </p>
      {fact.words && <p>{fact.words}</p>}
      <p className="form-noted">{fact.noted.words}</p>
      {children}
    </li>
  )
}
