import { mechanism, type Pose, settingsFor } from '../../linkage/index.ts'
import { deg, inDegrees, metre } from '../../quantity/index.ts'
import { type ExchangeGeometry, isPlain, readNumber } from './read-geometry.ts'
import { badInput } from './row-refusal.ts'
import { standSettings } from './settled-corner.ts'

/** The settings that bring the wanted changes of camber, caster and toe from neutral at travel 0, rack 0. */
export function inverseRow(
  geometry: ExchangeGeometry,
  target: unknown,
): {
  readonly solution: Readonly<Record<string, number>>
  readonly forward_error_deg: number
  readonly pose: Pose
} {
  if (!isPlain(target))
    throw badInput('target_delta', 'The wanted changes are missing.', 'Give camber, caster, toe.')
  const change = (name: string) => deg(readNumber(target[name], `target_delta.${name}`))
  const changes = { camber: change('camber'), caster: change('caster'), toe: change('toe') }
  const settings = standSettings(geometry)
  const found = settingsFor(
    mechanism(geometry.points),
    { travel: metre(0), rack: metre(0) },
    { settings, changes },
  )
  const [front, rear, tie] = found.settings
  return {
    solution: {
      theta_front_deg: inDegrees(Math.asin(front!)),
      theta_rear_deg: inDegrees(Math.asin(rear!)),
      tie_delta: tie!,
    },
    forward_error_deg: inDegrees(found.miss),
    pose: found.pose,
  }
}
