import { Refusal } from '../quantity/index.ts'
import type { Assembly, PartNode, StandIn } from './assembly.ts'
import { cheapestChoice } from './cheapest-choice.ts'
import type { Choice } from './choice.ts'
import { choiceMinutes } from './choice-minutes.ts'
import { choiceSignature } from './choice-signature.ts'
import type { Goal } from './goal.ts'
import type { PlanRefusal } from './plan-refusal.ts'
import { type WholeGoal, wholeGoal } from './whole-goal.ts'

/** The cheapest complete choice, and the one that nearly won. @source definition */
export interface NeededChoices {
  readonly best: Choice
  readonly minutes: number
  readonly second: { readonly choice: Choice; readonly minutes: number } | null
  /** How many partial choices were looked at. */
  readonly looked: number
}

/**
 * The cheapest complete set of joints to open and parts to take off for a goal, exactly; and the one that nearly won.
 * A second that only does more than the best, or frees the other end of the same hose or link, is none.
 *
 * @param lacks stand-ins whose tool the kit lacks: they cost the borrowing
 * @param undone what is undone already and stays in every choice
 * @param most so many partial choices are looked at; a search that is not through by then says so
 * @throws {Refusal} `no-way` when no complete choice exists; `too-many-ways`; `no-such-failure`, `no-way-left`
 * @source own derivation: docs/methods/plan.md
 */
export function neededChoices(
  assembly: Assembly,
  asked: Goal,
  lacks: readonly StandIn[] = [],
  undone: Choice = nothing,
  most = 600_000,
): NeededChoices {
  const goal = wholeGoal(assembly, asked)
  let looked = 0
  const priced = choiceMinutes(assembly, lacks)
  const search = (upTo: number) => ({
    assembly,
    goal,
    priced,
    look: () => {
      looked++
      if (looked > upTo) throw tooManyWays(goal, upTo)
    },
  })
  const best = cheapestChoice(search(most), undone)
  if (!best) throw noWay(goal)
  const second = () =>
    cheapestChoice(search(looked + many), undone, {
      below: best.minutes + nearly,
      accepts: (choice) =>
        !doesMore(choice, best.choice) && kindOf(assembly, choice) !== kindOf(assembly, best.choice),
    })
  return { best: best.choice, minutes: best.minutes, second: unlessTooMany(second), looked }
}

const nothing: Choice = {
  open: new Set(),
  bench: new Set(),
  off: new Set(),
  standIns: {},
  letDown: new Set(),
  raised: new Set(),
  why: {},
}

/** What is dearer than the best by more than this has not nearly won: minutes. */
const nearly = 30
/** After so many partial choices more, none is told to have nearly won. */
const many = 20_000

function unlessTooMany<T>(search: () => T): T | null {
  try {
    return search()
  } catch (error) {
    if (error instanceof Refusal && error.code === 'too-many-ways') return null
    throw error
  }
}

const noWay = (goal: WholeGoal) =>
  new Refusal<PlanRefusal>({
    code: 'no-way',
    at: 'goal',
    given: [...goal.replace, ...(goal.open ?? [])].join(', '),
    sentence:
      'No set of joints takes this apart: a joint of it is reached by no access that the corner model knows.',
    remedy: 'Look at the access conditions and holds of the corner model.',
  })

/** An answer that was not proven is not given as the cheapest. */
const tooManyWays = ({ replace, open = [] }: WholeGoal, most: number) =>
  new Refusal<PlanRefusal>({
    code: 'too-many-ways',
    at: 'goal',
    given: [...replace, ...open].join(', '),
    sentence: `There are more than ${most} ways to begin taking this apart, and the search for the cheapest was given up.`,
    remedy:
      'Plan in steps: first what hangs on it, one part at a time, then this from the state as recorded.',
  })

const ends: readonly PartNode['kind'][] = ['hose', 'lead', 'drop link', 'height-sensor rod']

/** A choice without what tells only at which end a hose, lead or link is freed. */
function kindOf({ joints, parts }: Assembly, choice: Choice): string {
  const kept = (ids: ReadonlySet<string>) =>
    new Set([...ids].filter((id) => !joints[id]!.joins.some((part) => ends.includes(parts[part]!.kind))))
  return choiceSignature({ ...choice, open: kept(choice.open), bench: kept(choice.bench) })
}

const doesMore = (more: Choice, less: Choice): boolean =>
  (['open', 'bench', 'off', 'letDown', 'raised'] as const).every((of) =>
    [...less[of]].every((id) => more[of].has(id)),
  ) && Object.entries(less.standIns).every(([hold, standIn]) => more.standIns[hold] === standIn)
