import type { RoundForm } from '../../state/messages.ts'
import type { JobHand } from '../../state/use-job.ts'
import { ReadingField } from './reading-field.tsx'

type Gauge = RoundForm['observations'][number]
type Field = Gauge['fields'][number]

/** The wheel that a field of a gauge with several wheels belongs to. */
const wheelOf = ({ path }: Field) => /^(?:wheels|hubs)\.((?:front|rear) (?:left|right))/.exec(path)?.[1] ?? ''

/** One gauge to read again: what it shows, wheel by wheel; how it was set up stays folded, as it was. */
export function RoundGauge({
  gauge,
  words,
  hand,
}: {
  gauge: Gauge
  words: (field: Field) => string
  hand: JobHand
}) {
  const read = gauge.fields.filter(({ kept }) => !kept)
  const kept = gauge.fields.filter((field) => field.kept)
  const wheels = [...new Set(read.map(wheelOf))]
  const isFirst = read.some(({ like }) => like !== undefined)
  const field = (one: Field) => (
    <ReadingField
      key={one.path}
      input={{ ...one, label: words(one) }}
      hand={hand}
      before={one.before}
      like={one.like}
    />
  )
  return (
    <fieldset className={`round-gauge${gauge.fields.length === 1 ? ' round-gauge-short' : ''}`}>
      <legend>
        {gauge.title}
        {gauge.complete && <span className="round-complete"> · complete</span>}
      </legend>
      {wheels.map((wheel) => (
        <div key={wheel} className="round-wheel">
          {wheel !== '' && <h3>{wheel}</h3>}
          <div className="reading-fields">{read.filter((one) => wheelOf(one) === wheel).map(field)}</div>
        </div>
      ))}
      {kept.length > 0 && (
        <details className="round-kept">
          <summary>
            {isFirst ? 'Set up so' : 'Set up as before'}:{' '}
            {[...new Set(kept.map(({ text }) => text))].join(', ')}
          </summary>
          <div className="reading-fields">{kept.map(field)}</div>
        </details>
      )}
    </fieldset>
  )
}
