import { conditionedOn, together } from './learn-information.ts'
import { levelsOf, middleSplit } from './learn-split.ts'
import type { Subject } from './learn-subjects.ts'
import { beliefAt, treeOf } from './learn-tree.ts'

/** One job in fifty was noted so that it teaches nothing: another wheel, another way round, a slipped washer. @source own choice */
const gross = 0.02
/** How far such a job's response may seem off, in standard deviations of the prior. @source own choice */
const far = 5

/**
 * How far each job can be trusted: 1 less the probability that it was noted wrongly, by how well all other jobs foresaw it,
 * over all its angles. The most doubtful is judged first and the others then without it, so one that was noted wrongly
 * does not cast doubt on those it contradicts. The order of jobs does not matter.
 *
 * @returns by job
 * @source own derivation: docs/methods/learned-response.md
 */
export function trustOf(subjects: readonly Subject[]): ReadonlyMap<string, number> {
  const jobs = [...new Set(subjects.flatMap(({ leaves }) => leaves.map(jobOf)))].sort()
  const settled = new Map<string, number>()
  for (;;) {
    // as odds: of two that are nearly sure the probabilities are the same number
    const odds = logOddsOf(subjects, settled)
    const trust = (job: string) => 1 / (1 + Math.exp(odds.get(job)!))
    const open = jobs.filter((job) => !settled.has(job))
    const worst = open.reduce<string | null>(
      (most, job) => (most === null || odds.get(job)! > odds.get(most)! ? job : most),
      null,
    )
    if (worst === null || odds.get(worst)! < 0)
      return new Map(jobs.map((job) => [job, settled.get(job) ?? trust(job)]))
    settled.set(worst, trust(worst))
  }
}

/** Logarithm of the odds of each job to be noted wrongly, others taken as far as they are trusted. */
function logOddsOf(
  subjects: readonly Subject[],
  trust: ReadonlyMap<string, number>,
): ReadonlyMap<string, number> {
  const odds = new Map<string, number>()
  for (const subject of subjects) {
    const n = subject.roles.length
    const tree = treeOf(n, levelsOf(middleSplit), trusted(subject, trust))
    for (const leaf of subject.leaves) {
      const sound = beliefAt(tree, leaf.path)
      const wrong = {
        mean: sound.mean,
        covariance: sound.covariance.map((row, i) => row.map((value, j) => value + (i === j ? far ** 2 : 0))),
      }
      const { information } = leaf
      const gain = conditionedOn(wrong, information).evidence - conditionedOn(sound, information).evidence
      odds.set(jobOf(leaf), (odds.get(jobOf(leaf)) ?? Math.log(gross / (1 - gross))) + gain)
    }
  }
  return odds
}

/** Leaves with the weight that their job deserves. @source definition */
export const trusted = ({ roles, leaves }: Subject, trust: ReadonlyMap<string, number>): Subject['leaves'] =>
  leaves.map((leaf) => ({
    path: leaf.path,
    information: together(roles.length, [leaf.information], [trust.get(jobOf(leaf)) ?? 1]),
  }))

const jobOf = ({ path }: { readonly path: readonly string[] }): string => path.at(-1)!
