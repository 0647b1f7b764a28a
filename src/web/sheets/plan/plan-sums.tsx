import type { PlanSheet } from '../../../sheet/index.ts'
import { glued } from '../../drawing/glued.ts'
import type { OpenPlan } from '../../state/use-plan.ts'
import { upper } from '../bolts/upper.ts'

/** How long, how many, how sure that nothing shorter exists; and what one's own order costs. */
export function PlanSums({ plan, sheet }: { plan: OpenPlan; sheet: PlanSheet }) {
  const { choice, moves } = plan
  return (
    <section className="plan-sums" aria-label="Time">
      <p>
        <strong>{upper(sheet.size)}</strong>: {glued(sheet.time)}.
      </p>
      {choice.order ? (
        <div className="plan-own" role="status">
          <p>
            <strong>Your own order.</strong>{' '}
            {sheet.brokenLines > 0
              ? `${sheet.brokenLines === 1 ? 'One line breaks' : `${sheet.brokenLines} lines break`} a rule. `
              : 'It breaks no rule. '}
            {sheet.against && `${glued(sheet.against)}.`}
          </p>
          <div className="plan-own-buttons screen-only">
            {moves > 0 && (
              <button type="button" onClick={plan.takeBack}>
                Take the last move back
              </button>
            )}
            <button type="button" onClick={() => plan.choose({})}>
              The plan’s own order
            </button>
          </div>
        </div>
      ) : (
        <div className="plan-own">
          <p>{glued(sheet.proof)}</p>
          {sheet.proof.startsWith('Not') && !choice.longer && (
            <div className="plan-own-buttons screen-only">
              <button type="button" onClick={() => plan.choose({ longer: true })}>
                Look longer
              </button>
            </div>
          )}
        </div>
      )}
      {plan.working && <p className="plan-working">working it out …</p>}
      {!plan.kept && <p>Not kept: this browser refuses to store anything.</p>}
    </section>
  )
}
