import type { RankedSuspect } from './findings.ts'
import { logOfChecks } from './log-of-checks.ts'
import { logOfRoad } from './log-of-road.ts'
import { outOfAdjustment } from './suspects-of.ts'
import type { Weighed } from './weighed.ts'

/** Evidence that weighs less than this is not told, in standard deviations. @source own choice */
const told = 0.3

/**
 * What speaks for a suspect and against it, held against "no part at fault": for each reading how much nearer (or
 * further) it stands to what all others say of it; for each thing that hands, eyes and the road found the same by the
 * chances, √(2·|log of their ratio|).
 *
 * @param i number of the suspect among those weighed
 * @source own derivation: docs/methods/findings.md
 */
export function speaking(all: Weighed, i: number): Pick<RankedSuspect, 'speaksFor' | 'speaksAgainst'> {
  const { best } = all.sound
  const mine = all.hypotheses[i - 1]!.best
  const [sound, own] = [best.history.standing(best.left), mine.history.standing(mine.left)]
  const { suspect } = all.hypotheses[i - 1]!.family
  const list = [
    ...all.rows.read.map(({ name }, k) => ({ reading: name, by: Math.abs(sound[k]!) - Math.abs(own[k]!) })),
    ...all.problem.checks.map((check) => ({
      reading: [check.check, check.wheel, check.joint ?? check.part].filter((x) => x !== null).join(', '),
      by: weight(logOfChecks([check], suspect) - logOfChecks([check], outOfAdjustment)),
    })),
    {
      reading: 'road test',
      by: weight(logOfRoad(all.problem, suspect) - logOfRoad(all.problem, outOfAdjustment)),
    },
  ].filter(({ by }) => Math.abs(by) >= told)
  return {
    speaksFor: list.filter(({ by }) => by > 0).sort((a, b) => b.by - a.by),
    speaksAgainst: list.filter(({ by }) => by < 0).sort((a, b) => a.by - b.by),
  }
}

const weight = (log: number): number => Math.sign(log) * Math.sqrt(2 * Math.abs(log))
