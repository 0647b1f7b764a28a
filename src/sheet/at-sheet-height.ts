import type { AxleSetup } from '../adjust/index.ts'
import type { Corner } from '../corner/index.ts'
import type { atHeight } from '../gauge/index.ts'
import {
  type AxleEnd,
  mechanism,
  poseAt,
  type ReadingName,
  type Side,
  type WheelAngle,
} from '../linkage/index.ts'
import { exact, type Measured, rectangular } from '../measure/index.ts'
import { type Metre, metre, rad } from '../quantity/index.ts'
import { axleStanding } from './axle-standing.ts'
import { displacementStanding, pointsKnown } from './wheel-setups.ts'

type HeightAnswer = Parameters<typeof atHeight>[1]

/** Below this difference of height nobody asks what the reading would be elsewhere, m. @source own choice */
const worthSaying = 0.002
/** How far the model's change of angle with height is trusted, half-width as a share. @source own choice */
const trusted = { measured: 0.1, typical: 0.3 } as const

/**
 * How the readings of an axle follow its ride height, for wheels that were read at another height than the
 * sheet prefers.
 *
 * @param heights measured heights of this axle's wheels when they were read
 * @source own derivation: docs/methods/height.md
 */
export function heightAnswers(task: {
  readonly corner: Corner
  readonly setup: AxleSetup
  readonly heights: Readonly<Partial<Record<Side, Measured>>>
  readonly preferred: number | null
}): Readonly<Partial<Record<ReadingName, HeightAnswer>>> {
  const { corner, setup, heights, preferred } = task
  const atDesign = corner.rideHeight?.at
  const answers: Partial<Record<ReadingName, HeightAnswer>> = {}
  if (atDesign === undefined || preferred === null) return answers
  const end: AxleEnd = setup.end
  for (const side of ['left', 'right'] as const) {
    const readAt = heights[side]
    if (!readAt || Math.abs(readAt.value - preferred) < worthSaying) continue
    const trust = rectangular(trusted[pointsKnown(corner)], `response: ${corner.id} with height`, 1)
    const { angles, at } = anglesWithTravel(setup, side)
    for (const angle of angles) {
      const name = (
        angle === 'toe' && end === 'front' ? `front ${side} toe to thrust` : `${end} ${side} ${angle}`
      ) as ReadingName
      answers[name] = {
        readAt,
        wanted: exact(preferred),
        response: { trust, curve: (height) => at(metre(atDesign - height), angle) },
      }
    }
  }
  return answers
}

/** The angles of a wheel that follow its travel, and how. */
function anglesWithTravel(
  setup: AxleSetup,
  side: Side,
): { readonly angles: readonly WheelAngle[]; readonly at: (travel: Metre, angle: WheelAngle) => number } {
  if ('axle' in setup) {
    // Both wheels rise together: a body that leans on its springs does not tilt the axle.
    const solid = 'location' in setup.axle
    return {
      // What height does to the toe of a solid axle, the drag link does, and the steering wheel undoes.
      angles: solid ? ['camber', 'caster'] : ['camber', 'toe'],
      at: (travel, angle) => {
        const stands = axleStanding(setup, { heave: travel, roll: rad(0), drop: rad(0) })
        if (stands.kind === 'solid axle') return stands.pose[side][angle] ?? 0
        return angle === 'caster' || angle === 'sai' ? 0 : stands.wheels[side][angle]
      },
    }
  }
  const wheel = setup[side]
  const m = mechanism(wheel.points, displacementStanding(wheel))
  const withoutPin = wheel.points.layout === 'five-link' || wheel.points.layout === 'semi-trailing arm'
  return {
    angles: withoutPin ? ['camber', 'toe'] : ['camber', 'caster', 'toe'],
    at: (travel, angle) => poseAt(m, { travel, rack: metre(0) })[angle] ?? 0,
  }
}
