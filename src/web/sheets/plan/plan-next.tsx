import type { PlanSheet } from '../../../sheet/index.ts'
import { glued } from '../../drawing/glued.ts'
import '../../shell/next-strip.css'
import { addressOf } from '../../state/use-address.ts'
import type { OpenPlan } from '../../state/use-plan.ts'
import { goTo } from './plan-bands.tsx'

/** What comes next: mend what breaks a rule, or begin. */
export function PlanNext({
  plan,
  sheet,
  id,
  onOpen,
}: {
  plan: OpenPlan
  sheet: PlanSheet
  id: string
  onOpen: (line: string) => void
}) {
  const first = sheet.bands[0]?.lines[0]?.words ?? ''
  const broken = sheet.bands.flatMap(({ lines }) => lines).find((line) => line.broken.length > 0)
  if (sheet.bands.length === 0)
    return (
      <section className="next" aria-label="What comes next">
        <p>Choose what is to be replaced; the plan follows from that and from how the corner is built.</p>
      </section>
    )
  return (
    <section className="next" aria-label="What comes next">
      {broken ? (
        <>
          <p>
            {glued(
              `This order cannot be worked: ${sheet.brokenLines === 1 ? 'one line breaks' : `${sheet.brokenLines} lines break`} a rule.`,
            )}
          </p>
          <button
            type="button"
            onClick={() => {
              onOpen(broken.id)
              goTo(broken.id)
            }}
          >
            To the first one
          </button>
        </>
      ) : (
        <>
          <p>
            {plan.working
              ? 'Working it out …'
              : glued(`Lay ready what is listed, then begin: ${lowered(first)}.`)}
          </p>
          <a className="next-button" href={addressOf(id, 'strip')}>
            To the joints, to begin
          </a>
        </>
      )}
    </section>
  )
}

const lowered = (words: string) => `${words.slice(0, 1).toLowerCase()}${words.slice(1)}`
