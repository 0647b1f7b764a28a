import { angleToSlot, largestAdvance } from '../../fasten/index.ts'
import { exact, rectangular } from '../../measure/index.ts'
import { formatAngle, parseAngle, rad } from '../../quantity/index.ts'
import { shown } from './shown.ts'
import type { SumTopic } from './sum-answer.ts'
import { wholeNumber } from './whole-number.ts'
import { withinOf } from './within.ts'

/** How far a castle nut turns forward to its next slot. */
export const castleSum: SumTopic = {
  name: 'castle-nut',
  about: 'how far a castle nut turns forward to the next slot',
  needs: ['slots'],
  may: ['slotAt', 'within'],
  example: 'castle-nut slots=6 slotAt="-52°"',
  work: (words) => {
    const nut = { slots: wholeNumber(words.get('slots')!, 'slots'), holes: [rad(0)] }
    const slotAt = words.get('slotAt')
    const { of, told } = withinOf(words.get('within'), {
      slotAt: { of: 'the slot, by eye,', usual: '5°', read: parseAngle },
    })
    const unit = { kind: 'angle', unit: '°' } as const
    const most = shown('most', exact(largestAdvance(nut)), { digits: 0, ...unit })
    const turn =
      slotAt === undefined ? null : angleToSlot({ ...nut, slotAt: parseAngle(slotAt, { at: 'slotAt' }) })
    const forward = turn === null ? null : shown('forward', rectangular(of.slotAt, 'eye', turn), unit)
    // read this near, the slot may have passed the hole already, or not yet
    const step = (2 * Math.PI) / nut.slots
    const either = turn !== null && (turn < of.slotAt || step - turn < of.slotAt)
    return {
      answer: [
        ...(forward ? [`turn forward by ${forward.text}`] : []),
        ...(either
          ? [
              `so near, look again: a slot that has just passed the hole has ${formatAngle(rad(step), { unit: '°', digits: 0 })} to go`,
            ]
          : []),
        `at the most ${most.text} from any place`,
      ],
      numbers: [...(forward ? [forward] : []), most],
      formula: 'smallest forward turn that brings a slot to an end of the hole; at the most 360° / slots',
      source: 'own derivation: docs/methods/castle-nut.md',
      spread: forward ? told : ['none: slots are counted'],
      notes: [
        'First the low figure, then only forward, never back, never past the high figure. If the slot would pass it: another washer or nut. New pin, legs bent.',
        'slotAt is where a slot stands, seen on the nut, from the pin hole: clockwise is plus (right-hand thread).',
        'An adjustable taper-roller hub has the opposite rule; this is not for it.',
      ],
    }
  },
}
