import type { SheetReading } from '../../sheet/index.ts'
import { htmlText } from './html-text.ts'

const width = 150
const height = 23
const line = 9

/** A reading as a dimension line between its limit marks: one ink, readable when copied. */
export function dimensionSvg(reading: SheetReading): string {
  const limit = reading.limit
  if (!limit) return ''
  const room = limit.high - limit.low
  const x = (value: number): number =>
    Math.min(width - 6, Math.max(6, 6 + ((value - limit.low + room / 2) / (2 * room)) * (width - 12)))
  const tick = (at: number, half: number, stroke: number): string =>
    `<line x1="${at.toFixed(1)}" y1="${line - half}" x2="${at.toFixed(1)}" y2="${line + half}" stroke-width="${stroke}"/>`
  const label = (at: number, text: string): string =>
    `<text x="${at.toFixed(1)}" y="${height - 1}" text-anchor="middle">${htmlText(text)}</text>`
  const after = reading.predicted
    ? `<path d="M${x(reading.predicted.value).toFixed(1)} ${line - 3} l-3.5 -6 h7 z" fill="currentColor"/>`
    : ''
  return `<svg class="dimension" viewBox="0 0 ${width} ${height}" role="img" aria-label="${htmlText(`${reading.text} ${reading.spread}, limits ${limit.lowText} to ${limit.highText}, ${reading.verdict}`)}" fill="none" stroke="currentColor">
<line x1="0" y1="${line}" x2="${width}" y2="${line}" stroke-width="0.5"/>
<rect x="${x(limit.low).toFixed(1)}" y="${line - 4}" width="${(x(limit.high) - x(limit.low)).toFixed(1)}" height="8" stroke="none" fill="url(#hatch)"/>
${tick(x(limit.low), 8, 1.5)}${tick(x(limit.high), 8, 1.5)}${label(x(limit.low), limit.lowText)}${label(x(limit.high), limit.highText)}
<line x1="${x(reading.low).toFixed(1)}" y1="${line}" x2="${x(reading.high).toFixed(1)}" y2="${line}" stroke-width="2"/>
${tick(x(reading.low), 5, 1.5)}${tick(x(reading.high), 5, 1.5)}
<circle cx="${x(reading.value).toFixed(1)}" cy="${line}" r="3.4" fill="white" stroke-width="1.6"/>${after}</svg>`
}
