const width = 200
const ends = [0, 25, 50, 75, 100]

/** Belief as a mark on a rule from none to sure: it says no more than its words. */
export function Belief({ belief, text }: { belief: number; text: string }) {
  const at = 4 + Math.min(0.97, Math.max(0.02, Math.round(belief * 20) / 20)) * (width - 8)
  return (
    <div className="belief">
      <span className="belief-text figure-number">Belief {text}</span>
      <svg width={width} height="18" viewBox={`0 0 ${width} 18`} aria-hidden="true">
        <line x1="4" y1="12" x2={width - 4} y2="12" />
        {ends.map((end) => {
          const x = 4 + (end / 100) * (width - 8)
          return <line key={end} x1={x} y1="8" x2={x} y2="16" />
        })}
        <line className="belief-mark" x1="4" y1="12" x2={at} y2="12" />
        <path className="belief-point" d={`M${at - 5} 1L${at + 5} 1L${at} 11Z`} />
      </svg>
    </div>
  )
}
