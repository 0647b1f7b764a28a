/** How the variance of what the points leave open is divided, and how large it is. @source definition */
export interface Split {
  /** What corners of one layout have in common, as a share of the prior's variance. */
  readonly layout: number
  /** What vehicles of one drawing have in common beyond that. */
  readonly model: number
  /** What one vehicle keeps beyond that. */
  readonly vehicle: number
  /** What is new at each visit: height, load, tightened bushes. Never learned away. */
  readonly visit: number
  /** How likely it is before any job. */
  readonly before: number
}

/** A visit's own share: 14 % of the standard deviation. @source own choice */
const visit = 0.02
/** Cells along one edge of the triangle of shares. @source own choice */
const cells = 6
/**
 * Variances as a whole against the prior's, each with how likely it is: points may be much worse than is claimed for them. None is
 * smaller, so that a few jobs that happen to agree do not make anybody too sure.
 *
 * @source own choice
 */
const scales = [
  [1, 0.978],
  [4, 0.02],
  [16, 0.002],
] as const

/** Split that stands for all where one is wanted before anything was learned. @source own choice */
export const middleSplit: Split = {
  layout: (1 - visit) / 3,
  model: (1 - visit) / 3,
  vehicle: (1 - visit) / 3,
  visit,
  before: 1,
}

/**
 * The splits between which the data decide: the middles of the upright cells of a triangle whose corners give everything to layout,
 * model or vehicle, all equally likely, each at every scale.
 *
 * @source own choice: docs/methods/learned-response.md
 */
export const splits: readonly Split[] = scales.flatMap(([scale, likely]) =>
  Array.from({ length: cells }, (_, a) =>
    Array.from({ length: cells - a }, (__, b) => {
      const share = (k: number) => scale * ((k + 1 / 3) / cells) * (1 - visit)
      return {
        layout: share(a),
        model: share(b),
        vehicle: share(cells - 1 - a - b),
        visit: scale * visit,
        before: likely / ((cells * (cells + 1)) / 2),
      }
    }),
  ).flat(),
)

/** Variances from the widest level to the narrowest. @source definition */
export const levelsOf = ({ layout, model, vehicle, visit: own }: Split): readonly number[] => [
  layout,
  model,
  vehicle,
  own,
]
