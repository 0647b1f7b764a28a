import type { Family } from './family.ts'
import type { SuspectKind } from './suspect-kind.ts'
import { soundShare, suspectPriors } from './suspect-priors.ts'

/** Frequencies of a workshop's own record. @source definition */
export interface OwnFrequencies {
  /** Share of vehicles without a part at fault. */
  readonly sound?: number
  /** Weight of a kind among faults. */
  readonly kinds?: Readonly<Partial<Record<SuspectKind, number>>>
}

/**
 * Share of belief of each family before anything is read: weights of the kinds that this vehicle can have, each shared
 * out among its suspects.
 *
 * @source own derivation: docs/methods/findings.md
 */
export function priorOfSuspects(families: readonly Family[], own: OwnFrequencies = {}): readonly number[] {
  const shares = new Map<SuspectKind, number>()
  for (const { suspect, share } of families) shares.set(suspect.kind, (shares.get(suspect.kind) ?? 0) + share)
  const weightOf = (kind: SuspectKind): number => own.kinds?.[kind] ?? suspectPriors[kind].weight
  const all = [...shares.keys()].reduce((sum, kind) => sum + weightOf(kind), 0)
  const faulty = 1 - (own.sound ?? soundShare.healthy + soundShare.misadjusted)
  return families.map(
    ({ suspect: { kind }, share }) => (faulty * weightOf(kind) * share) / shares.get(kind)! / all,
  )
}
