import type { SheetBolt } from '../../../sheet/index.ts'

/** The shape that stands for how far a joint has come; the word always stands beside it. */
export function StateMark({ bolt: { state, done }, size = 18 }: { bolt: SheetBolt; size?: number }) {
  const frame = { fill: 'none', stroke: 'var(--ink)', strokeWidth: 1.8 }
  const filled = { fill: 'var(--ink)' }
  const share = {
    open: 0,
    retained: 0,
    cracked: 0,
    started: 0.25,
    'run up': 0.5,
    final: 1,
    checked: 1,
    closed: 0,
  }[state]
  const height = 14 * share
  return (
    <svg className="state-mark" width={size} height={size} viewBox="0 0 16 16" aria-hidden="true">
      {state === 'closed' ? (
        <path d="M3 3V13M13 3V13M3 8H13" style={{ ...frame, stroke: 'var(--soft)', strokeWidth: 1.6 }} />
      ) : (
        <>
          <rect x="1" y={15 - height} width="14" height={height} style={filled} />
          <rect
            x="1.4"
            y="1.4"
            width="13.2"
            height="13.2"
            style={frame}
            strokeDasharray={share === 0 ? '3 2' : undefined}
          />
          {(state === 'retained' || state === 'cracked') && <path d="M4 8H12" style={frame} />}
          {/* Final, and nothing more is asked of it: the witness mark across the filled square. */}
          {state === 'checked' && (
            <path d="M4 8.4L7 11.4L12 4.8" style={{ ...frame, stroke: 'var(--paper)', strokeWidth: 2.2 }} />
          )}
          {state === 'final' && !done && (
            <path d="M5 8H11" style={{ ...frame, stroke: 'var(--paper)', strokeWidth: 2.2 }} />
          )}
        </>
      )}
    </svg>
  )
}
