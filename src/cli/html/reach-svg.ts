import type { SheetReach } from '../../sheet/index.ts'
import { htmlText } from './html-text.ts'

const size = 150
const high = 128
const left = 24
const foot = 20
type Pair = readonly [number, number]

/** Camber across, caster up: the reach as a hatched patch, the limits as a box, the way from now to the end. */
export function reachSvg({ title, outline, limit, path }: SheetReach): string {
  const box: readonly Pair[] = limit
    ? [
        [limit.camber[0], limit.caster[0]],
        [limit.camber[1], limit.caster[1]],
      ]
    : []
  const all = [...outline, ...box, ...path.flatMap(({ at, ellipse }) => [at, ...(ellipse ?? [])])]
  const [x0, x1] = span(all.map(([x]) => x))
  const [y0, y1] = span(all.map(([, y]) => y))
  const x = (camber: number) => (left + ((camber - x0) / (x1 - x0)) * (size - left - 4)).toFixed(1)
  const y = (caster: number) => (high - foot - ((caster - y0) / (y1 - y0)) * (high - foot - 6)).toFixed(1)
  const line = (points: readonly Pair[]) => points.map(([a, b]) => `${x(a)} ${y(b)}`).join('L')
  const degrees = (value: number) => `${((value * 180) / Math.PI).toFixed(1).replace('-', '−')}°`
  const limits = limit
    ? `<path d="M${line([box[0]!, [limit.camber[0], limit.caster[1]], box[1]!, [limit.camber[1], limit.caster[0]]])}Z" stroke-width="1.4"/>
${[0, 1].map((i) => `<text x="${x(limit.camber[i]!)}" y="${high - foot + 10}" text-anchor="middle">${degrees(limit.camber[i]!)}</text><text x="${left - 2}" y="${Number(y(limit.caster[i]!)) + 3}" text-anchor="end">${degrees(limit.caster[i]!)}</text>`).join('')}`
    : ''
  const way = path
    .map(({ at, label, ellipse }, i) => {
      const spread = ellipse
        ? `<path d="M${line(ellipse)}Z" stroke-width="0.7"${i === 0 ? '' : ' stroke-dasharray="2 1.5"'}/>`
        : ''
      return `${spread}<circle cx="${x(at[0])}" cy="${y(at[1])}" r="2.2" fill="${i === 0 ? 'white' : 'currentColor'}"/><text x="${Number(x(at[0])) + 4}" y="${Number(y(at[1])) - 3}">${htmlText(label)}</text>`
    })
    .join('')
  return `<figure style="margin:0"><svg viewBox="0 0 ${size} ${high}" role="img" aria-label="${htmlText(title)}" fill="none" stroke="currentColor">
<rect x="${left}" y="6" width="${size - left - 4}" height="${high - foot - 6}" stroke-width="0.5"/>
<path d="M${line(outline)}Z" fill="url(#hatch)" stroke-width="0.6"/>${limits}
<path d="M${line(path.map(({ at }) => at))}" stroke-width="1.1"/>${way}
<text x="${(size + left) / 2}" y="${high - 1}" text-anchor="middle">${htmlText(title.replace('Reach map, ', ''))}: camber, caster up</text></svg></figure>`
}

/** A little room round what is drawn. */
function span(values: readonly number[]): Pair {
  const [low, high] = [Math.min(...values), Math.max(...values)]
  const room = (high - low) * 0.06 || 1e-3
  return [low - room, high + room]
}
