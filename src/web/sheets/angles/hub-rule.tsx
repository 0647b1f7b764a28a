import { Arrow } from '../../drawing/arrow.tsx'
import './part-drawing.css'

/** The height rule beside the wheel: arch above, hub hanging below in ink, hub at its target in blue. */
export function HubRule({ target: height, raise }: { target: number; raise: number }) {
  const reach = height + Math.max(raise, 0)
  const length = 128
  const top = 14
  const target = top + (length * height) / reach
  const hanging = top + length
  return (
    <svg className="hub-rule" viewBox="0 0 116 168" width="116" height="168" aria-hidden="true">
      <path className="part-solid" d="M34 14A70 70 0 0 1 112 34" strokeWidth="2.2" />
      <path className="part-line" d={`M30 ${top - 6}V${hanging + 14}`} />
      {Array.from({ length: 15 }, (_, i) => (
        <line
          // biome-ignore lint/suspicious/noArrayIndexKey: marks on a rule keep their places
          key={i}
          className="part-tick"
          x1="30"
          x2={i % 5 === 0 ? 20 : 25}
          y1={top + (i * (length + 12)) / 14}
          y2={top + (i * (length + 12)) / 14}
        />
      ))}
      <line className="part-line" x1="12" x2="48" y1={top} y2={top} />
      {raise > 0 && (
        <>
          <g className="part-now">
            <circle cx="78" cy={hanging} r="12" />
            <path d={`M36 ${hanging}H62`} />
          </g>
          <path className="part-move" d={`M104 ${hanging}V${target + 9}`} />
          <Arrow x={104} y={target} angle={-Math.PI / 2} size={11} fill="var(--blue)" />
        </>
      )}
      <g className="part-then">
        <circle cx="78" cy={target} r="12" />
        <path d={`M12 ${target}H62`} />
      </g>
    </svg>
  )
}
