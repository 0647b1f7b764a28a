import { axleStateAt } from './axle-pose-at.ts'
import { followAxle } from './follow-axle.ts'
import type { SolidAxle } from './solid-axle.ts'
import type { AxleDrive } from './solid-axle-points.ts'

/**
 * How far an axle can be driven one way from a drive: its ends along heave, roll or drop arm, the other two held. No
 * bump or steering stops.
 *
 * @returns where `drive[along]` ends upward (up, left up, drop arm by the right-hand rule) and downward, m or rad;
 *   null where this model has no end within ten axle widths or half a turn
 * @throws {Refusal} `not-finite`; `unreachable` when the drive itself is past its end
 * @source own derivation: docs/methods/solid-axle.md
 * @example inDegrees(axleRange(solidAxle(axlePoints), straight, 'drop').most ?? 0) // 29.341166
 */
export function axleRange(
  a: SolidAxle,
  drive: AxleDrive,
  along: 'heave' | 'roll' | 'drop',
): { most: number | null; least: number | null } {
  const { heave, roll, drop } = drive
  const start = axleStateAt(a, drive)
  const far = along === 'heave' ? 20 * a.size : along === 'roll' ? Math.PI / 2 : Math.PI
  const end = (way: 1 | -1): number | null => {
    const to = { ...{ heave, roll, drop }, [along]: drive[along] + way * far } as AxleDrive
    const { share, bar } = followAxle(a, drive, to, start)
    return bar ? drive[along] + share * way * far : null
  }
  return { most: end(1), least: end(-1) }
}
