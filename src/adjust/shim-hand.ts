import type { ShimPack } from './adjuster.ts'
import type { HandWords, Turning } from './hand.ts'
import { lengthText } from './length-text.ts'
import { shimChange } from './shim-change.ts'

/** Which shims go in and which come out. */
export function shimHand(pack: ShimPack, { from, to }: Turning): HandWords {
  const change = shimChange(pack, to - from)
  const list = (sizes: readonly number[]) => sizes.map(lengthText).join(' + ')
  const amount = !change
    ? `${lengthText(Math.abs(to - from))} ${to > from ? 'more' : 'fewer'} shims`
    : change.takeOut.length === 0
      ? `add ${list(change.add)} shims`
      : change.add.length === 0
        ? `take out ${list(change.takeOut)} shims`
        : `swap ${list(change.takeOut)} for ${list(change.add)}`
  const bolts = pack.moves.length > 1 ? ', the same under each bolt' : ''
  return {
    amount,
    how: `pack from ${lengthText(from)} to ${lengthText(to)}${bolts}`,
    seenFrom: '',
    dial: null,
    looks: null,
  }
}
