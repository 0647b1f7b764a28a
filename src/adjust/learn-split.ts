/** How the prior's variance is divided; the shares add to 1. @source definition */
export interface Split {
  /** What corners of one layout have in common. */
  readonly layout: number
  /** What vehicles of one drawing have in common beyond that. */
  readonly model: number
  /** What one vehicle keeps beyond that. */
  readonly vehicle: number
  /** What is new at each visit: height, load, tightened bushes. Never learned away. */
  readonly visit: number
}

/** A visit's own share: 14 % of the prior's standard deviation. @source own choice */
const visit = 0.02
/** Cells along one edge of the triangle of shares. @source own choice */
const cells = 7

/** Split that stands for all where one is wanted before anything was learned. @source own choice */
export const middleSplit: Split = {
  layout: (1 - visit) / 3,
  model: (1 - visit) / 3,
  vehicle: (1 - visit) / 3,
  visit,
}

/**
 * The splits between which the data decide, all equally likely before: the middles of the upright cells of a triangle
 * whose corners give everything to layout, model or vehicle.
 *
 * @source own choice: docs/methods/learned-response.md
 */
export const splits: readonly Split[] = Array.from({ length: cells }, (_, a) =>
  Array.from({ length: cells - a }, (__, b) => {
    const share = (k: number) => ((k + 1 / 3) / cells) * (1 - visit)
    return { layout: share(a), model: share(b), vehicle: share(cells - 1 - a - b), visit }
  }),
).flat()

/** Variances from the widest level to the narrowest. @source definition */
export const levelsOf = ({ layout, model, vehicle, visit: own }: Split): readonly number[] => [
  layout,
  model,
  vehicle,
  own,
]
