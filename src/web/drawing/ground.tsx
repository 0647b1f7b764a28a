/** The floor: a line with hatching below it. */
export function Ground({ y, width }: { y: number; width: number }) {
  return (
    <g>
      <rect x="0" y={y} width={width} height="9" fill="url(#hatch)" />
      <line x1="0" y1={y} x2={width} y2={y} style={{ stroke: 'var(--ink)', strokeWidth: 1.6 }} />
    </g>
  )
}
