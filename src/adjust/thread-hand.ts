import type { ActsOn, Looks, TieRodThread, View } from './adjuster.ts'
import type { HandWords, Turning } from './hand.ts'
import { otherWay } from './other-way.ts'
import { seenFrom } from './seen-from.ts'
import { turnsText } from './turns-text.ts'

/** How a rod or a sleeve is turned to get longer or shorter. */
export function threadHand(rod: TieRodThread, on: ActsOn, { from, to }: Turning): HandWords {
  const longer = to > from
  const flips = (on === 'right' && rod.rightSide === 'mirrored thread') !== !longer
  const looks = flips ? otherWay(rod.positiveLooks) : rod.positiveLooks
  const what = rod.sleeve ? 'sleeve' : 'rod'
  const top = topGoes(rod.seenFrom, on, looks)
  return {
    amount: `${turnsText(Math.abs(to - from), rod.step)} ${longer ? 'longer' : 'shorter'}`,
    how: `turn the ${what} ${looks}${top ? `: its top goes to the ${top}` : ''}`,
    seenFrom: seenFrom(rod.seenFrom, on),
    dial: null,
    looks,
  }
}

/** Seen along the axle the top of a rod that turns clockwise goes to the viewer's right hand. */
function topGoes(view: View, on: ActsOn, looks: Looks): 'front' | 'rear' | null {
  if (view !== 'outside' && view !== 'inside') return null
  // looking at the left wheel from outside, the front of the vehicle is on the viewer's left
  const rightHandIsRear = (view === 'outside') === (on !== 'right')
  return (looks === 'clockwise') === rightHandIsRear ? 'rear' : 'front'
}
