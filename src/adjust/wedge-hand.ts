import { inDegrees } from '../quantity/index.ts'
import type { Wedge } from './adjuster.ts'
import type { HandWords, Turning } from './hand.ts'
import { seenFrom } from './seen-from.ts'

/** Which wedge is fitted in place of which, and where its thick edge goes. */
export function wedgeHand(wedge: Wedge, { from, to }: Turning): HandWords {
  const none = wedge.step * 1e-6
  const size = (setting: number) => `${Number(Math.abs(inDegrees(setting)).toFixed(2))}°`
  const edge = (setting: number) => thickEdge(wedge.tilts, setting)
  const [was, will] = [Math.abs(from) > none, Math.abs(to) > none]
  const turned = was && will && Math.abs(from + to) < none
  return {
    amount: turned
      ? `turn the ${size(to)} wedge round`
      : !will
        ? `take out the ${size(from)} wedge`
        : was
          ? `fit a ${size(to)} wedge in place of the ${size(from)} one`
          : `fit a ${size(to)} wedge`,
    how: will ? `thick edge ${edge(to)}` : '',
    seenFrom: will ? seenFrom(wedge.seenFrom, 'left') : '',
    dial: null,
    looks: null,
  }
}

/** A wedge pushes the hub outward where it is thick. */
function thickEdge(tilts: Wedge['tilts'], setting: number): string {
  if (tilts === 'camber')
    return setting > 0 ? 'up: the top of the wheel goes out' : 'down: the top of the wheel goes in'
  return setting > 0
    ? 'to the rear: the front of the wheel goes in'
    : 'to the front: the front of the wheel goes out'
}
