import type { Addition } from './addition.ts'
import { additionIds } from './addition-ids.ts'
import type { Assembly } from './assembly.ts'
import type { Choice } from './choice.ts'
import { choiceSignature } from './choice-signature.ts'
import { choiceWith } from './choice-with.ts'
import { needsOf } from './next-need.ts'
import { regionOf } from './region-of.ts'
import type { WholeGoal } from './whole-goal.ts'

/** What is searched, and how far. @source definition */
export interface ChoiceSearch {
  readonly assembly: Assembly
  readonly goal: WholeGoal
  readonly priced: (choice: Choice) => number
  /** Told of each partial choice; it may throw to end the search. */
  readonly look: () => void
}

/**
 * Every choice that grows out of one by what its corners need, where what the vehicle has once stays as it is: the
 * first thing lacking is supplied in each way, cheapest first. What lacks in other corners, or in several of which not
 * all are among these, is left out.
 *
 * @param corners in which things are added
 * @param on isCut: no choice that has this one in it is wanted. found: nothing lacks in these corners. wanted: what else
 * must be undone of what the vehicle has once before this can go on
 * @source Land and Doig 1960 for the cut; own derivation: docs/methods/plan.md
 */
export function choicesWithin(
  { assembly, goal, priced, look }: ChoiceSearch,
  context: Choice,
  corners: readonly string[],
  on: {
    readonly isCut: (choice: Choice) => boolean
    readonly found: (choice: Choice) => void
    readonly wanted?: (context: Choice) => void
  },
): void {
  const seen = new Set<string>()
  const regions = (addition: Addition) => additionIds(addition).map((id) => regionOf(assembly, id))

  function descend(choice: Choice): void {
    const signature = choiceSignature(choice)
    if (seen.has(signature)) return
    seen.add(signature)
    look()
    if (on.isCut(choice)) return
    const need = ownNeed(choice)
    if (!need) {
      on.found(choice)
      return
    }
    const grown: { readonly one: Choice; readonly cost: number }[] = []
    for (const addition of need) {
      const once = onceOf(assembly, addition)
      if (isIn(context, once)) {
        const one = choiceWith(choice, addition)
        grown.push({ one, cost: priced(one) })
      } else on.wanted?.(choiceWith(context, once))
    }
    grown.sort((a, b) => a.cost - b.cost)
    for (const { one } of grown) descend(one)
  }

  /** The first need that these corners can supply, or only what the vehicle has once; an empty one ends it. */
  function ownNeed(choice: Choice): readonly Addition[] | null {
    for (const need of needsOf(assembly, goal, choice))
      if (need.every((one) => regions(one).every((where) => where === null || corners.includes(where))))
        return need
    return null
  }
  descend(context)
}

/** What an alternative adds of what the vehicle has once. */
function onceOf(assembly: Assembly, { why, ...addition }: Addition): Addition {
  const isOnce = (id: string) => regionOf(assembly, id) === null
  const { open = [], bench = [], off = [], standIn, letDown } = addition
  return {
    open: open.filter(isOnce),
    bench: bench.filter(isOnce),
    off: off.filter(isOnce),
    ...(standIn && isOnce(standIn[0]) ? { standIn } : {}),
    ...(letDown && isOnce(letDown) ? { letDown } : {}),
    why,
  }
}

const isIn = (choice: Choice, { open = [], bench = [], off = [], standIn, letDown }: Addition): boolean =>
  open.every((id) => choice.open.has(id)) &&
  bench.every((id) => choice.bench.has(id) || choice.open.has(id)) &&
  off.every((id) => choice.off.has(id)) &&
  (!standIn || choice.standIns[standIn[0]] === standIn[1]) &&
  (!letDown || choice.letDown.has(letDown))
