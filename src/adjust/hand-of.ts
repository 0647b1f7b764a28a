import type { ActsOn, Adjuster } from './adjuster.ts'
import { faceHand } from './face-hand.ts'
import { isFaced } from './faced.ts'
import type { Hand, HandWords, Turning } from './hand.ts'
import { isNearEnd } from './is-near-end.ts'
import { shiftHand } from './shift-hand.ts'
import { shimHand } from './shim-hand.ts'
import { threadHand } from './thread-hand.ts'
import { wedgeHand } from './wedge-hand.ts'

/**
 * Says what the hand does to bring an adjuster from one setting to another: how much, which way, seen from
 * where. A right corner is the mirror image, so clockwise becomes anticlockwise and the clock face is turned
 * over; a tie rod with the same thread on both sides keeps its sense.
 *
 * @param on the wheel it sits at, or both for what acts on both wheels of an axle
 * @returns plain workshop English; amounts to 1°, 0.01 mm, or the parts of a turn that the step names
 * @source own derivation: docs/methods/adjusters.md
 * @example handOf(upperFront, 'left', { from: deg(0), to: deg(30) }).amount // '30° clockwise'
 */
export function handOf(adjuster: Adjuster, on: ActsOn, turning: Turning): Hand {
  const warnings = [endWarning(adjuster, turning)]
  if (turning.known === false && isFaced(adjuster))
    warnings.push('its present position is not known: read the mark before turning, the amount depends on it')
  return {
    ...words(adjuster, on, turning),
    warning: warnings.filter((text) => text !== '').join('; '),
  }
}

function words(adjuster: Adjuster, on: ActsOn, turning: Turning): HandWords {
  const still = Math.abs(turning.to - turning.from) < adjuster.step * 1e-6
  if (isFaced(adjuster)) return faceHand(adjuster, on, turning, still)
  if (still) return { amount: 'stays', how: '', seenFrom: '', dial: null, looks: null }
  switch (adjuster.kind) {
    case 'thread':
      return threadHand(adjuster, on, turning)
    case 'shims':
      return shimHand(adjuster, turning)
    case 'wedge':
      return wedgeHand(adjuster, turning)
    case 'slotted bolt':
    case 'slide':
    case 'top plate':
    case 'sub-frame shift':
      return shiftHand(adjuster, turning)
  }
}

function endWarning(adjuster: Adjuster, { to, known = true }: Turning): string {
  if (!known || !isNearEnd(adjuster, to)) return ''
  return adjuster.kind === 'eccentric'
    ? 'within 10° of its end: little is gained there, and it slips'
    : 'at the end of its range'
}
