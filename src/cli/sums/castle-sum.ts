import { angleToSlot, largestAdvance } from '../../fasten/index.ts'
import { formatAngle, parseAngle, rad } from '../../quantity/index.ts'
import type { SumTopic } from './sum-answer.ts'

/** How far a castle nut turns forward to its next slot. */
export const castleSum: SumTopic = {
  name: 'castle-nut',
  about: 'how far a castle nut turns forward to the next slot',
  needs: ['slots'],
  may: ['slotAt'],
  example: 'castle-nut slots=6 slotAt="-52°"',
  work: (words) => {
    const nut = { slots: Number(words.get('slots')), holes: [rad(0)] }
    const slotAt = words.get('slotAt')
    const shown = (angle: number) => formatAngle(rad(angle), { unit: '°', digits: 0 })
    return {
      answer: [
        ...(slotAt === undefined
          ? []
          : [
              `turn forward by ${shown(angleToSlot({ ...nut, slotAt: parseAngle(slotAt, { at: 'slotAt' }) }))}`,
            ]),
        `at the most ${shown(largestAdvance(nut))} from any place`,
      ],
      formula: 'smallest forward turn that brings a slot to an end of the hole',
      source: 'own derivation: docs/methods/castle-nut.md',
      notes: [
        'First the low figure, then only forward, never back, never past the high figure. If the slot would pass it: another washer or nut. New pin, legs bent.',
        'slotAt is where a slot stands, seen on the nut, from the pin hole: clockwise is plus.',
        'An adjustable taper-roller hub has the opposite rule; this is not for it.',
      ],
    }
  },
}
