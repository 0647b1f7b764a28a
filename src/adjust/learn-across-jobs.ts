import type { PastResponse } from './learn-past.ts'
import { levelsOf, type Split, splits } from './learn-split.ts'
import { type Subject, subjectsOf } from './learn-subjects.ts'
import { type Tree, treeOf } from './learn-tree.ts'
import { trusted, trustOf } from './learn-trust.ts'

/** What past jobs have taught, ready to be asked about any vehicle. @source definition */
export interface TaughtByJobs {
  readonly past: readonly PastResponse[]
  readonly subjects: readonly Subject[]
  /** Probability that a job was noted rightly. */
  readonly trust: ReadonlyMap<string, number>
  /** How likely each split of the variance is by now, and the trees by subject. */
  readonly splits: readonly {
    readonly split: Split
    readonly weight: number
    readonly trees: readonly Tree[]
  }[]
}

/**
 * Takes past jobs in: all of them at once, in closed form; their order does not matter.
 *
 * @source own derivation: docs/methods/learned-response.md
 */
export function learnAcrossJobs(past: readonly PastResponse[]): TaughtByJobs {
  const subjects = subjectsOf(past)
  const trust = trustOf(subjects)
  const leaves = subjects.map((subject) => trusted(subject, trust))
  const made = splits.map((split) => {
    const trees = subjects.map(({ roles }, i) => treeOf(roles.length, levelsOf(split), leaves[i]!))
    return {
      split,
      trees,
      evidence: trees.reduce((sum, tree) => sum + tree.evidence, Math.log(split.before)),
    }
  })
  const best = Math.max(...made.map(({ evidence }) => evidence))
  const sum = made.reduce((all, { evidence }) => all + Math.exp(evidence - best), 0)
  return {
    past,
    subjects,
    trust,
    splits: made.map(({ split, trees, evidence }) => ({
      split,
      trees,
      weight: Math.exp(evidence - best) / sum,
    })),
  }
}
