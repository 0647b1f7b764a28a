import type { Stage } from '../../sheet/index.ts'

/** The stages of a job, each with its place in the address. */
export const built: Readonly<Record<Stage, string>> = {
  Arrival: 'arrival',
  Findings: 'findings',
  Plan: 'plan',
  Strip: 'strip',
  Refit: 'refit',
  Angles: 'angles',
  Handover: 'handover',
}
