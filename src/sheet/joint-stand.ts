import type { Corner } from '../corner/index.ts'
import type { BoltLine } from '../job/index.ts'

/**
 * How the vehicle stands while a joint is worked on, and how it is held.
 *
 * @source common practice, no source; where the arm is held: which joint carries the spring
 */
export function jointStand(line: BoltLine, corner: Corner): string {
  const { positions } = line.required
  const straight = positions.includes('wheels straight') ? ' Wheels straight ahead, steering wheel held.' : ''
  if (positions.includes('on the ground'))
    return `On the ground, or with the wheel just touching it and held; never hanging free.${straight}`
  if (positions.includes('at ride height'))
    return `At ride height: on its wheels, ${held(corner)}.${straight}`
  if (straight !== '') return `On its wheels, or body on stands.${straight}`
  return 'Body on stands that you have seen take the load, or on its wheels.'
}

function held({ layout }: Corner): string {
  if (layout.startsWith('solid axle') || layout === 'twist beam')
    return 'or the axle raised to it on stands under the axle, body still on its own stands'
  if (layout.startsWith('double-wishbone') && layout !== 'double-wishbone, coil on upper arm')
    return 'or a jack under the lower arm and the hub raised to it, body on stands'
  return 'or a jack under the arm and the hub raised to it, body on stands'
}
