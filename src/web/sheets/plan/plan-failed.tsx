import type { PlanSheet } from '../../../sheet/index.ts'
import { glued } from '../../drawing/glued.ts'
import { upper } from '../bolts/upper.ts'

/** What the log says has failed, and what this plan does about it. */
export function PlanFailed({ branches }: { branches: PlanSheet['branches'] }) {
  if (branches.length === 0) return null
  return (
    <section className="plan-list" aria-label="What failed">
      <h2>What failed, and what is done about it</h2>
      <ul className="plan-said">
        {branches.map(({ words, because }) => (
          <li key={because}>
            <strong>{upper(because)}.</strong> {glued(words)}
          </li>
        ))}
      </ul>
    </section>
  )
}
