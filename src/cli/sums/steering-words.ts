import type { Measured } from '../../measure/index.ts'
import { parseAngle, parsePercent, type Radian, rad } from '../../quantity/index.ts'
import { BadInput } from '../files/outcome.ts'

/** Steering ratio as a person writes it: "16" or "16:1". */
export function ratioOf(text: string): number {
  const ratio = Number(/^\s*(\d+(?:[.,]\d+)?)\s*(?::\s*1)?\s*$/.exec(text)?.[1]?.replace(',', '.'))
  if (ratio > 0) return ratio
  throw new BadInput([
    `ratio is “${text}”. Write how many degrees the steering wheel turns per degree of the road wheels, such as ratio=16.`,
  ])
}

/** An angle to a side, "3° left"; + to the left. The side must be said. */
export function sidedAngle(text: string, at: string): Radian {
  const [, angle, side] = /^(.*?)\s*(?:to the )?(left|right)\s*$/i.exec(text) ?? []
  if (angle === undefined || side === undefined)
    throw new BadInput([
      `${at} is “${text}”. Say to which side: ${at}="${text} left" or ${at}="${text} right".`,
    ])
  const size = parseAngle(angle, { at })
  if (size < 0) throw new BadInput([`${at} is “${text}”. Write it without the minus; the side says it.`])
  return rad(side.toLowerCase() === 'left' ? size : -size)
}

/** "to the left" for a positive angle. */
export const toSide = (angle: number): string => (angle < 0 ? 'to the right' : 'to the left')

/** How well a ratio is known. */
export const ratioWithin = { of: 'the steering ratio', usual: '5 %', read: parsePercent } as const

/** A value without its sign, which is told as a side; its spread stays. */
export const sizeOf = (measured: Measured): Measured => ({ ...measured, value: Math.abs(measured.value) })
