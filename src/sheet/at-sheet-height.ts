import type { CornersSetup } from '../adjust/index.ts'
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
import { metre } from '../quantity/index.ts'
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
  readonly setup: CornersSetup
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
    const { points } = setup[side]
    const m = mechanism(points, displacementStanding(setup[side]))
    const trust = rectangular(trusted[pointsKnown(corner)], `response: ${corner.id} with height`, 1)
    const angles: readonly WheelAngle[] =
      points.layout === 'five-link' ? ['camber', 'toe'] : ['camber', 'caster', 'toe']
    for (const angle of angles) {
      const name = (
        angle === 'toe' && end === 'front' ? `front ${side} toe to thrust` : `${end} ${side} ${angle}`
      ) as ReadingName
      answers[name] = {
        readAt,
        wanted: exact(preferred),
        response: {
          trust,
          curve: (height) => poseAt(m, { travel: metre(atDesign - height), rack: metre(0) })[angle] ?? 0,
        },
      }
    }
  }
  return answers
}
