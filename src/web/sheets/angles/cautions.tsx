import { glued } from '../../drawing/glued.ts'
import './cautions.css'

/** Cautions: ink beside a hatched band of chalk. They cannot be folded away. */
export function Cautions({ cautions, title }: { cautions: readonly string[]; title: string }) {
  if (cautions.length === 0) return null
  return (
    <section className="cautions" aria-label={title}>
      <h2>{title}</h2>
      <ul>
        {cautions.map((sentence) => (
          <li key={sentence}>{glued(sentence)}</li>
        ))}
      </ul>
    </section>
  )
}
