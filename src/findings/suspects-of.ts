import { familiesOf } from './families-of.ts'
import type { FindingsProblem } from './findings-problem.ts'
import { knobsOf } from './knobs.ts'
import type { Suspect } from './suspect.ts'

/** Healthy, or only its adjusters are elsewhere. @source definition */
export const outOfAdjustment: Suspect = { kind: 'out of adjustment', axle: null, side: null, at: null }

/**
 * All that may be wrong with this vehicle or with the way it was read, by its layouts and corner models. "Out of
 * adjustment" is first and means that no part is at fault.
 *
 * @throws {Refusal} `setting-out-of-range`; `no-such-point`
 * @source own derivation: docs/methods/findings.md
 */
export const suspectsOf = (problem: FindingsProblem): readonly Suspect[] => [
  outOfAdjustment,
  ...familiesOf(problem, problem.axles.flatMap(knobsOf)).map(({ suspect }) => suspect),
]
