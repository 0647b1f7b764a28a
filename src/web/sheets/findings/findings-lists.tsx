import type { FindingsSheet } from '../../../sheet/index.ts'
import { glued } from '../../drawing/glued.ts'
import { upper } from '../bolts/upper.ts'

/** Two at once, what to order, the two answers of wear, and what was not read. */
export function FindingsLists({ sheet }: { sheet: FindingsSheet }) {
  const { pairs, orders, wear, unexplained, unread } = sheet
  return (
    <>
      {pairs.length > 0 && (
        <Said title="Two at once">
          {pairs.map((one) => (
            <li key={one}>{glued(one)}</li>
          ))}
        </Said>
      )}
      {orders.length > 0 && (
        <Said title="Before ordering">
          {orders.map(({ part, advice, sentence }) => (
            <li key={part}>
              <strong>
                {upper(part)}: {advice}
              </strong>
              <span>{glued(sentence)}</span>
            </li>
          ))}
        </Said>
      )}
      {wear.length > 0 && (
        <Said title="Wear: two answers">
          {wear.map(({ joint, play, passes, holds }) => (
            <li key={joint + play}>
              <strong>
                {upper(joint)}: <span className="figure-number">{play}</span>
              </strong>
              <span>{glued(passes)}</span>
              <span>{glued(holds)}</span>
            </li>
          ))}
        </Said>
      )}
      {unexplained.length > 0 && (
        <Said title="Explained by nothing">
          {unexplained.map((one) => (
            <li key={one}>{glued(one)}</li>
          ))}
        </Said>
      )}
      {unread.length > 0 && (
        <Said title="Not read, and would tell more">
          {unread.map((one) => (
            <li key={one}>{upper(one)}</li>
          ))}
        </Said>
      )}
    </>
  )
}

const Said = ({ title, children }: { title: string; children: React.ReactNode }) => (
  <section className="findings-list" aria-label={title}>
    <h2>{title}</h2>
    <ul>{children}</ul>
  </section>
)
