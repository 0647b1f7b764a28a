import type { Sheet, Stage } from '../../sheet/index.ts'
import { addressOf } from '../state/use-address.ts'
import { built } from './built-stages.ts'
import './spine.css'

const all: readonly Stage[] = ['Arrival', 'Findings', 'Plan', 'Strip', 'Refit', 'Angles', 'Handover']
/** The seven stages of a job. */
export function Spine({ stages, id, open }: { stages: Sheet['stages']; id: string; open: Stage }) {
  return (
    <nav className="spine" aria-label="Stages of the job">
      <p className="spine-name">Axlewright</p>
      <ol>
        {all.map((stage) => {
          const state = stages.find((one) => one.stage === stage)?.state ?? 'open'
          const here = stage === open
          return (
            <li key={stage} className={here ? 'spine-here' : undefined}>
              <a href={addressOf(id, built[stage])} aria-current={here ? 'page' : undefined}>
                <StageMark state={here ? 'now' : state === 'done' ? 'done' : 'open'} />
                <span className="spine-stage">{stage}</span>
              </a>
            </li>
          )
        })}
      </ol>
    </nav>
  )
}

function StageMark({ state }: { state: 'done' | 'now' | 'open' }) {
  return (
    <svg width="18" height="18" viewBox="0 0 18 18" aria-hidden="true">
      {state === 'now' && <rect x="2" y="2" width="14" height="14" style={{ fill: 'var(--blue)' }} />}
      {state === 'done' && (
        <path d="M3 3V15M15 3V15M3 9H15" style={{ stroke: 'var(--soft)', strokeWidth: 1.8, fill: 'none' }} />
      )}
      {state === 'open' && (
        <rect
          x="2.8"
          y="2.8"
          width="12.4"
          height="12.4"
          style={{ stroke: 'var(--soft)', strokeWidth: 1.4, fill: 'none' }}
          strokeDasharray="3 2.4"
        />
      )}
    </svg>
  )
}
