import { Refusal } from '../quantity/index.ts'
import type { ActsOn, Adjuster, AdjustRefusal } from './adjuster.ts'
import { misplaced } from './misplaced.ts'
import type { WholeAxleSetup } from './problem.ts'

/**
 * Makes sure that an adjuster can act on this axle there.
 *
 * @throws {Refusal} `no-such-point` when the axle lacks what it moves; `wrong-place` when it sits at one wheel but
 *   acts on both, or the other way round
 */
export function checkOnAxle(adjuster: Adjuster, on: ActsOn, axle: WholeAxleSetup['axle']): void {
  const solid = 'location' in axle
  const atWheel = adjuster.kind === 'wedge' || adjuster.kind === 'offset sleeve'
  const known =
    adjuster.kind === 'wedge' ||
    (adjuster.kind === 'offset sleeve' &&
      solid &&
      axle.left.kingpin !== null &&
      axle.right.kingpin !== null) ||
    (adjuster.kind === 'thread' && solid && threads(axle).includes(adjuster.length))
  if (!known)
    throw new Refusal<AdjustRefusal>({
      code: 'no-such-point',
      at: adjuster.id,
      given: adjuster.kind === 'thread' ? adjuster.length : adjuster.kind,
      sentence: `"${adjuster.name}" acts on something that this axle does not have.`,
      remedy: solid
        ? 'A solid axle takes wedges, offset sleeves on its kingpins, and threads of tie rod, drag link or locating links.'
        : 'A twist beam takes wedges between arm and hub only.',
    })
  if (atWheel === (on === 'both')) throw misplaced(adjuster, atWheel)
}

const threads = (axle: Extract<WholeAxleSetup['axle'], { location: unknown }>): readonly string[] => [
  ...(axle.steering ? ['tie-rod', 'drag-link'] : []),
  ...(axle.location.kind === 'links' ? ['link0', 'link1', 'link2', 'link3'] : []),
]
