import type { Plain } from '../state/messages.ts'

/** Why something cannot be, and what to do. */
export function TroubleBox({ trouble }: { trouble: Plain | null }) {
  if (!trouble) return null
  return (
    <div className="beside-told" role="alert">
      <p>{trouble.sentence}</p>
      <p>{trouble.remedy}</p>
    </div>
  )
}
