import { useEffect, useState } from 'react'
import type { SheetBolt, SheetMark } from '../../../sheet/index.ts'
import { askKeeper } from '../../keep/keep-hand.ts'
import { Hand } from './clock-face.tsx'
import './marks.css'
import { upper } from './upper.ts'

/** How the joint was found: shown where it is taken apart and, at the same place, where it goes back. */
export function MarksFound({ bolt, job }: { bolt: SheetBolt; job: string | null }) {
  if (bolt.marks.length === 0 && bolt.state !== 'closed') return null
  return (
    <section className="marks" aria-label="As found">
      <h2>As found</h2>
      {bolt.marks.length === 0 && bolt.state === 'closed' && (
        <p>Nothing is noted yet. Once it is undone, nobody can look.</p>
      )}
      <ul>
        {bolt.marks.map((mark) => (
          <li key={mark.entry}>
            <Mark mark={mark} job={job} />
          </li>
        ))}
      </ul>
    </section>
  )
}

function Mark({ mark, job }: { mark: SheetMark; job: string | null }) {
  const { what, clock, words, photo } = mark
  return (
    <div className="mark">
      {clock !== null && (
        <svg
          viewBox="-150 -150 300 300"
          role="img"
          aria-label={`The mark stood at ${clockWords(clock)} as on a clock.`}
        >
          <circle className="clock-ring" r="142" />
          <path className="clock-ring" d="M0 -142V-122M0 142V122M-142 0H-122M142 0H122" />
          <Hand clock={clock} />
        </svg>
      )}
      <p>
        <strong>{upper(what)}</strong>
        {clock !== null && `: ${clockWords(clock)}`}
        {words.length > 0 && `. ${words.map(upper).join('; ')}.`}
      </p>
      {photo && job && <Photo job={job} hash={photo} />}
    </div>
  )
}

function clockWords(clock: number): string {
  const minutes = Math.round(((clock / (2 * Math.PI)) * 720) % 720)
  const hour = Math.floor(minutes / 60) || 12
  return `${hour}:${String(minutes % 60).padStart(2, '0')}`
}

/** A photo that lies beside the log. */
function Photo({ job, hash }: { job: string; hash: string }) {
  const [place, setPlace] = useState<string | null | undefined>(undefined)
  useEffect(() => {
    let url: string | null = null
    askKeeper('photo', { job, hash }).then(
      ({ bytes }) => {
        url = bytes && URL.createObjectURL(new Blob([Uint8Array.from(bytes)], { type: 'image/jpeg' }))
        setPlace(url)
      },
      () => setPlace(null),
    )
    return () => {
      if (url) URL.revokeObjectURL(url)
    }
  }, [job, hash])
  if (place === undefined) return null
  return place ? <img src={place} alt="As found" /> : <p>The photo is not on this device.</p>
}
