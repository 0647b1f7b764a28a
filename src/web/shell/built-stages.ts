import type { Stage } from '../../sheet/index.ts'

/** Stages that this version has a sheet for, with their place in the address. */
export const built: Partial<Record<Stage, string>> = {
  Arrival: 'arrival',
  Findings: 'findings',
  Plan: 'plan',
  Strip: 'strip',
  Refit: 'refit',
  Angles: 'angles',
}
