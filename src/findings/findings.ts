import type { Displacement, ReadingName } from '../linkage/index.ts'
import type { Suspect } from './suspect.ts'

/** How one suspect explains what was found. @source definition */
export interface RankedSuspect {
  readonly suspect: Suspect
  /** Share of belief, 0 … 1; of all suspects together 1. */
  readonly posterior: number
  /** Its size as the readings have it, SI (m or rad), with its standard uncertainty. */
  readonly size: { readonly value: number; readonly spread: number; readonly unit: 'm' | 'rad' }
  /** Evidence that speaks for it and against it, strongest first, in standard deviations. */
  readonly speaksFor: readonly { readonly reading: string; readonly by: number }[]
  readonly speaksAgainst: readonly { readonly reading: string; readonly by: number }[]
  /** What it does to the points of the corner it is at, at its best size: the ghost on the drawing. */
  readonly ghost: { readonly left: Displacement | null; readonly right: Displacement | null }
}

/** Suspects that these readings cannot tell apart. @source definition */
export interface SuspectGroup {
  readonly suspects: readonly RankedSuspect[]
  readonly posterior: number
}

/** A further reading or check, and what it would be worth. @source definition */
export interface NextCheck {
  readonly check: string
  readonly at: string
  /** Expected drop of entropy over the suspects, nat. */
  readonly gain: number
  readonly minutes: number
  /** Suspects that it would part. */
  readonly parts: readonly Suspect[]
}

/** The answer: which part explains it, and how sure that is. @source own derivation: docs/methods/findings.md */
export interface Findings {
  /** Most likely first; every suspect of the vehicle is in one of them. */
  readonly groups: readonly SuspectGroup[]
  /** Two at once, likeliest first, where no single one explains it; each has half of the belief in the groups. */
  readonly pairs: readonly { readonly suspects: readonly [Suspect, Suspect]; readonly posterior: number }[]
  /** Suspects that these readings could show at all, were they there with twice the reading's spread. */
  readonly visible: readonly Suspect[]
  /** Readings that no suspect explains together. */
  readonly unexplained: readonly ReadingName[]
  readonly nextChecks: readonly NextCheck[]
  /** True when no group stands out: the answer is "I cannot tell". */
  readonly cannotTell: boolean
}
