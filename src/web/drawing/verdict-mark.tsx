import type { Verdict } from '../../sheet/index.ts'

/** The shape that stands for a verdict; the word always stands beside it. */
export function VerdictMark({ verdict, size = 16 }: { verdict: Verdict; size?: number }) {
  const frame = { fill: 'none', stroke: 'var(--ink)', strokeWidth: 1.8 }
  return (
    <svg className="verdict-mark" width={size} height={size} viewBox="0 0 16 16" aria-hidden="true">
      {verdict === 'inside' && <rect x="1" y="1" width="14" height="14" style={{ fill: 'var(--ink)' }} />}
      {verdict === 'inside, not proven' && (
        <>
          <rect x="1" y="8" width="14" height="7" style={{ fill: 'var(--ink)' }} />
          <rect x="1.4" y="1.4" width="13.2" height="13.2" style={frame} />
        </>
      )}
      {verdict === 'outside, not proven' && (
        <>
          <rect x="1.4" y="1.4" width="13.2" height="13.2" fill="url(#hatch-ink)" />
          <rect x="1.4" y="1.4" width="13.2" height="13.2" style={frame} strokeDasharray="3 2" />
        </>
      )}
      {verdict === 'outside' && (
        <path d="M2 2L14 14M14 2L2 14" style={{ stroke: 'var(--ink)', strokeWidth: 3, fill: 'none' }} />
      )}
      {verdict === 'no limit' && <path d="M2 8H14" style={{ stroke: 'var(--soft)', strokeWidth: 1.6 }} />}
    </svg>
  )
}
