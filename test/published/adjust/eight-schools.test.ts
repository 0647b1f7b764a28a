import { conditionedOn, informationIn } from '../../../src/adjust/learn-information.ts'
import { beliefAt, type Leaf, treeOf } from '../../../src/adjust/learn-tree.ts'
import { published } from '../../support/published.ts'

// Coaching in eight schools: estimated effect and its standard error (Gelman et al., Bayesian Data Analysis, 3rd ed., table 5.2)
const schools = [
  [28, 15],
  [8, 10],
  [-3, 16],
  [7, 11],
  [-1, 9],
  [1, 11],
  [18, 10],
  [12, 18],
] as const
const leaves: readonly Leaf[] = schools.map(([effect, error], j) => ({
  path: ['all', `school ${j}`],
  information: informationIn([[1]], [effect], [[error ** 2]]),
}))
/** The mean of all schools is left free, as there. */
const free = 1e9

/** Everything at one spread among schools. */
function at(spread: number) {
  const tree = treeOf(1, [free, spread ** 2], leaves)
  return {
    evidence: tree.evidence,
    all: beliefAt(tree, ['all', 'a ninth']),
    each: leaves.map(({ path, information }) => conditionedOn(beliefAt(tree, path), information)),
  }
}

// flat in the spread, as there; middles of cells, up to where nothing is left
const grid = Array.from({ length: 800 }, (_, k) => at(0.05 + k / 10))
const best = Math.max(...grid.map(({ evidence }) => evidence))
const weights = grid.map(({ evidence }) => Math.exp(evidence - best))
const total = weights.reduce((sum, w) => sum + w, 0)
const over = (of: (one: ReturnType<typeof at>, k: number) => number) =>
  grid.reduce((sum, one, k) => sum + (weights[k]! * of(one, k)) / total, 0)

const pooled = at(0)
const book = 'Rubin 1981; Gelman et al., Bayesian Data Analysis, 3rd ed.'
const stan = 'the same data and flat priors, sampled: widely printed summaries'

published('AD30 eight schools, levels exactly', [
  {
    id: 'schools.pooled.mean',
    got: pooled.all.mean[0]!,
    want: 7.7,
    within: 0.05,
    source: `${book}, 5.5, pooled estimate`,
    basis: 'from memory',
  },
  {
    id: 'schools.pooled.variance',
    got: pooled.all.covariance[0]![0]!,
    want: 16.6,
    within: 0.05,
    source: `${book}, 5.5, its variance`,
    basis: 'from memory',
  },
  // one level without spread is the inverse-variance mean: worked out here from that relation
  {
    id: 'schools.pooled.by-weights',
    got: pooled.each[0]!.mean[0]!,
    want:
      schools.reduce((sum, [y, s]) => sum + y / s ** 2, 0) /
      schools.reduce((sum, [, s]) => sum + 1 / s ** 2, 0),
    within: 1e-5,
    source: 'weighted mean, inverse variances',
    basis: 'derived',
  },
  // schools that have nothing in common keep what was seen
  {
    id: 'schools.apart',
    got: at(1e5).each[0]!.mean[0]!,
    want: 28,
    within: 0.01,
    source: `${book}, 5.5, separate estimates`,
    basis: 'derived',
  },
])

// medians of 200 draws: the middle of them is itself unsure by about 0.7, printed to 1
published('AD30 eight schools, averaged over the spread: table 5.3 medians', [
  ...[10, 8, 7, 8, 5, 6, 10, 8].map((want, j) => ({
    id: `schools.median.${'ABCDEFGH'[j]}`,
    got: over(({ each }) => each[j]!.mean[0]!),
    want,
    // half the last digit, the median's own error twice, and the mean's skew
    within: 2.5,
    source: `${book}, table 5.3`,
    basis: 'from memory' as const,
  })),
])

published('AD30 eight schools, averaged over the spread: means', [
  ...[11.4, 7.9, 6.1, 7.6, 5.1, 6.1, 10.7, 8.5].map((want, j) => ({
    id: `schools.mean.${'ABCDEFGH'[j]}`,
    got: over(({ each }) => each[j]!.mean[0]!),
    want,
    // sampled with a standard error near 0.1, printed to 0.1
    within: 0.3,
    source: stan,
    basis: 'from memory' as const,
  })),
  {
    id: 'schools.spread',
    got: over((_, k) => 0.05 + k / 10),
    want: 6.6,
    within: 0.3,
    source: stan,
    basis: 'from memory',
  },
])
