import type { Radian } from '../quantity/index.ts'
import { gaugeRefusal } from './gauge-refusal.ts'
import type { SweepReading } from './observation.ts'

/**
 * Caster by the small-angle form, a cross-check of the exact one: the camber change over the sum of sines.
 *
 *     caster = (camber left − camber right)/(sin left − sin right)     left wheel; mirrored for the right
 *
 * @throws {Refusal} `no-sweep` when both places are the same
 * @source common practice, no source (factor 1/(2·sin θ)); compared in docs/methods/steer-sweep.md
 * @example smallAngleCaster({ steer: deg(20), camber: deg(1) }, { steer: deg(-20), camber: deg(-1) }, 'left') // 0.05103
 */
export function smallAngleCaster(
  left: Pick<SweepReading, 'steer' | 'camber'>,
  right: Pick<SweepReading, 'steer' | 'camber'>,
  side: 'left' | 'right',
): Radian {
  const turned = Math.sin(left.steer) - Math.sin(right.steer)
  if (!(Math.abs(turned) > 0))
    throw gaugeRefusal(
      'no-sweep',
      'steer',
      left.steer,
      'Both places of the sweep are the same.',
      'Turn to both sides, ten to twenty degrees.',
    )
  return (((side === 'left' ? 1 : -1) * (left.camber - right.camber)) / turned) as Radian
}
