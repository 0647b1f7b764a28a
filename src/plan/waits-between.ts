import { Refusal } from '../quantity/index.ts'
import type { Action, Need } from './action.ts'
import { factOf } from './fact-of.ts'
import type { PlanRefusal } from './plan-refusal.ts'
import type { State } from './state.ts'

/** One action that waits for another, and why. @source definition */
export interface Wait {
  /** Place of the earlier and of the later action in the list. */
  readonly first: number
  readonly next: number
  readonly why: string
  readonly rule: Need['rule'] | null
}

interface Setters {
  readonly value: string
  readonly at: number[]
}

/**
 * What waits for what, from an order that works: for each thing that the actions need to be so, the action that makes
 * it so comes before, and the action that ends it comes after. Every order that keeps these waits satisfies every
 * need that this order satisfies.
 *
 * @param actions an order that works
 * @param from the state before it
 * @throws {Refusal} `contradiction` when an action needs what the actions before it do not leave so
 * @source own derivation: docs/methods/plan.md
 */
export function waitsBetween(actions: readonly Action[], from: State = {}): readonly Wait[] {
  const setters = settersOf(actions)
  const found = new Map<string, Wait>()
  const wait = (first: number, next: number, why: string, rule: Need['rule'] | null) => {
    const key = `${first}>${next}`
    const known = found.get(key)
    if (!known || (known.rule === null && rule)) found.set(key, { first, next, why, rule })
  }
  for (const groups of setters.values())
    for (let g = 1; g < groups.length; g++)
      for (const first of groups[g - 1]!.at)
        for (const next of groups[g]!.at) wait(first, next, actions[first]!.words, null)

  actions.forEach((action, here) => {
    for (const need of action.needs) {
      const groups = setters.get(need.key) ?? []
      const sets = action.effects[need.key] !== undefined
      let at = groups.findLastIndex((group) => group.at[0]! < here)
      if (sets && at >= 0 && groups[at]!.at.includes(here) && groups[at]!.at[0] === here) at--
      const holds = (g: number) => need.is.includes(g < 0 ? factOf(from, need.key) : groups[g]!.value)
      if (!holds(at)) throw contradiction(action, need, at < 0 ? factOf(from, need.key) : groups[at]!.value)
      let low = at
      while (low >= 0 && holds(low - 1)) low--
      let high = at
      while (high + 1 < groups.length && holds(high + 1)) high++
      const rule = need.custom ? null : (need.rule ?? null)
      // One of several that make it so would do for the need; that all come first is only for safety.
      if (low >= 0)
        groups[low]!.at.forEach((first, i, all) => {
          if (first < here) wait(first, here, need.why, all.length === 1 || i === 0 ? rule : null)
        })
      if (high + 1 < groups.length)
        for (const next of groups[high + 1]!.at) if (next !== here) wait(here, next, need.why, rule)
    }
  })
  return [...found.values()]
}

const contradiction = (action: Action, need: Need, is: string) =>
  new Refusal<PlanRefusal>({
    code: 'contradiction',
    at: action.id,
    given: is,
    sentence: `No order was found for “${action.words}”: it needs ${need.key} to be ${need.is.join(' or ')} (${need.why}), and it is ${is}.`,
    remedy:
      'Look whether the corner model asks for two things that exclude each other, such as wheels straight and a lock.',
  })

/** For each key, the actions that set it, those that follow each other with the same value together. */
function settersOf(actions: readonly Action[]): Map<string, Setters[]> {
  const setters = new Map<string, Setters[]>()
  actions.forEach((action, here) => {
    for (const [key, value] of Object.entries(action.effects)) {
      const groups = setters.get(key) ?? []
      const last = groups.at(-1)
      if (last?.value === value) last.at.push(here)
      else groups.push({ value, at: [here] })
      setters.set(key, groups)
    }
  })
  return setters
}
