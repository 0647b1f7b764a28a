import type { Point } from '../linkage/index.ts'
import type { Slide, SlottedBolt, SubFrameShift, TopPlate } from './adjuster.ts'
import type { HandWords, Turning } from './hand.ts'
import { lengthText } from './length-text.ts'
import { seenFrom } from './seen-from.ts'

/** How far something is slid, and which way: out, in, forward and rearward mean the same on both sides. */
export function shiftHand(
  part: SlottedBolt | Slide | TopPlate | SubFrameShift,
  { from, to }: Turning,
): HandWords {
  const by = to - from
  const way = wayOf(part, by)
  return {
    amount: `${lengthText(Math.abs(by))} ${way}`,
    how: howOf(part, way),
    seenFrom: seenFrom(part.seenFrom, part.kind === 'sub-frame shift' ? 'both' : 'left'),
    dial: null,
    looks: null,
  }
}

function wayOf(part: SlottedBolt | Slide | TopPlate | SubFrameShift, by: number): string {
  switch (part.kind) {
    case 'slotted bolt':
      // a left wheel that turns about −x tips its top outward; the right one is its mirror and does the same
      return by > 0 === -part.axis[0] > 0 ? 'out' : 'in'
    case 'sub-frame shift':
      return by > 0 ? 'to the left' : 'to the right'
    case 'slide':
    case 'top plate':
      return towards(part.along, by)
  }
}

function howOf(part: SlottedBolt | Slide | TopPlate | SubFrameShift, way: string): string {
  switch (part.kind) {
    case 'slotted bolt':
      return `tip the top of the wheel ${way} until the slotted bolt has moved by that much`
    case 'slide':
      return `slide it ${way} in its slot, by a mark made before it is loosened`
    case 'top plate':
      return `shift the top plate ${way}, with the spring held by the strut and the body carried`
    case 'sub-frame shift':
      return `shift the whole sub-frame ${way}, by marks made on the body before its bolts are loosened; it stays supported`
  }
}

/** The direction in words, by the axis it goes along most: outward is +y of a left corner. */
function towards([x, y, z]: Point, by: number): string {
  const size = [x, y, z].map(Math.abs)
  const most = size.indexOf(Math.max(...size))
  const plus = [x, y, z][most]! * by > 0
  return (
    [
      ['forward', 'rearward'],
      ['out', 'in'],
      ['up', 'down'],
    ] as const
  )[most]![plus ? 0 : 1]
}
