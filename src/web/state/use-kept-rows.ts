import { useCallback, useEffect, useState } from 'react'
import { askKeeper } from '../keep/keep-hand.ts'
import { anyKept } from './any-kept.ts'
import type { JobRow, Plain } from './messages.ts'

/** The jobs that are kept on this device. */
export interface KeptRows {
  /** Null until they are read. */
  readonly rows: readonly JobRow[] | null
  readonly trouble: Plain | null
  /** One of them as it stands now, or a new one. */
  readonly update: (row: JobRow) => void
}

/** Reads which jobs are kept here, and hears of changes that other windows make. */
export function useKeptRows(): KeptRows {
  const [rows, setRows] = useState<readonly JobRow[] | null>(null)
  const [trouble, setTrouble] = useState<Plain | null>(null)
  useEffect(() => {
    const read = () =>
      askKeeper('rows', null).then(
        (back) => setRows(back.rows),
        (why: Plain) => {
          setTrouble(why)
          setRows((old) => old ?? [])
        },
      )
    anyKept().then((any) => (any ? read() : setRows([])))
    const heard = new BroadcastChannel('axlewright')
    heard.onmessage = read
    return () => heard.close()
  }, [])
  const update = useCallback(
    (row: JobRow) => setRows((old) => [row, ...(old ?? []).filter(({ id }) => id !== row.id)]),
    [],
  )
  return { rows, trouble, update }
}
