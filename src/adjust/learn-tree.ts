import {
  type Belief,
  conditionedOn,
  type Information,
  informationAbove,
  noInformation,
  together,
} from './learn-information.ts'

/** Data about one unknown at the bottom of a tree of levels: "strut", this model, this vehicle, this visit. @source definition */
export interface Leaf {
  /** One name a level, the widest first. */
  readonly path: readonly string[]
  readonly information: Information
}

/** What leaves under one name say of it, and of what stands above it. */
interface Node {
  readonly below: ReadonlyMap<string, Node>
  /** Of the level above, with this level's own variance taken out. */
  readonly above: Information
}

/** Leaves with their messages upward. @source definition */
export interface Tree {
  readonly unknowns: number
  readonly variances: readonly number[]
  readonly roots: ReadonlyMap<string, Node>
  /** Logarithm of the density of all data. */
  readonly evidence: number
}

/**
 * A normal tree: x at the top is normal about 0 with the first variance, each name below about the one above it with
 * its level's variance, in every direction alike; exactly, in closed form. The order of the leaves does not matter.
 *
 * @param unknowns how many numbers x has
 * @param variances one a level, as many as a path has names
 * @source own derivation: docs/methods/learned-response.md
 */
export function treeOf(unknowns: number, variances: readonly number[], leaves: readonly Leaf[]): Tree {
  const nodesOf = (some: readonly Leaf[], level: number): ReadonlyMap<string, Node> => {
    const names = [...new Set(some.map(({ path }) => path[level]!))].sort()
    return new Map(
      names.map((name) => {
        const own = some.filter(({ path }) => path[level] === name)
        const below = level + 1 < variances.length ? nodesOf(own, level + 1) : new Map<string, Node>()
        const here = [
          ...own.flatMap(({ path, information }) => (path.length === level + 1 ? [information] : [])),
        ]
        const parts = [...[...below.values()].map(({ above }) => above), ...inOrder(here)]
        return [name, { below, above: informationAbove(together(unknowns, parts), variances[level]!) }]
      }),
    )
  }
  const roots = nodesOf(leaves, 0)
  // the top stands about exactly 0, where only c is left of a message
  const evidence = [...roots.values()].reduce((sum, { above }) => sum + above.c, 0)
  return { unknowns, variances, roots, evidence }
}

/** Several leaves of one name in an order of their own. */
const inOrder = (list: readonly Information[]) => [...list].sort((p, q) => p.c - q.c)

/**
 * What a tree foresees at the end of a path, from everything but what stands at that very end. A path may name what the
 * tree has never seen: then what is above it counts.
 *
 * @source own derivation: docs/methods/learned-response.md
 */
export function beliefAt({ unknowns, variances, roots }: Tree, path: readonly string[]): Belief {
  let belief: Belief = {
    mean: new Array<number>(unknowns).fill(0),
    covariance: noInformation(unknowns).A,
  }
  let below: ReadonlyMap<string, Node> | undefined = roots
  variances.forEach((variance, level) => {
    if (level > 0 && below) {
      const others = [...below].flatMap(([name, { above }]) => (name === path[level] ? [] : [above]))
      if (others.length > 0) belief = conditionedOn(belief, together(unknowns, others))
    }
    belief = {
      mean: belief.mean,
      covariance: belief.covariance.map((row, i) => row.map((value, j) => value + (i === j ? variance : 0))),
    }
    below = below?.get(path[level]!)?.below
  })
  return belief
}
