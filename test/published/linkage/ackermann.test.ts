import { outerWheelAngle, turnRadius } from '../../../src/linkage/index.ts'
import { deg, inDegrees, metre } from '../../../src/quantity/index.ts'
import { published } from '../../support/published.ts'

const rows = [
  [2.7, 1.5, 30, 23.611973, 5.426537],
  [2.8, 1.5, 20, 16.939774, 8.442937],
  [2.5, 1.4, 35, 26.701512, 4.27037],
  [3.0, 1.6, 5, 4.778154, 35.090157],
] as const

published(
  'LI12 inner and outer wheel of a turn without side slip',
  rows.flatMap(([wheelbase, track, inner, outer, radius]) => {
    const turn = { wheelbase: metre(wheelbase), pivotTrack: metre(track), inner: deg(inner) }
    const id = `ackermann.L${wheelbase}.w${track}.i${inner}`
    const shared = {
      within: 5.1e-7,
      source: 'textbook relation cot outer − cot inner = track/wheelbase (theory of machines), recomputed',
      basis: 'derived' as const,
    }
    return [
      { id: `${id} outer`, got: inDegrees(outerWheelAngle(turn)), want: outer, ...shared },
      { id: `${id} radius`, got: turnRadius(turn), want: radius, ...shared },
    ]
  }),
)
