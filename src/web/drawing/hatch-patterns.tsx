/** The hatches that every drawing on the page refers to. */
export function HatchPatterns() {
  return (
    <svg width="0" height="0" aria-hidden="true" style={{ position: 'absolute' }}>
      <defs>
        <pattern id="hatch" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <line x1="0" y1="0" x2="0" y2="6" style={{ stroke: 'var(--hatch)' }} strokeWidth="1" />
        </pattern>
        <pattern
          id="hatch-wide"
          width="10"
          height="10"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(-45)"
        >
          <line x1="0" y1="0" x2="0" y2="10" style={{ stroke: 'var(--hatch)' }} strokeWidth="1" />
        </pattern>
        <pattern
          id="hatch-ink"
          width="3.5"
          height="3.5"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <line x1="0" y1="0" x2="0" y2="3.5" style={{ stroke: 'var(--ink)' }} strokeWidth="1.2" />
        </pattern>
      </defs>
    </svg>
  )
}
