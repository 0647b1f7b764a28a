import type { SheetReading } from '../../../sheet/index.ts'
import { VerdictMark } from '../../drawing/verdict-mark.tsx'

/** The readings that ask for nothing, as one line that opens. */
export function InsideFold({
  readings,
  folded,
  onFold,
}: {
  readings: readonly SheetReading[]
  folded: boolean
  onFold: (folded: boolean) => void
}) {
  const inside = readings.filter(({ verdict }) => verdict === 'inside').length
  const without = readings.length - inside
  return (
    <button
      type="button"
      className="bare readings-fold"
      aria-expanded={!folded}
      onClick={() => onFold(!folded)}
    >
      <VerdictMark verdict={inside > 0 ? 'inside' : 'no limit'} />
      <span>
        {folded ? 'And ' : 'Fold '}
        {inside > 0 && `${inside} inside`}
        {inside > 0 && without > 0 && ', '}
        {without > 0 && `${without} without a limit`}
      </span>
      <svg width="20" height="20" viewBox="0 0 20 20" aria-hidden="true">
        <path d={folded ? 'M3 10H17M10 3V17' : 'M3 10H17'} />
      </svg>
    </button>
  )
}
