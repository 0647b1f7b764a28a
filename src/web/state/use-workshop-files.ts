import { useEffect, useState } from 'react'
import { askKeeper } from '../keep/keep-hand.ts'
import type { KeptFile, Workshop } from '../keep/keep-messages.ts'

/** The workshop of this device and its files; `workshop` is undefined until it is read, null where there is none. */
export interface WorkshopFiles {
  readonly workshop: Workshop | null | undefined
  readonly files: readonly KeptFile[]
}

/** Reads the workshop and the newest versions of its files. */
export function useWorkshopFiles(): WorkshopFiles {
  const [read, setRead] = useState<WorkshopFiles>({ workshop: undefined, files: [] })
  useEffect(() => {
    Promise.all([askKeeper('workshop', null), askKeeper('files', null)]).then(
      ([{ workshop }, { files }]) => setRead({ workshop, files }),
      () => setRead({ workshop: null, files: [] }),
    )
  }, [])
  return read
}
