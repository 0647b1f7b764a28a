import fc from 'fast-check'
import { deg } from '../../../src/quantity/index.ts'

const within = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true })
export const camberAngle = within(-3, 3).map(deg)
export const casterAngle = within(-2, 9).map(deg)
export const saiAngle = within(3, 16).map(deg)
export const toeAngle = within(-2, 2).map(deg)
export const turnAngle = within(8, 25).map(deg)
export const height = within(-0.01, 0.01)
export const side = fc.constantFrom('left', 'right') as fc.Arbitrary<'left' | 'right'>
export const sizes = within(0.0001, 0.01)
