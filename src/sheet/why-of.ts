import { budget } from '../measure/index.ts'
import { formatAngle, type UnitChoice } from '../quantity/index.ts'
import type { RoundReading } from './read-round.ts'
import type { SheetWhy } from './sheet.ts'
import { sourceWords } from './source-words.ts'

/** Shares below this are told together as "the rest". @source own choice */
const smallest = 0.01

/** Where a reading comes from: its formula, corrections, and what its spread is made of. */
export function whyOf(reading: RoundReading, units: UnitChoice): SheetWhy {
  const byKind = new Map<string, number>()
  for (const { source, share } of budget(reading.measured)) {
    const words = sourceWords(source)
    byKind.set(words, (byKind.get(words) ?? 0) + share)
  }
  const lines = [...byKind].map(([source, share]) => ({ source, share })).sort((a, b) => b.share - a.share)
  const named = lines.filter((line) => line.share >= smallest)
  const rest = 1 - named.reduce((sum, line) => sum + line.share, 0)
  const shares = named.map(({ source, share }) => ({ source, share, text: percent(share) }))
  if (rest > 0.005) shares.push({ source: 'all others', share: rest, text: percent(rest) })
  return {
    formula: reading.formula,
    shares,
    corrections: [
      ...reading.corrections
        .filter((c) => c.by !== 0)
        .map((c) => `${c.name} ${formatAngle(c.by as never, { unit: units.angle, digits: 2, sign: true })}`),
      ...reading.notes,
    ],
    source: reading.source,
  }
}

const percent = (share: number): string => (share < 0.01 ? 'under 1 %' : `${Math.round(share * 100)} %`)
