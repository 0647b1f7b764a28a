import { tighteningSequence } from '../../fasten/index.ts'
import { parseTorque } from '../../quantity/index.ts'
import type { SumTopic } from './sum-answer.ts'
import { wholeNumber } from './whole-number.ts'

/** The order for a ring of wheel nuts or flange bolts. */
export const ringSum: SumTopic = {
  name: 'sequence',
  about: 'order for a ring of 3 to 32 fasteners, opposite first, in stages',
  needs: ['count', 'stages'],
  may: [],
  example: 'sequence count=5 stages="60 N·m, 110 N·m"',
  work: (words) => {
    const typed = words
      .get('stages')!
      .split(/[;,](?!\d)/)
      .map((text) => text.trim())
    const stages = typed.map((text, i) => parseTorque(text, { at: `stage ${i + 1}` }))
    const { order } = tighteningSequence({ count: wholeNumber(words.get('count')!, 'count'), stages })
    return {
      answer: [
        `order: ${order.join(' – ')} (numbered round the ring, clockwise from the top)`,
        ...typed.map((text, i) => `stage ${i + 1}: all in that order to ${text}`),
      ],
      numbers: [],
      formula: 'opposite first; an odd ring steps on by (n − 1)/2',
      source: 'UK DVSA, Care of wheels (diametrically opposed in turn, gradually); docs/methods/sequences.md',
      spread: [
        'none: an order, and the torques as typed; preload from torque scatters about ± 30 % whatever the wrench says (textbooks; docs/methods/preload.md)',
      ],
      notes: [
        'Wheels: faces clean, threads dry, the wheel just touching at the first pull, the last on the ground, and again after the first distance.',
        'The torque comes from the maker’s service information.',
      ],
    }
  },
}
