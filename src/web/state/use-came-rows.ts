import { useEffect, useState } from 'react'
import type { JobRow } from './messages.ts'
import { workerHand } from './worker-hand.ts'

/** The jobs that came with the page; null until they are read. */
export function useCameRows(): readonly JobRow[] | null {
  const [rows, setRows] = useState<readonly JobRow[] | null>(null)
  useEffect(() => {
    const nothing = () => {}
    const hand = workerHand({
      jobs: setRows,
      told: nothing,
      bolts: nothing,
      answer: nothing,
      broken: () => setRows([]),
    })
    return () => hand.end()
  }, [])
  return rows
}
