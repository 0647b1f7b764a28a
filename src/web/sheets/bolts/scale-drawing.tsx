import { Arrow } from '../../drawing/arrow.tsx'
import { roundTicks } from '../../drawing/scale.ts'

const width = 300
const line = 62
/** How much of the scale is shown on both sides of the mark, as a share of the value. */
const around = 0.32

/** The part of the wrench's scale about the value that it is set to. */
export function ScaleDrawing({ value, unit }: { value: number; unit: string }) {
  if (!(value > 0)) return null
  const [low, high] = [value * (1 - around), value * (1 + around)]
  const x = (n: number) => 14 + ((n - low) / (high - low)) * (width - 28)
  const large = roundTicks(low, high, 5)
  const step = large.length > 1 ? large[1]! - large[0]! : value
  const small = roundTicks(low, high, 25).filter(
    (tick) => !large.some((one) => Math.abs(one - tick) < step / 1e6),
  )
  return (
    <svg
      className="doing-scale"
      viewBox={`0 8 ${width} 96`}
      role="img"
      aria-label={`The wrench’s scale, set to ${value} ${unit}.`}
    >
      <path className="doing-line" d={`M2 ${line}H${width - 2}`} />
      {small.map((tick) => (
        <line key={tick} className="doing-tick" x1={x(tick)} x2={x(tick)} y1={line} y2={line + 9} />
      ))}
      {large.map((tick) => (
        <g key={tick}>
          <line className="doing-line" x1={x(tick)} x2={x(tick)} y1={line} y2={line + 16} />
          <text x={x(tick)} y={line + 36} textAnchor="middle" fontSize="16">
            {Number(tick.toPrecision(6))}
          </text>
        </g>
      ))}
      <Arrow x={x(value)} y={line - 2} angle={Math.PI / 2} size={18} fill="var(--blue)" />
      <path className="doing-move" d={`M${x(value)} ${line - 19}V${line - 30}`} />
      <text className="doing-angle" x={x(value)} y={line - 36} textAnchor="middle" fontSize="21">
        {value}
      </text>
    </svg>
  )
}
