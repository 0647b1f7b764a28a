import type { RankedSuspect } from '../findings/index.ts'

type Suspect = RankedSuspect['suspect']

/** What explains this share of what the first explains would look nearly the same. @source own choice */
const nearly = 0.9
/** Less than this, in standard deviations, nobody would call explained. @source own choice */
const explains = 3

/** Whether two are one and the same. */
export const isSame = (a: Suspect, b: Suspect): boolean =>
  a.kind === b.kind && a.axle === b.axle && a.side === b.side && a.at === b.at

/**
 * Suspects at the wheel of a group that explain nearly as much as its first one, and stand outside it because they would
 * have to be larger, or are rarer: what is known of sizes is not good enough to leave them untold.
 *
 * @source own choice
 */
export function alikeTo(
  group: readonly RankedSuspect[],
  all: readonly RankedSuspect[],
): readonly RankedSuspect[] {
  const [first] = group
  if (!first || first.suspect.side === null) return []
  const told = first.speaksFor.reduce((sum, { by }) => sum + by, 0)
  if (told < explains) return []
  return all.filter(
    (one) =>
      one.suspect.axle === first.suspect.axle &&
      one.suspect.side === first.suspect.side &&
      one.posterior < first.posterior &&
      !group.some(({ suspect }) => isSame(suspect, one.suspect)) &&
      first.speaksFor.reduce((sum, { reading, by }) => sum + Math.min(by, speaking(one, reading)), 0) >=
        nearly * told,
  )
}

const speaking = ({ speaksFor }: RankedSuspect, reading: string): number =>
  speaksFor.find((one) => one.reading === reading)?.by ?? 0
