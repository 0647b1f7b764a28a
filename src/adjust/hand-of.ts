import type { Side } from '../linkage/index.ts'
import { inDegrees } from '../quantity/index.ts'
import type { Adjuster, Eccentric, Looks, ShimPack, SlottedBolt, TieRodThread, View } from './adjuster.ts'
import { clockOf } from './clock-of.ts'
import { clockText } from './clock-text.ts'
import { isNearEnd } from './is-near-end.ts'
import { shimChange } from './shim-change.ts'
import { turnsText } from './turns-text.ts'

/** A change of setting in the words of a hand. @source definition */
export interface Hand {
  /** "34° clockwise", "5/12 turn longer", "add 1 mm + 0.5 mm shims", "1.5 mm out" */
  readonly amount: string
  /** "from 10 to 11 o'clock", "turn the rod clockwise: its top goes to the rear" */
  readonly how: string
  /** "seen from the front"; empty where it does not matter. */
  readonly seenFrom: string
  /** Clock angle of an eccentric's mark before and after, rad clockwise from 12 o'clock; null for others. */
  readonly dial: { readonly from: number; readonly to: number } | null
  /** Which way it is turned, seen from `seenFrom`; null when nothing is turned. */
  readonly looks: Looks | null
  /** "within 10° of its end" and the like; empty when there is none. */
  readonly warning: string
}

/**
 * A change of setting, in the adjuster's own unit; `known` false when only the amount is sure.
 *
 * @source definition
 */
export interface Turning {
  readonly from: number
  readonly to: number
  readonly known?: boolean
}

/**
 * Says what the hand does to bring an adjuster from one setting to another: how much, which way, seen from
 * where. A right corner is the mirror image, so clockwise becomes anticlockwise and the clock face is turned
 * over; a tie rod with the same thread on both sides keeps its sense.
 *
 * @returns plain workshop English; amounts to 1°, 0.01 mm, or the parts of a turn that the step names
 * @source own derivation: docs/methods/adjusters.md
 * @example handOf(upperFront, 'left', { from: deg(0), to: deg(30) }).amount // '30° clockwise'
 */
export function handOf(adjuster: Adjuster, side: Side, turning: Turning): Hand {
  const hand = words(adjuster, side, turning)
  const warnings = [endWarning(adjuster, turning)]
  if (turning.known === false && adjuster.kind === 'eccentric')
    warnings.push('its present position is not known: read the mark before turning, the amount depends on it')
  return { ...hand, warning: warnings.filter((text) => text !== '').join('; ') }
}

function words(adjuster: Adjuster, side: Side, turning: Turning): Omit<Hand, 'warning'> {
  const none = { amount: 'stays', how: '', seenFrom: '', dial: null, looks: null }
  const still = Math.abs(turning.to - turning.from) < adjuster.step * 1e-6
  switch (adjuster.kind) {
    case 'eccentric':
      return eccentricHand(adjuster, side, turning, still)
    case 'thread':
      return still ? none : threadHand(adjuster, side, turning)
    case 'shims':
      return still ? none : shimHand(adjuster, turning)
    case 'slotted bolt':
      return still ? none : slotHand(adjuster, turning)
  }
}

const mirrored = (looks: Looks): Looks => (looks === 'clockwise' ? 'anticlockwise' : 'clockwise')

function eccentricHand(
  washer: Eccentric,
  side: Side,
  { from, to, known = true }: Turning,
  still: boolean,
): Omit<Hand, 'warning'> {
  const onLeft = to > from ? washer.positiveLooks : mirrored(washer.positiveLooks)
  const looks = side === 'left' ? onLeft : mirrored(onLeft)
  const dial = known ? { from: clockOf(washer, side, from), to: clockOf(washer, side, to) } : null
  const digits = inDegrees(washer.step) < 0.95 ? 1 : 0
  const [a, b] = dial ? [clockText(dial.from), clockText(dial.to)] : ['', '']
  return {
    amount: still ? 'stays' : `${Math.abs(inDegrees(to - from)).toFixed(digits)}° ${looks}`,
    how: !dial ? '' : a === b ? `stays close to ${a} o'clock` : `from ${a} to ${b} o'clock`,
    seenFrom: seen(washer.seenFrom),
    dial,
    looks: still ? null : looks,
  }
}

function threadHand(rod: TieRodThread, side: Side, { from, to }: Turning): Omit<Hand, 'warning'> {
  const longer = to > from
  const flips = (side === 'right' && rod.rightSide === 'mirrored thread') !== !longer
  const looks = flips ? mirrored(rod.positiveLooks) : rod.positiveLooks
  const what = rod.sleeve ? 'sleeve' : 'rod'
  const top = topGoes(rod.seenFrom, side, looks)
  return {
    amount: `${turnsText(Math.abs(to - from), rod.step)} ${longer ? 'longer' : 'shorter'}`,
    how: `turn the ${what} ${looks}${top ? `: its top goes to the ${top}` : ''}`,
    seenFrom: seen(rod.seenFrom),
    dial: null,
    looks,
  }
}

/** Seen along the axle the top of a rod that turns clockwise goes to the viewer's right hand. */
function topGoes(view: View, side: Side, looks: Looks): 'front' | 'rear' | null {
  if (view !== 'outside' && view !== 'inside') return null
  // looking at the left wheel from outside, the front of the vehicle is on the viewer's left
  const rightHandIsRear = (view === 'outside') === (side === 'left')
  return (looks === 'clockwise') === rightHandIsRear ? 'rear' : 'front'
}

function shimHand(pack: ShimPack, { from, to }: Turning): Omit<Hand, 'warning'> {
  const change = shimChange(pack, to - from)
  const list = (sizes: readonly number[]) => sizes.map(millimetres).join(' + ')
  const amount = !change
    ? `${millimetres(Math.abs(to - from))} ${to > from ? 'more' : 'fewer'} shims`
    : change.takeOut.length === 0
      ? `add ${list(change.add)} shims`
      : change.add.length === 0
        ? `take out ${list(change.takeOut)} shims`
        : `swap ${list(change.takeOut)} for ${list(change.add)}`
  const bolts = pack.moves.length > 1 ? ', the same under each bolt' : ''
  return {
    amount,
    how: `pack from ${millimetres(from)} to ${millimetres(to)}${bolts}`,
    seenFrom: '',
    dial: null,
    looks: null,
  }
}

function slotHand(bolt: SlottedBolt, { from, to }: Turning): Omit<Hand, 'warning'> {
  // a left wheel that turns about −x tips its top outward; the right one is its mirror and does the same
  const out = to > from === -bolt.axis[0] > 0
  return {
    amount: `${millimetres(Math.abs(to - from))} ${out ? 'out' : 'in'}`,
    how: `tip the top of the wheel ${out ? 'out' : 'in'} until the slotted bolt has moved by that much`,
    seenFrom: seen(bolt.seenFrom),
    dial: null,
    looks: null,
  }
}

function endWarning(adjuster: Adjuster, { to, known = true }: Turning): string {
  if (!known || !isNearEnd(adjuster, to)) return ''
  return adjuster.kind === 'eccentric'
    ? 'within 10° of its end: little is gained there, and it slips'
    : 'at the end of its range'
}

const millimetres = (length: number) => `${Number((length * 1000).toFixed(2))} mm`
const seen = (view: View) =>
  view === 'front' || view === 'rear' ? `seen from the ${view}` : `seen from ${view}`
