import type { AxleEnd, Side } from '../linkage/index.ts'

/** A wheel by its place, as readings name it: "front left". @source definition */
export type WheelName = `${AxleEnd} ${Side}`

/** The four wheels, in the order in which one walks round the vehicle from the driver's left. @source definition */
export const wheelNames = [
  'front left',
  'front right',
  'rear right',
  'rear left',
] as const satisfies readonly WheelName[]

/**
 * End and side out of a wheel's name.
 *
 * @source definition
 * @example wheelPlace('front right') // { axle: 'front', side: 'right' }
 */
export function wheelPlace(wheel: WheelName): { readonly axle: AxleEnd; readonly side: Side } {
  const [axle, side] = wheel.split(' ') as [AxleEnd, Side]
  return { axle, side }
}
