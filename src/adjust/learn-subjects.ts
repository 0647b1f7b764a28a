import { informationIn } from './learn-information.ts'
import type { PastResponse } from './learn-past.ts'
import type { Leaf } from './learn-tree.ts'

/** One angle of one layout, with all that jobs say of it: an unknown of its own. @source definition */
export interface Subject {
  readonly layout: string
  readonly angle: PastResponse['angle']
  /** What the unknown's numbers are slopes of, in standard deviations of the prior. */
  readonly roles: readonly string[]
  /** Paths: layout, model, vehicle, job. */
  readonly leaves: readonly Leaf[]
}

/**
 * Past responses sorted by what they are about. Within a job they come in one order, whatever the order they were given in.
 *
 * @source definition
 */
export function subjectsOf(past: readonly PastResponse[]): readonly Subject[] {
  const names = [...new Set(past.map(({ layout, angle }) => JSON.stringify([layout, angle])))].sort()
  return names.map((name) => {
    const own = past.filter(({ layout, angle }) => JSON.stringify([layout, angle]) === name)
    const { layout, angle } = own[0]!
    const roles = [...new Set(own.flatMap((one) => one.roles))].sort()
    return { layout, angle, roles, leaves: own.map((one) => leafOf(one, roles)) }
  })
}

function leafOf(
  { layout, model, vehicle, job, moves, noise, ...one }: PastResponse,
  roles: readonly string[],
): Leaf {
  const n = moves.length
  return {
    path: [layout, model, vehicle, job],
    information: informationIn(
      moves.map(({ weights }) => roles.map((role) => weights[one.roles.indexOf(role)] ?? 0)),
      moves.map(({ seen, foreseen }) => seen - foreseen),
      moves.map((_, i) => noise.slice(i * n, (i + 1) * n)),
    ),
  }
}
