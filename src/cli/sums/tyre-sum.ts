import { rectangular } from '../../measure/index.ts'
import { formatLength, formatMass, parsePercent } from '../../quantity/index.ts'
import { parseTyre } from '../../spec/index.ts'
import { shown } from './shown.ts'
import type { SumTopic } from './sum-answer.ts'
import { withinOf } from './within.ts'

/** What a tyre designation says. */
export const tyreSum: SumTopic = {
  name: 'tyre',
  about: 'what a tyre designation says',
  needs: ['size'],
  may: ['within'],
  example: 'tyre size="215/70R15 109S"',
  work: (words) => {
    const tyre = parseTyre(words.get('size')!)
    const { of, told } = withinOf(words.get('within'), {
      size: { of: 'a new tyre, against its design size,', usual: '1 %', read: parsePercent },
    })
    const length = { kind: 'length', unit: 'mm', digits: 0 } as const
    const sized = (name: string, metres: number) =>
      shown(name, rectangular(of.size * metres, 'made size', metres), length)
    const diameter = sized('outer diameter', tyre.diameter)
    const height = sized('section height', tyre.sectionHeight)
    const width = sized('width', tyre.width)
    return {
      answer: [
        `${[diameter, height, width].map(({ name, text }) => `${name} ${text}`).join(', ')}; rim ${formatLength(tyre.rim, length)} (nominal)`,
        ...(tyre.load
          ? [
              `load index ${tyre.load.single}: ${formatMass(tyre.load.singleMass, { unit: 'kg', digits: 0 })} a tyre (a limit, exact)`,
            ]
          : []),
        ...(tyre.speed ? [`speed symbol ${tyre.speed.symbol}: ${tyre.speed.kmh} km/h (a limit, exact)`] : []),
      ],
      numbers: [diameter, height, width],
      formula: 'diameter = rim + 2 · width · aspect',
      source: 'ISO 4000-1 designation; load and speed tables as cited in src/spec',
      spread: told,
      notes: ['Design size of a new tyre: load and wear take more.'],
    }
  },
}
