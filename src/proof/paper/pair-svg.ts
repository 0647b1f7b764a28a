import type { ProofMark, ProofPair } from '../../sheet/index.ts'
import { escaped } from './printed.ts'

const [width, height, line] = [200, 23, 8.5]
const ink = '#17212B'

/** Before and after as two marks on one dimension line, with the limits that hold for both. */
export function pairSvg({ label, limit, before, after, scale }: ProofPair): string {
  const [low, high] = scale
  const x = (value: number): number => 6 + ((value - low) / (high - low)) * (width - 12)
  const at = (value: number): string => x(value).toFixed(1)
  const stroke = (from: string, to: string, wide: number): string =>
    `<path d="M${from}L${to}" stroke-width="${wide}"/>`
  const spread = ({ low: a, high: b }: ProofMark, y: number, wide: number): string =>
    stroke(`${at(a)} ${y}`, `${at(b)} ${y}`, wide) +
    [a, b].map((end) => stroke(`${at(end)} ${y - 2}`, `${at(end)} ${y + 2}`, wide)).join('')
  const words = [
    before && `before ${before.text} ${before.spread}`,
    after && `after ${after.text} ${after.spread}`,
    limit && `limits ${limit.lowText} to ${limit.highText}`,
  ].filter(Boolean)
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" role="img" aria-label="${escaped(`${label}: ${words.join(', ')}`)}" fill="none" stroke="${ink}" font-family="Roboto, Arial, sans-serif" font-size="7">${[
    stroke(`0 ${line}`, `${width} ${line}`, 0.5),
    ...(limit ? limits(limit, x) : []),
    ...(before
      ? [
          spread(before, line - 4.5, 0.9),
          `<circle cx="${at(before.value)}" cy="${line}" r="3" fill="white" stroke-width="1.2"/>`,
        ]
      : []),
    ...(after
      ? [
          spread(after, line + 4.5, 1.4),
          `<circle cx="${at(after.value)}" cy="${line}" r="2.6" fill="${ink}" stroke-width="1"/>`,
        ]
      : []),
  ].join('')}</svg>`
}

/** Tall ticks with their values below; close ones are pushed apart. */
function limits(
  { low, high, lowText, highText }: NonNullable<ProofPair['limit']>,
  x: (value: number) => number,
): readonly string[] {
  const [a, b] = [x(low), x(high)]
  const tick = (at: number): string =>
    `<path d="M${at.toFixed(1)} 0.5L${at.toFixed(1)} 16" stroke-width="1.3"/>`
  const text = (at: number, anchor: string, words: string): string =>
    `<text x="${at.toFixed(1)}" y="22" text-anchor="${anchor}" fill="${ink}" stroke="none">${escaped(words)}</text>`
  const isClose = b - a < 44
  return [
    tick(a),
    tick(b),
    text(isClose ? a + 2 : Math.max(a, 14), isClose ? 'end' : 'middle', lowText),
    text(isClose ? b - 2 : Math.min(b, width - 14), isClose ? 'start' : 'middle', highText),
  ]
}
