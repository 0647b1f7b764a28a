import type { Corner } from '../corner/index.ts'
import type { BoltLine } from '../job/index.ts'
import type { Spec } from '../spec/index.ts'

/**
 * What must be said at a joint, where the hand is on it. Shown always; it may be acknowledged, never hidden.
 *
 * @param spec for the distance after which wheel nuts are tightened again
 * @source common practice, no source
 */
export function jointCautions(line: BoltLine, corner: Corner, spec: Spec | null): readonly string[] {
  const { required, kind, joint, adjuster } = line
  const model = corner.joints[joint]!
  const { procedure, condition } = required
  const found: string[] = []
  if (procedure === 'castle slot')
    found.push(
      'Never back to meet the hole. A click before the slot means stop: undo it, other nut or washer.',
    )
  if (procedure === 'seat and back off' || kind === 'adjustable taper-roller hub')
    found.push(
      'This nut seats the bearings while the hub turns and is then backed off for end float: left at its seating torque the bearings burn. It is no castle nut of a ball joint.',
    )
  if (procedure === 'torque then angle')
    found.push('Tightened by angle: not pulled again afterwards; it is checked by its mark and its record.')
  if (model.bush?.bonded)
    found.push(
      required.positions.includes('wheels straight')
        ? 'Rubber: final only with the wheels straight ahead, or it pulls the steering to one side for life.'
        : 'Bonded bush: final only at ride height. Made final hanging it stays twisted, tears within months and holds the vehicle off its height.',
    )
  if (adjuster) found.push('It carries an adjuster: run up until the last move, then final, then read again.')
  if (required.fastener === 'new') found.push('For one use: a new fastener, written down as new.')
  if (required.fastener === 'inspect') found.push('Look at bolt, nut and thread before it goes in again.')
  if (kind.startsWith('tapered stud') || kind === 'ball-joint bolts')
    found.push('Taper clean and dry, hole not oval.')
  if (kind === 'wheel nuts') {
    const after = spec?.reTighten?.find(({ what }) => /wheel/i.test(what))?.after.text
    found.push(
      'Faces clean, threads dry, the right seat; first pull with the wheel just touching, final on the ground, opposite first.',
      `Again after the first ${after ?? 'distance (50 to 100 km in most rules)'}: agree who does it.`,
    )
  }
  if (kind === 'axle nut')
    found.push(
      `No weight on the bearing before this nut is final: the rolling parts mark the races.${model.cracked === 'lifted, brake held' ? ' Lifted, with the brake held.' : ''}`,
    )
  if (kind === 'U-bolts')
    found.push('Crosswise and evenly, with the load on the springs; again after the first distance.')
  if (kind === 'strut top nut')
    found.push('Never undone before the coil is held in a rated compressor: it is all that holds the spring.')
  if (kind === 'anchor bolt')
    found.push('It holds the torsion bar: count the turns when it is let down, nobody in line.')
  if (kind === 'hydraulic union')
    found.push('A line that was open is bled, and looked at under pressure, before the vehicle moves.')
  if (kind === 'thread and lock nut') found.push('A lock nut moves toe: read again after it is final.')
  for (const [part, { heldBy, standIn }] of Object.entries(corner.holds ?? {}))
    if (heldBy.some((set) => set.includes(joint)))
      found.push(
        `It helps to hold the ${corner.parts[part]?.name ?? part.replaceAll('-', ' ')}: before it is undone, ${standIn?.length ? standIn.join(', or ') : 'hold that by other means'}.`,
      )
  if (condition !== null)
    found.push(
      `The value is for a thread that is ${{ dry: 'dry', oiled: 'oiled', 'locking compound': 'with locking compound', 'anti-seize': 'with anti-seize' }[condition]}. In another condition it pulls differently; the value is not changed for it.`,
    )
  return found
}
