import type { SheetCorner, SheetFigure } from '../../sheet/index.ts'
import { htmlText } from './html-text.ts'

const width = 300
const edge = 12
type Place = readonly [number, number]

/** Both corners of an axle seen from the front: the ride pose in full lines, as it stands dashed, joints by their letters. */
export function axleSvg(corners: readonly SheetCorner[]): string {
  if (corners.length === 0) return ''
  const figures = corners.flatMap(({ ride, present }) => (present ? [ride, present] : [ride]))
  const points = figures.flatMap(({ strokes, wheel, ground }) => [
    ...strokes.flatMap(({ from, to }) => [from, to]),
    ...rim(wheel).map(([y, z]) => [0, y, z] as const),
    [0, wheel.centre[1], ground] as const,
  ])
  const [y0, y1] = [Math.min(...points.map((p) => p[1])), Math.max(...points.map((p) => p[1]))]
  const [z0, z1] = [Math.min(...points.map((p) => p[2])), Math.max(...points.map((p) => p[2]))]
  const scale = (width - 2 * edge) / (y1 - y0)
  const height = (z1 - z0) * scale + 2 * edge
  // Whoever stands in front of the vehicle has its left side on the right.
  const at = (y: number, z: number): Place => [edge + (y - y0) * scale, edge + (z1 - z) * scale]
  const said = ([x, y]: Place) => `${x.toFixed(1)} ${y.toFixed(1)}`
  const figure = ({ strokes, wheel }: SheetFigure, dash: string) =>
    `<g${dash}>${strokes.map(({ kind, from, to }) => `<path d="M${said(at(from[1], from[2]))}L${said(at(to[1], to[2]))}" stroke-width="${kind === 'knuckle' ? 2 : kind === 'strut' ? 0.9 : 1.3}"/>`).join('')}
<path d="M${rim(wheel)
      .map(([y, z]) => said(at(y, z)))
      .join('L')}Z" stroke-width="0.9"/></g>`
  const ground = at(0, Math.min(...figures.map((one) => one.ground)))[1]
  const lines = corners.map(({ ride, present }) =>
    [
      figure(ride, ''),
      present && moved(ride, present) ? figure(present, ' stroke-dasharray="2.5 2" opacity="0.75"') : '',
    ].join(''),
  )
  return `<figure style="margin:0"><svg viewBox="0 0 ${width} ${height.toFixed(0)}" role="img" aria-label="${htmlText(corners.map(({ title }) => title).join('; '))}" fill="none" stroke="currentColor">
<path d="M0 ${ground.toFixed(1)}H${width}" stroke-width="0.7"/>${lines.join('')}${corners.map((corner) => balloons(corner, at, height)).join('')}${corners.map(({ side }) => `<text x="${side === 'left' ? width / 2 + 30 : width / 2 - 30}" y="${(ground - 3).toFixed(1)}" text-anchor="middle">${side}</text>`).join('')}</svg></figure>`
}

/** The outline of a wheel seen from the front. */
function rim({ centre, spinAxis, radius, width: w }: SheetFigure['wheel']): readonly Place[] {
  const [y, z] = [spinAxis[1], spinAxis[2]]
  const corner = (across: number, up: number): Place => [
    centre[1] + y * across * w - z * up * radius,
    centre[2] + z * across * w + y * up * radius,
  ]
  return [corner(0.5, 1), corner(0.5, -1), corner(-0.5, -1), corner(-0.5, 1)]
}

/** A wheel that moved less than this is not drawn twice, m. */
const still = 0.002

const moved = (a: SheetFigure, b: SheetFigure): boolean =>
  a.wheel.centre.some((x, i) => Math.abs(x - b.wheel.centre[i]!) > still)

/** Letters in a row above the corner, each with a thin line down to its joint. */
function balloons({ ride, side }: SheetCorner, at: (y: number, z: number) => Place, height: number): string {
  const inner = ride.joints
    .map(({ letter, at: p, adjuster }) => ({ letter, adjuster, place: at(p[1], p[2]) }))
    .filter(({ letter }) => letter !== '')
    .sort((a, b) => a.place[0] - b.place[0])
  const pitch = 13
  const spread = spaced(
    inner.map(({ place }) => place[0]),
    pitch,
    side === 'left' ? [width / 2 + 4, width - 8] : [8, width / 2 - 4],
  )
  const row = (i: number) => (i % 2 === 0 ? 5 : height - 4)
  return inner
    .map(
      ({ letter, adjuster, place: [x, y] }, i) =>
        `<path d="M${spread[i]!.toFixed(1)} ${row(i)}L${x.toFixed(1)} ${y.toFixed(1)}" stroke-width="0.25"/><circle cx="${x.toFixed(1)}" cy="${y.toFixed(1)}" r="1.5" fill="currentColor" stroke="none"/><circle cx="${spread[i]!.toFixed(1)}" cy="${row(i)}" r="4.6" fill="white" stroke-width="${adjuster ? 1.6 : 0.6}"/><text x="${spread[i]!.toFixed(1)}" y="${row(i) + 2.6}" text-anchor="middle">${htmlText(letter)}</text>`,
    )
    .join('')
}

/** Places pushed apart to at least the pitch of every other one, within a band. */
function spaced(wanted: readonly number[], pitch: number, [low, high]: Place): readonly number[] {
  const step = pitch / 2
  const placed: number[] = []
  for (const [i, x] of wanted.entries()) placed.push(Math.max(x, (placed[i - 1] ?? low - step) + step))
  const over = Math.max(0, (placed.at(-1) ?? 0) - high)
  return placed.map((x) => Math.max(low, x - over))
}
