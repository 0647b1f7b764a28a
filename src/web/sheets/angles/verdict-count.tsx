import type { SheetReading, Verdict } from '../../../sheet/index.ts'
import { VerdictMark } from '../../drawing/verdict-mark.tsx'

const order: readonly Verdict[] = ['outside', 'outside, not proven', 'inside, not proven', 'inside']

/** How many readings stand how, by word and shape. */
export function VerdictCount({ readings }: { readings: readonly SheetReading[] }) {
  return (
    <ul className="verdict-count" aria-label="How the readings stand">
      {order.flatMap((verdict) => {
        const count = readings.filter((reading) => reading.verdict === verdict).length
        return count === 0
          ? []
          : [
              <li key={verdict}>
                <VerdictMark verdict={verdict} /> <strong className="figure-number">{count}</strong> {verdict}
              </li>,
            ]
      })}
    </ul>
  )
}
