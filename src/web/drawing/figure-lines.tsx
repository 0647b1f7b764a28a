import type { SheetFigure } from '../../sheet/index.ts'
import type { Flat } from './corner-view.ts'
import type { Spot } from './place-balloons.ts'
import { tyre } from './tyre.ts'

/** How places come onto the drawing: what the eye sees of them, and where that stands on the paper. */
export interface OnPaper {
  readonly eye: (place: readonly [number, number, number]) => Flat
  readonly spot: (flat: Flat) => Spot
}

/** A figure in thin lines, to be laid over another: the tyre's outline and the strokes that are wanted. */
export function FigureLines({
  figure,
  on: { eye, spot },
  wanted = () => true,
}: {
  figure: SheetFigure
  on: OnPaper
  wanted?: (stroke: SheetFigure['strokes'][number], i: number) => boolean
}) {
  return (
    <>
      <path d={ringPath(tyre(figure.wheel, eye).outline, spot)} />
      {figure.strokes.filter(wanted).map((stroke) => {
        const [p, q] = [spot(eye(stroke.from)), spot(eye(stroke.to))]
        return <line key={`${stroke.part} ${stroke.from} ${stroke.to}`} x1={p.x} y1={p.y} x2={q.x} y2={q.y} />
      })}
    </>
  )
}

/** A closed line through points, as an SVG path. */
export const ringPath = (points: readonly Flat[], spot: OnPaper['spot']): string =>
  `M${points
    .map(spot)
    .map(({ x, y }) => `${x.toFixed(1)} ${y.toFixed(1)}`)
    .join('L')}Z`
