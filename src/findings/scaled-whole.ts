import type { Side } from '../linkage/index.ts'
import type { WholeWay } from './axle-model.ts'

/** A way of a whole axle so many times over. @source definition */
export function scaledWhole(way: WholeWay, k: number): WholeWay {
  const { tieRod, dragLink, links, tilt, shim, yaw, shift } = way
  const both = <T>(
    record: Partial<Readonly<Record<Side, T>>>,
    of: (one: T) => T,
  ): Partial<Record<Side, T>> => ({
    ...(record.left ? { left: of(record.left) } : {}),
    ...(record.right ? { right: of(record.right) } : {}),
  })
  return {
    ...(tieRod === undefined ? {} : { tieRod: k * tieRod }),
    ...(dragLink === undefined ? {} : { dragLink: k * dragLink }),
    ...(links ? { links: [k * links[0], k * links[1], k * links[2], k * links[3]] } : {}),
    ...(tilt ? { tilt: both(tilt, (t) => ({ camber: k * t.camber, caster: k * t.caster })) } : {}),
    ...(shim ? { shim: both(shim, (s) => ({ camber: k * s.camber, toe: k * s.toe })) } : {}),
    ...(yaw === undefined ? {} : { yaw: k * yaw }),
    ...(shift ? { shift: [k * shift[0], k * shift[1], k * shift[2]] } : {}),
  }
}
