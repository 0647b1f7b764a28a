import type { Adjuster, Eccentric, KingpinSleeve } from './adjuster.ts'

/** Adjusters that are turned under a mark, so that a clock position says their setting. @source definition */
export type Faced = Eccentric | KingpinSleeve

/**
 * Whether an adjuster has a mark whose clock position says its setting.
 *
 * @source definition
 * @example isFaced(upperFront) // true
 */
export function isFaced(adjuster: Adjuster): adjuster is Faced {
  return adjuster.kind === 'eccentric' || adjuster.kind === 'offset sleeve'
}
