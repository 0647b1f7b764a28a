import { useEffect, useState } from 'react'
import { askKeeper } from '../../keep/keep-hand.ts'
import type { KeepAsks } from '../../keep/keep-messages.ts'
import type { PageProps } from '../../shell/page-props.ts'
import type { Plain } from '../../state/messages.ts'
import { Beside } from '../beside.tsx'
import { TroubleBox } from '../trouble-box.tsx'
import { ValuesForm } from './values-form.tsx'

type Files = KeepAsks['filesOf']['back']['files']

/** The values of a job's vehicle, as the workshop types them from its own information. */
export function ValuesPage(page: PageProps) {
  const id = page.address.stage
  const row = page.kept.rows?.find((one) => one.id === id) ?? null
  const [files, setFiles] = useState<Files | null>(null)
  const [trouble, setTrouble] = useState<Plain | null>(null)
  useEffect(() => {
    document.title = 'Values of a vehicle · Axlewright'
    askKeeper('filesOf', { job: id }).then(
      (back) => setFiles(back.files),
      (why: Plain) => setTrouble(why),
    )
  }, [id])
  return (
    <Beside here="" title={row ? `Values of ${row.vehicle}` : 'Values of a vehicle'} page={page}>
      <TroubleBox trouble={trouble} />
      {files && row && (
        <ValuesForm
          job={id}
          vehicle={row.vehicle}
          files={files}
          onKept={(kept) => {
            page.kept.update(kept)
            page.go(id, page.address.wheel || 'angles')
          }}
        />
      )}
    </Beside>
  )
}
