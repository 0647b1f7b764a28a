import { Refusal } from '../quantity/index.ts'
import type { Assembly } from './assembly.ts'
import { factOf } from './fact-of.ts'
import { jointStageOf } from './joint-stage-of.ts'
import { jointsOf } from './joints-of.ts'
import { keys } from './keys.ts'
import type { PlanRefusal } from './plan-refusal.ts'
import type { State } from './state.ts'

/**
 * Refuses a state that cannot be: a part that is off while a joint of it to what is fitted is done up.
 *
 * @throws {Refusal} `contradiction`
 * @source definition
 */
export function checkState(assembly: Assembly, state: State): void {
  for (const part of Object.values(assembly.parts)) {
    const is = factOf(state, keys.part(part.id))
    if (is !== 'off' && is !== 'broken') continue
    const held = jointsOf(assembly, part.id).find(
      ({ id, joins }) =>
        jointStageOf(factOf(state, keys.joint(id))) > 3 &&
        joins.some((one) => one !== part.id && ['fitted', 'new'].includes(factOf(state, keys.part(one)))),
    )
    if (held || part.kind === 'body')
      throw new Refusal<PlanRefusal>({
        code: 'contradiction',
        at: 'from',
        given: part.id,
        sentence: held
          ? `The ${part.called} is told to be off, and its ${held.called} to be ${factOf(state, keys.joint(held.id))}: both cannot be.`
          : 'The body is told to be off: everything else is joined to it.',
        remedy: 'Look which is so, and correct what was recorded.',
      })
  }
}
