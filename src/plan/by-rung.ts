import type { Action, Need } from './action.ts'
import type { JointNode } from './assembly.ts'
import type { Branch } from './failure-branch.ts'
import { failureRungs, rungOrder } from './failure-rungs.ts'
import { keys } from './keys.ts'
import { springsBeside } from './springs-beside.ts'
import type { Work } from './work.ts'

/**
 * An action that undoes a joint, done the way that a failure asks for: its tool, its time, the risk that it does not do
 * and what comes next, its cautions at this step. Without a failure there, the action as it is.
 *
 * @source common practice, no source
 */
export function byRung(work: Work, joint: JointNode, action: Action): Action {
  const branch = roughest(work, joint, action)
  if (!branch?.rung) return action
  const { rung, next, failure } = branch
  const facts = failureRungs[rung]
  const after = next
    ? `next: ${failureRungs[next].called}`
    : 'nothing rougher is left here: stop and make it safe'
  const spare = retained(branch, action)
  return {
    ...action,
    words: `${facts.does(joint.called)}${spare.words}`,
    how: { ...action.how, aid: rung, ...spare.how },
    tool: facts.tool ?? action.tool,
    minutes: facts.minutes,
    risk: next
      ? { what: `it does not do; ${after}`, chance: facts.fails, minutes: failureRungs[next].minutes }
      : null,
    needs: [...action.needs, ...(rung === 'cut' ? slackSprings(work, joint) : [])],
    effects: {
      ...action.effects,
      ...(branch.mended && action.verb === 'open' ? { [keys.mending(joint.id)]: 'due' } : {}),
    },
    cautions: [...new Set([...facts.cautions, ...spare.cautions, ...action.cautions])],
    records: [
      ...new Set([...action.records, `${failure.what}: what was done, what it cost`, ...facts.records]),
    ],
    why: `${failure.what}: ${facts.called} is the gentlest way that is left; ${after}`,
  }
}

/** Two failures at one joint: the rougher way serves both. */
const roughest = (work: Work, joint: JointNode, { verb }: Action): Branch | undefined =>
  work.branches
    .filter((one) => one.joint?.id === joint.id && one.at === verb && one.rung !== null)
    .sort((a, b) => rungOrder.indexOf(b.rung!) - rungOrder.indexOf(a.rung!))[0]

/** I5: whatever becomes of the nut, something catches the taper when it lets go. */
function retained(
  { rung, at, failure }: Branch,
  { verb }: Action,
): {
  readonly words: string
  readonly how: Readonly<Record<string, string>>
  readonly cautions: readonly string[]
} {
  const isTaper = at === 'free' || at === 'crack'
  const strapped = {
    words: ', a strap round both its parts',
    how: { caught: 'strap' },
    cautions: ['No nut catches it any more: the strap does. Nobody in line.'],
  }
  if (at === 'free' && rung === 'cut') return strapped
  if (at !== 'crack' || verb !== 'crack' || rung === 'strap' || !isTaper)
    return { words: '', how: {}, cautions: [] }
  if (rung === 'split' || rung === 'cut' || rung === 'lever')
    return failure.what === 'stripped thread' || rung === 'cut'
      ? strapped
      : { words: ', then a spare nut on a few threads', how: { caught: 'spare nut' }, cautions: [] }
  return { words: ', back to a few threads', how: {}, cautions: [] }
}

const slackSprings = (work: Work, joint: JointNode): readonly Need[] =>
  work.bench.has(joint.id)
    ? []
    : springsBeside(work.assembly, joint).map(({ hold }) => ({
        key: keys.energy(hold.id),
        is: ['let down', 'in the compressor'],
        why: `no saw near the ${hold.called} while it is loaded`,
        rule: 'I3',
      }))
