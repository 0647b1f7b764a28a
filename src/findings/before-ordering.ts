import type { AxleEnd, Side } from '../linkage/index.ts'
import type { Findings, NextCheck } from './findings.ts'
import type { FindingsProblem } from './findings-problem.ts'
import type { Suspect } from './suspect.ts'
import { wantedPart } from './wanted-part.ts'

/** What ordering costs, all in one currency of the workshop's own. @source definition */
export interface OrderingCosts {
  /** What is lost when a part was ordered in vain: sending it back, or keeping it. */
  readonly wrongPart: number
  /** What is lost when the vehicle waits for a part that was not ordered today. */
  readonly waiting: number
}

/** One part, and whether to order it now. @source definition */
export interface PartAdvice {
  /** By its id in the corner model, or "bush of" and the joint. */
  readonly part: string
  readonly axle: AxleEnd
  /** Null for a part that both wheels share. */
  readonly side: Side | null
  readonly inPairs: boolean
  /** Belief that it is needed, 0 … 1. */
  readonly belief: number
  readonly suspects: readonly Suspect[]
  readonly advice: 'order now' | 'check first' | 'do not order'
  /** Expected loss, in the currency of the costs: of ordering it now, and of not ordering it now. */
  readonly lossIfOrdered: number
  readonly lossIfNot: number
  /** What would tell more, best first. */
  readonly checks: readonly NextCheck[]
}

/** A part in vain is as bad as three vehicles that wait: so it takes a belief of 0.75. @source own choice */
const usualCosts: OrderingCosts = { wrongPart: 3, waiting: 1 }
/** A part with less belief is not spoken of as needed. @source own choice */
const unlikely = 0.05

/**
 * Which parts to order now, which only after a check, and what it would cost to be wrong. A part is ordered when the
 * expected loss of ordering it in vain is below that of waiting for it: (1 − belief)·wrong part < belief·waiting.
 *
 * @param costs of this part and vehicle, by part; the usual costs stand in
 * @returns likeliest first; parts that are hardly needed last, as "do not order"
 * @source decision by expected loss: textbooks; own derivation: docs/methods/findings.md
 */
export function beforeOrdering(
  problem: FindingsProblem,
  { groups, nextChecks }: Findings,
  costs: Readonly<Record<string, OrderingCosts>> = {},
): readonly PartAdvice[] {
  const parts = new Map<string, Omit<PartAdvice, 'advice' | 'lossIfOrdered' | 'lossIfNot' | 'checks'>>()
  for (const { suspect, posterior } of groups.flatMap(({ suspects }) => suspects)) {
    const axle = problem.axles.find(({ end }) => end === suspect.axle)
    const wanted = axle && wantedPart(suspect, axle.corner)
    if (!axle || !wanted) continue
    const key = `${axle.end} ${suspect.side} ${wanted.part}`
    const known = parts.get(key)
    parts.set(key, {
      ...wanted,
      axle: axle.end,
      side: suspect.side,
      belief: (known?.belief ?? 0) + posterior,
      suspects: [...(known?.suspects ?? []), suspect],
    })
  }
  return [...parts.values()]
    .sort((a, b) => b.belief - a.belief)
    .map((one): PartAdvice => {
      const { wrongPart, waiting } = costs[one.part] ?? usualCosts
      const lossIfOrdered = (1 - one.belief) * wrongPart
      const lossIfNot = one.belief * waiting
      const checks = nextChecks.filter(({ parts: told }) =>
        told.some((a) => one.suspects.some((b) => isSame(a, b))),
      )
      const advice =
        lossIfOrdered < lossIfNot ? 'order now' : one.belief >= unlikely ? 'check first' : 'do not order'
      return { ...one, advice, lossIfOrdered, lossIfNot, checks }
    })
}

const isSame = (a: Suspect, b: Suspect): boolean =>
  a.kind === b.kind && a.axle === b.axle && a.side === b.side && a.at === b.at
