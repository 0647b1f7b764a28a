import { parseLength, Refusal } from '../../../quantity/index.ts'
import { textAt } from '../files/in-file.ts'

/** Across, and up, of each view: index of the coordinate, and its sense on paper. */
const views = [
  ['front', 'From the front', 1, 1],
  ['side', 'From the side', 0, -1],
] as const
/** Around the points, m. */
const margin = 0.08

/** The points as they are typed, from the front and from the side: a figure in the wrong field is seen at once. */
export function PointsDrawn({ file, names }: { file: unknown; names: readonly string[] }) {
  const points = names.flatMap((name, i) => {
    const at = [0, 1, 2].map((k) => metres(textAt(file, ['points', name, 'at', k])))
    return at.every((one) => one !== null) ? [{ number: i + 1, name, at: at as number[] }] : []
  })
  return (
    <div className="points-drawn">
      {views.map(([key, title, across, sense]) => {
        const xs = points.map(({ at }) => sense * at[across]!)
        const ys = points.map(({ at }) => -at[2]!)
        const [left, right] = [Math.min(...xs, 0) - margin, Math.max(...xs, 0) + margin]
        const [top, bottom] = [Math.min(...ys, -0.3) - margin, margin]
        const unit = Math.max(right - left, bottom - top) / 300
        return (
          <figure key={key}>
            <svg
              viewBox={`${left} ${top} ${right - left} ${bottom - top}`}
              role="img"
              aria-label={`${title}: ${points.length} points, as typed.`}
            >
              <path className="points-ground" d={`M${left} 0H${right}`} strokeWidth={unit * 2} />
              {points.map(({ number, name }, i) => (
                <g key={name}>
                  <circle cx={xs[i]} cy={ys[i]} r={unit * 3.4} />
                  <text x={xs[i]! + unit * 5} y={ys[i]! - unit * 4} fontSize={unit * 13}>
                    {number}
                  </text>
                </g>
              ))}
            </svg>
            <figcaption>{title}</figcaption>
          </figure>
        )
      })}
    </div>
  )
}

/** A length as typed, m; null for what is none yet. */
function metres(text: string): number | null {
  try {
    return parseLength(text)
  } catch (error) {
    if (error instanceof Refusal) return null
    throw error
  }
}
