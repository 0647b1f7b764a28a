import { bestImprovement } from '../gauge/index.ts'
import { interval } from '../measure/index.ts'
import { formatAngle, rad, type UnitChoice } from '../quantity/index.ts'
import type { RoundReadings } from './read-round.ts'
import type { SheetReading } from './sheet.ts'
import { whyOf } from './why-of.ts'

/**
 * What no reading by this method could prove, what decides the least proven reading, and which single
 * improvement would shrink it most.
 *
 * @source own derivation: docs/methods/uncertainty.md
 */
export function sheetAdvice(
  rows: readonly SheetReading[],
  said: RoundReadings,
  units: UnitChoice,
): readonly string[] {
  const open = rows
    .filter((row) => row.verdict === 'inside, not proven' || row.verdict === 'outside, not proven')
    .sort((a, b) => Math.abs(a.probability! - 0.5) - Math.abs(b.probability! - 0.5))
  const [first] = open
  const rough = rows
    .filter((row) => row.provable === false)
    .map((row) => `${row.label.toLowerCase()}, ${row.of}`)
  const tooRough =
    rough.length > 0
      ? [
          `Too rough for its limits, wherever it lies: ${rough.join('; ')}. Turning adjusters will not prove it; a better reading will.`,
        ]
      : []
  if (!first) return tooRough
  const measured = said.readings[first.name]!.measured
  const [largest] = whyOf(said.readings[first.name]!, units).shares
  const what = `${first.label.toLowerCase()}, ${first.of}`
  const share = largest ? ` Largest in its spread: ${largest.source} (${largest.text}).` : ''
  const [best] = bestImprovement(measured)
  const { low, high } = interval(measured)
  const shown = (halfWidth: number): string =>
    `± ${formatAngle(rad(halfWidth), { unit: units.angle, digits: 2 })}`
  const gain = best
    ? ` ${best.sentence} That would bring ${shown((high - low) / 2)} to ${shown(best.spreadThen)}.`
    : ''
  return [...tooRough, `Least sure: ${what} (${first.verdict}).${share}${gain}`]
}
