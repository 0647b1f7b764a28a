import { memo, type ReactNode } from 'react'
import type { SheetCorner, SheetFigure } from '../../sheet/index.ts'
import { Balloon } from './balloon.tsx'
import './corner-drawing.css'
import { type CornerView, type Flat, seenAs } from './corner-view.ts'
import { FigureLines, type OnPaper, ringPath } from './figure-lines.tsx'
import { Ground } from './ground.tsx'
import { placeBalloons, type Spot } from './place-balloons.ts'
import { tyre } from './tyre.ts'
import { useWidth } from './use-width.ts'

const air = 46
const weights: Record<SheetFigure['strokes'][number]['kind'], number> = {
  arm: 3.2,
  knuckle: 5,
  rod: 2,
  strut: 7,
}

/** The letters under `of` that the eye cannot tell apart on this view share one balloon place; the drawing itself. */
export const CornerDrawing = memo(function CornerDrawing({
  corner,
  view,
  chosen,
  onChoose,
  over,
}: {
  corner: SheetCorner
  view: CornerView
  chosen: string | null
  onChoose: (letter: string | null) => void
  /** Drawn over it, by the same eye and scale: a displaced part. */
  over?: ((on: OnPaper) => ReactNode) | undefined
}) {
  const [element, width] = useWidth<HTMLDivElement>(420, 325)
  const eye = seenAs(view, corner.side)
  const figures = [corner.ride, ...(corner.present ? [corner.present] : [])]
  const tyres = figures.map((figure) => tyre(figure.wheel, eye))
  const all: Flat[] = figures.flatMap((figure, i) => [
    ...figure.strokes.flatMap((stroke) => [eye(stroke.from), eye(stroke.to)]),
    ...figure.joints.map((joint) => eye(joint.at)),
    ...tyres[i]!.outline,
  ])
  const xs = all.map((p) => p[0])
  const ys = all.map((p) => p[1])
  const [left, right, low, high] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)]
  const most = 330
  const scale = Math.min((width - 2 * air) / (right - left), (most - air - 24) / (high - low))
  const height = Math.ceil((high - low) * scale + air + 12)
  const middle = width / 2 - ((left + right) / 2) * scale
  const spot = ([x, y]: Flat): Spot => ({ x: middle + x * scale, y: air - 10 + (high - y) * scale })
  const joints = corner.ride.joints
  const spots = joints.map((joint) => spot(eye(joint.at)))
  const lines = [
    ...corner.ride.strokes.map((stroke) => [spot(eye(stroke.from)), spot(eye(stroke.to))] as const),
    ...tyres[0]!.outline.map((p, i, ring) => [spot(p), spot(ring[(i + 1) % ring.length]!)] as const),
  ]
  const balloons = placeBalloons(spots, lines, { width, height: height - (view === 'plan' ? 0 : 16) })
  const axis = (figure: SheetFigure) => {
    const { centre, spinAxis, width: w } = figure.wheel
    const end = (k: number): Flat =>
      eye([centre[0] + k * w * spinAxis[0], centre[1] + k * w * spinAxis[1], centre[2] + k * w * spinAxis[2]])
    return [spot(end(-0.75)), spot(end(0.75))] as const
  }
  const [a, b] = axis(corner.ride)
  const centre = spot(eye(corner.ride.wheel.centre))
  const words = { front: 'from the front', side: 'from outside the wheel', plan: 'from above, front upward' }[
    view
  ]
  return (
    <div ref={element} className="corner-drawing">
      {/* The parts list below says the same with buttons, so the drawing is one picture to a reader. */}
      <svg
        width={width}
        height={height}
        viewBox={`0 0 ${width} ${height}`}
        role="img"
        aria-label={`${corner.title}, seen ${words}: ${joints.map((j) => `${j.letter} ${j.name}`).join(', ')}`}
      >
        {view !== 'plan' && <Ground y={spot([0, corner.ride.ground]).y} width={width} />}
        {corner.present && (
          <g className="corner-present">
            <FigureLines figure={corner.present} on={{ eye, spot }} />
          </g>
        )}
        <path className="corner-tyre" d={ringPath(tyres[0]!.outline, spot)} />
        {tyres[0]!.rim && <path className="corner-rim" d={ringPath(tyres[0]!.rim, spot)} />}
        {view === 'side' ? (
          <g className="corner-centre-line">
            <line x1={centre.x - 14} y1={centre.y} x2={centre.x + 14} y2={centre.y} />
            <line x1={centre.x} y1={centre.y - 14} x2={centre.x} y2={centre.y + 14} />
          </g>
        ) : (
          <line className="corner-centre-line" x1={a.x} y1={a.y} x2={b.x} y2={b.y} />
        )}
        {corner.ride.strokes.map((stroke) => {
          const [p, q] = [spot(eye(stroke.from)), spot(eye(stroke.to))]
          return (
            <line
              key={`${stroke.part} ${stroke.from} ${stroke.to}`}
              className="corner-stroke"
              x1={p.x}
              y1={p.y}
              x2={q.x}
              y2={q.y}
              strokeWidth={weights[stroke.kind]}
            />
          )
        })}
        {over?.({ eye, spot })}
        {spots.map((p, i) => (
          <circle key={joints[i]!.letter} className="corner-joint" cx={p.x} cy={p.y} r="4.6" />
        ))}
        {balloons.map((p, i) => {
          const joint = joints[i]!
          const s = spots[i]!
          const on = joint.letter === chosen
          const t = Math.atan2(p.y - s.y, p.x - s.x)
          return (
            // biome-ignore lint/a11y/noStaticElementInteractions: the parts list holds the same as buttons
            <g
              key={joint.letter}
              className="corner-balloon"
              onClick={() => onChoose(on ? null : joint.letter)}
            >
              <circle cx={p.x} cy={p.y} r="24" fill="transparent" />
              <circle cx={s.x} cy={s.y} r="16" fill="transparent" />
              <line
                className="corner-leader"
                x1={s.x + 5 * Math.cos(t)}
                y1={s.y + 5 * Math.sin(t)}
                x2={p.x}
                y2={p.y}
              />
              <Balloon
                x={p.x}
                y={p.y}
                text={joint.letter}
                filled={on}
                colour={on ? 'var(--blue)' : 'var(--ink)'}
              />
            </g>
          )
        })}
      </svg>
    </div>
  )
})
