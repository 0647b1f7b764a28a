import type { ExaminedAxle, ExaminedWheel, FindingsProblem } from './findings-problem.ts'
import type { Suspect } from './suspect.ts'
import { wantedPart } from './wanted-part.ts'

/** How often a new part is as bad as an old one, against that. @source from memory, common practice, no source */
const asBad = 0.05

const sides = ['left', 'right'] as const

/**
 * What is left of how often a suspect is the cause when its part was renewed before the readings: hardly anything of a
 * part bent or worn, all of it where the new part may be the wrong one.
 *
 * @returns 1 where nothing of it was renewed
 * @source own choice
 */
export function renewedShare({ renewed = [], axles }: FindingsProblem, suspect: Suspect): number {
  const { kind, axle: end, side } = suspect
  const axle = axles.find((one) => one.end === end)
  if (!axle || kind === 'wrong part') return 1
  const done = renewed.filter(({ wheels }) =>
    (side === null ? sides : [side]).some((on) => wheels.includes(`${axle.end} ${on}` as ExaminedWheel)),
  )
  const own = partsOf(suspect, axle)
  return done.some(({ part }) => own.includes(part)) ? asBad : 1
}

/** Parts that bring a sound one of what a suspect is about; a bush comes with the arm or rod that it sits in. */
function partsOf(suspect: Suspect, { corner }: ExaminedAxle): readonly string[] {
  const wanted = wantedPart(suspect, corner)?.part
  const own = wanted === undefined ? [] : [wanted]
  if (suspect.kind !== 'collapsed bush' || suspect.at === null) return own
  const joins = corner.joints[suspect.at]?.joins ?? []
  return [...own, ...joins.filter((id) => /^(arm|rod)$/.test(corner.parts[id]?.kind ?? ''))]
}
