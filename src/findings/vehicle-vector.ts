import type { Side, WheelAngle } from '../linkage/index.ts'
import type { ExaminedWheel } from './findings-problem.ts'

/** Numbers that a model of an axle gives: five of each wheel, then toe-out on turns to the left and to the right. */
export const axleNumbers = 12

/** Place of a number of one wheel among those of its axle; `x` is how far forward its centre stands. */
export const ofAxle = (side: Side, what: WheelAngle | 'x'): number =>
  (side === 'left' ? 0 : 5) + { camber: 0, caster: 1, sai: 2, toe: 3, x: 4 }[what]

/** Place of toe-out on turns to a side. */
export const ofTurn = (side: Side): number => (side === 'left' ? 10 : 11)

/** The four wheels, in the order that this room keeps. */
export const fourWheels: readonly ExaminedWheel[] = ['front left', 'front right', 'rear left', 'rear right']

/** Joints whose play can be told at once. */
export const playSlots = 16

/** All that can be different about a vehicle and the way it is read: two axles, four heights, four pads, two gauges, play. */
export const vehicleNumbers = 2 * axleNumbers + 10 + playSlots

/** Height of a wheel above design against the body. */
export const heightAt = (wheel: ExaminedWheel): number => 2 * axleNumbers + fourWheels.indexOf(wheel)

/** Height of the pad that a wheel stands on. */
export const padAt = (wheel: ExaminedWheel): number => 2 * axleNumbers + 4 + fourWheels.indexOf(wheel)

/** What the camber gauge adds to every camber. */
export const camberGaugeAt = 2 * axleNumbers + 8

/** How far the steer gauge stands off straight ahead, to the left. */
export const steerGaugeAt = 2 * axleNumbers + 9

/** Play of a joint, by its number among those that were measured. */
export const playAt = (slot: number): number => 2 * axleNumbers + 10 + slot

/** The name that a joint's play goes by. */
export const playName = (wheel: ExaminedWheel, joint: string): string => `${wheel} ${joint}`
