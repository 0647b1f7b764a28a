import { formatLength, formatMass } from '../../quantity/index.ts'
import { parseTyre } from '../../spec/index.ts'
import type { SumTopic } from './sum-answer.ts'

/** What a tyre designation says. */
export const tyreSum: SumTopic = {
  name: 'tyre',
  about: 'what a tyre designation says',
  needs: ['size'],
  may: [],
  example: 'tyre size="215/70R15 109S"',
  work: (words) => {
    const tyre = parseTyre(words.get('size')!)
    const length = (metres: number) => formatLength(metres as never, { unit: 'mm', digits: 0 })
    return {
      answer: [
        `outer diameter ${length(tyre.diameter)}, section height ${length(tyre.sectionHeight)}, width ${length(tyre.width)}, rim ${length(tyre.rim)}`,
        ...(tyre.load
          ? [
              `load index ${tyre.load.single}: ${formatMass(tyre.load.singleMass, { unit: 'kg', digits: 0 })} a tyre`,
            ]
          : []),
        ...(tyre.speed ? [`speed symbol ${tyre.speed.symbol}: ${tyre.speed.kmh} km/h`] : []),
      ],
      formula: 'diameter = rim + 2 · width · aspect',
      source: 'ISO 4000-1 designation; load and speed tables as cited in src/spec',
      notes: ['Design size of a new tyre: it may differ by some 1 %, and load and wear take more.'],
    }
  },
}
