import { memo } from 'react'
import { glued } from '../../drawing/glued.ts'
import { useRead } from '../../state/use-read.ts'
import './cautions.css'

/** Cautions: ink beside a hatched band of chalk. They may be acknowledged, and stay: smaller, never folded away. */
export const Cautions = memo(function Cautions({
  cautions,
  title,
  job,
}: {
  cautions: readonly string[]
  title: string
  /** Which job they are read for. */
  job: string
}) {
  const [read, setRead] = useRead(job, cautions)
  if (cautions.length === 0) return null
  return (
    <section className={`cautions${read ? ' cautions-read' : ''}`} aria-label={title}>
      <div className="cautions-head">
        <h2>{title}</h2>
        <button type="button" className="bare" aria-pressed={read} onClick={() => setRead(!read)}>
          <svg width="22" height="22" viewBox="0 0 22 22" aria-hidden="true">
            <rect x="2" y="2" width="18" height="18" />
            {read && <path d="M6 11.5L9.5 15.5L16.5 6.5" />}
          </svg>
          I have read this
        </button>
      </div>
      <ul>
        {cautions.map((sentence) => (
          <li key={sentence}>{glued(sentence)} </li>
        ))}
      </ul>
    </section>
  )
})
