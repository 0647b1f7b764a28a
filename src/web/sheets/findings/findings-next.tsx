import type { FindingsSheet } from '../../../sheet/index.ts'
import { glued } from '../../drawing/glued.ts'
import '../../shell/next-strip.css'
import { addressOf } from '../../state/use-address.ts'

/** What comes next: the check that tells most; then the plan. */
export function FindingsNext({ sheet, working, id }: { sheet: FindingsSheet; working: boolean; id: string }) {
  const [first] = sheet.checks
  const words = first
    ? `Next: ${lowered(first.what)}, ${first.where} (${first.minutes} min).${sheet.cannotTell ? ' Until then nothing is ordered or turned.' : ''}`
    : 'No further check would tell much. What is to be done is planned next.'
  return (
    <section className="next" aria-label="What comes next">
      <p>{working ? 'Weighing …' : glued(words)}</p>
      <a className="next-button" href={addressOf(id, 'plan')}>
        To the plan
      </a>
    </section>
  )
}

const lowered = (words: string) => `${words.charAt(0).toLowerCase()}${words.slice(1)}`
