import type { Corner } from '../corner/index.ts'
import type { PartAdvice } from '../findings/index.ts'
import type { JobState, Round } from '../job/index.ts'
import { beliefText } from './findings-belief.ts'
import type { FindingsOrder } from './findings-sheet.ts'
import { placeOf } from './findings-words.ts'

/** Parts that are told. @source own choice */
const most = 5
/** Belief below which a part is not worth a line. @source own choice */
const least = 0.1

/** What to order now, what to check first, and what being wrong would cost. */
export function findingsOrders(
  advice: readonly PartAdvice[],
  {
    state,
    round,
    cornerOf,
    alike,
  }: {
    readonly state: JobState
    readonly round: Round
    readonly cornerOf: (axle: string) => Corner | null
    /** What else would look nearly the same. */
    readonly alike: (suspect: PartAdvice['suspects'][number]) => readonly string[]
  },
): readonly FindingsOrder[] {
  const before = round.entry ?? Number.POSITIVE_INFINITY
  return advice
    .filter(({ advice: said, belief }) => said !== 'do not order' && belief >= least)
    .slice(0, most)
    .map((one): FindingsOrder => {
      const belief = Math.min(1, one.belief)
      const part = `${placeOf(one)} ${nameOf(one.part, cornerOf(one.axle))}`
      const renewed = state.renewed.some(
        ({ entry, part: done, wheels }) =>
          entry < before && done === one.part && wheels.some((wheel) => wheel === `${one.axle} ${one.side}`),
      )
      const others = [...new Set(one.suspects.flatMap(alike))]
      const said = one.advice === 'do not order' || renewed || others.length > 0 ? 'check first' : one.advice
      return {
        part,
        advice: said,
        sentence: [
          said === 'order now'
            ? `Order now, with the belief that it is needed ${beliefText(belief)}; prove it by hand before the old one comes off.`
            : `Check first: belief that it is needed ${beliefText(belief)}.`,
          `Ordered today it would come in vain ${odds(1 - belief)}; not ordered, the vehicle would wait for it ${odds(belief)}.`,
          ...(others.length > 0 ? [`Nearly the same would be read with: ${others.join('; ')}.`] : []),
          ...(one.inPairs ? ['As a pair, both sides.'] : []),
          ...(renewed ? ['It was renewed before these readings: look at how it is fitted first.'] : []),
        ].join(' '),
      }
    })
}

/** "about 3 times in 20" */
function odds(chance: number): string {
  const twentieths = Math.round(20 * chance)
  if (twentieths <= 0) return 'less than once in 20 times'
  if (twentieths >= 20) return 'nearly always'
  return `about ${twentieths === 1 ? 'once' : `${twentieths} times`} in 20`
}

function nameOf(part: string, corner: Corner | null): string {
  const joint = part.startsWith('bush of ') ? part.slice('bush of '.length) : null
  if (joint !== null) return `bush of the ${corner?.joints[joint]?.name ?? joint.replaceAll('-', ' ')}`
  return corner?.parts[part]?.name ?? part.replaceAll('-', ' ')
}
