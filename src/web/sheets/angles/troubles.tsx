import { glued } from '../../drawing/glued.ts'
import './troubles.css'

/** What is wrong or missing, in plain sentences. */
export function Troubles({ troubles }: { troubles: readonly string[] }) {
  if (troubles.length === 0) return null
  return (
    <section className="troubles" aria-label="Wrong or missing">
      <h2>Wrong or missing</h2>
      <ul>
        {troubles.map((sentence) => (
          <li key={sentence}>{glued(sentence)}</li>
        ))}
      </ul>
    </section>
  )
}
