import type { Addition } from './addition.ts'
import { additionIds } from './addition-ids.ts'
import { askedOnce } from './asked-once.ts'
import type { Choice } from './choice.ts'
import { choiceSignature } from './choice-signature.ts'
import { choiceWith } from './choice-with.ts'
import { choicesUnited } from './choices-united.ts'
import { type ChoiceSearch, choicesWithin } from './choices-within.ts'
import { cornerChoices } from './corner-choices.ts'
import { needsOf, nextNeed } from './next-need.ts'
import { regionOf } from './region-of.ts'

/** A complete choice and what it costs: minutes. @source definition */
export interface PricedChoice {
  readonly choice: Choice
  readonly minutes: number
}

/** Contexts that wait for their turn, and what nothing that grows out of one costs less than. */
interface Waiting {
  readonly context: Choice
  readonly least: number
  /** The corners did not fit together: all of them at once, none of them for less than this alone. */
  readonly floors: ReadonlyMap<string, number> | null
}

const tiny = 1e-9

/**
 * The cheapest complete choice: for each set of what is undone of what the vehicle has once, the cheapest of each
 * corner by itself. Corners meet only there and in what is asked for once an axle, so the sum of the cheapest is the
 * cheapest. Where put together something is lacking all the same, the corners are searched at once.
 *
 * @param from what every choice has in it
 * @param only of those that cost less than `below` the cheapest that is accepted
 * @returns null when there is none
 * @source own derivation: docs/methods/plan.md
 */
export function cheapestChoice(
  search: ChoiceSearch,
  from: Choice,
  only?: {
    readonly below: number
    readonly accepts: (choice: Choice) => boolean
  },
): PricedChoice | null {
  const { assembly, goal, priced } = search
  const corners = [...new Set(Object.keys(assembly.parts).flatMap((id) => regionOf(assembly, id) ?? []))]
  let best: PricedChoice | null = null
  const limit = () => (best?.minutes ?? only?.below ?? Number.POSITIVE_INFINITY) - tiny
  const offer = (choice: Choice) => {
    const minutes = priced(choice)
    if (minutes < limit() && (!only || only.accepts(choice))) best = { choice, minutes }
  }

  const waiting: Waiting[] = []
  const met = new Set<string>()
  const wanted = (context: Choice) => {
    const signature = choiceSignature(context)
    if (met.has(signature)) return
    met.add(signature)
    waiting.push({ context, least: priced(context), floors: null })
  }

  wanted(from)
  for (let next = soonest(); next && next.least < limit(); next = soonest()) {
    if (next.floors) together(next.context, next.floors)
    else apart(next.context)
  }
  return best

  function soonest(): Waiting | undefined {
    waiting.sort((a, b) => a.least - b.least)
    return waiting.shift()
  }

  /** Each corner by itself, and put together. */
  function apart(context: Choice): void {
    search.look()
    const own = ownNeed(context)
    if (own) {
      for (const addition of own) wanted(choiceWith(context, addition))
      return
    }
    let sums: readonly Choice[] = [context]
    const floors = new Map<string, number>()
    let spent = 0
    for (const corner of corners) {
      const kept = cornerChoices(search, context, corner, limit() - spent, wanted)
      if (kept.length === 0) return
      spent += Math.min(...kept.map(({ minutes }) => minutes)) - bare(context)
      floors.set(corner, Math.min(...kept.map(({ choice }) => bare(within(choice, corner)))))
      sums = sums.flatMap((sum) => kept.map(({ choice }) => choicesUnited(sum, choice)))
    }
    const ranked = sums.map((choice) => ({ choice, minutes: priced(choice) }))
    ranked.sort((a, b) => a.minutes - b.minutes)
    const [cheapest] = ranked
    const whole = ranked.find(({ choice }) => !nextNeed(assembly, goal, choice))
    if (whole) offer(whole.choice)
    if (whole && only && !only.accepts(whole.choice))
      for (const corner of corners) anotherOf(whole.choice, context, corner)
    if (whole !== cheapest) waiting.push({ context, least: cheapest!.minutes, floors })
  }

  /** All corners at once: none of them costs less than it does alone. */
  function together(context: Choice, floors: ReadonlyMap<string, number>): void {
    const stillDue = (choice: Choice) =>
      corners.reduce(
        (sum, corner) => sum + Math.max(0, floors.get(corner)! - bare(within(choice, corner))),
        0,
      )
    choicesWithin(search, context, corners, {
      isCut: (choice) => priced(choice) + stillDue(choice) >= limit(),
      found: (choice) => offer(choice),
      wanted,
    })
  }

  /** Another way at one corner, the rest as it was. */
  function anotherOf(known: Choice, context: Choice, corner: string): void {
    const rest = corners
      .filter((other) => other !== corner)
      .reduce((sum, other) => choicesUnited(sum, within(known, other)), context)
    choicesWithin(search, rest, [corner], {
      isCut: (choice) => priced(choice) >= limit(),
      found: (choice) => {
        if (!nextNeed(assembly, goal, choice)) offer(choice)
      },
    })
  }

  /** What is lacking and only what the vehicle has once can supply; an empty one ends it. */
  function ownNeed(context: Choice): readonly Addition[] | null {
    for (const need of needsOf(assembly, goal, context))
      if (need.every((addition) => additionIds(addition).every((id) => regionOf(assembly, id) === null)))
        return need
    return null
  }

  /** Minutes without what is asked for once an axle. */
  function bare(choice: Choice): number {
    const asked = [...askedOnce.by(assembly, choice.open)]
    return priced(choice) - asked.reduce((sum, one) => sum + askedOnce.minutes(one), 0)
  }

  /** What of a choice is at a corner. */
  function within(choice: Choice, corner: string): Choice {
    const kept = (ids: ReadonlySet<string>) =>
      new Set([...ids].filter((id) => regionOf(assembly, id) === corner))
    return {
      open: kept(choice.open),
      bench: kept(choice.bench),
      off: kept(choice.off),
      letDown: kept(choice.letDown),
      raised: kept(choice.raised),
      standIns: Object.fromEntries(
        Object.entries(choice.standIns).filter(([id]) => regionOf(assembly, id) === corner),
      ),
      why: choice.why,
    }
  }
}
