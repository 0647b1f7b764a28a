import type { Sheet } from '../../../sheet/index.ts'
import { typeset } from '../../drawing/typeset.ts'
import { VerdictMark } from '../../drawing/verdict-mark.tsx'
import type { JobHand } from '../../state/use-job.ts'
import './heights.css'
import { ReadingField } from './reading-field.tsx'
import { wheelOrder } from './wheel-order.ts'

/** Ride height at each wheel, read before the vehicle is lifted. */
export function Heights({ sheet, hand }: { sheet: Sheet; hand: JobHand }) {
  if (sheet.heights.length === 0) return null
  const heights = [...sheet.heights].sort((a, b) => wheelOrder(a.wheel) - wheelOrder(b.wheel))
  return (
    <section aria-label="Ride height">
      <h2 className="heights-head">Ride height</h2>
      <ul className="heights">
        {heights.map((height) => (
          <li key={height.wheel}>
            <h3>{height.wheel}</h3>
            <p className="heights-number">
              <strong className="figure-number">{height.number.text}</strong>{' '}
              <span className="figure-number">{height.number.spread}</span>
            </p>
            <p className="heights-verdict">
              <VerdictMark verdict={height.verdict} />
              <span>{height.verdict}</span>
            </p>
            {height.limitText && <p className="heights-limit figure-number">{typeset(height.limitText)}</p>}
            {height.inputs.map((input) => (
              <ReadingField key={`${input.entry} ${input.path}`} input={input} hand={hand} />
            ))}
          </li>
        ))}
      </ul>
    </section>
  )
}
